import { CalculationError } from "gelwright/error";
import { exposureFor, type JobDocument, labelFor, type PlanExposure, type PlanLabel, prepareJob } from "gelwright/plan";
import { exposureToMarkdown, labelToMarkdown } from "gelwright/sheet";
import { describe, expect, it } from "vitest";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

const kettle = exampleJob();
const vessel = coldJob();

function labelOf(job: JobDocument, change: (draft: Draft) => void = () => {}): PlanLabel {
  return labelFor({ prepared: prepareJob(changed(job, change)) });
}

function exposureOf(job: JobDocument, change: (draft: Draft) => void = () => {}): PlanExposure {
  return exposureFor({ prepared: prepareJob(changed(job, change)) });
}

function known<T extends object>(part: T | undefined): Exclude<T, { readonly notKnown: unknown }> {
  if (!part || "notKnown" in part) throw new Error("not known");
  return part as Exclude<T, { readonly notKnown: unknown }>;
}

const line = (draft: Draft, material: string): Draft =>
  draft.formula.phases.flatMap((phase: Draft) => phase.lines).find((one: Draft) => one.material === material);

describe("the order of ingredients", () => {
  it("is by weight when added, with mixed materials opened and allergens added", () => {
    expect(known(labelOf(kettle).list).names).toEqual([
      "Caprylic/Capric Triglyceride",
      "Prunus Amygdalus Dulcis Oil",
      "Gel Former",
      "Mica",
      "Parfum",
      "Tocopherol",
      "Helianthus Annuus Seed Oil",
      "Linalool",
    ]);
  });

  it.each([
    ["1 %", true],
    ["0.9999999 %", false],
  ])("keeps %s in the ordered part: %s", (amount, isOrdered) => {
    const { ordered } = known(labelOf(kettle, (draft) => (line(draft, "pearl").amount = amount)).list);
    expect(ordered.some(({ name }) => name === "Mica")).toBe(isOrdered);
  });

  it("names by itself what states no name for the label", () => {
    const label = labelOf(vessel, ({ formula }) => delete formula.materials.grains.listingName);
    expect(label.withoutListingName).toEqual(["grains"]);
    expect(known(label.list).names).toContain("ground apricot stone, 200 to 400 µm");
  });

  it("puts a colourant last", () => {
    const { names } = known(labelOf(kettle, ({ formula }) => (formula.materials.pearl.function = "colourant")).list);
    expect(names.at(-1)).toBe("Mica");
  });
});

describe("fragrance allergens", () => {
  const named = (share: string): readonly string[] =>
    known(
      labelOf(kettle, (draft) => {
        line(draft, "fragrance").amount = "0.2 %";
        draft.formula.materials.fragrance.allergens = [{ name: "Linalool", share }];
        // The same substance from a second material: 0.00064 % in all of it, as a sum that doubles get wrong.
        draft.formula.materials.pearl.allergens = [{ name: "Linalool", share: "0.08 %" }];
      }).allergens,
    ).toName.map(({ name }) => name);

  it("are named above the threshold, which itself is not above, summed over all materials", () => {
    // 0.8 % of pearl with 0.08 % is 0.00064 % of the product; 0.18 % of 0.2 % are the other 0.00036 %.
    expect([named("0.18 %"), named("0.180001 %")]).toEqual([[], ["Linalool"]]);
  });

  it("are not taken as none where nobody has stated them", () => {
    const { notStated } = known(labelOf(kettle, ({ formula }) => delete formula.materials.almond.allergens).allergens);
    expect(notStated).toEqual(["Prunus Amygdalus Dulcis Oil"]);
  });

  it("have no list by default", () => {
    expect(labelOf(kettle, ({ label }) => delete label.allergens).allergens).toBeUndefined();
  });
});

describe("particles, claims and certification", () => {
  it.each([
    [undefined, "not-known"],
    ["synthetic polymer", "restricted"],
    ["natural polymer", "below-share"],
  ])("a scrub of which %s is stated: %s", (nature, status) => {
    const flag = known(
      labelOf(vessel, ({ formula }) => {
        if (nature === undefined) delete formula.materials.grains.particle.nature;
        else formula.materials.grains.particle.nature = nature;
      }).particles,
    );
    expect(flag.status).toBe(status);
  });

  it("a restriction without a day of sale is not known", () => {
    expect(labelOf(vessel, ({ label }) => delete label.date).particles).toEqual({
      notKnown: { code: "not-stated", field: "label-date" },
    });
  });

  it("a claim is rounded down, and what is not stated counts as nothing", () => {
    // 97 % with the gel former at 0.7 and the fragrance at nothing: 9 % by 0.3, and 0.3 %.
    expect(labelOf(kettle).claims).toEqual([
      expect.objectContaining({ of: "naturalOrigin", percent: 97, notStated: ["fragrance"] }),
    ]);
  });

  it("shares by class need a class of every material", () => {
    const { figures, thresholds, shortfalls } = known(labelOf(vessel).certified);
    expect(figures["organic of product"]).toEqual({ min: 0.33, max: 0.33 });
    expect(thresholds.map(({ verdict }) => verdict)).toEqual(["met", "met"]);
    expect(shortfalls[0]?.name).toBe("preservative");
    expect(labelOf(vessel, ({ formula }) => delete formula.materials.water.certified).certified).toEqual({
      notKnown: { code: "not-stated", field: "material-certified-class", of: "water" },
    });
    expect(labelOf(kettle).certified).toBeUndefined();
  });
});

