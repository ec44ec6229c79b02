import * as members from "gelwright/packing";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  batchTestFor: /\.table\.(jurisdiction|act|date|grade|source)/,
  tolerableError: /\.table\.(jurisdiction|date|source|rows|roundUpTo)/,
});
