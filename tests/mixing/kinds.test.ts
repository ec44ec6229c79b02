import * as members from "gelwright/mixing";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  powerCurveOf: /\.impeller\.(metznerOttoConstant|flowNumber)/,
  powerBandOf: /\.impeller\.(metznerOttoConstant|flowNumber)/,
  stirring: /\.impeller\.flowNumber/,
});
