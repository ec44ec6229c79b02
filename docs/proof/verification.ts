import { type CheckFile, off, type RunCheck } from "./checks.js";
import { table } from "./markdown.js";

const trustOf = ({ check }: RunCheck) => (check.read ? `${check.kind}, ${check.read}` : check.kind);

/** The kinds of source, the most trusted first; `tests/support/check.ts` says what they mean. */
const kinds = [
  "published, first-hand",
  "published, second-hand",
  "reference library",
  "worked by hand",
  "common practice",
  "from memory",
];

function counts(files: readonly CheckFile[]): string[] {
  const rows = files.map(({ name, checks }) => [
    `[${name}](#${name})`,
    ...kinds.map((kind) => String(checks.filter((one) => trustOf(one) === kind).length || "")),
    String(checks.length),
  ]);
  const all = files.flatMap(({ checks }) => checks);
  const sums = kinds.map((kind) => String(all.filter((one) => trustOf(one) === kind).length));
  return table(["", ...kinds, "all"], [...rows, ["all", ...sums, String(all.length)]], 1);
}

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
    `\`${check.call.split(".")[1]}\`: ${what.join(", ").replaceAll("-", " ")}<br><small>${check.source} (${trustOf(run)})</small>`,
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
    "Every value from outside that the tests hold the library to, and how far off it is, as found when this page was built: the number that is furthest off where a check compares several, as a share of the published one. A published figure carries no more digits than were printed, so that a deviation of half its last digit is agreement.",
    "",
    "*First-hand* was read in the source itself, *second-hand* in somebody's restatement of it. A *reference library* holds the equation or the data by itself. *Worked by hand* shows that the arithmetic is right, not that the equation is; it, *common practice* and what is *from memory* do not count as checks from outside.",
    "",
    "## How many there are",
    "",
    ...counts(files),
    ...files.flatMap(({ name, checks }) => [
      "",
      `## ${name}`,
      "",
      '<div class="proof">',
      "",
      ...table(["check and source", "published", "ours", "off by", "allowed", "verdict"], checks.map(rowOf), 1),
      "",
      "</div>",
    ]),
  ].join("\n");
}
