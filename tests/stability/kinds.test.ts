import * as members from "gelwright/stability";
import { refusesOtherKinds } from "../support/other-kinds.js";
import { validInputs } from "./valid-inputs.js";

refusesOtherKinds(members, validInputs);