describe("exposure", () => {
  it("is the table's row, the dose and the margin that the kernels give", () => {
    const { daily, materials } = exposureOf(kettle);
    expect(known(daily)).toMatchObject({ exposurePerBodyWeight: 32.7, grade: "second-hand" });
    const [former] = materials;
    expect(former).toMatchObject({ material: "gelFormer", massFraction: 0.09 });
    if (!former || "notKnown" in former) throw new Error("not known");
    expect(former.dose).toBeCloseTo(32.7 * 0.09 * 0.5, 12);
    expect(former.margin).toBeCloseTo(250 / former.dose, 9);
    expect(former.massFractionMax).toBeCloseTo(250 / 100 / (32.7 * 0.5), 12);
  });

  it.each([
    ["0.3 %", "within"],
    ["0.30001 %", "above"],
  ])("a limit by type of product: %s of the preservative is %s", (amount, status) => {
    const limits = known(exposureOf(vessel, (draft) => (line(draft, "preservative").amount = amount)).limits);
    expect(limits.answers.find(({ name }) => name === "Preservative")?.status).toBe(status);
  });

  it("of a type of product that the table does not have is not known", () => {
    const { daily, materials } = exposureOf(vessel, ({ exposure }) => (exposure.productType = "gel"));
    expect(daily).toMatchObject({ notKnown: { law: "daily-exposure" } });
    expect(materials[0]).toMatchObject({ material: "preservative", notKnown: { law: "daily-exposure" } });
  });
});

describe("a job that asks for neither", () => {
  const plain = prepareJob(exampleJob("beaker"));

  it("is refused by its name", () => {
    for (const ask of [labelFor, exposureFor]) expect(() => ask({ prepared: plain })).toThrow(CalculationError);
  });

  it("has faults where the documents contradict themselves", () => {
    const faults = (change: (draft: Draft) => void): readonly string[] => {
      try {
        prepareJob(changed(kettle, change));
        return [];
      } catch (error) {
        if (error instanceof CalculationError) return error.faults.map(({ path }) => path);
        throw error;
      }
    };
    expect(faults(({ label }) => (label.date = "2027-13-01"))).toEqual(["label.date"]);
    expect(faults(({ exposure }) => (exposure.materials[0].material = "gelformer"))).toEqual([
      "exposure.materials[0].material",
    ]);
    expect(faults(({ formula }) => (formula.materials.tocopherols.ingredients[0].share = "60 %"))).toEqual([
      "formula.materials.tocopherols.ingredients",
    ]);
  });
});

describe("the sheets", () => {
  it("say what nobody has decided, and never that anything is safe", () => {
    const label = labelToMarkdown({ label: labelOf(vessel) });
    const exposure = exposureToMarkdown({ exposure: exposureOf(vessel) });
    expect(label).toContain("the certifier decides");
    expect(exposure).toContain("which is no permission");
    expect(exposure).toContain("qualified assessor");
    expect(label + exposure).not.toMatch(/\bsafe/i);
  });
});

describe("the jobs that state a label", () => {
  const { "several-lots-in-a-day": lots, "two-oils-in-three-lots": oils } = jobsByName();

  it("have the materials of their premixes in the order of what the whole product holds", () => {
    const { names, anyOrder } = known(labelOf(lots as JobDocument).list);
    expect(names).toEqual([
      "Caprylic/Capric Triglyceride",
      "Prunus Amygdalus Dulcis Oil",
      "Gel Former",
      "Mica",
      "Parfum",
      "Tocopherol",
      "Helianthus Annuus Seed Oil",
      "Limonene",
      "Linalool",
    ]);
    expect(anyOrder).toHaveLength(6);
    // 20 % of 1.5 % is fragrance: exactly the limit, which is within it.
    expect(known(exposureOf(lots as JobDocument).limits).answers.find(({ name }) => name === "Parfum")).toMatchObject({
      status: "within",
    });
  });

  it("are held to a standard and to a table of their own", () => {
    const { thresholds } = known(labelOf(oils as JobDocument).certified);
    expect(thresholds).toMatchObject([{ figure: "natural origin of product", verdict: "met" }]);
    const { daily } = exposureOf(oils as JobDocument);
    expect(known(daily)).toMatchObject({ edition: "invented for this test", exposurePerDay: 0.2 });
  });

  it("say on the draft what is not stated, of allergens and of particles each in its words", () => {
    const text = (job: JobDocument): string => labelToMarkdown({ label: labelOf(job) });
    const bare = changed(oils as JobDocument, ({ formula }) => delete formula.materials.grains.particle.nature);
    expect(text(bare)).toContain("What Prunus Armeniaca Seed Powder is made of is not stated.");
    expect(text(bare)).not.toContain("names may be missing");
    const scented = changed(lots as JobDocument, ({ formula }) => delete formula.materials.fragrance.allergens);
    expect(text(scented)).toContain(
      "The fragrance allergens of Parfum are not stated: until then names may be missing.",
    );
  });
});
