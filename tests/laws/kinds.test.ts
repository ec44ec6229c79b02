import * as members from "gelwright/laws";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  bandAround: /\.band\.(basis|sources)/,
});
