import { exposureFor, labelFor, type PlanExposure, type PlanLabel, prepareJob } from "gelwright/plan";
import { exposureToMarkdown, labelToMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { exampleJob } from "../support/example.js";

const prepared = prepareJob(exampleJob());
const label = labelFor({ prepared });
const exposure = exposureFor({ prepared });
const notKnown = { code: "not-stated", field: "material-density", of: "almond" } as const;
const caution = "responsible-person-decides";

/** What a sheet says that the other does not. */
function fresh(text: string, before: string): readonly string[] {
  const known = new Set(before.split("\n"));
  return text.split("\n").filter((line) => !known.has(line));
}

describe("a part of a label that is not known", () => {
  const before = labelToMarkdown({ label });

  test.each<[string, Partial<PlanLabel>]>([
    ["ingredients", { list: { notKnown } }],
    ["fragrance allergens", { allergens: { notKnown } }],
    ["particles", { particles: { notKnown } }],
    ["a claim", { claims: [{ of: "organic", notKnown, caution }] }],
    ["certification", { certified: { notKnown } }],
  ])("stands there with the reason: %s", (_part, change) => {
    const lines = fresh(labelToMarkdown({ label: { ...label, ...change } }), before).filter(
      (line) => line !== "" && !line.startsWith("#"),
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/not known: .*sweet almond oil/);
  });
});

describe("a part of an exposure that is not known", () => {
  const before = exposureToMarkdown({ exposure });

  test.each<[string, Partial<PlanExposure>]>([
    ["what is used in a day", { daily: { notKnown } }],
    ["a material", { materials: [{ material: "almond", notKnown }] }],
    ["limits by product", { limits: { notKnown } }],
  ])("stands there with the reason: %s", (_part, change) => {
    const lines = fresh(exposureToMarkdown({ exposure: { ...exposure, ...change } }), before).filter(
      (line) => line !== "" && !line.startsWith("#"),
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/not known: .*sweet almond oil/);
  });
});
