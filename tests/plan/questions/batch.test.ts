import { answerQuestions, type JobDocument, prepareJob, runPlan } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("the ratio of oil to gel former", () => {
  /** Mass of some of the lines that are weighed. */
  const weighed = (job: JobDocument, counts: (line: { material: string; phase: string }) => boolean): number =>
    runPlan(job)
      .weighing.lines.filter(counts)
      .reduce((sum, { mass }) => sum + mass, 0);

  test("of a melt counts what the formula calls gel former and oil, and nothing else", () => {
    const oil = weighed(exampleJob(), ({ material }) => ["triglyceride", "almond"].includes(material));
    const former = weighed(exampleJob(), ({ material }) => material === "gelFormer");
    expect((answered(exampleJob(), "gel-former-ratio").figure.value ?? 0) / (oil / former)).toBeCloseTo(1, 3);
  });

  test("of an emulsion counts its outer phase and all that goes into it, particles aside", () => {
    const oil = weighed(coldJob(), ({ phase }) => phase === "B");
    const former = weighed(coldJob(), ({ phase }) => phase === "A");
    expect((answered(coldJob(), "gel-former-ratio").figure.value ?? 0) / (oil / former)).toBeCloseTo(1, 3);
  });

  test("is not asked of a product without a gel former", () => {
    const none = kettle(({ formula }) => (formula.materials.gelFormer.function = "oil"));
    expect(asked(none, "gel-former-ratio")).toEqual([]);
  });

  test("is not known once the gel former is taken out of the product", () => {
    const [found] = answerQuestions({
      prepared: prepareJob(exampleJob()),
      changes: [{ change: "dose", material: "gelFormer", value: 0 }],
      questions: ["gel-former-ratio"],
    });
    expect(found).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "nothing-there", field: "bench-oil-per-gel-former" }],
    });
  });
});

describe("another dose of the gel former", () => {
  const levers = (job: JobDocument) => leversOf(job, "gel-former-ratio");

  test("goes up as far as the carrier gives way, and down to none", () => {
    const [more, less] = levers(exampleJob());
    // 24 % of the other oil, 0.2 % of antioxidant at 70 %, 0.8 % of pigment and 0.3 % of fragrance stay.
    expect(more).toEqual([
      "more-gel-former",
      0.09,
      expect.closeTo(1 - 0.24 - 0.002 / 0.7 - 0.011, 9),
      { material: "gelFormer" },
    ]);
    expect(less).toEqual(["less-gel-former", 0.09, 0, { material: "gelFormer" }]);
    expect(leversOf(exampleJob(), "natural-origin-claim")).toEqual([less]);
  });

  test("is no lever where two materials are gel former, or one stands in two lines", () => {
    const outer = coldJob();
    expect(levers(outer)).toEqual([]);
    const twoLines = kettle(({ formula }) => formula.phases[1].lines.push({ material: "gelFormer", amount: "1 %" }));
    expect(levers(twoLines)).toEqual([]);
  });

  test("is no lever where the gel former makes up to the whole itself", () => {
    const carrier = kettle(({ formula }) => {
      const [{ lines }] = formula.phases;
      [lines[0].amount, lines[1].amount] = ["65 %", "q.s."];
    });
    expect(levers(carrier)).toEqual([]);
  });
});

describe("the working volume", () => {
  test("is asked of the whole lot, and of every state of the vessel until the packs are filled", () => {
    const { at, states } = answered(exampleJob(), "working-volume");
    expect(at).toEqual({ step: 6, place: "vessel" });
    // Nine steps end in the vessel; the tenth fills the packs.
    expect(states).toEqual({ met: 10, notMet: 0, notKnown: 0 });
  });

  test("has no step where the whole lot at 20 °C is nearest to its limit", () => {
    const wide = kettle(({ vessel: { workingVolume } }) => Object.assign(workingVolume, { min: "36 L", max: "60 L" }));
    expect(answered(wide, "working-volume").at).toEqual({ place: "vessel" });
  });

  test("goes by the density that the batch states once all is in, if a material states none", () => {
    const job = kettle(({ formula, batch }) => {
      delete formula.materials.almond.density;
      delete formula.materials.almond.propertiesOf;
      formula.materials.almond.specificHeat = "2 kJ/(kg·K)";
      batch.density = "940 kg/m³";
    });
    // Between the charge of that oil and that of the last phase nothing says how much it takes up.
    const { states, verdict, at } = answered(job, "working-volume");
    expect(states).toEqual({ met: 8, notMet: 0, notKnown: 2 });
    expect([verdict, at.step]).toEqual(["not-known", 6]);
  });
});

