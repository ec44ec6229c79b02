import type { ValidInputs } from "../support/fuzz.js";

export const validInputs: ValidInputs = {};
