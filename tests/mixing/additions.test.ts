import fc from "fast-check";
import {
  type Addition,
  additionSchedule,
  additionTimes,
  exponentialFeed,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  incorporationTimeScale,
  interpolateAtOilFraction,
  type OilLaw,
  type OilToAdd,
  restartAfterOvershoot,
  scheduleAtScale,
} from "gelwright/mixing";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const tables = fc.tuple(between(0.02, 0.5), between(0.02, 0.8), between(0.02, 1.5)).map(
  ([low, middle, high]): OilLaw => ({
    law: "table",
    points: [
      { volumeFractionOil: 0, value: low },
      { volumeFractionOil: 0.6, value: middle },
      { volumeFractionOil: 1, value: high },
    ],
  }),
);
const laws: fc.Arbitrary<OilLaw> = fc.oneof(
  between(0.02, 1.5).map((value): OilLaw => ({ law: "constant", value })),
  fc
    .tuple(between(0.05, 0.5), between(-0.04, 1))
    .map(([atNoOil, perVolumeFraction]): OilLaw => ({ law: "linear", atNoOil, perVolumeFraction })),
  tables,
);
const densities = { densityOil: between(850, 960), densityGelFormer: between(1000, 1260) };
/** Any oil into any gel former; the oil as a balance shows it, which may be finer than the one of the additions. */
const oils: fc.Arbitrary<OilToAdd> = fc.record({
  massGelFormer: between(0.01, 50),
  massOil: fc.oneof(fc.constant(0), between(0, 20)),
  massToAdd: fc.integer({ min: 1, max: 5_000_000 }).map((grams) => grams / 10_000),
  ...densities,
  share: laws,
});
const forms = fc.constantFrom("largest" as const, "equal" as const, "geometric" as const);
/** A schedule may have thousands of additions. */
const few = { numRuns: 50 };
const increments = fc.constantFrom(undefined, 0.0001, 0.0005, 0.001, 0.002);

/** The schedule, or nothing where the balance cannot read so small a share or the additions are too many. */
function tried(input: Parameters<typeof additionSchedule>[0]): readonly Addition[] {
  try {
    return additionSchedule(input);
  } catch (error) {
    expect(String(error)).toMatch(/less than one step|more than 10000 additions/);
    return [];
  }
}

