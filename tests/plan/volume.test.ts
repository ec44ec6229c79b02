import { readFileSync } from "node:fs";
import { readFormula } from "gelwright/formula";
import { densityGlycerinWater } from "gelwright/gel";
import { runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { type Content, densityOf, usualExpansionMax, volumeOf } from "../../src/plan/contents.js";
import { answerOf, known } from "../support/answers.js";
import { changed, coldJob } from "../support/example.js";

const scrub = coldJob();

/** Shares of the example by mass, and what does not stand in the table of glycerin and water with its density at 20 °C [kg/m³]. */
const { lines, materials } = readFormula(scrub.formula);
const contents = lines.map(({ material: key, massFraction, phase }): Content => {
  const material = known(materials[key]);
  return { phase, mass: massFraction, material };
});
const pair = ["glycerin", "water"];

test("glycerin and water contract in the density of the product, by which a lot and a fill are measured", () => {
  const share = (key: string) => known(lines.find(({ material }) => material === key)).massFraction;
  const both = share("glycerin") + share("water");
  const own = {
    surfactant: 1250,
    preservative: 1100,
    triglyceride: 945,
    sunflower: 918,
    tocopherols: 935,
    grains: 1350,
  };
  const others = Object.entries(own).reduce((sum, [key, density]) => sum + share(key) / density, 0);
  const table = densityGlycerinWater({ massFractionGlycerin: share("glycerin") / both, temperature: 20 });
  const density = 1 / (both / table + others);
  const { charge, volume } = runPlan(scrub).lots;
  expect(charge / known(volume) / density).toBeCloseTo(1, 9);
  // A density that the batch states goes before it.
  const stated = runPlan(changed(scrub, (draft) => Object.assign(draft.batch, { density: "960 kg/m³" }))).lots;
  expect(stated.charge / known(stated.volume)).toBeCloseTo(960, 9);
});

test("they contract at hot storage as well: the density has no step where the table ends", () => {
  const outer = contents.filter(({ material }) => pair.includes(material.key));
  for (const at of [15, 30]) expect(densityOf(outer, at - 1e-9) / densityOf(outer, at + 1e-9)).toBeCloseTo(1, 9);
  // As an independent computation has it: tests/references/plan.
  const { figure } = answerOf(scrub, "head-space-when-hot");
  expect(figure.min).toBeCloseTo(0.09214, 5);
  expect(figure.max).toBeCloseTo(0.09291, 5);
});

test("what states no expansion expands by its own volume, not by its share of the mass", () => {
  const { grains, surfactant } = materials;
  const heavy = [known(grains), known(surfactant)].map((material): Content => ({ phase: "A", mass: 1, material }));
  const { min, max } = volumeOf(heavy, 70);
  expect(min).toBeCloseTo(1 / 1350 + 1 / 1250, 12);
  expect(max / min).toBeCloseTo(1 + 50 * usualExpansionMax, 12);
  const [light = 0, dense = 0] = [0, 1].map((one) => {
    const mixed = heavy.map((content, i) => (i === one ? content : { ...content, mass: 1e-9 }));
    return volumeOf(mixed, 70).max - volumeOf(mixed, 70).min;
  });
  expect(light / dense).toBeCloseTo(1250 / 1350, 6);
});

test("where materials lack a density, the whole lot is as large as that of the batch says, and expands as oils do at most", () => {
  const starter = JSON.parse(readFileSync(new URL("../../docs/examples/starter/job.json", import.meta.url), "utf8"));
  const inVessel = (max: number) =>
    answerOf(
      changed(starter, ({ vessel }) => Object.assign(vessel.workingVolume, { max: `${max} L` })),
      "working-volume",
    );
  // 10 kg of 915 kg/m³ that is heated to 80 °C; 0.12 % a kelvin over 60 K.
  const hot = (1000 * 10 * (1 + 1.2e-3 * 60)) / 915;
  expect([hot + 0.001, hot - 0.001].map((max) => inVessel(max).verdict)).toEqual(["met", "not-known"]);
  expect(inVessel(hot).figure).toMatchObject({ assumptions: ["expansion-up-to-the-usual"] });
});
