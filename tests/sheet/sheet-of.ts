import type { Plan } from "gelwright/plan";
import { english } from "gelwright/sheet";
import type { Sheet } from "../../src/sheet/render.js";
import { sayWith } from "../../src/sheet/words/say.js";

/** A plan with the words and numbers of the English sheet. */
export function sheetOf(plan: Plan): Sheet {
  return { plan, words: english, say: sayWith({ plan }) };
}
