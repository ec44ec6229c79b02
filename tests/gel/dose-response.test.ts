import fc from "fast-check";
import { doseForStrength, fitDoseResponse, strengthAtDose, type Trial } from "gelwright/gel";
import { expect, test } from "vitest";

const trials: readonly Trial[] = [
  { dose: 0.04, strength: 2.1 },
  { dose: 0.05, strength: 7.4 },
  { dose: 0.06, strength: 15.2 },
  { dose: 0.08, strength: 41 },
  { dose: 0.1, strength: 78 },
  { dose: 0.12, strength: 131 },
];
const fit = fitDoseResponse({ trials });

const law = fc.record({
  factor: fc.double({ min: 1, max: 1e5, noNaN: true }),
  exponent: fc.double({ min: 0.5, max: 4, noNaN: true }),
  threshold: fc.double({ min: 0.01, max: 0.9, noNaN: true }),
});
const doses = [1, 1.1, 1.3, 1.7, 2.3, 3];

test("trials that lie on a law give that law back", () => {
  fc.assert(
    fc.property(law, ({ factor, exponent, threshold }) => {
      const exact = doses.map((dose) => ({ dose, strength: factor * (dose - threshold) ** exponent }));
      const found = fitDoseResponse({ trials: exact });
      expect(Math.abs(found.threshold.value - threshold)).toBeLessThan(1e-6);
      expect(Math.abs(found.exponent.value / exponent - 1)).toBeLessThan(1e-5);
    }),
  );
});

test("the fit does not ask for the units, nor for the order of the trials", () => {
  const scaled = fitDoseResponse({
    trials: trials.map(({ dose, strength }) => ({ dose: 100 * dose, strength: strength / 1000 })).reverse(),
  });
  expect(scaled.threshold.value / fit.threshold.value).toBeCloseTo(100, 5);
  expect(scaled.threshold.max / fit.threshold.max).toBeCloseTo(100, 5);
  expect(scaled.exponent.value).toBeCloseTo(fit.exponent.value, 7);
  expect(scaled.scatter).toBeCloseTo(fit.scatter, 9);
});

test("no other threshold leaves a smaller sum of squares", () => {
  for (const threshold of [0, 0.01, 0.02, 0.027, 0.029, 0.035])
    expect(fitDoseResponse({ trials, threshold }).scatter ** 2 * 4).toBeGreaterThan(fit.scatter ** 2 * 3);
});

test("dose for strength is the inverse of strength at dose, and more strength never takes less gel former", () => {
  let last = 0;
  for (let dose = 0.04; dose <= 0.12; dose += 0.005) {
    const strength = strengthAtDose({ fit, dose }).value;
    const back = doseForStrength({ fit, strength });
    expect(back.value).toBeCloseTo(dose, 12);
    expect(back.min).toBeLessThan(back.value);
    expect(back.max).toBeGreaterThan(back.value);
    expect(strength).toBeGreaterThan(last);
    last = strength;
  }
});

// scipy 1.17.1, optimize.curve_fit and the delta method, as in the checks of this fit.
test("the dose for 50 Pa has the limits that a general-purpose library gives", () => {
  const { value, min, max } = doseForStrength({ fit, strength: 50 });
  expect(value).toBeCloseTo(0.08534759397675518, 9);
  expect(min).toBeCloseTo(0.08449297017181082, 9);
  expect(max).toBeCloseTo(0.08620221778169954, 9);
});

test("more confidence is wider", () => {
  const width = (confidence: number) => {
    const { min, max } = doseForStrength({ fit, strength: 50, confidence });
    return max - min;
  };
  expect(width(0.99)).toBeGreaterThan(width(0.95));
  expect(width(0.95)).toBeGreaterThan(width(0.5));
});

test("outside the trials it is refused unless extended, and below the threshold always", () => {
  expect(() => strengthAtDose({ fit, dose: 0.2 })).toThrow("a dose tried, 0.04 to 0.12");
  expect(strengthAtDose({ fit, dose: 0.2, beyond: "extend" }).value).toBeGreaterThan(131);
  expect(() => strengthAtDose({ fit, dose: 0.02, beyond: "extend" })).toThrow("a dose above the threshold");
  expect(() => doseForStrength({ fit, strength: 1000 })).toThrow("a dose tried");
});

test("ill-posed trials are refused, and told which are missing", () => {
  const power = (exponent: number) => [3, 4, 6, 8].map((dose) => ({ dose, strength: dose ** exponent }));
  expect(() => fitDoseResponse({ trials: trials.slice(0, 3) })).toThrow("a list of at least 4");
  expect(() =>
    fitDoseResponse({ trials: [trials[0], trials[0], trials[1], trials[1]].flatMap((one) => one ?? []) }),
  ).toThrow("three different doses");
  expect(() => fitDoseResponse({ trials: power(2) })).toThrow("trials at lower doses, near the threshold");
  expect(() => fitDoseResponse({ trials: power(-1), threshold: 0 })).toThrow("strengths that rise with the dose");
  expect(() => fitDoseResponse({ trials, threshold: 0.05 })).toThrow("a dose below the lowest trial");
});
