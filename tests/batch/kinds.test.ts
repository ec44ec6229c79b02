import * as members from "gelwright/batch";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  largestBatch: /^0\.(formula|batch\.stock\[\d+\]\.source|vessel\.name)/,
  scaleFormula: /^0\.(formula|vessel\.name)/,
  materialsToBuy: /^0\.(formula|vessel\.name)/,
});
