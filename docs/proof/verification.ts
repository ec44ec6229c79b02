import { type CheckFile, off, type RunCheck } from "./checks.js";
import { constantsSection } from "./constants.js";
import { countsByKind, countsByQuality, gradeOf } from "./grades.js";
import { table } from "./markdown.js";
import { measuredSection } from "./measured.js";

/** As many digits as were printed, and two more. */
function ours(actual: unknown, expected: unknown): string {
  if (typeof actual !== "number" || typeof expected !== "number") return String(actual);
  const printed = String(expected).replace(/e.*/, "").replaceAll(/[-.]/g, "").replace(/^0+/, "").length;
  return String(Number(actual.toPrecision(Math.min(printed + 2, 15))));
}

function allowed({ relative, absolute }: RunCheck["check"]["tolerance"]): string {
  const parts = [relative?.toExponential(0), absolute && `± ${absolute}`].filter(Boolean);
  return parts.length > 0 ? parts.join(" or ") : "nothing";
}

function rowOf(run: RunCheck): string[] {
  const { check, worst, compared } = run;
  const [, ...what] = check.id.split("/");
  const share = off(worst);
  const place = worst.path.split(".").slice(1).join(".");
  const one = share === 0 ? "one" : "the worst";
  const of = compared > 1 ? `<br><small>${place ? `${place}, ` : ""}${one} of ${compared}</small>` : "";
  return [
    `\`${check.call.split(".")[1]}\`: ${what.join(", ").replaceAll("-", " ")}<br><small>${check.source} (${gradeOf(check)})</small>`,
    String(worst.expected) + of,
    ours(worst.actual, worst.expected),
    share === 0 ? "exact" : share.toExponential(0),
    allowed(check.tolerance),
    run.holds ? "holds" : "**does not hold**",
  ];
}

/** The page *Verification*: what is claimed is what was run. */
export function verification(files: readonly CheckFile[]): string {
  return [
    "# Verification",
    "",
    "Every value that the tests hold the library to, and how far off it is, as found when this page was built: the number that is furthest off where a check compares several, as a share of the expected one. A published figure carries no more digits than were printed, so that a deviation of half its last digit is agreement.",
    "",
    "## How many there are",
    "",
    "*Published* is a figure printed in a source that a reader can get; a *reference library* holds the equation or the data by itself. These two come from outside. An *independent method* is our own work by another way than the code goes. The *same formula*, evaluated a second time, shows that the arithmetic is right, not that the equation is. *Common practice* and *from memory* show less. *Aside* counts what would swell the rest: each factor of a unit, roots of functions that have tables of their own, formulas that are the same for another subject, answers on pages that nobody vouches for.",
    "",
    ...countsByKind(files),
    "",
    "The checks from outside by the sort of source. *First-hand* was read in the source itself, *second-hand* in somebody's restatement of it.",
    "",
    ...countsByQuality(files),
    "",
    ...measuredSection(),
    "",
    ...constantsSection(),
    ...files.flatMap(({ name, checks }) => [
      "",
      `## ${name}`,
      "",
      '<div class="proof">',
      "",
      ...table(["check and source", "expected", "ours", "off by", "allowed", "verdict"], checks.map(rowOf), 1),
      "",
      "</div>",
    ]),
  ].join("\n");
}
