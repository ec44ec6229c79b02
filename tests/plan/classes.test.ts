import { describe, expect, test } from "vitest";
import { fieldsOf } from "./jobs/classes.js";
import { allJobsByName } from "./jobs/jobs.js";

const jobs = Object.entries(allJobsByName());
const all = jobs.flatMap(([name, job]) => [...fieldsOf(job)].map((field) => ({ name, ...field })));

/** The class of a field, by its path without the places in lists and the keys of materials. */
function classOf(path: string): readonly unknown[] {
  const kind = ({ keys }: (typeof all)[number]): string =>
    keys
      .filter((key) => typeof key === "string")
      .join(".")
      .replace(/materials\.[^.]+/, "materials.*");
  return [...new Set(all.filter((field) => kind(field) === path).map(({ holds }) => holds))];
}

describe("the class of a field", () => {
  test("is known for every field of every job", () => {
    const without = all.filter(({ holds }) => holds === undefined);
    expect(without.map(({ name, keys }) => [name, keys.join(".")])).toEqual([]);
    expect(all.length).toBeGreaterThan(2000);
  });

  test("is the entry's own where it may be left out, and else that of what holds it", () => {
    expect(classOf("vessel.stirrer.motor")).toEqual(["property"]);
    expect(classOf("vessel.stirrer.motor.power")).toEqual(["property"]);
    expect(classOf("vessel.stirrer.cover")).toEqual(["wish"]);
    expect(classOf("vessel.stirrer.kind")).toEqual(["identity"]);
    expect(classOf("bench.doses.setsAt")).toEqual(["reading"]);
    expect(classOf("process.steps.within")).toEqual(["wish"]);
    expect(classOf("process.steps.for")).toEqual(["process"]);
    expect(classOf("process.steps.note")).toEqual(["identity"]);
    expect(classOf("formula.materials.*.density")).toEqual(["property"]);
    expect(classOf("batch.target.mass")).toEqual(["wish"]);
  });

  test("is one of five, and each of them is there", () => {
    expect([...new Set(all.map(({ holds }) => holds))].sort()).toEqual([
      "identity",
      "process",
      "property",
      "reading",
      "wish",
    ]);
  });
});
