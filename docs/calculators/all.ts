import { docstrings } from "../docstrings.js";
import type { Calculator } from "../in-page/calculator-data.js";
import { questionRows } from "../reference/questions.js";
import { calculatorOf } from "./describe.js";
import { list } from "./list.js";

/** The question that a function answers first of all, as the page of questions asks it. */
function questionOf(name: string): string {
  const rows = questionRows();
  const row = rows.find(({ names }) => names[0] === name) ?? rows.find(({ names }) => names.includes(name));
  if (!row) throw new Error(`no question of docs/guides/questions.md is answered by ${name}`);
  return row.question;
}

/** A calculator with what its function gives, in words. */
export interface Described {
  readonly calculator: Calculator;
  readonly summary: string;
  /** Where the figures in its form come from. */
  readonly figures: "invented" | "example";
}

/** Every calculator, made of the docstrings as they are. */
export function calculators(): readonly Described[] {
  const documented = docstrings(list.map(({ name }) => name));
  return list.map((listed) => {
    const one = documented.get(listed.name);
    if (!one) throw new Error(`no public function is called ${listed.name}`);
    return {
      calculator: calculatorOf(listed, one, questionOf(one.name)),
      summary: one.summary,
      figures: listed.start ? "invented" : "example",
    };
  });
}
