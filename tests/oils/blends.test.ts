import fc from "fast-check";
import { refractiveIndexOfMixture } from "gelwright/formula";
import {
  grunbergNissanTerm,
  hlbOfBlend,
  profileOfBlend,
  profileValues,
  requiredHlb,
  solubilityOfBlend,
  surfactantShare,
  viscosityBlendingNumber,
  viscosityByArrhenius,
  viscosityByBlendingNumber,
  viscosityByGrunbergNissan,
  viscosityByKendallMonroe,
} from "gelwright/oils";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const amount = fc.double({ min: 0.01, max: 10, noNaN: true });
/** What a property blends like: a list of amounts and values in, the blend's value out. */
interface Rule {
  readonly name: string;
  readonly value: fc.Arbitrary<number>;
  readonly of: (parts: readonly { readonly amount: number; readonly value: number }[]) => number;
}
const viscosity = fc.double({ min: 1e-3, max: 10, noNaN: true });
const hlb = between(0, 20);
const rules: readonly Rule[] = [
  {
    name: "viscosity by Arrhenius",
    value: viscosity,
    of: (parts) => viscosityByArrhenius({ parts: parts.map((p) => ({ share: p.amount, viscosity: p.value })) }),
  },
  {
    name: "viscosity by Kendall and Monroe",
    value: viscosity,
    of: (parts) => viscosityByKendallMonroe({ parts: parts.map((p) => ({ moles: p.amount, viscosity: p.value })) }),
  },
  {
    name: "viscosity by Grunberg and Nissan without terms",
    value: viscosity,
    of: (parts) => viscosityByGrunbergNissan({ parts: parts.map((p) => ({ moles: p.amount, viscosity: p.value })) }),
  },
  {
    name: "viscosity by blending number",
    value: viscosity,
    of: (parts) =>
      1e3 *
      viscosityByBlendingNumber({ parts: parts.map((p) => ({ mass: p.amount, kinematicViscosity: p.value * 1e-3 })) }),
  },
  {
    name: "refractive index",
    value: fc.double({ min: 1.3, max: 1.6, noNaN: true }),
    of: (parts) =>
      refractiveIndexOfMixture({
        temperature: 20,
        parts: parts.map((p) => ({ mass: p.amount, density: 900, refractiveIndex: p.value })),
      }),
  },
  {
    name: "HLB",
    value: hlb,
    of: (parts) => hlbOfBlend({ parts: parts.map((p) => ({ mass: p.amount, hlb: p.value })) }),
  },
  {
    name: "required HLB",
    value: hlb,
    of: (parts) => requiredHlb({ parts: parts.map((p) => ({ mass: p.amount, requiredHlb: p.value })) }),
  },
];

describe.each(rules)("$name", ({ value, of }) => {
  const parts = fc.array(fc.record({ amount, value }), { minLength: 2, maxLength: 5 });

  test("lies between that of its parts", () => {
    fc.assert(
      fc.property(parts, (all) => {
        const values = all.map((part) => part.value);
        expect(of(all)).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-9));
        expect(of(all)).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-9));
      }),
    );
  });

  test("does not hang on the order of the parts, nor on the size of the batch", () => {
    fc.assert(
      fc.property(parts, (all) => {
        const turned = [...all].reverse().map((part) => ({ ...part, amount: 7 * part.amount }));
        expect(Math.abs(of(turned) / of(all) - 1 || 0)).toBeLessThan(1e-9);
      }),
    );
  });

  test("is the same when a part is blended beforehand", () => {
    fc.assert(
      fc.property(parts, ([first, ...others]) => {
        if (!first) throw new Error("one part at least");
        const premix = { amount: others.reduce((sum, part) => sum + part.amount, 0), value: of(others) };
        expect(Math.abs(of([first, premix]) / of([first, ...others]) - 1 || 0)).toBeLessThan(1e-9);
      }),
    );
  });
});

test("Kendall and Monroe never come out thinner than Arrhenius", () => {
  fc.assert(
    fc.property(amount, amount, viscosity, viscosity, (one, other, thin, thick) => {
      const shares = [
        { share: one, moles: one, viscosity: thin },
        { share: other, moles: other, viscosity: thick },
      ];
      expect(viscosityByKendallMonroe({ parts: shares })).toBeGreaterThanOrEqual(
        viscosityByArrhenius({ parts: shares }) * (1 - 1e-12),
      );
    }),
  );
});

