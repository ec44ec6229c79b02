import fc from "fast-check";
import { shearStressAt } from "gelwright/laws";
import { additionTimes, feedDuration, flowCurveAtOil, type GelReadings, type OilLaw, stirring } from "gelwright/mixing";
import { describe, expect, test } from "vitest";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const points = (values: readonly number[]) => values.map((value, i) => ({ volumeFractionOil: 0.6 + 0.1 * i, value }));
/** Viscosities that carry more than the yield stress at the shear rate of the readings. */
const gels: fc.Arbitrary<GelReadings> = fc
  .record({
    shearRate: between(1, 100),
    yieldStress: fc.array(between(0.1, 50), { minLength: 3, maxLength: 3 }),
    above: fc.array(between(0.1, 200), { minLength: 3, maxLength: 3 }),
    index: fc.array(between(0.2, 1), { minLength: 3, maxLength: 3 }),
  })
  .map(({ shearRate, yieldStress, above, index }) => ({
    shearRate,
    viscosity: points(yieldStress.map((stress, i) => (stress + (above[i] ?? 1)) / shearRate)),
    flowIndex: points(index),
    yieldStress: points(yieldStress),
  }));

describe("the flow curve of a gel on its way", () => {
  test("gives back every reading at its oil fraction and shear rate", () => {
    fc.assert(
      fc.property(gels, fc.nat(2), (readings, i) => {
        const oil = readings.viscosity[i]?.volumeFractionOil ?? 0;
        const curve = flowCurveAtOil({ volumeFractionOil: oil, readings });
        const stress = shearStressAt({ curve, shearRate: readings.shearRate });
        expect(stress / readings.shearRate / (readings.viscosity[i]?.value ?? 0)).toBeCloseTo(1, 10);
        expect(curve).toMatchObject({ law: "herschel-bulkley" });
      }),
    );
  });

  test("between two readings the viscosity is their geometric mean, halfway", () => {
    fc.assert(
      fc.property(gels, (readings) => {
        const curve = flowCurveAtOil({ volumeFractionOil: 0.65, readings });
        const [low = 0, high = 0] = readings.viscosity.map(({ value }) => value);
        const viscosity = shearStressAt({ curve, shearRate: readings.shearRate }) / readings.shearRate;
        expect(viscosity / Math.sqrt(low * high)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("a gel that does not thin has one viscosity at any speed of the stirrer", () => {
    const readings = { shearRate: 20, viscosity: points([2, 8]), flowIndex: points([1, 1]) };
    const curve = flowCurveAtOil({ volumeFractionOil: 0.65, readings });
    const impeller = { kind: "anchor", diameter: 0.3 } as const;
    const viscosities = [0.1, 1].map((speed) => stirring({ impeller, density: 950, curve, speed }).viscosity);
    for (const viscosity of viscosities) expect(viscosity).toBeCloseTo(4, 10);
  });

  test("where no yield stress was read the gel counts as without", () => {
    const readings = {
      shearRate: 10,
      viscosity: points([1, 2, 4]),
      flowIndex: points([0.8, 0.6, 0.5]),
      yieldStress: points([1, 2, 4]).slice(1),
    };
    expect(flowCurveAtOil({ volumeFractionOil: 0.65, readings }).law).toBe("power-law");
    expect(flowCurveAtOil({ volumeFractionOil: 0.75, readings }).law).toBe("herschel-bulkley");
  });

  test("beyond the readings nothing is known, and a yield stress above what was read at flow is refused", () => {
    const readings = { shearRate: 10, viscosity: points([1, 2]), flowIndex: points([0.8, 0.6]) };
    expect(() => flowCurveAtOil({ volumeFractionOil: 0.5, readings })).toThrow("the last of readings.viscosity");
    const soft = {
      ...readings,
      viscosity: points([1, 2, 4]),
      flowIndex: points([0.8, 0.6, 0.5]),
      yieldStress: points([1, 2]),
    };
    expect(() => flowCurveAtOil({ volumeFractionOil: 0.75, readings: soft })).toThrow(
      "the last of readings.yieldStress",
    );
    const stiff = { ...readings, yieldStress: points([11, 12]) };
    expect(() => flowCurveAtOil({ volumeFractionOil: 0.6, readings: stiff })).toThrow("the stress at the shear rate");
  });
});

describe("a factor on the bench's times that goes with the oil", () => {
  const incorporationTime: OilLaw = { law: "constant", value: 60 };
  const additions = [0.3, 0.5, 0.7].map((volumeFractionOil) => ({ mass: 1, volumeFractionOil }));

  test("multiplies each addition's own time", () => {
    const incorporationTimeFactor: OilLaw = { law: "linear", atNoOil: 1, perVolumeFraction: 2 };
    const times = additionTimes({ additions, incorporationTime, incorporationTimeFactor }).map(
      ({ timeIn, timeEnd }) => timeEnd - timeIn,
    );
    for (const [i, time] of [96, 120, 144].entries()) expect(times[i]).toBeCloseTo(time, 10);
  });

  test("that is the same throughout does what the number does, in steps and as a stream", () => {
    fc.assert(
      fc.property(between(0.2, 8), (value) => {
        const law: OilLaw = { law: "constant", value };
        expect(additionTimes({ additions, incorporationTime, incorporationTimeFactor: law })).toEqual(
          additionTimes({ additions, incorporationTime, incorporationTimeFactor: value }),
        );
        const oil = { massGelFormer: 10, massToAdd: 20, densityOil: 915, densityGelFormer: 1250 };
        const feed = { ...oil, share: { law: "constant", value: 0.1 } as const, incorporationTime };
        expect(feedDuration({ ...feed, incorporationTimeFactor: law })).toBe(
          feedDuration({ ...feed, incorporationTimeFactor: value }),
        );
      }),
    );
  });
});
