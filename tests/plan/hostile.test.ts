import { runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { refusal, withstands } from "../support/hostile.js";
import { validInputs } from "./valid-inputs.js";

const job = validInputs["runPlan"]?.[0]?.[0] as Record<string, unknown>;

withstands("runPlan", runPlan, job);

test("a process has at most two hundred steps", () => {
  const steps = Array.from({ length: 201 }, () => ({ do: "take off the heat" }));
  const { faults } = refusal(() => runPlan({ ...job, process: { ...(job["process"] as object), steps } }));
  expect(faults).toMatchObject([
    { path: "process.steps", expected: "a list of at most 200", parameters: { value: 201, max: 200 } },
  ]);
});
