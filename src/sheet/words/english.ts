import { answers } from "./answers/index.js";
import { assumptions } from "./assumptions.js";
import { bases, notes, practices, sources, uses, verdicts } from "./basis.js";
import { cautions } from "./cautions.js";
import { fields } from "./fields.js";
import { labels } from "./labels.js";
import { lawNames, laws } from "./laws.js";
import { levers } from "./levers.js";
import { lines } from "./lines.js";
import { reasons } from "./reasons.js";
import { steps } from "./steps.js";
import type { Words } from "./types.js";

/** The words of the sheet in English. */
export const english: Words = {
  answers,
  verdicts,
  reasons,
  fields,
  lawNames,
  laws,
  assumptions,
  cautions,
  notes,
  sources,
  levers,
  uses,
  bases,
  practices,
  steps,
  labels,
  lines,
};
