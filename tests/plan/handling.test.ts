import { type JobDocument, type NotKnown, type PlanWait, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, it, test } from "vitest";
import { known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

type What = "capping" | "skin" | "moving";

const job = exampleJob();

function waitOf(what: What, of: JobDocument = job): PlanWait {
  const found = known(runPlan(of).afterFilling[what], what);
  if ("notKnown" in found) throw new Error(JSON.stringify(found.notKnown));
  return found;
}

function whyNot(what: What, of: JobDocument): NotKnown["notKnown"] {
  const found = known(runPlan(of).afterFilling[what], what);
  if (!("notKnown" in found)) throw new Error("it is known");
  return found.notKnown;
}

/** The same in a pack that cools as one lump, whose time is a closed form. */
const lump = changed(job, ({ pack }: Draft) => {
  delete pack.content;
  pack.heatLoss = "0.05 W/K";
});

/** Temperatures of the first pack and the last as they are filled. */
function filled(of: JobDocument): readonly [number, number] {
  const step = known(runPlan(of).timeline.find(({ step }) => step.do === "fill"));
  return [known(step.temperatureStart), known(step.temperatureEnd)];
}

describe("when packs may be capped", () => {
  it("is when they are 5 K above the room, unless the pack states its closing temperature", () => {
    expect(waitOf("capping").temperature).toBe(26);
    expect(waitOf("capping").basis[0]).toEqual({ kind: "practice", key: "capped-near-the-room" });
    expect(
      waitOf(
        "capping",
        changed(job, ({ process }) => (process.room = "24 °C")),
      ).temperature,
    ).toBe(29);
    const stated = waitOf(
      "capping",
      changed(job, ({ pack }) => (pack.closingTemperature = "45 °C")),
    );
    expect(stated.temperature).toBe(45);
    expect(stated.basis[0]).toEqual({ kind: "stated", key: "pack-closing-temperature" });
  });

  it("counts each pack from the temperature at which it was filled", () => {
    const [first, last] = filled(lump);
    const { firstPack, lastPack, allPacks } = waitOf("capping", lump);
    const folds = (from: number): number => Math.log((from - 21) / (26 - 21));
    expect(firstPack / lastPack).toBeCloseTo(folds(first) / folds(last), 2);
    expect(firstPack / lastPack).toBeGreaterThan(1.02);
    // The first pack was filled twenty minutes before the last.
    expect(allPacks).toBeCloseTo(Math.max(firstPack - 1200, lastPack), 6);
  });

  it("is at once just above the temperature of filling, and takes time just below it", () => {
    const [first, last] = filled(job);
    const closed = (at: number): PlanWait =>
      waitOf(
        "capping",
        changed(job, ({ pack }) => (pack.closingTemperature = `${at} °C`)),
      );
    expect(closed(first + 1e-6)).toMatchObject({ firstPack: 0, lastPack: 0, allPacks: 0 });
    expect(closed(last + 1e-6)).toMatchObject({ firstPack: expect.any(Number), lastPack: 0 });
    expect(closed(last + 1e-6).firstPack).toBeGreaterThan(0);
    expect(closed(last - 0.01).lastPack).toBeGreaterThan(0);
  });

  it("is not known where the pack is not, and where nothing cools as far", () => {
    expect(
      whyNot(
        "capping",
        changed(job, (draft) => delete draft.pack),
      ),
    ).toEqual({
      code: "not-stated",
      field: "pack",
    });
    expect(
      whyNot(
        "capping",
        changed(job, ({ pack }) => delete pack.content),
      ),
    ).toMatchObject({
      field: "pack-cooling",
    });
    expect(
      whyNot(
        "capping",
        changed(job, ({ pack }) => (pack.closingTemperature = "20 °C")),
      ),
    ).toMatchObject({
      code: "outside-range",
      law: "pack-conduction",
    });
  });

  it("is as they are filled, of a gel that is stirred in the room, whatever its pack", () => {
    expect(waitOf("capping", coldJob())).toMatchObject({ firstPack: 0, lastPack: 0, allPacks: 0 });
    expect(runPlan(coldJob()).afterFilling).not.toHaveProperty("moving");
    expect(runPlan(coldJob()).afterFilling).not.toHaveProperty("skin");
  });
});

describe("when packs may be moved", () => {
  it("is when their centre has passed the setting temperature by the margin of the process", () => {
    expect(waitOf("moving").temperature).toBe(53);
    const margin = changed(job, ({ process }) => (process.settingMargin = "4 K"));
    expect(waitOf("moving", margin).temperature).toBe(51);
    expect(waitOf("moving", margin).firstPack).toBeGreaterThan(waitOf("moving").firstPack);
  });

  it("is never before the centre has set, nor the skin after it", () => {
    const { durationToSet } = runPlan(job).afterFilling;
    const [skin, moving] = [waitOf("skin"), waitOf("moving")];
    expect(skin.lastPack).toBeLessThan(known(durationToSet));
    expect(moving.lastPack).toBeGreaterThan(known(durationToSet));
    expect(moving.firstPack).toBeGreaterThan(moving.lastPack);
    expect(skin.firstPack).toBeGreaterThan(skin.lastPack);
  });

  it("is not known where the setting temperature is not", () => {
    const unread = changed(job, ({ bench }) => delete bench.doses);
    for (const what of ["skin", "moving"] as const) expect(whyNot(what, unread).field).toBe("bench-doses");
  });
});

test("the sheet says when to close and when to move, for both packs", () => {
  const sheet = toMarkdown({ plan: runPlan(job) });
  expect(sheet).toContain("Close the packs once they have cooled to 26 °C: the first 54 min after it was filled");
  expect(sheet).toContain("Do not move a pack before its centre has cooled to 53 °C: the first 9 min");
  expect(toMarkdown({ plan: runPlan(coldJob()) })).toContain("The packs may be closed as they are filled");
});
