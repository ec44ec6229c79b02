import * as members from "gelwright/exposure";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

refusesOtherKinds(members, validInputs);
