import { readFileSync } from "node:fs";
import { CalculationError } from "gelwright/error";
import { runPlan } from "gelwright/plan";
import { beforeAll, expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";
import { root } from "../support/rooms.js";
import { type Accepts, accepts } from "./validator.js";

let schema: Accepts;
beforeAll(() => {
  schema = accepts(JSON.parse(readFileSync(`${root}dist/schema/job.json`, "utf8")) as object);
});

test.each(["beaker", "kettle"] as const)("the published schema takes the example's %s", (scale) => {
  expect(schema(exampleJob(scale))).toEqual([]);
});

test.each(["beaker", "vessel"] as const)("the published schema takes the cold route's %s", (scale) => {
  expect(schema(coldJob(scale))).toEqual([]);
});

test.each<[string, Parameters<typeof changed>[1]]>([
  ["an unknown field", (draft) => Object.assign(draft.vessel, { colour: "grey" })],
  ["a misspelt field", (draft) => Object.assign(draft.vessel, { diametre: "380 mm" })],
  ["a number where a quantity belongs", (draft) => Object.assign(draft.vessel, { diameter: 380 })],
  ["a step that there is not", (draft) => Object.assign(draft.process.steps[0], { do: "whip" })],
  ["a missing name", (draft) => delete draft.formula.name],
  ["an index above 1", (draft) => Object.assign(draft.formula.materials.almond.indices, { natural: 2 })],
])("%s is refused by the schema and by the reader alike", (_what, change) => {
  const wrong = changed(exampleJob(), change);
  expect(schema(wrong).length).toBeGreaterThan(0);
  expect(() => runPlan(wrong)).toThrow(CalculationError);
});
