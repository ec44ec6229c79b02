import { fitDoseResponse, temperatureAtDose, turbidity, uptakeDuration, waterTakenUp } from "gelwright/gel";
import { expect, test } from "vitest";

const open = {
  massGlycerin: 0.009,
  massWater: 0.001,
  area: 0.01,
  coefficient: 0.0018,
  relativeHumidity: 0.6,
  temperature: 25,
};

test("two readings at one dose are refused, since either may hold", () => {
  const points = [
    { dose: 0.05, temperature: 50 },
    { dose: 0.08, temperature: 55 },
    { dose: 0.08, temperature: 57 },
    { dose: 0.16, temperature: 65 },
  ];
  expect(() => temperatureAtDose({ dose: 0.1, points })).toThrow("each dose once");
});

test("a fit needs two doses if the threshold is known, and three if it is not", () => {
  const trials = [1, 2, 3].map((strength) => ({ dose: 0.05, strength }));
  expect(() => fitDoseResponse({ trials, threshold: 0.02 })).toThrow("two different doses");
  expect(() => fitDoseResponse({ trials: [...trials, { dose: 0.06, strength: 4 }] })).toThrow("three different doses");
});

test("a gel that already has the composition asked for takes no time to it", () => {
  expect(uptakeDuration({ ...open, massWater: open.massGlycerin, massFractionGlycerinEnd: 0.5 })).toEqual({
    norrish: 0,
    wilson: 0,
  });
});

test("the water taken up in nearly saturated air is refused if a double cannot hold it", () => {
  const near = { massGlycerin: 1e300, massWater: 0, relativeHumidity: 1 - Number.EPSILON / 2, temperature: 25 };
  expect(() => waterTakenUp({ ...near, norrishConstant: -1.16 })).toThrow("further from 1");
});

test("oil of the same refractive index as the gel former around it scatters nothing", () => {
  const drops = { diameter: 2e-6, refractiveIndexDroplet: 1.45, refractiveIndexOuter: 1.45, volumeFractionOil: 0.85 };
  expect(turbidity(drops)).toMatchObject({ independent: 0 });
});
