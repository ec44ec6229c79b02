import { fingerprint, runPlan } from "gelwright/plan";
import { changesToMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";

const job = exampleJob();
const other = changed(job, (draft) => {
  draft.process.steps[9].for = "10 min";
  draft.formula.phases[1].lines[0].amount = "25 %";
});
const [before, after] = [runPlan(job), runPlan(other)];

describe("a change record", () => {
  const text = changesToMarkdown({ before, after, documents: { before: job, after: other } });
  const part = (title: string): string => text.split(`## ${title}\n`)[1]?.split("\n## ")[0] ?? "";

  test("names both documents by their fingerprints", () => {
    expect(text).toContain(`| Fingerprint of the documents | ${fingerprint(job)} | ${fingerprint(other)} |`);
    expect(text).toContain("gelwright 0.1.0");
  });

  test("says what differs in the documents, in what is weighed and done, and in the verdicts", () => {
    expect(part("In the documents")).toContain("| 20 min | 10 min |");
    expect(part("Weigh")).toMatch(/\| sweet almond oil \(phase B\) \| 8\.329 kg \| 8\.6\d\d kg \|/);
    expect(part("Do")).toMatch(/\| step 10 \| Fill the packs within 20 min.* \| Fill the packs within 10 min/);
    expect(part("Do")).not.toContain("| step 9 |");
    expect(part("Checks")).toMatch(/Are the packs full before the gel sets\? \(step 10\) \| not met \| not known \|/);
  });

  test("holds no row that is the same in both, and says so where nothing differs", () => {
    for (const [, one, two] of text.matchAll(/^\| [^|]+ \| ([^|]+) \| ([^|]+) \|$/gm)) expect(one).not.toBe(two);
    expect(changesToMarkdown({ before, after: before })).toContain("are the same in both plans");
  });
});
