import type { Words } from "../types.js";
import { airAnswers } from "./air.js";
import { batchAnswers } from "./batch.js";
import { emulsionAnswers } from "./emulsion.js";
import { fillAnswers } from "./fill.js";
import { heatAnswers } from "./heat.js";
import { packAnswers } from "./packs.js";
import { particleAnswers } from "./particles.js";
import { settingAnswers } from "./setting.js";
import { stabilityAnswers } from "./stability.js";
import { stirringAnswers } from "./stirring.js";
import { strengthAnswers } from "./strength.js";

/** The words of every question; a question without them does not compile. */
export const answers: Words["answers"] = {
  ...batchAnswers,
  ...heatAnswers,
  ...settingAnswers,
  ...emulsionAnswers,
  ...stirringAnswers,
  ...particleAnswers,
  ...packAnswers,
  ...fillAnswers,
  ...stabilityAnswers,
  ...strengthAnswers,
  ...airAnswers,
};