describe("a schedule of additions", () => {
  test("adds up to the oil that was weighed, to the last digit that its balance shows", () => {
    fc.assert(
      fc.property(oils, forms, increments, (oil, form, increment) => {
        const schedule = tried({ ...oil, form, ...(increment && { increment }) });
        fc.pre(schedule.length > 0);
        const parts = schedule.map(({ mass }) => mass);
        const inUnits = (mass: number): number => Math.round(mass * 10_000);
        if (increment) expect(parts.reduce((sum, mass) => sum + inUnits(mass), 0)).toBe(inUnits(oil.massToAdd));
        expect(
          off(
            parts.reduce((sum, mass) => sum + mass, 0),
            oil.massToAdd,
          ),
        ).toBeLessThan(1e-11);
        expect(off(schedule.at(-1)?.massOil ?? 0, oil.massToAdd + (oil.massOil ?? 0))).toBeLessThan(1e-11);
      }),
      few,
    );
  });

  test("no addition passes the share that is taken up at once", () => {
    fc.assert(
      fc.property(oils, forms, increments, (oil, form, increment) => {
        const start = { massInVessel: oil.massGelFormer + (oil.massOil ?? 0) };
        const schedule = tried({ ...oil, form, ...(increment && { increment }) });
        const parts = schedule.map(
          ({ mass, shareMax }, i) => mass / (shareMax * (schedule[i - 1] ?? start).massInVessel),
        );
        expect(Math.max(...parts)).toBeLessThanOrEqual(1 + 1e-9);
      }),
      few,
    );
  });

  test("the share that it keeps to is the law's at the oil fraction before the addition", () => {
    fc.assert(
      fc.property(oils, forms, (oil, form) => {
        const even = oil.massGelFormer * (oil.densityOil / oil.densityGelFormer);
        const schedule = tried({ ...oil, form });
        const offBy = schedule.map(({ shareMax }, i) => {
          const inside = (schedule[i - 1] ?? oil).massOil ?? 0;
          return off(
            shareMax,
            interpolateAtOilFraction({ law: oil.share, volumeFractionOil: inside / (inside + even) }),
          );
        });
        expect(Math.max(...offBy)).toBeLessThan(1e-9);
      }),
      few,
    );
  });

  test("every addition but the last is a whole number of steps of the balance", () => {
    fc.assert(
      fc.property(oils, forms, (oil, form) => {
        const schedule = tried({ ...oil, form, increment: 0.002 }).slice(0, -1);
        expect(Math.max(...schedule.map(({ mass }) => Math.abs(mass / 0.002 - Math.round(mass / 0.002))))).toBeLessThan(
          1e-6,
        );
      }),
      few,
    );
  });

  test("the oil fraction rises with each addition", () => {
    fc.assert(
      fc.property(oils, forms, increments, (oil, form, increment) => {
        const path = tried({ ...oil, form, ...(increment && { increment }) }).map((one) => one.volumeFractionOil);
        expect(path.findIndex((then, i) => i > 0 && then <= (path[i - 1] ?? 1))).toBe(-1);
      }),
      few,
    );
  });

  test("never goes past the oil fraction that trials allow: more oil is refused, with how much would do", () => {
    fc.assert(
      fc.property(oils, between(0.3, 0.95), (oil, limit) => {
        const { densityOil, densityGelFormer, massGelFormer, massToAdd, massOil = 0 } = oil;
        const max = (massGelFormer * densityOil * limit) / (densityGelFormer * (1 - limit)) - massOil;
        const call = () => additionSchedule({ ...oil, volumeFractionOilMax: limit });
        if (massToAdd > max * (1 + 1e-9)) expect(call).toThrow("massToAdd");
        else if (massToAdd < max * (1 - 1e-9))
          expect(tried({ ...oil, volumeFractionOilMax: limit }).filter((one) => one.volumeFractionOil > limit)).toEqual(
            [],
          );
      }),
      few,
    );
  });

  test("of the three forms the largest additions are the fewest", () => {
    fc.assert(
      fc.property(oils, between(0.02, 1), (oil, value) => {
        const [min = 0, ...others] = (["largest", "equal", "geometric"] as const).map(
          (form) => tried({ ...oil, share: { law: "constant", value }, form }).length,
        );
        for (const count of others) if (count > 0) expect(count).toBeGreaterThanOrEqual(min);
      }),
      few,
    );
  });

  test("geometric additions are one share, equal ones one mass", () => {
    fc.assert(
      fc.property(oils, (oil) => {
        const spread = (values: readonly number[]) => Math.max(...values.map((value) => off(value, values[0] ?? 0)));
        expect(spread(tried({ ...oil, form: "geometric" }).map(({ share }) => share))).toBeLessThan(1e-8);
        expect(spread(tried({ ...oil, form: "equal" }).map(({ mass }) => mass))).toBeLessThan(1e-8);
      }),
      few,
    );
  });

  test("the last addition is not followed by one of nothing, though what is left and what was done miss the total", () => {
    const oil = { massGelFormer: 0.01000000000000002, massOil: 3.725290298461914e-7, massToAdd: 252.6831 };
    const share = { law: "constant", value: 1.1810206877760148 } as const;
    const schedule = additionSchedule({ ...oil, densityOil: 850, densityGelFormer: 1000, share, form: "geometric" });
    expect(schedule).toHaveLength(13);
    expect(schedule.at(-1)?.share).toBeCloseTo(1.181020687775, 12);
  });

  test("a share below one step of the balance is refused with the balance named", () => {
    const oil = { massGelFormer: 0.04, massToAdd: 0.2, densityOil: 915, densityGelFormer: 1250 };
    expect(() => additionSchedule({ ...oil, share: { law: "constant", value: 0.01 }, increment: 0.001 })).toThrow(
      "less than one step of 0.001 kg",
    );
  });

  test("a law that falls to nothing or a table that does not reach is refused where it is", () => {
    const oil = { massGelFormer: 1, massToAdd: 9, densityOil: 915, densityGelFormer: 1250 };
    expect(() => additionSchedule({ ...oil, share: { law: "linear", atNoOil: 0.1, perVolumeFraction: -0.2 } })).toThrow(
      "a law that stays above 0",
    );
    const points = [
      { volumeFractionOil: 0, value: 0.1 },
      { volumeFractionOil: 0.5, value: 0.1 },
    ];
    expect(() => additionSchedule({ ...oil, share: { law: "table", points } })).toThrow("goes from 0 to 0.5");
  });
});

