import * as members from "gelwright/gel";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  doseForStrength: /\.fit\./,
  strengthAtDose: /\.fit\./,
  doseForGelPoint: /\.line\.(enthalpy|scatter)/,
  gelPointAtDose: /\.line\.(enthalpy|scatter)/,
  waterUntilFlowing: /\.solids\.refractiveIndex/,
});
