import { describe, expect, test } from "vitest";
import { at } from "../../docs/in-page/paths.js";
import { examples } from "../../docs/try-it/examples.js";
import { keyOf, materialFields, phaseFields, referencesTo, withKey } from "../../docs/try-it/references.js";
import { runPlan } from "../../src/plan/index.js";

const jobs = Object.entries(examples).map(([name, text]) => [name, JSON.parse(text)] as const);
const scrub = JSON.parse(examples["Scrub gel, cold route"] ?? "");

test("a key is made of a name as the examples have them", () => {
  expect(keyOf("sunflower oil")).toBe("sunflowerOil");
  expect(keyOf("Huile d'amande, dés. 2")).toBe("huileDAmandeDes2");
  expect(keyOf("…")).toBe("");
});

describe.each(jobs)("in the job %s", (_, job) => {
  test("every phase is found where it is charged, and where the bench and the batch name it", () => {
    for (const [i, { name }] of job.formula.phases.entries()) {
      const found = referencesTo(job, phaseFields, name);
      expect(found).toContain(`formula.phases[${i}].name`);
      const steps = job.process.steps.flatMap((step: { phase?: string }, j: number) =>
        step.phase === name ? [`process.steps[${j}].phase`] : [],
      );
      expect(found).toEqual(expect.arrayContaining(steps));
      for (const path of found) expect(at(job, path)).toBe(name);
    }
  });

  test("with another key for each material and premix it is the same job", () => {
    let renamed: unknown = job;
    for (const part of ["materials", "premixes"] as const)
      for (const key of Object.keys(job.formula[part] ?? {})) renamed = withKey(renamed, part, key, `${key}Renamed`);
    const verdicts = (document: unknown) => runPlan(document).answers.map(({ id, verdict }) => [id, verdict]);
    expect(verdicts(renamed)).toEqual(verdicts(job));
    for (const key of Object.keys(job.formula.materials))
      expect(referencesTo(renamed, materialFields, key)).toEqual([]);
  });
});

test("the outer phase, the phases of the bench and those of an allowance are found", () => {
  const [{ name }] = scrub.formula.phases;
  const job = { ...scrub, batch: { ...scrub.batch, allowances: [{ phases: [name] }] } };
  const found = referencesTo(job, phaseFields, name);
  expect(found).toContain("bench.emulsion.outerPhase");
  expect(found).toContain("batch.allowances[0].phases[0]");
});

test("what is not the name of a phase stays", () => {
  const job = { name: "A", formula: { name: "A", phases: [{ name: "A", lines: [{ material: "A" }] }] } };
  expect(referencesTo(job, phaseFields, "A")).toEqual(["formula.phases[0].name"]);
  expect(referencesTo(job, materialFields, "A")).toEqual(["formula.phases[0].lines[0].material"]);
});
