import { type JobDocument, type OxidationRank, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";

const job = exampleJob();

type Known = Exclude<OxidationRank, { notKnown: string }>;

function orderOf(document: JobDocument, material: string): OxidationRank {
  const found = runPlan(document).oxidationRanking.find((oil) => oil.material === material);
  if (!found) throw new Error(`no order of ${material}`);
  return found;
}

function known(document: JobDocument, material: string): Known {
  const found = orderOf(document, material);
  if ("notKnown" in found) throw new Error(found.notKnown);
  return found;
}

/** The example with a second, more delicate oil among what is heated. */
const withRosehip = changed(job, (draft) => {
  const { materials, phases } = draft.formula;
  materials.rosehip = {
    ...materials.almond,
    name: "rosehip oil",
    fattyAcids: { "16:0": "4 %", "18:0": "2 %", "18:1": "15 %", "18:2": "45 %", "18:3": "34 %" },
    heatSensitive: false,
  };
  phases[0].lines.push({ material: "rosehip", amount: "5 %" });
});

/** The example with phase B charged on the heat. */
const early = changed(job, (draft) => {
  const [b] = draft.process.steps.splice(5, 1);
  draft.process.steps.splice(1, 0, b);
});

test("an oil that goes in off the heat is told with what it went through, and nothing is to be spared", () => {
  const almond = known(job, "sweet almond oil");
  expect(almond).toMatchObject({ onHeat: false, spared: 0, setsIfOffHeat: false });
  expect(almond.oxidisability).toBeCloseTo(0.66 + 2.575, 12);
  const thermalExposure = runPlan(job).thermalExposures.find(({ material }) => material === "sweet almond oil");
  if (!thermalExposure || "notKnown" in thermalExposure) throw new Error("no exposure");
  // The exposure counts at 20 °C, the order at the 21 °C of the room: by Arrhenius with 90 kJ/mol.
  const factor = Math.exp((90_000 / 8.314462618) * (1 / 293.15 - 1 / 294.15));
  expect((thermalExposure.equivalent?.duration ?? Number.NaN) / almond.equivalentTime).toBeCloseTo(factor, 8);
});

test("an oil on the heat is run again with it charged after the heat is off, which spares most of what it went through", () => {
  const rosehip = known(withRosehip, "rosehip oil");
  expect(rosehip.onHeat).toBe(true);
  expect(rosehip.equivalentTimeOffHeat).toBeLessThan(0.3 * rosehip.equivalentTime);
  const [first] = runPlan(withRosehip).oxidationRanking;
  expect(first?.material).toBe("rosehip oil");
});

test("the other order of work is that of a formula which is written so", () => {
  const written = changed(withRosehip, (draft) => {
    const { phases } = draft.formula;
    phases[1].lines.push(phases[0].lines.pop());
  });
  const [asked, asWritten] = [known(withRosehip, "rosehip oil"), known(written, "rosehip oil")];
  expect(asWritten.onHeat).toBe(false);
  expect(asked.equivalentTimeOffHeat / asWritten.equivalentTime).toBeCloseTo(1, 9);
});

test("an oil that has no later phase to go in with goes in by itself as soon as the heat is off", () => {
  const almond = known(early, "sweet almond oil");
  expect(almond.onHeat).toBe(true);
  expect(almond.equivalentTimeOffHeat).toBeLessThan(almond.equivalentTime / 2);
});

test("an oil without acids that the Cox value counts comes to nothing, whatever the heat", () => {
  expect(known(job, "caprylic/capric triglyceride")).toMatchObject({ onHeat: true, oxidisability: 0, burden: 0 });
});

test.each<[string, (draft: ReturnType<typeof JSON.parse>) => unknown, string]>([
  ["fatty acids", (draft) => delete draft.formula.materials.almond.fattyAcids, "no fatty acids are stated"],
  ["a sensitivity", (draft) => delete draft.formula.materials.almond.ageingKinetics, "no ageing kinetics are stated"],
  ["a whole profile", (draft) => delete draft.formula.materials.almond.fattyAcids["18:1"], "a sum of 34 %"],
  ["a time", (draft) => delete draft.vessel.coolingCurve, "a temperature or a time on the way is not known"],
])("without %s the order of an oil is not known, and says so", (_what, change, words) => {
  const found = orderOf(changed(job, change), "sweet almond oil");
  expect("notKnown" in found && found.notKnown).toContain(words);
});

test("the sheet says it in a line an oil, and nothing where no oil has a profile", () => {
  expect(toMarkdown({ plan: runPlan(withRosehip) })).toMatch(
    /- rosehip oil \(Cox value 12, [\d.]+ % of the product\): goes in on the heat; .* Off the heat: /,
  );
  const bare = changed(job, (draft) => {
    for (const material of Object.values(draft.formula.materials) as { fattyAcids?: unknown }[])
      delete material.fattyAcids;
  });
  expect(toMarkdown({ plan: runPlan(bare) })).not.toContain("## Which oils to charge off the heat");
});
