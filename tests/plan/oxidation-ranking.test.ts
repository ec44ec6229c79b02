import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { changed, type Draft, exampleJob } from "../support/example.js";

const job = exampleJob();

type Ranked = Plan["oxidationRanking"][number];
type Known = Exclude<Ranked, { notKnown: unknown }>;

function orderOf(document: JobDocument, material: string): Ranked {
  const found = runPlan(document).oxidationRanking.find((oil) => oil.material === material);
  if (!found) throw new Error(`no order of ${material}`);
  return found;
}

function known(document: JobDocument, material: string): Known {
  const found = orderOf(document, material);
  if ("notKnown" in found) throw new Error(JSON.stringify(found.notKnown));
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
  const almond = known(job, "almond");
  expect(almond).toMatchObject({ onHeat: false, spared: 0, setsIfOffHeat: false });
  expect(almond.oxidisability).toBeCloseTo(0.66 + 2.575, 12);
  const thermalExposure = runPlan(job).thermalExposures.find(({ material }) => material === "almond");
  if (!thermalExposure || "notKnown" in thermalExposure) throw new Error("no exposure");
  expect(thermalExposure.equivalent).toEqual({ duration: almond.equivalentTime, temperature: 21 });
});

test("every time counts for the room, at whatever temperature the kinetics are stated", () => {
  const at = (reference: string): number => {
    const stated = changed(job, ({ formula }) => Object.assign(formula.materials.almond.ageingKinetics, { reference }));
    const exposure = runPlan(stated).thermalExposures.find(({ material }) => material === "almond");
    if (!exposure || "notKnown" in exposure) throw new Error("no exposure");
    expect(exposure.equivalent?.temperature).toBe(21);
    return exposure.equivalent?.duration ?? Number.NaN;
  };
  expect(at("35 °C") / at("20 °C")).toBeCloseTo(1, 9);
  // Warm for 97 minutes, it ages more than that in the room.
  expect(at("20 °C")).toBeGreaterThan(97 * 60);
});

test("an oil on the heat is run again with it charged after the heat is off, which spares most of what it went through", () => {
  const rosehip = known(withRosehip, "rosehip");
  expect(rosehip.onHeat).toBe(true);
  expect(rosehip.equivalentTimeOffHeat).toBeLessThan(0.3 * rosehip.equivalentTime);
  const [first] = runPlan(withRosehip).oxidationRanking;
  expect(first?.material).toBe("rosehip");
});

test("the other order of work is that of a formula which is written so", () => {
  const written = changed(withRosehip, (draft) => {
    const { phases } = draft.formula;
    phases[1].lines.push(phases[0].lines.pop());
  });
  const [asked, asWritten] = [known(withRosehip, "rosehip"), known(written, "rosehip")];
  expect(asWritten.onHeat).toBe(false);
  expect(asked.equivalentTimeOffHeat / asWritten.equivalentTime).toBeCloseTo(1, 9);
});

test("an oil that has no later phase to go in with goes in by itself as soon as the heat is off", () => {
  const almond = known(early, "almond");
  expect(almond.onHeat).toBe(true);
  expect(almond.equivalentTimeOffHeat).toBeLessThan(almond.equivalentTime / 2);
});

test("an oil without acids that the Cox value counts comes to nothing, whatever the heat", () => {
  expect(known(job, "triglyceride")).toMatchObject({ onHeat: true, oxidisability: 0, burden: 0 });
});

const acids = (draft: Draft): object => draft.formula.materials.almond.fattyAcids;

test.each<[string, (draft: Draft) => unknown, object]>([
  [
    "fatty acids",
    (draft) => delete draft.formula.materials.almond.fattyAcids,
    { code: "not-stated", field: "material-fatty-acids", of: "almond" },
  ],
  [
    "a sensitivity",
    (draft) => delete draft.formula.materials.almond.ageingKinetics,
    { code: "not-stated", field: "material-ageing-kinetics", of: "almond" },
  ],
  // 34 % are left of the 100 % that the kernel asks for within a tenth.
  [
    "a whole profile",
    (draft) => Reflect.deleteProperty(acids(draft), "18:1"),
    { code: "outside-range", law: "oxidisability" },
  ],
  ["a time", (draft) => delete draft.vessel.coolingCurve, { code: "not-stated", field: "vessel-heat-loss" }],
])("without %s the order of an oil is not known, and says so", (_what, change, why) => {
  const found = orderOf(changed(job, change), "almond");
  expect("notKnown" in found && found.notKnown).toMatchObject(why);
});

test("every oil with a profile is ranked, the one with the most to spare first, and none where no oil has a profile", () => {
  const ranked = runPlan(withRosehip).oxidationRanking;
  expect(ranked.map(({ material }) => material)).toEqual(["rosehip", "almond", "triglyceride"]);
  const { oxidisability, massFraction, onHeat, equivalentTime, equivalentTimeOffHeat } = known(withRosehip, "rosehip");
  // By the values of the library's table for 18:1, 18:2 and 18:3: 0.15 + 0.45 · 10.3 + 0.34 · 21.6.
  expect(oxidisability).toBeCloseTo(0.15 + 0.45 * 10.3 + 0.34 * 21.6, 9);
  expect(massFraction).toBeCloseTo(0.05, 3);
  expect(onHeat).toBe(true);
  expect(equivalentTimeOffHeat).toBeLessThan(equivalentTime);
  const bare = changed(job, (draft) => {
    for (const material of Object.values(draft.formula.materials) as { fattyAcids?: unknown }[])
      delete material.fattyAcids;
  });
  const oils = runPlan(bare).oxidationRanking;
  expect(oils.filter((oil) => !("notKnown" in oil))).toEqual([]);
});
