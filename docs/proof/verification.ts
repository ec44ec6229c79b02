import { rankOf } from "../../tests/support/check.js";
import { nameOf, rooms } from "../../tests/support/rooms.js";
import { type CheckFile, off, type RunCheck } from "./checks.js";
import { constantsSection } from "./constants.js";
import { functionNames, functionProofs } from "./functions.js";
import { countsByKind, countsByQuality, gradeOf, isCountedOutside } from "./grades.js";
import { independentSection } from "./independent.js";
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

/** What went in, as long as it can be read at a glance. */
function inputsOf({ inputs, at }: RunCheck["check"]): string {
  const text =
    inputs === undefined
      ? ""
      : JSON.stringify(inputs)
          .replaceAll(/[{}"]/g, "")
          .replaceAll(/([:,])/g, "$1 ");
  const place = at === undefined ? "" : `, at ${at}`;
  return text === "" ? "" : `<br><small>With ${text.length > 240 ? `${text.slice(0, 240)} …` : text}${place}</small>`;
}

function rowOf(run: RunCheck): string[] {
  const { check, worst, compared } = run;
  const [, ...what] = check.id.split("/");
  const share = off(worst);
  const place = worst.path.split(".").slice(1).join(".");
  const one = share === 0 ? "one" : "the worst";
  const of = compared > 1 ? `<br><small>${place ? `${place}, ` : ""}${one} of ${compared}</small>` : "";
  const key = check.bibliography === undefined ? "" : `, \`${check.bibliography}\``;
  const note = check.note === undefined ? "" : `<br><small>${check.note}</small>`;
  return [
    `\`${check.call.split(".")[1]}\`: ${what.join(", ").replaceAll("-", " ")}<br><small>${check.source} (${gradeOf(check)})${key}</small>${note}${inputsOf(check)}`,
    String(worst.expected) + of,
    ours(worst.actual, worst.expected),
    shareOff(share),
    allowed(check.tolerance),
    run.holds ? "holds" : "**does not hold**",
  ];
}

const shareOff = (share: number) => (share === 0 ? "exact" : share.toExponential(0));

/** Checks by the room of what they call, in the order of the rooms. */
function byRoom(files: readonly CheckFile[]): ReadonlyMap<string, readonly CheckFile[]> {
  const found = rooms.map((room) => {
    const own = (run: RunCheck) => run.check.call.split(".")[0] === nameOf(room);
    const some = files.map(({ name, checks }) => ({ name, checks: checks.filter(own) }));
    return [room, some.filter(({ checks }) => checks.length > 0)] as const;
  });
  return new Map(found);
}

/** One row for each public function of a room: how it is proved, by what grade, how far off, within what. */
function functionRows(room: string, files: readonly CheckFile[]): string[][] {
  const runs = files.flatMap(({ checks }) => checks);
  const proofs = functionProofs();
  return functionNames(room).map((name) => {
    const own = runs.filter(({ check }) => check.call.split(".")[1] === name);
    const anchor = `<span id="${name.toLowerCase()}"></span>\`${name}\``;
    const tests = proofs.get(`${room}.${name}`)?.tests ?? [];
    if (own.length === 0)
      return [
        anchor,
        `${tests.length > 0 ? `tests of its properties: ${tests.join(", ")}` : "its example, run"}; tests with bad input`,
        "",
        "",
        "",
        "",
      ];
    const outside = own.filter(({ check }) => isCountedOutside(check)).length;
    const surest = own.reduce((best, one) => (rankOf(one.check) < rankOf(best.check) ? one : best));
    const worst = own.reduce((max, one) => (off(one.worst) > off(max.worst) ? one : max));
    return [
      anchor,
      gradeOf(surest.check),
      String(own.length),
      String(outside || ""),
      shareOff(off(worst.worst)),
      allowed(worst.check.tolerance),
    ];
  });
}

/** The page *Verification* of a room: a row for each function, then each check. */
export function roomVerification(room: string, all: readonly CheckFile[]): string {
  const files = byRoom(all).get(room) ?? [];
  return [
    `# Verification: ${room}`,
    "",
    `Every public function of \`gelwright/${room}\` and what proves it, then every check value with what was found when this page was built. [Verification](verification.md) says what the grades mean, and counts all rooms.`,
    "",
    "## Functions",
    "",
    "The grade is that of the most reliable check; *off by* is the largest deviation of all of them, as a share of the expected value, beside what that check allows. Inputs and figures are in the units of the function, SI units with temperatures in °C: its page names the unit of each. If *refused* is expected, the inputs lie just beyond the range of a law.",
    "",
    '<div class="proof">',
    "",
    ...table(["function", "proved by", "checks", "from outside", "off by", "allowed"], functionRows(room, files), 2),
    "",
    "</div>",
    ...files.flatMap(({ name, checks }) => [
      "",
      `## Checks: ${name}`,
      "",
      '<div class="proof">',
      "",
      ...table(["check and source", "expected", "ours", "off by", "allowed", "verdict"], checks.map(rowOf), 1),
      "",
      "</div>",
    ]),
  ].join("\n");
}

/** Rooms with public functions, each of which has a page of its own. */
export const provedRooms: readonly string[] = rooms.filter((room) => functionNames(room).length > 0);

/** The page *Verification*: what is claimed is what was run, in sum. */
export function verification(files: readonly CheckFile[]): string {
  const runs = files.flatMap(({ checks }) => checks);
  const failed = runs.filter(({ holds }) => !holds).length;
  const outside = runs.filter(({ check }) => isCountedOutside(check)).length;
  const numbers = runs.reduce((sum, { compared }) => sum + compared, 0);
  const rows = [...byRoom(files)].filter(([room]) => provedRooms.includes(room));
  return [
    "# Verification",
    "",
    `**${runs.length} checks compare ${numbers} numbers; ${failed === 0 ? "all hold" : `${failed} do not hold`}.** ${outside} rest on a figure from outside: printed in a source that a reader can get, or computed by a library that holds the equation itself. They were run when this page was built.`,
    "",
    "## By room",
    "",
    "Each room has a page with a row for every function and every check. A function without a check value of its own is covered by tests of its properties (conservation, inverses, limits), by its executed example and by tests with bad input.",
    "",
    ...table(
      ["room", "functions", "with a check", "checks", "from outside"],
      rows.map(([room, some]) => {
        const names = functionNames(room);
        const checks = some.flatMap((file) => file.checks.map(({ check }) => check));
        const checked = names.filter((name) => checks.some(({ call }) => call.split(".")[1] === name));
        return [
          `[${room}](verification-${room}.md)`,
          String(names.length),
          String(checked.length),
          String(checks.length),
          String(checks.filter(isCountedOutside).length),
        ];
      }),
      1,
    ),
    "",
    "## What the grades mean",
    "",
    "*Published* is a figure printed in a source that a reader can get; a *reference library* holds the equation or the data by itself. These two come from outside. An *independent method* is our own calculation by another method than that of the code. The *same formula*, evaluated a second time, shows that the arithmetic is right, not that the equation is. *Common practice* and *from memory* show less. *Aside* counts checks that would inflate the other columns: unit factors, roots of functions that have tables of their own, the same formula applied to another subject, answers on pages without a responsible author.",
    "",
    "A published figure has only the digits that were printed, so a deviation of half its last digit is agreement.",
    "",
    ...countsByKind(files),
    "",
    "The checks from outside, by the type of source. *First-hand* figures were read in the source itself, *second-hand* ones in a restatement of it.",
    "",
    ...countsByQuality(files),
    "",
    "## Constants",
    "",
    "Each constant of the library was changed, and the checks were run on each change: [Constants](constants.md) says which check notices, and which changes none does. The code was changed in the same way, and the tests were run on each change: [Mutants](mutants.md).",
    "",
    ...measuredSection(),
    "",
    ...independentSection(),
  ].join("\n");
}

/** The page *Constants*. */
export function constantsPage(): string {
  return ["# Constants", "", ...constantsSection().slice(2)].join("\n").replaceAll("\n### ", "\n## ");
}