describe("a continuous feed", () => {
  const oil = { massGelFormer: 10, massToAdd: 60, densityOil: 915, densityGelFormer: 1250 };

  test("is the limit of ever smaller additions with ever shorter waits", () => {
    fc.assert(
      fc.property(tables, between(10, 300), between(10, 300), (share, first, last) => {
        const incorporationTime: OilLaw = { law: "linear", atNoOil: first, perVolumeFraction: last - first };
        const whole = feedDuration({ ...oil, share, incorporationTime });
        const offBy = [16, 64].map((parts) => {
          const additions = additionSchedule({ ...oil, share: scaled(share, 1 / parts) });
          return off(
            additionTimes({ additions, incorporationTime, incorporationTimeFactor: 1 / parts }).at(-1)?.timeEnd ?? 0,
            whole,
          );
        });
        expect(offBy[0]).toBeLessThan(0.1);
        expect(offBy[1]).toBeLessThan(0.025);
      }),
      { numRuns: 20 },
    );
  });

  test("at one share and one incorporation time it is the exponential feed", () => {
    fc.assert(
      fc.property(between(0.01, 1), between(1, 1000), between(0, 1), (value, seconds, part) => {
        const feed = {
          ...oil,
          share: { law: "constant", value },
          incorporationTime: { law: "constant", value: seconds },
        } as const;
        const duration = feedDuration(feed);
        expect(off(duration, (seconds / value) * Math.log(7))).toBeLessThan(1e-11);
        const time = part * duration;
        const then = feedAt({ ...feed, time });
        const closed = exponentialFeed({ massStart: 10, massEnd: 70, duration, time });
        expect(off(then.massInVessel, closed.massInVessel)).toBeLessThan(1e-10);
        expect(off(then.rate, closed.rate)).toBeLessThan(1e-10);
      }),
      few,
    );
  });

  test("a pump that is too weak makes it longer and never overruns its rate", () => {
    fc.assert(
      fc.property(tables, between(0.001, 0.2), between(0, 1), (share, rateMax, part) => {
        const feed = { ...oil, share, incorporationTime: { law: "constant", value: 90 } } as const;
        const [free, limited] = [feedDuration(feed), feedDuration({ ...feed, rateMax })];
        expect(limited).toBeGreaterThanOrEqual(free * (1 - 1e-9));
        expect(limited).toBeGreaterThanOrEqual((oil.massToAdd / rateMax) * (1 - 1e-9));
        const then = feedAt({ ...feed, rateMax, time: part * limited });
        expect(then.rate).toBeLessThanOrEqual(rateMax);
        expect(then.massOil).toBeLessThanOrEqual(oil.massToAdd);
      }),
      { numRuns: 60 },
    );
  });

  test("what is in after a time took that time", () => {
    fc.assert(
      fc.property(tables, between(0.01, 0.99), (share, part) => {
        const feed = {
          ...oil,
          share,
          incorporationTime: { law: "linear", atNoOil: 60, perVolumeFraction: 60 },
        } as const;
        const time = part * feedDuration(feed);
        const { massOil } = feedAt({ ...feed, time });
        expect(off(feedDuration({ ...feed, massToAdd: massOil }), time)).toBeLessThan(1e-8);
      }),
      { numRuns: 60 },
    );
  });
});

