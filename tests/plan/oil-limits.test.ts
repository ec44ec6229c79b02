import { inductionTime } from "gelwright/oils";
import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, it, test } from "vitest";
import { known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

/** The cold route with an HLB for its surfactant and its oils. */
const asked = changed(coldJob(), ({ formula: { materials } }: Draft) => {
  materials.surfactant.hlb = 16;
  materials.triglyceride.requiredHlb = 11;
  materials.sunflower.requiredHlb = 7;
});

const limits = (job: JobDocument): NonNullable<Plan["oilLimits"]> => known(runPlan(job).oilLimits);

describe("the HLB that an oil asks for", () => {
  it("is the mean of its oils by mass, beside that of the surfactants", () => {
    const { lines } = runPlan(asked).weighing;
    const mass = (key: string): number => known(lines.find(({ material }) => material === key)).mass;
    const [one, other] = [mass("triglyceride"), mass("sunflower")];
    const { required, surfactants } = known(limits(asked).hlb);
    expect(required).toBeCloseTo((11 * one + 7 * other) / (one + other), 9);
    expect(surfactants).toBe(16);
  });

  it("is not known where one of the oils, or every surfactant, states none", () => {
    const oil = changed(asked, ({ formula }) => delete formula.materials.sunflower.requiredHlb);
    expect(limits(oil).hlb?.required).toEqual({
      notKnown: { code: "not-stated", field: "material-required-hlb", of: "sunflower" },
    });
    const none = changed(asked, ({ formula }) => delete formula.materials.surfactant.hlb);
    expect(limits(none).hlb?.surfactants).toEqual({ notKnown: { code: "not-stated", field: "material-hlb" } });
  });

  it("is not told where nothing states it, nor of a gel without water", () => {
    expect(runPlan(coldJob())).not.toHaveProperty("oilLimits");
    const hot = changed(exampleJob(), ({ formula }) => (formula.materials.almond.requiredHlb = 7));
    expect(runPlan(hot)).not.toHaveProperty("oilLimits");
  });
});

describe("the induction time of an oil", () => {
  const times = [
    { at: "110 °C", time: "10 h" },
    { at: "120 °C", time: "5 h" },
    { at: "130 °C", time: "2.4 h" },
  ];
  const measured = (readings: readonly object[]) =>
    changed(exampleJob(), ({ formula }) => (formula.materials.almond.inductionTimes = readings));

  it("is the kernel's at the room's temperature, by both rules", () => {
    const [almond] = limits(measured(times)).inductionTimes;
    const readings = [
      { temperature: 110, duration: 36_000 },
      { temperature: 120, duration: 18_000 },
      { temperature: 130, duration: 8640 },
    ];
    expect(almond).toEqual({ material: "almond", temperature: 21, ...inductionTime({ readings, temperature: 21 }) });
  });

  it("is not known from one temperature", () => {
    const [almond] = limits(measured(times.slice(0, 1))).inductionTimes;
    expect(almond).toMatchObject({ notKnown: { law: "induction-time", field: "material-induction-times" } });
  });
});

test("allergens are carried to the result, summed over the materials, with those that state none", () => {
  const plan = runPlan(exampleJob());
  expect(plan.allergens.found).toEqual([
    { name: "Linalool", massFraction: expect.closeTo(0.003 * 0.012, 9), materials: ["fragrance"] },
  ]);
  expect(plan.allergens.notStated).toEqual([]);
  const both = changed(exampleJob(), ({ formula }) => {
    formula.materials.almond.allergens = [{ name: "Linalool", share: "0.1 %" }];
    delete formula.materials.tocopherols.allergens;
  });
  const { found, notStated } = runPlan(both).allergens;
  expect(found).toEqual([
    {
      name: "Linalool",
      massFraction: expect.closeTo(0.003 * 0.012 + 0.24 * 0.001, 9),
      materials: ["almond", "fragrance"],
    },
  ]);
  expect(notStated).toContain("tocopherols");
});

test("listing names are carried to the result", () => {
  const { listing } = runPlan(exampleJob()).names;
  expect(listing).toMatchObject({ almond: "Prunus Amygdalus Dulcis Oil", fragrance: "Parfum" });
  const unnamed = changed(exampleJob(), ({ formula }) => delete formula.materials.almond.listingName);
  expect(runPlan(unnamed).names.listing).not.toHaveProperty("almond");
});

test("the sheet tells the HLB as indicative", () => {
  expect(toMarkdown({ plan: runPlan(asked) })).toMatch(
    /HLB: the oil asks for 9\.\d+, the surfactants have 16\. Indicative only/,
  );
});
