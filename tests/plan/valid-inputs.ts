import { coldJob, exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

export const validInputs: ValidInputs = {
  runPlan: [[exampleJob("beaker")], [coldJob("beaker")]],
};
