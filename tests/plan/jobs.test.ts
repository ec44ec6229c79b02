import { readFileSync } from "node:fs";
import { runPlan } from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { exampleJobsByName, jobsByName } from "./jobs/jobs.js";

type Answer = Readonly<Record<"id" | "verdict" | "value" | "limit", string>>;

const before = JSON.parse(readFileSync(new URL("jobs/before.json", import.meta.url), "utf8")) as Readonly<
  Record<string, readonly Answer[]>
>;
const jobs = jobsByName();
const all = Object.entries({ ...jobs, ...exampleJobsByName() });

describe("twenty jobs and those of the examples", () => {
  it("are twenty, all of them recorded", () => {
    expect(Object.keys(jobs)).toHaveLength(20);
    expect(Object.keys(before).sort()).toEqual(all.map(([name]) => name).sort());
  });

  it("fail in half of the twenty, in several checks each", () => {
    const failing = Object.keys(jobs).filter(
      (name) => (before[name] ?? []).filter(({ verdict }) => verdict === "not met").length > 1,
    );
    expect(failing).toHaveLength(10);
  });

  it.each(all)("%s answers as recorded", (name, job) => {
    const answers = runPlan(job).checks.map(({ id, verdict, value, limit }) => ({ id, verdict, value, limit }));
    expect(answers).toEqual(before[name]);
  });
});
