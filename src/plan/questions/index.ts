import { refuse, show } from "../../guards.js";
import { additionQuestions } from "./additions.js";
import { airQuestions } from "./air.js";
import { batchQuestions } from "./batch.js";
import { clarityQuestions } from "./clarity.js";
import { coverQuestions } from "./cover.js";
import { emulsionQuestions } from "./emulsion.js";
import { fillQuestions } from "./fill.js";
import { heatQuestions } from "./heat.js";
import { motorQuestions } from "./motor.js";
import { packQuestions } from "./packs.js";
import { particleQuestions } from "./particles.js";
import type { Question } from "./question.js";
import { settingQuestions } from "./setting.js";
import { stabilityQuestions } from "./stability.js";
import { stirringQuestions } from "./stirring.js";
import { strengthQuestions } from "./strength.js";

/** Every question that a plan may raise, in the order in which the sheet answers them. */
export const questions: readonly Question[] = [
  ...batchQuestions,
  ...heatQuestions,
  ...settingQuestions,
  ...emulsionQuestions,
  ...additionQuestions,
  ...clarityQuestions,
  ...stirringQuestions,
  ...motorQuestions,
  ...coverQuestions,
  ...particleQuestions,
  ...packQuestions,
  ...fillQuestions,
  ...stabilityQuestions,
  ...strengthQuestions,
  ...airQuestions,
];

/** A question by its id. */
export function questionOf(id: string, path: string): Question {
  return questions.find((one) => one.id === id) ?? refuse("input", path, show(id), "the id of a question");
}