test("the term fitted to one measured blend gives that blend back", () => {
  fc.assert(
    fc.property(amount, amount, viscosity, viscosity, viscosity, (one, other, thin, thick, measured) => {
      const parts = [
        { moles: one, viscosity: thin },
        { moles: other, viscosity: thick },
      ];
      const term = grunbergNissanTerm({ parts, viscosityBlend: measured });
      const back = viscosityByGrunbergNissan({ parts, interactions: [{ between: [1, 0], term }] });
      expect(back / measured).toBeCloseTo(1, 9);
    }),
  );
});

test("a pair that stands twice, or is no pair, is refused", () => {
  const parts = [
    { moles: 1, viscosity: 0.01 },
    { moles: 1, viscosity: 0.1 },
  ];
  const blend = (...pairs: readonly (readonly [number, number])[]) =>
    viscosityByGrunbergNissan({ parts, interactions: pairs.map((between) => ({ between, term: 1 })) });
  expect(() => blend([0, 1], [1, 0])).toThrow("each pair once");
  expect(() => blend([0, 0])).toThrow("two different places");
  expect(() => blend([0, 2])).toThrow("two different places");
});

test("a term cannot be read from a pure liquid, nor from three", () => {
  const one = { moles: 1, viscosity: 0.01 };
  const none = { moles: 0, viscosity: 0.1 };
  expect(() => grunbergNissanTerm({ parts: [one, none], viscosityBlend: 0.02 })).toThrow("two liquids");
  expect(() => grunbergNissanTerm({ parts: [one, one, one], viscosityBlend: 0.02 })).toThrow("two liquids");
});

test("the blending number ends where its logarithm does", () => {
  expect(() => viscosityBlendingNumber({ kinematicViscosity: 0.2e-6 })).toThrow("above 2e-7");
  expect(viscosityBlendingNumber({ kinematicViscosity: 0.21e-6 })).toBeLessThan(0);
});

test("the share of surfactants gives the HLB that was wanted, and none is promised that cannot be had", () => {
  fc.assert(
    fc.property(hlb, hlb, between(0, 1), (hlbFirst, hlbSecond, share) => {
      fc.pre(Math.abs(hlbFirst - hlbSecond) > 0.1);
      const wanted = hlbOfBlend({
        parts: [
          { mass: share, hlb: hlbFirst },
          { mass: 1 - share, hlb: hlbSecond },
        ],
      });
      const inside = Math.min(Math.max(wanted, Math.min(hlbFirst, hlbSecond)), Math.max(hlbFirst, hlbSecond));
      expect(surfactantShare({ hlb: inside, hlbFirst, hlbSecond })).toBeCloseTo(share, 9);
    }),
  );
  expect(() => surfactantShare({ hlb: 16, hlbFirst: 15, hlbSecond: 4.3 })).toThrow("between 15 and 4.3");
});

test("solubility parameters of a blend are those of its parts, by volume", () => {
  const parameters = { dispersion: 16, polar: 3, hydrogenBonding: 4 };
  const parts = [
    { volume: 3, parameters },
    { volume: 1, parameters },
  ];
  expect(solubilityOfBlend({ parts })).toEqual(parameters);
});

test("the profile of a blend adds up, and its bonds are those that the oils brought", () => {
  const short = { "8:0": 60, "10:0": 40 };
  const long = { "16:0": 7, "18:1": 60, "18:2": 33 };
  fc.assert(
    fc.property(amount, amount, (one, other) => {
      const blend = profileOfBlend({
        parts: [
          { mass: one, profile: short },
          { mass: other, profile: long },
        ],
      });
      expect(Object.values(blend).reduce((sum, percent) => sum + percent, 0)).toBeCloseTo(100, 9);
      const share = one / (one + other);
      for (const bond of ["esterBonds", "doubleBonds"] as const) {
        const brought =
          share * profileValues({ profile: short })[bond] + (1 - share) * profileValues({ profile: long })[bond];
        expect(profileValues({ profile: blend })[bond]).toBeCloseTo(brought, 9);
      }
    }),
  );
});
