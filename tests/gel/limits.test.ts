import {
  checkRatio,
  criticalCapillaryNumber,
  doseForGelPoint,
  doseForStrength,
  dropletDiameterInShear,
  fitDoseResponse,
  fitGelPoint,
  gelPointAtDose,
  gelWithWater,
  glycerinAtHumidity,
  scatteringEfficiency,
  strengthAtDose,
  uptakeDuration,
  waterActivity,
  waterTakenUp,
  waterTakenUpAfter,
  waterUntilFlowing,
  waterUntilMilky,
} from "gelwright/gel";
import { expect, test } from "vitest";

const code = (is: string) => expect.objectContaining({ code: is });

const points = [
  { dose: 0.05, temperature: 48 },
  { dose: 0.08, temperature: 56 },
  { dose: 0.12, temperature: 60 },
  { dose: 0.16, temperature: 65 },
];
const line = fitGelPoint({ points });
const trials = (
  [
    [0.04, 1.02],
    [0.05, 0.99],
    [0.06, 1],
    [0.08, 1.01],
    [0.1, 0.98],
  ] as const
).map(([dose, scatter]) => ({ dose, strength: 1e4 * (dose - 0.03) ** 2 * scatter }));
const fit = fitDoseResponse({ trials });

test("the doubt of a gel point and that of its dose are one doubt: their ratio is the slope of the line", () => {
  const dose = 0.1;
  const point = gelPointAtDose({ line, dose });
  const back = doseForGelPoint({ line, temperature: point.value });
  expect(back.value).toBeCloseTo(dose, 12);
  const kelvins = point.value + 273.15;
  const inTemperature = ((point.max - point.min) / 2) * (-line.slope / kelvins ** 2);
  expect(Math.log(back.max / back.value)).toBeCloseTo(inTemperature, 9);
  expect(back.min * back.max).toBeCloseTo(back.value ** 2, 12);
  expect(point.max - point.value).toBeCloseTo(point.value - point.min, 9);
  // Student's t at 90 and 99 % of two degrees of freedom: 2.91999 and 9.92484.
  const width = (confidence: number) => {
    const { min, max } = gelPointAtDose({ line, dose, confidence });
    return max - min;
  };
  expect(width(0.99) / width(0.9)).toBeCloseTo(9.9248432 / 2.91998558, 6);
  // A dose at which the line would have to be read at an infinite temperature.
  expect(() => gelPointAtDose({ line, dose: Math.exp(line.intercept) * 1.001 })).toThrow(code("unreachable"));
});

test("the doubt of a strength is a factor, the same upwards and downwards, and narrows to that of its dose", () => {
  const { value, min, max } = strengthAtDose({ fit, dose: 0.07 });
  expect(min).toBeLessThan(value);
  expect(min * max).toBeCloseTo(value ** 2, 9);
  const back = doseForStrength({ fit, strength: value });
  expect(back.value).toBeCloseTo(0.07, 12);
  const above = 0.07 - fit.threshold.value;
  expect((back.max - back.value) / above).toBeCloseTo(Math.log(max / value) / fit.exponent.value, 9);
  expect(back.max - back.value).toBeCloseTo(back.value - back.min, 12);
});

test("doses that were tried hold to both ends, and those beyond want to be extended", () => {
  for (const dose of [0.04, 0.1]) expect(strengthAtDose({ fit, dose }).value).toBeGreaterThan(0);
  for (const dose of [0.0399, 0.1001]) {
    expect(() => strengthAtDose({ fit, dose })).toThrow(code("range"));
    const { value: strength } = strengthAtDose({ fit, dose, beyond: "extend" });
    expect(() => doseForStrength({ fit, strength })).toThrow(code("range"));
    expect(doseForStrength({ fit, strength, beyond: "extend" }).value).toBeCloseTo(dose, 12);
  }
  expect(() => strengthAtDose({ fit, dose: fit.threshold.value, beyond: "extend" })).toThrow(code("range"));
});

test("a ratio at its limit is within it, one beyond it is told on its side, and limits that are not asked are not shown", () => {
  expect(checkRatio({ ratio: 8, min: 8, max: 12 })).toMatchObject({ verdict: "met", side: "none" });
  expect(checkRatio({ ratio: 12, min: 8, max: 12 })).toMatchObject({ verdict: "met", side: "none" });
  expect(checkRatio({ ratio: 7.99, min: 8 })).toMatchObject({ verdict: "not-met", side: "below", limit: { min: 8 } });
  expect(checkRatio({ ratio: 12.01, max: 12 })).toMatchObject({ verdict: "not-met", side: "above" });
  expect(checkRatio({ ratio: 12.01, max: 12 }).limit).toEqual({ max: 12 });
  expect(checkRatio({ ratio: 9, min: 8 }).limit).toEqual({ min: 8 });
  expect(checkRatio({ ratio: 9 })).toMatchObject({ verdict: "not-known", side: "none" });
  expect(checkRatio({ ratio: 9, min: 9, max: 9 }).verdict).toBe("met");
  expect(() => checkRatio({ ratio: 9, min: 9, max: 8.9 })).toThrow("max");
});

