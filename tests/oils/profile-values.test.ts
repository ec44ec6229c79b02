import fc from "fast-check";
import { type ProfileRanges, type ProfileValueRanges, profileValueRanges, profileValues } from "gelwright/oils";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const acids = ["8:0", "12:0", "16:0", "16:1", "18:0", "18:1", "18:2", "18:3", "20:2", "22:1", "18:1-OH"] as const;

/** A profile that adds up to 100, and limits around it. */
const profilesInLimits = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), between(0, 1), between(0, 1)), {
    minLength: acids.length,
    maxLength: acids.length,
  })
  .map((draws) => {
    const sum = draws.reduce((all, [weight]) => all + weight, 0);
    const entries = draws.map(([weight, below, above], i) => {
      const percent = (100 * weight) / sum;
      return {
        acid: acids[i] ?? "18:1",
        percent,
        limits: [percent * below, percent + (100 - percent) * above] as const,
      };
    });
    return {
      profile: Object.fromEntries(entries.map(({ acid, percent }) => [acid, percent])),
      ranges: Object.fromEntries(entries.map(({ acid, limits }) => [acid, limits])) as ProfileRanges,
    };
  });

const names = Object.keys(profileValues({ profile: { "18:1": 100 } })) as (keyof ProfileValueRanges)[];

test("no oil within the limits has a value outside the range of that value", () => {
  fc.assert(
    fc.property(profilesInLimits, ({ profile, ranges }) => {
      const point = profileValues({ profile });
      const limits = profileValueRanges({ ranges });
      for (const name of names) {
        const slack = 1e-12 * Math.abs(point[name]) + 1e-12;
        expect(point[name]).toBeGreaterThanOrEqual(limits[name][0] - slack);
        expect(point[name]).toBeLessThanOrEqual(limits[name][1] + slack);
      }
    }),
  );
});

test("each end of a range is the value of some oil within the limits: no exchange between two acids goes further", () => {
  // On a polytope of this kind every vertex has at most one acid off its limits, so that all of them can be listed.
  const ranges = { "12:0": [5, 40], "16:0": [10, 30], "18:1": [20, 60], "18:3": [0, 35] } as const;
  const keys = Object.keys(ranges) as (keyof typeof ranges)[];
  const vertices = keys
    .flatMap((free) =>
      Array.from({ length: 8 }, (_, choice) => {
        let bit = 0;
        const others = keys
          .filter((key) => key !== free)
          .map((key) => [key, ranges[key][(choice >> bit++) & 1] ?? 0] as const);
        const rest = 100 - others.reduce((sum, [, percent]) => sum + percent, 0);
        return {
          profile: Object.fromEntries([...others, [free, rest]]),
          fits: rest >= ranges[free][0] && rest <= ranges[free][1],
        };
      }),
    )
    .filter(({ fits }) => fits);
  expect(vertices.length).toBeGreaterThan(3);
  const points = vertices.map(({ profile }) => profileValues({ profile }));
  const limits = profileValueRanges({ ranges });
  for (const name of names) {
    expect(limits[name][0]).toBeCloseTo(Math.min(...points.map((point) => point[name])), 9);
    expect(limits[name][1]).toBeCloseTo(Math.max(...points.map((point) => point[name])), 9);
  }
});

test("limits that leave no freedom give the values of the one oil that fits", () => {
  const profile = { "16:0": 12, "18:1": 38, "18:2": 50 };
  const ranges = { "16:0": [12, 12], "18:1": [38, 38], "18:2": [50, 50] } as const;
  const point = profileValues({ profile });
  for (const name of names)
    for (const end of profileValueRanges({ ranges })[name]) expect(end).toBeCloseTo(point[name], 9);
});

test("limits between which 100 % cannot be reached are refused", () => {
  expect(() => profileValueRanges({ ranges: { "18:1": [0, 60], "18:2": [0, 30] } })).toThrow(
    "limits between which 100 %",
  );
  expect(() => profileValueRanges({ ranges: { "18:1": [70, 80], "18:2": [40, 50] } })).toThrow("sums from 110");
});

test("saturated, mono- and polyunsaturated acids make up the whole profile", () => {
  fc.assert(
    fc.property(profilesInLimits, ({ profile }) => {
      const { saturated, monounsaturated, polyunsaturated } = profileValues({ profile });
      expect(saturated + monounsaturated + polyunsaturated).toBeCloseTo(100, 9);
    }),
  );
});

test("three ester bonds are in each triglyceride, and iodine finds every double bond", () => {
  fc.assert(
    fc.property(profilesInLimits, ({ profile }) => {
      const values = profileValues({ profile });
      expect(values.esterBonds * values.molarMassTriglyceride).toBeCloseTo(3, 9);
      expect(values.saponificationValueMolar).toBeCloseTo(56.105 * values.esterBonds, 9);
    }),
  );
  for (const acid of ["16:1", "18:1", "18:2", "18:3", "20:1", "22:1", "20:2", "24:1"]) {
    const { iodineValue, doubleBonds } = profileValues({ profile: { [acid]: 100 } });
    // 253.809 g of iodine a mole, on 100 g; the printed factors have three decimals.
    expect(Math.abs(iodineValue - 25.3809 * doubleBonds)).toBeLessThan(0.06);
  }
});

test("more of a drying acid in place of oleic acid raises iodine value and oxidisability", () => {
  const at = (linolenic: number) => profileValues({ profile: { "18:1": 100 - linolenic, "18:3": linolenic } });
  expect(at(30).iodineValue).toBeGreaterThan(at(20).iodineValue);
  expect(at(30).oxidisability).toBeGreaterThan(at(20).oxidisability);
});