describe("more and smaller lots", () => {
  const lots = (change: (draft: Draft) => void) => leversOf(kettle(change), "working-volume");

  test("are looked for while each still covers the stirrer", () => {
    // About 37 L in one lot: two of 18 L, but no third.
    expect(lots(({ vessel: { workingVolume } }) => (workingVolume.min = "17 L"))).toEqual([
      ["more-lots", 1, 2, {}, "in whole numbers"],
    ]);
    expect(lots(({ vessel: { workingVolume } }) => (workingVolume.min = "20 L"))).toEqual([]);
  });

  test("are looked for up to four times as many, and never more than there are packs", () => {
    expect(lots(({ vessel: { workingVolume } }) => (workingVolume.min = "0 L"))).toEqual([
      ["more-lots", 1, 4, {}, "in whole numbers"],
    ]);
    const few = kettle(({ vessel: { workingVolume }, batch }) => {
      workingVolume.min = "0 L";
      batch.target = { packs: 3, fillVolume: "10 L" };
    });
    expect(leversOf(few, "working-volume")).toEqual([["more-lots", 1, 3, {}, "in whole numbers"]]);
  });
});

describe("a largest share of a material", () => {
  it("is asked about where the material is in the formula's lines and states one, and about no other", () => {
    const job = kettle(({ formula }) => {
      formula.materials.unused = { ...formula.materials.fragrance, name: "another fragrance" };
      formula.materials.almond.limits.shareMax = "30 %";
    });
    expect(asked(job, "maximum-share").map(({ of }) => of.material)).toEqual(["almond", "fragrance"]);
  });

  it("is held against what is weighed, which the allowance for its loss raises", () => {
    const { figure } = answered(exampleJob(), "maximum-share");
    const { lines, total } = runPlan(exampleJob()).weighing;
    const mass = lines.find(({ material }) => material === "fragrance")?.mass ?? 0;
    expect((figure.value ?? 0) / (mass / total)).toBeCloseTo(1, 3);
    expect(figure.value).toBeGreaterThan(0.003);
  });
});

test("a claim of natural origin is judged where one is made", () => {
  expect(asked(exampleJob(), "natural-origin-claim")).toHaveLength(1);
  expect(
    asked(
      kettle(({ formula }) => delete formula.claims),
      "natural-origin-claim",
    ),
  ).toEqual([]);
});

test("stock is named by the source of its own entry", () => {
  const job = vessel(({ batch }) => {
    batch.stock = [
      { material: "sunflower", mass: "100 kg", source: "count of Monday" },
      { material: "triglyceride", mass: "200 kg", source: "count of Friday" },
    ];
  });
  const sources = asked(job, "stock-suffices").map(({ of, limit }) => [of.material, limit.max?.basis?.[0]]);
  expect(Object.fromEntries(sources)).toMatchObject({
    sunflower: { source: "count of Monday" },
    triglyceride: { source: "count of Friday" },
  });
});

test("a lot has to fit the working day if one is stated, whatever packs at rest take", () => {
  expect(asked(exampleJob(), "lot-fits-the-day")).toEqual([]);
  const job = kettle(({ process }) => (process.workingDay = { length: "10 h" }));
  const { met, notMet, notKnown } = answered(job, "lot-fits-the-day").states;
  // Ten steps of which somebody sees the end, and twelve hours of rest.
  expect(met + notMet + notKnown).toBe(10);
});