test("the critical capillary number is known from 3e-4 to below 4.08, and what no shear breaks has no diameter", () => {
  expect(criticalCapillaryNumber({ viscosityRatio: 3e-4 })).toBeGreaterThan(1);
  expect(() => criticalCapillaryNumber({ viscosityRatio: 2.9e-4 })).toThrow(code("range"));
  expect(criticalCapillaryNumber({ viscosityRatio: 4.07 })).toBeGreaterThan(1);
  expect(() => criticalCapillaryNumber({ viscosityRatio: 4.08 })).toThrow(code("unreachable"));
  const sheared = { viscosityOil: 4.08, shearRate: 50, interfacialTension: 0.005 };
  const diameters = dropletDiameterInShear({ ...sheared, viscosityGelFormer: 1, viscosityEmulsion: 40.8 });
  expect(diameters).toEqual({ byEmulsion: expect.any(Number) });
  expect(dropletDiameterInShear({ ...sheared, viscosityGelFormer: 2, viscosityEmulsion: 1 })).toEqual({
    byOuterPhase: expect.any(Number),
  });
});

const humid = { relativeHumidity: 0.5, temperature: 25 };

test("Norrish's constant moves his answer and not Wilson's, wherever it is handed on", () => {
  const open = { ...humid, massGlycerin: 0.0085, massWater: 0.0015, area: 0.01, coefficient: 0.0018 };
  const asked = [
    (of: object) => glycerinAtHumidity({ ...humid, ...of }),
    (of: object) => waterActivity({ massFractionGlycerin: 0.8, temperature: 25, ...of }),
    (of: object) => waterTakenUp({ ...humid, massGlycerin: 9, massWater: 1, ...of }),
    (of: object) => waterTakenUpAfter({ ...open, duration: 3600, ...of }),
    (of: object) => uptakeDuration({ ...open, waterActivityEnd: 0.45, ...of }),
    (of: object) => uptakeDuration({ ...open, massFractionGlycerinEnd: 0.8, ...of }),
  ];
  for (const ask of asked) {
    const [plain, other] = [ask({}), ask({ norrishConstant: -0.9 })];
    expect(other.wilson).toBeCloseTo(plain.wilson, 12);
    expect(Math.abs(other.norrish / plain.norrish - 1)).toBeGreaterThan(1e-3);
  }
});

test("water is taken up from nothing to rest, and the time to an amount undoes the amount after a time", () => {
  const open = { ...humid, massGlycerin: 0.0085, massWater: 0.0015, area: 0.01, coefficient: 0.0018 };
  expect(waterTakenUpAfter({ ...open, duration: 0 })).toEqual({ norrish: 0, wilson: 0 });
  const rest = waterTakenUp({ ...humid, massGlycerin: 0.0085, massWater: 0.0015 });
  const years = waterTakenUpAfter({ ...open, duration: 1e9 });
  expect(years.wilson).toBeCloseTo(rest.wilson, 12);
  expect(years.norrish).toBeCloseTo(rest.norrish, 12);
  for (const duration of [60, 600, 3600]) {
    const taken = waterTakenUpAfter({ ...open, duration });
    expect(taken.wilson).toBeLessThan(rest.wilson);
    for (const law of ["norrish", "wilson"] as const) {
      const massFractionGlycerinEnd = 0.0085 / (0.0085 + 0.0015 + taken[law]);
      expect(uptakeDuration({ ...open, massFractionGlycerinEnd })[law] / duration).toBeCloseTo(1, 6);
    }
  }
  // It starts there, and does not come back to where it was drier.
  expect(uptakeDuration({ ...open, massFractionGlycerinEnd: 0.85 }).wilson).toBeCloseTo(0, 9);
  expect(() => uptakeDuration({ ...open, massFractionGlycerinEnd: 0.9 })).toThrow(code("unreachable"));
  expect(() => uptakeDuration(open as never)).toThrow("no end");
  expect(() => uptakeDuration({ ...open, massFractionGlycerinEnd: 0.8, waterActivityEnd: 0.4 })).toThrow("two ends");
});

