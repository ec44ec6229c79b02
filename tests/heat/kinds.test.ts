import * as members from "gelwright/heat";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  meltTemperatureMin: /\.melt\[\d+\]\.temperature/,
  fewestAdditions: /\.melt\[\d+\]\.temperature/,
  heatCapacityFunction: /\.parts\[\d+\]\.temperature/,
});
