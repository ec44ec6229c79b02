import * as members from "gelwright/labelling";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  fragranceAllergens: /\.thresholds\./,
  ingredientList: /\.thresholds\./,
});
