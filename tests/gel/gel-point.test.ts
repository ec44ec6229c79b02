import fc from "fast-check";
import {
  dissolvedGelFormer,
  dissolvingTemperature,
  doseForGelPoint,
  fitGelPoint,
  gelPointAtDose,
  temperatureAtDose,
} from "gelwright/gel";
import { expect, test } from "vitest";

const points = [
  { dose: 0.05, temperature: 48 },
  { dose: 0.08, temperature: 55 },
  { dose: 0.12, temperature: 60.5 },
  { dose: 0.16, temperature: 65 },
];
const line = fitGelPoint({ points });

test("gel point and dose are inverse to one another along the line, and more gel former never sets cooler", () => {
  let last = Number.NEGATIVE_INFINITY;
  for (const dose of [0.01, 0.05, 0.1, 0.2]) {
    const { value } = gelPointAtDose({ line, dose });
    expect(doseForGelPoint({ line, temperature: value }).value).toBeCloseTo(dose, 12);
    expect(value).toBeGreaterThan(last);
    last = value;
  }
});

test("readings on one line give back what lies between two of them", () => {
  const between = (dose: number) =>
    temperatureAtDose({ dose, points: [points[0], points[3]].flatMap((one) => one ?? []) });
  const exact = fitGelPoint({ points: [0.05, 0.08, 0.12, 0.16].map((dose) => ({ dose, temperature: between(dose) })) });
  expect(gelPointAtDose({ line: exact, dose: 0.1 }).value).toBeCloseTo(between(0.1), 8);
});

test("heat is given off where junctions form, and the limits hold the value", () => {
  expect(line.enthalpy).toBeLessThan(0);
  const { min, value, max } = gelPointAtDose({ line, dose: 0.1 });
  expect(min < value && value < max).toBe(true);
});

test("too few readings, falling readings and readings at one temperature are refused", () => {
  expect(() => fitGelPoint({ points: points.slice(0, 2) })).toThrow("a list of at least 3");
  expect(() => fitGelPoint({ points: points.map((one) => ({ ...one, temperature: 50 })) })).toThrow(
    "readings that differ",
  );
  expect(() =>
    fitGelPoint({ points: points.map(({ dose, temperature }) => ({ dose, temperature: -temperature })) }),
  ).toThrow("temperatures that rise with the dose");
});

const pair = { temperatureMelting: 69.3, heatOfFusion: 61_000, molarMassGelFormer: 0.2845, molarMassOil: 0.88 };

test("a crystallising gel former melts at its melting point alone, and dissolves below it in oil", () => {
  expect(dissolvingTemperature({ ...pair, massFractionGelFormer: 1 })).toBeCloseTo(69.3, 10);
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 1, noNaN: true }), (massFractionGelFormer) => {
      const temperature = Math.min(69.3, dissolvingTemperature({ ...pair, massFractionGelFormer }));
      const back = dissolvedGelFormer({ ...pair, temperature });
      expect(Math.abs(back - massFractionGelFormer)).toBeLessThan(1e-9);
    }),
  );
  expect(() => dissolvedGelFormer({ ...pair, temperature: 70 })).toThrow("at most the melting point");
});

test("a heavier oil counts fewer moles, so that the same mass of gel former dissolves warmer", () => {
  const at = (molarMassOil: number) => dissolvingTemperature({ ...pair, molarMassOil, massFractionGelFormer: 0.1 });
  expect(at(0.88)).toBeGreaterThan(at(0.5));
});
