import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import {
  choiOkosFat,
  densityAt,
  densityFunction,
  enthalpyBetween,
  liquidWater,
  type SpecificHeatLaw,
  specificHeatAt,
  specificHeatBreakpoints,
  specificHeatFunction,
} from "gelwright/laws";
import { transientSegment } from "gelwright/transient";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const constant = between(1000, 4500).map((specificHeat) => ({ law: "constant" as const, specificHeat }));
const smooth = fc.oneof(
  constant,
  fc
    .tuple(between(1500, 3000), between(-3, 3), between(-0.005, 0.005))
    .map((coefficients) => ({ law: "polynomial" as const, coefficients })),
);
const melting = fc
  .record({
    solid: smooth,
    liquid: smooth,
    latentHeat: between(0, 250000),
    temperatureOnset: between(20, 80),
    width: between(0.5, 30),
  })
  .map(({ width, ...law }) => ({ law: "melting" as const, ...law, temperatureEnd: law.temperatureOnset + width }));
const anyLaw: fc.Arbitrary<SpecificHeatLaw> = fc.oneof(smooth, melting);
const warmth = between(-30, 140);

test("heat over two stretches is heat over both, and back again is its opposite", () => {
  fc.assert(
    fc.property(anyLaw, warmth, warmth, warmth, (law, one, two, three) => {
      const heat = (temperatureStart: number, temperatureEnd: number) =>
        enthalpyBetween({ law, temperatureStart, temperatureEnd });
      expect(Math.abs(heat(one, two) + heat(two, three) - heat(one, three))).toBeLessThan(1e-8);
      expect(heat(two, one)).toBe(-heat(one, two));
      expect(heat(one, one)).toBeCloseTo(0, 12);
    }),
  );
});

test("the slope of the heat is the specific heat, down to a stretch of a millionth of a kelvin", () => {
  fc.assert(
    fc.property(anyLaw, between(0, 120), (law, temperature) => {
      const [temperatureStart, temperatureEnd] = [temperature, temperature + 2 ** -20];
      const slope = enthalpyBetween({ law, temperatureStart, temperatureEnd }) / (temperatureEnd - temperatureStart);
      const middle = specificHeatAt({ law, temperature: (temperatureStart + temperatureEnd) / 2 });
      expect(Math.abs(slope / middle - 1)).toBeLessThan(1e-9);
    }),
  );
});

test("a charge of constant specific heats melts as if all of it melted at the middle of the range", () => {
  fc.assert(
    fc.property(melting, constant, constant, (law, solid, liquid) => {
      const middle = (law.temperatureOnset + law.temperatureEnd) / 2;
      const heat = enthalpyBetween({ law: { ...law, solid, liquid }, temperatureStart: 10, temperatureEnd: 120 });
      const plateau = solid.specificHeat * (middle - 10) + law.latentHeat + liquid.specificHeat * (120 - middle);
      expect(Math.abs(heat / plateau - 1)).toBeLessThan(1e-13);
    }),
  );
});

test("an independent integration of the specific heat gives the heat", () => {
  fc.assert(
    fc.property(melting, (law) => {
      const specificHeat = specificHeatFunction(law);
      const stops = [5, law.temperatureOnset, law.temperatureEnd, 130];
      const parts = stops.slice(1).map((stop, i) => {
        const start = stops[i] as number;
        return march((x) => [specificHeat(start + x)], [0], stop - start)[0] as number;
      });
      const heat = enthalpyBetween({ law, temperatureStart: 5, temperatureEnd: 130 });
      expect(Math.abs(parts.reduce((sum, part) => sum + part) / heat - 1)).toBeLessThan(1e-9);
    }),
    { numRuns: 30 },
  );
});

test("specific heat runs through the ends of the melting range without a jump", () => {
  fc.assert(
    fc.property(melting, (law) => {
      const specificHeat = specificHeatFunction(law);
      for (const breakpoint of specificHeatBreakpoints(law))
        expect(Math.abs(specificHeat(breakpoint - 1e-9) / specificHeat(breakpoint + 1e-9) - 1)).toBeLessThan(1e-6);
    }),
  );
});

test("over a segment of cooling the heat lost is the heat given off, to 1e-10", () => {
  fc.assert(
    fc.property(anyLaw, between(0.5, 500), between(60, 130), (law, mass, temperatureStart) => {
      const specificHeat = specificHeatFunction(law);
      const loss = (temperature: number) => 12 * (temperature - 20) ** 1.25;
      const { totals } = transientSegment({
        temperatureStart,
        temperatureEnd: 25,
        temperatureLimit: 20,
        heatCapacity: (temperature) => mass * specificHeat(temperature),
        heatFlow: (temperature) => -loss(temperature),
        rates: { heat: loss },
        breakpoints: specificHeatBreakpoints(law),
      });
      const given = mass * enthalpyBetween({ law, temperatureStart: 25, temperatureEnd: temperatureStart });
      expect(Math.abs(totals.heat / given - 1)).toBeLessThan(1e-10);
    }),
    { numRuns: 60 },
  );
});

const refusal = (code: string, path: string) =>
  expect.objectContaining({ code, faults: [expect.objectContaining({ path })] });

test("outside its range a law refuses, unless it is to be extended", () => {
  const law = choiOkosFat.specificHeat;
  for (const temperature of [-40.001, 150.001, 400])
    expect(() => specificHeatAt({ law, temperature })).toThrow(refusal("range", "temperature"));
  expect(specificHeatAt({ law, temperature: 160, beyond: "extend" })).toBeCloseTo(2097.028, 2);
  expect(() => enthalpyBetween({ law, temperatureStart: 20, temperatureEnd: 151 })).toThrow(CalculationError);
  expect(() => densityAt({ law: liquidWater.density, temperature: 101 })).toThrow(/0 to 100 °C/);
  expect(densityFunction(choiOkosFat.density, { beyond: "extend" })(200)).toBeCloseTo(842.076, 9);
});

test("a range that is none, a melting range without width and a law that has fallen to 0 are refused", () => {
  const solid = { law: "constant", specificHeat: 2000 } as const;
  const wax = {
    law: "melting",
    solid,
    liquid: solid,
    latentHeat: 1,
    temperatureOnset: 60,
    temperatureEnd: 60,
  } as const;
  expect(() => specificHeatFunction(wax)).toThrow(refusal("input", "law.temperatureEnd"));
  const upsideDown = {
    law: "polynomial",
    coefficients: [2000],
    temperatureMin: 50,
    temperatureMax: 40,
  } as const;
  expect(() => specificHeatFunction(upsideDown)).toThrow(refusal("input", "law.temperatureMin"));
  expect(() => specificHeatAt({ law: { law: "polynomial", coefficients: [100, -2] }, temperature: 50 })).toThrow(
    refusal("range", "law"),
  );
});

test("solid and liquid keep their own ranges outside the melting range", () => {
  const law = {
    law: "melting",
    solid: { law: "polynomial", coefficients: [2000, 1], temperatureMin: 0, temperatureMax: 60 },
    liquid: { law: "polynomial", coefficients: [2300, 1], temperatureMin: 70, temperatureMax: 120 },
    latentHeat: 180000,
    temperatureOnset: 58,
    temperatureEnd: 72,
  } as const;
  expect(specificHeatAt({ law, temperature: 65 })).toBeGreaterThan(10000);
  expect(() => specificHeatAt({ law, temperature: -1 })).toThrow(refusal("range", "temperature"));
  expect(() => specificHeatAt({ law, temperature: 121 })).toThrow(refusal("range", "temperature"));
});
