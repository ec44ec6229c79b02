import { describe, expect, it, test } from "vitest";
import {
  type Checks,
  type Compared,
  type Differences,
  figureChanges,
  nameOf,
  type Recorded,
  readRecord,
  recordedOf,
  verdictChanges,
} from "./jobs/compare.js";
import { jobsByName } from "./jobs/jobs.js";
import { plansByName } from "./jobs/plans.js";

const verdicts = readRecord<Readonly<Record<string, readonly Recorded[]>>>("verdicts.json");
const before = readRecord<Checks>("before.json");
const figures = readRecord<Readonly<Record<string, Compared>>>("figures-before.json");
const differences = readRecord<Differences>("differences.json");
const jobs = jobsByName();
const plans = plansByName();

describe("twenty jobs and those of the examples", () => {
  it("are twenty, all of them recorded", () => {
    expect(Object.keys(jobs)).toHaveLength(20);
    const names = plans.map(([name]) => name).sort();
    for (const record of [verdicts, before, figures]) expect(Object.keys(record).sort()).toEqual(names);
  });

  it("fail in half of the twenty and more, in several answers each", () => {
    const failing = Object.keys(jobs).filter(
      (name) => (verdicts[name] ?? []).filter(({ verdict }) => verdict === "not-met").length > 1,
    );
    expect(failing.length).toBeGreaterThanOrEqual(10);
  });

  it.each(plans)("%s answers as recorded", (name, { plan }) => {
    expect(recordedOf(plan)).toEqual(verdicts[name]);
  });
});

describe("what differs from the plan before it was rebuilt", () => {
  const { reasons } = differences;

  it("has a reason each, out of a list of which none is idle", () => {
    const given = new Set([...differences.verdicts, ...differences.figures].map(({ reason }) => reason));
    expect([...given].sort()).toEqual(Object.keys(reasons).sort());
    for (const sentence of Object.values(reasons)) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });

  it.each(plans)("is listed for the verdicts of %s, and nothing else is", (name, { plan }) => {
    const listed = differences.verdicts.filter(({ job }) => job === name);
    const found = verdictChanges(name, before[name] ?? [], recordedOf(plan));
    expect(found.map(nameOf)).toEqual(listed.map(nameOf));
  });

  it.each(plans)("is listed for the figures of %s, and nothing else is", (name, { plan }) => {
    const listed = differences.figures.filter(({ job }) => job === name);
    const found = figureChanges(name, figures[name], plan);
    expect(found.map(nameOf)).toEqual(listed.map(nameOf));
    for (const [i, { largest = 0 }] of found.entries()) expect(largest).toBeLessThanOrEqual(listed[i]?.largest ?? 0);
  });

  test("no verdict is better for want of a figure", () => {
    // A green that was not there before has a reason that gives a figure, or leaves one out that does not matter.
    const sound = ["vessel-alone-counts", "oil-charged-counts-as-oil", "warmed-by-no-more-than-the-motor"];
    const greener = differences.verdicts.filter(({ before: old, after }) => old && after[0]?.verdict === "met");
    expect(greener.filter(({ reason }) => !sound.includes(reason))).toEqual([]);
  });
});
