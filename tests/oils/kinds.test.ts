import * as members from "gelwright/oils";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

// What a function is handed whole and does not read.
refusesOtherKinds(members, validInputs, {
  checkCertificate: /\.oil\.(name|relativeDensity\[\d+\]\.temperatureWater)/,
});
