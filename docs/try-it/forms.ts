import type { Plan } from "gelwright/plan";
import { toCsv, toJson, toMarkdown } from "gelwright/sheet";
import MarkdownIt from "markdown-it";

/** A form that a plan is shown and downloaded in. */
interface Form {
  readonly name: string;
  readonly file: string;
  readonly type: string;
  readonly write: (plan: Plan) => string;
  /** As HTML, where it is more than text. */
  readonly show?: (text: string) => string;
}

const csv = (table: "weighing" | "timeline" | "answers" | "additions", name: string): Form => ({
  name: `${name}, CSV`,
  file: `${table}.csv`,
  type: "text/csv",
  write: (plan) => toCsv({ plan, table }),
});

/** Markdown without HTML of its own, its headings two ranks below the page's, its tables in boxes that scroll. */
function markdown(text: string): string {
  const parser = new MarkdownIt({ html: false });
  const { rules } = parser.renderer;
  rules["table_open"] = () => '<div class="wide"><table>';
  rules["table_close"] = () => "</table></div>";
  const tokens = parser.parse(text, {});
  for (const token of tokens)
    if (token.type.startsWith("heading")) token.tag = `h${Math.min(Number(token.tag.slice(1)) + 2, 6)}`;
  return parser.renderer.render(tokens, parser.options, {});
}

export const forms: readonly Form[] = [
  {
    name: "Batch sheet",
    file: "sheet.md",
    type: "text/markdown",
    write: (plan) => toMarkdown({ plan }),
    show: markdown,
  },
  csv("weighing", "Weighing"),
  csv("timeline", "Timeline"),
  csv("answers", "Answers"),
  csv("additions", "Additions of oil"),
  { name: "All figures, JSON", file: "plan.json", type: "application/json", write: (plan) => toJson({ plan }) },
];
