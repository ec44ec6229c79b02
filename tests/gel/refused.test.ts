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

test("a dose that was read twice leaves open which of the two holds", () => {
  const points = [
    { dose: 0.05, temperature: 50 },
    { dose: 0.08, temperature: 55 },
    { dose: 0.08, temperature: 57 },
    { dose: 0.16, temperature: 65 },
  ];
  expect(() => temperatureAtDose({ dose: 0.1, points })).toThrow("each dose once");
});

test("with a known threshold two doses make a line, and one does not", () => {
  const trials = [1, 2, 3].map((strength) => ({ dose: 0.05, strength }));
  expect(() => fitDoseResponse({ trials, threshold: 0.02 })).toThrow("two different doses");
  expect(() => fitDoseResponse({ trials: [...trials, { dose: 0.06, strength: 4 }] })).toThrow("three different doses");
});

test("a gel is at its own composition at once", () => {
  expect(uptakeDuration({ ...open, massWater: open.massGlycerin, massFractionGlycerinEnd: 0.5 })).toEqual({
    norrish: 0,
    wilson: 0,
  });
});

test("in air that is next to saturated the water taken up has no end that a double holds", () => {
  const near = { massGlycerin: 1e300, massWater: 0, relativeHumidity: 1 - Number.EPSILON / 2, temperature: 25 };
  expect(() => waterTakenUp({ ...near, norrishConstant: -1.16 })).toThrow("further from 1");
});

test("oil that refracts as what is around it scatters nothing", () => {
  const drops = { diameter: 2e-6, refractiveIndexDroplet: 1.45, refractiveIndexOuter: 1.45, volumeFractionOil: 0.85 };
  expect(turbidity(drops)).toMatchObject({ independent: 0 });
});
