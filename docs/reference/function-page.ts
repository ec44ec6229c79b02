import { calculatorAddress } from "../calculators/links.js";
import type { Described, Documented } from "../docstrings.js";
import { isCountedOutside } from "../proof/grades.js";
import { escaped } from "../theme/html.js";
import type { Facts } from "./facts.js";

/** Turns Markdown of a line, as docstrings have it, into HTML. */
export type Inline = (markdown: string) => string;

/** Where a number may lie, in words: "above 0", "0 to 1". */
function rangeOf({ range, choices, kind }: Described): string {
  if (choices.length > 0) return choices.map((one) => `<code>${escaped(`"${one}"`)}</code>`).join(", ");
  if (kind === "boolean") return "<code>true</code> or <code>false</code>";
  const { min, max, minExcluded, maxExcluded } = range;
  const from = min === undefined ? undefined : minExcluded ? `above ${min}` : `${min}`;
  const to = max === undefined ? undefined : maxExcluded ? `below ${max}` : `${max}`;
  if (from !== undefined && to !== undefined) return `${from} to ${to}`;
  if (from !== undefined) return minExcluded ? from : `${from} or more`;
  return to === undefined ? "" : maxExcluded ? to : `up to ${to}`;
}

/** What an argument is, without the unit and the range that stand in columns of their own. */
function meaningOf(described: Described): string {
  const { text, unit, choices } = described;
  const bare = unit === undefined ? text : text.replace(` [${unit}]`, "");
  const range = choices.length > 0 ? "" : rangeOf(described).replaceAll(".", "\\.");
  return range === "" ? bare : bare.replace(new RegExp(`, ${range}(?=[.;](?: |$))`), "");
}

function row(described: Described, inline: Inline, at: string): string {
  const { path, text, unit, optional } = described;
  if (text.trim() === "") throw new Error(`${at}: the docstring says nothing of ${path}`);
  const left = described.default === undefined ? (optional ? "may be left out" : "needed") : inline(described.default);
  return `<tr><th scope="row"><code>${path}</code></th><td data-label="unit">${unit === undefined ? "" : escaped(unit)}</td><td data-label="range">${rangeOf(described)}</td><td data-label="if left out">${left}</td><td>${inline(meaningOf(described))}</td></tr>`;
}

/** The arguments of a function, as the one reader of docstrings has them. */
function argumentsTable({ room, name, arguments: all }: Documented, inline: Inline): string {
  if (all.length === 0) return "";
  const rows = all.map((one) => row(one, inline, `${room}.${name}`)).join("\n");
  return `<div class="arguments"><h2 id="arguments">Arguments</h2><div class="wide"><table><thead><tr><th scope="col">name</th><th scope="col">unit</th><th scope="col">range</th><th scope="col">if left out</th><th scope="col">what it is</th></tr></thead><tbody>${rows}</tbody></table></div></div>`;
}

/** The questions of the trade that a function answers. */
function answersList(questions: readonly string[]): string {
  if (questions.length === 0) return "";
  const items = questions.map((question) => `<li>${escaped(question)}</li>`).join("");
  return `<div class="answers"><p>Answers</p><ul>${items}</ul></div>`;
}

const link = (to: string, name: string) => `<a href="${to}">${name}</a>`;

/** How a function is proved, in a line that leads to its row. */
function proofOf({ room, name }: Documented, facts: Facts): string {
  const { checks, tests } = facts.proof(room, name);
  const to = `../documents/verification-${room}.html#${name.toLowerCase()}`;
  const outside = checks.filter(isCountedOutside);
  if (checks.length > 0) {
    const count = `proved by ${checks.length} ${checks.length === 1 ? "check" : "checks"}`;
    return `${link(to, count)}${outside.length > 0 ? `, ${outside.length} of them from outside` : ", none of them from outside"}`;
  }
  const by =
    tests.length > 0
      ? `held by the tests of ${tests.length} ${tests.length === 1 ? "file" : "files"}`
      : "held by its example";
  return `${link(to, by)}, without a check value of its own`;
}

/** Ways on from a function: the theory behind it, what else answers the like, how it is proved, and where it can be tried. */
function waysOn(documented: Documented, facts: Facts): string {
  const { room, name } = documented;
  const theory = facts
    .theory(room, name)
    .map(({ url, page, heading }) => link(`../${url}`, page === heading ? page : `${page}: ${heading}`));
  const related = facts.related(room, name).map((key) => {
    const summary = facts.functions.get(key)?.summary ?? "";
    return `<li>${link(`${key}.html`, `<code>${key.split(".")[1]}</code>`)}: ${escaped(summary.split(/(?<=[.:])\s/)[0] ?? "")}</li>`;
  });
  const calculator = calculatorAddress(`${room}.${name}`);
  const tried =
    calculator === undefined ? "" : `<dt>Calculator</dt><dd>${link(`../${calculator}`, "Open in a calculator")}</dd>\n`;
  return `<section class="tsd-panel ways-on" aria-labelledby="ways-on"><h2 id="ways-on">From here</h2><dl>
${tried}<dt>Theory</dt><dd class="theory">${theory.join("<br>")}</dd>
<dt>Related</dt><dd class="related"><ul>${related.join("")}</ul></dd>
<dt>Proof</dt><dd class="proved">${proofOf(documented, facts)}</dd>
</dl></section>`;
}

/** The page of a function: what it answers first, a table of its arguments, its types folded away, and the ways on. */
export function functionPage(html: string, documented: Documented, facts: Facts, inline: Inline): string {
  const [signature = ""] = /<div class="tsd-signature tsd-anchor-link"[^>]*>.*?<\/div>/s.exec(html) ?? [];
  const [parameters = ""] = /<div class="tsd-parameters">.*?(?=<h4 class="tsd-returns-title">)/s.exec(html) ?? [];
  const end = '</div>\n<div class="col-sidebar">';
  if (signature === "" || !html.includes(end)) throw new Error(`the page of ${documented.name} is not as it was`);
  // Folded away they are no part of the page's outline.
  const types = parameters.replaceAll(/<(\/?)h[45]\b/g, "<$1div");
  const folded = `<details class="types"><summary>Types</summary>${signature}${types}</details>`;
  return html
    .replace(signature, () => answersList(facts.questions(documented.name)))
    .replace(parameters, () => argumentsTable(documented, inline))
    .replaceAll(/<(\/?)h4\b/g, "<$1h2")
    .replace(end, () => `${folded}${waysOn(documented, facts)}${end}`);
}
