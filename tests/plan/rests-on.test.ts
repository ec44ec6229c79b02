import { describe, expect, test } from "vitest";
import { type Recorded, readRecord } from "./jobs/compare.js";
import { allJobsByName } from "./jobs/jobs.js";
import { keyOf } from "./jobs/plans.js";
import { answersWithRests, type Rests, type Table } from "./jobs/rests-on.js";

const jobs = Object.entries(allJobsByName());
const table = readRecord<Table>("rests-on.json");
const verdicts = readRecord<Readonly<Record<string, readonly Recorded[]>>>("verdicts.json");

/** Paths at which there is an empty list of assumptions, or nothing under a name. */
function emptyIn(value: unknown, path = ""): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) => {
    const own = `${path}/${name}`;
    const isEmpty = name === "assumptions" && Array.isArray(inner) && inner.length === 0;
    return isEmpty || (inner === undefined && path !== "") ? [own] : emptyIn(inner, own);
  });
}

describe.each(jobs)("asked by themselves, the questions of %s", (name, job) => {
  test("are answered as in its plan, and the answers rest on what such answers rest on", () => {
    const answers = answersWithRests(job);
    expect(answers.map(([{ id, of, verdict, side }]) => ({ id, of, verdict, side }))).toEqual(verdicts[name]);
    const other = answers.flatMap(([answer, rests]) =>
      Object.entries(rests)
        .filter(([part, found]) => !table[answer.id]?.[part as keyof Rests].includes(found))
        .map(([part, found]) => `${keyOf(answer)}: ${part}: ${found}`),
    );
    expect(other).toEqual([]);
    // An answer about a step is decided in that step, and nothing that is left out stands there empty.
    for (const [{ of, at, figure, limit, margin, beside }] of answers) {
      if (of.step !== undefined && at.step !== undefined) expect(at.step).toBe(of.step);
      expect(emptyIn({ at, figure, limit, margin, beside })).toEqual([]);
    }
  });
});
