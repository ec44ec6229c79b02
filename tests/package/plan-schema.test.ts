import { readFileSync } from "node:fs";
import { runPlan } from "gelwright/plan";
import { beforeAll, expect, test } from "vitest";
import { plansByName } from "../plan/jobs/plans.js";
import { exampleJob } from "../support/example.js";
import { root } from "../support/rooms.js";
import { type Accepts, accepts } from "./validator.js";

let schema: Accepts;
beforeAll(() => {
  schema = accepts(JSON.parse(readFileSync(`${root}dist/schema/plan.json`, "utf8")) as object);
});

/** As a program gets it that reads the plan as text. */
function sent(plan: unknown): Record<string, unknown> {
  return JSON.parse(JSON.stringify(plan)) as Record<string, unknown>;
}

test.each(plansByName())("the published schema of the result takes the plan of %s", (_name, { plan }) => {
  expect(schema(sent(plan))).toEqual([]);
});

test("a field that a plan does not have, a missing one and a word for a number are refused", () => {
  const plan = sent(runPlan(exampleJob()));
  const { lots, ...without } = plan;
  expect(schema({ ...plan, colour: "clear" })).not.toEqual([]);
  expect(schema(without)).not.toEqual([]);
  expect(schema({ ...plan, lots: { ...(lots as object), lots: "three" } })).not.toEqual([]);
});