test("a size beyond that of a theory is refused if the theory was chosen, and two indices that are one scatter nothing", () => {
  const drop = { refractiveIndexDroplet: 1.46, refractiveIndexOuter: 1.45 };
  expect(() => scatteringEfficiency({ ...drop, diameter: 1e-11, theory: "mie" })).toThrow(code("range"));
  expect(() => scatteringEfficiency({ ...drop, diameter: 1e-2, theory: "mie" })).toThrow(code("range"));
  expect(scatteringEfficiency({ ...drop, diameter: 1e-2 })).toBeCloseTo(2, 1);
  expect(() => scatteringEfficiency({ ...drop, refractiveIndexDroplet: 1.7, diameter: 1e-2 })).toThrow(code("range"));
  const small = { ...drop, diameter: 1e-9 };
  // Far below the wavelength Mie's series is Rayleigh's law; of soft large drops it is anomalous diffraction.
  expect(
    scatteringEfficiency({ ...small, theory: "mie" }) / scatteringEfficiency({ ...small, theory: "rayleigh" }),
  ).toBeCloseTo(1, 4);
  const soft = { refractiveIndexDroplet: 1.4501, refractiveIndexOuter: 1.45, diameter: 1e-3 };
  const ratio =
    scatteringEfficiency({ ...soft, theory: "mie" }) /
    scatteringEfficiency({ ...soft, theory: "anomalous diffraction" });
  expect(ratio).toBeCloseTo(1, 2);
  expect(scatteringEfficiency({ ...drop, refractiveIndexDroplet: 1.45, diameter: 2e-6 })).toBe(0);
  expect(() => scatteringEfficiency({ ...drop, diameter: 2e-6, theory: "ray tracing" as never })).toThrow('"mie"');
});

const gel = {
  massOil: 0.82,
  densityOil: 915,
  oil: { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 },
  massGlycerin: 0.15,
  massWater: 0.02,
  diameter: 4e-6,
  temperature: 25,
} as const;

test("an oil's index that was read at another temperature wants its slope, and at its own does not", () => {
  const { perKelvin: _, ...oil } = gel.oil;
  expect(() => gelWithWater({ ...gel, oil, massWaterAdded: 0 })).toThrow("oil.perKelvin");
  const read = { ...oil, temperature: 25 };
  const same = { ...gel.oil, refractiveIndex: 1.452 + 5 * 3.8e-4 };
  expect(gelWithWater({ ...gel, oil: read, massWaterAdded: 0 }).mismatch).toBeCloseTo(
    gelWithWater({ ...gel, oil: same, massWaterAdded: 0 }).mismatch,
    12,
  );
});

test("a gel is milky and flows from the water on that is found, and not with less", () => {
  const milky = { ...gel, depth: 2e-4, transmittanceMin: 0.1 };
  const { min, max } = waterUntilMilky(milky);
  const passing = (massWaterAdded: number, side: "min" | "max") =>
    Math.exp(-gelWithWater({ ...gel, massWaterAdded }).turbidity[side] * 2e-4);
  expect(passing(min, "max")).toBeCloseTo(0.1, 9);
  expect(passing(min * 0.99, "max")).toBeGreaterThan(0.1);
  if (max !== null) expect(passing(max, "min")).toBeCloseTo(0.1, 9);
  for (const transmittanceMin of [0, 1])
    expect(() => waterUntilMilky({ ...milky, transmittanceMin })).toThrow("between 0 and 1");
  const { oil: _oil, ...droplets } = { ...gel, interfacialTension: 0.005 };
  const yieldAt = (massWaterAdded: number) =>
    gelWithWater({ ...gel, massWaterAdded, interfacialTension: 0.005 }).yieldStress;
  const strongest = yieldAt(0)?.max ?? 0;
  const flowing = (stress: number) => waterUntilFlowing({ ...droplets, stress });
  expect(flowing(strongest * 1.001)).toEqual({ min: 0, value: 0, max: 0 });
  const found = flowing(strongest * 0.9);
  expect(yieldAt(found.value ?? Number.NaN)?.value).toBeCloseTo(strongest * 0.9, 6);
  // A pull below what the law was measured for lies between two packings.
  const weak = flowing(1e-3);
  expect(weak.value).toBeUndefined();
  expect(weak.min).toBeLessThan(weak.max);
  expect(gelWithWater({ ...gel, massWaterAdded: weak.min }).volumeFractionOil).toBeGreaterThan(0.8);
  expect(yieldAt(weak.max * 1.01)).toEqual({ min: 0, value: 0, max: 0 });
});
