import type { Plan } from "gelwright/plan";
import { toCsv, toJson, toMarkdown } from "gelwright/sheet";
import MarkdownIt from "markdown-it";
import { boxTables } from "../in-page/wide-tables.js";
import type { formNames } from "./form-names.js";

/** A form that a plan is shown and downloaded in. */
interface Form {
  readonly write: (plan: Plan) => string;
  /** As HTML, where it is more than text. */
  readonly show?: (text: string) => string;
}

const csv = (table: "weighing" | "timeline" | "answers" | "additions"): Form => ({
  write: (plan) => toCsv({ plan, table }),
});

/** Markdown without HTML of its own, its headings two ranks below the page's, its tables in boxes that scroll. */
export function markdown(text: string): string {
  const parser = new MarkdownIt({ html: false });
  boxTables(parser);
  const tokens = parser.parse(text, {});
  for (const token of tokens)
    if (token.type.startsWith("heading")) token.tag = `h${Math.min(Number(token.tag.slice(1)) + 2, 6)}`;
  return parser.renderer.render(tokens, parser.options, {});
}

const byName: { readonly [Name in (typeof formNames)[number]["name"]]: Form } = {
  "Batch sheet": { write: (plan) => toMarkdown({ plan }), show: markdown },
  "Weighing, CSV": csv("weighing"),
  "Timeline, CSV": csv("timeline"),
  "Answers, CSV": csv("answers"),
  "Additions of oil, CSV": csv("additions"),
  "All figures, JSON": { write: (plan) => toJson({ plan }) },
};

/** In the order of `formNames`. */
export const forms: readonly Form[] = Object.values(byName);