describe("from bench to plant", () => {
  const bench = { massGelFormer: 0.045, additions: [0.002, 0.0025, 0.003, 0.004, 0.005, 0.007, 0.009] };
  const plant = { bench, massGelFormer: 18, densityOil: 915, densityGelFormer: 1250 };

  test("the oil fraction takes the bench's path", () => {
    const small = scheduleAtScale({ ...plant, massGelFormer: bench.massGelFormer });
    const large = scheduleAtScale(plant);
    expect(large.length).toBe(bench.additions.length);
    for (const [i, one] of large.entries())
      expect(off(one.volumeFractionOil, small[i]?.volumeFractionOil ?? 0)).toBeLessThan(1e-12);
  });

  test("on a balance no share passes the bench's, and all of the oil goes in", () => {
    fc.assert(
      fc.property(between(1, 100), fc.constantFrom(0.001, 0.005, 0.02), (massGelFormer, increment) => {
        const massToAdd = Math.floor((massGelFormer / 0.045) * 32.5) / 1000;
        const schedule = scheduleAtScale({ ...plant, massGelFormer, massToAdd, increment });
        expect(schedule.reduce((sum, { mass }) => sum + Math.round(mass * 1000), 0)).toBe(Math.round(massToAdd * 1000));
        let content = bench.massGelFormer;
        const shares = bench.additions.map((mass) => {
          const share = mass / content;
          content += mass;
          return share;
        });
        for (const [i, { share, volumeFractionOil }] of schedule.entries()) {
          expect(share).toBeLessThanOrEqual((shares[i] ?? shares.at(-1) ?? 0) * (1 + 1e-9));
          expect(volumeFractionOil).toBeLessThanOrEqual(schedule.at(-1)?.volumeFractionOil ?? 0);
        }
      }),
      few,
    );
  });

  test("more oil than the bench took is refused", () => {
    expect(() => scheduleAtScale({ ...plant, massToAdd: 14 })).toThrow("as much oil to the gel former as at the bench");
  });

  test("a last addition so small that the rest would never go in by its share is refused", () => {
    const bench = { massGelFormer: 0.04, additions: [0.02, 1e-300] };
    const asked = { densityOil: 915, densityGelFormer: 1250, massGelFormer: 16, massToAdd: 8.05 };
    expect(() => scheduleAtScale({ ...asked, bench })).toThrow("a last addition so large");
  });

  test("what is kept sets the time: half the speed, twice the time", () => {
    expect(incorporationTimeScale({ keeps: "revolutions", speedBench: 10, speedPlant: 5 })).toBe(2);
    expect(incorporationTimeScale({ keeps: "time" })).toBe(1);
    fc.assert(
      fc.property(between(0.1, 100), between(0.1, 100), (one, other) => {
        const there = incorporationTimeScale({ keeps: "tip travel", tipSpeedBench: one, tipSpeedPlant: other });
        const back = incorporationTimeScale({ keeps: "tip travel", tipSpeedBench: other, tipSpeedPlant: one });
        expect(off(there * back, 1)).toBeLessThan(1e-14);
      }),
    );
  });
});

test("a restart uses up the failed mass and comes out at the ratio wanted", () => {
  fc.assert(
    fc.property(between(1, 5), between(1, 10), between(1, 10), between(2, 8), (gelFormer, oil, massFresh, ratio) => {
      const input = {
        failed: { massGelFormer: gelFormer, massOil: oil },
        massFresh,
        oilPerGelFormer: ratio,
        densityOil: 915,
        densityGelFormer: 1250,
        share: { law: "constant", value: 0.1 },
      } as const;
      if (ratio * (massFresh + gelFormer) < oil) {
        expect(() => restartAfterOvershoot(input)).toThrow("at least");
        return;
      }
      const { failed, massOilFurther, massEnd } = restartAfterOvershoot(input);
      expect(
        off(
          failed.reduce((sum, { mass }) => sum + mass, 0),
          gelFormer + oil,
        ),
      ).toBeLessThan(1e-12);
      expect(off((oil + massOilFurther) / (massFresh + gelFormer), ratio)).toBeLessThan(1e-12);
      expect(off(massEnd, massFresh + gelFormer + oil + massOilFurther)).toBeLessThan(1e-12);
    }),
  );
});

test("a restart with too little fresh gel former is refused: the failed mass counts as oil", () => {
  const input = {
    failed: { massGelFormer: 2, massOil: 8 },
    massFresh: 1,
    oilPerGelFormer: 5,
    densityOil: 915,
    densityGelFormer: 1250,
    share: { law: "constant", value: 0.1 },
    volumeFractionOilMax: 0.85,
  } as const;
  expect(() => restartAfterOvershoot(input)).toThrow("stays within 0.85");
});

test("readings are carried between the oil fractions at which they were taken, and no further", () => {
  const yieldStress = [
    { volumeFractionOil: 0.7, value: 4 },
    { volumeFractionOil: 0.8, value: 16 },
  ];
  const along = gelAlongAdditions({
    additions: [0.5, 0.7, 0.75, 0.8, 0.81].map((volumeFractionOil) => ({ volumeFractionOil })),
    yieldStress,
  });
  expect(along.map((then) => then.yieldStress?.toFixed(6))).toEqual([
    undefined,
    "4.000000",
    "8.000000",
    "16.000000",
    undefined,
  ]);
});

/** A table with all of its values times a factor. */
function scaled(law: OilLaw, by: number): OilLaw {
  if (law.law !== "table") throw new Error("a table");
  return { law: "table", points: law.points.map((point) => ({ ...point, value: point.value * by })) };
}
