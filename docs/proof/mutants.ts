import { allOf, type Reached, readCoverage, shareOf } from "../../tests/coverage/record.js";
import { explainedIn, readReasons, readScores, type Score } from "../../tests/mutants/records.js";
import { table } from "./markdown.js";

const scores = Object.entries(readScores());
const reasons = readReasons();

/** Where a file is counted: a room, and of `plan` the folder, the judge, or all other files at its top. */
function placeOf(file: string): string {
  const [, room = "", part = ""] = file.split("/");
  const isOwn = room === "plan" && (part === "judge.ts" || !part.endsWith(".ts"));
  return isOwn ? `src/plan/${part}` : `src/${room}`;
}

function row(place: string, some: readonly Score[]): string[] {
  const sum = (of: (score: Score) => number): number => some.reduce((total, score) => total + of(score), 0);
  const [tried, killed] = [sum((one) => one.tried), sum((one) => one.killed)];
  const explained = sum((score) => explainedIn(score, reasons));
  const numbers = [sum((one) => one.mutants), tried, killed].map(String);
  return [`\`${place}\``, ...numbers, `${Math.floor((1000 * killed) / tried) / 10}\u00a0%`, String(explained)];
}

function reached(name: string, { lines, branches }: { readonly lines: Reached; readonly branches: Reached }): string[] {
  const inWords = (of: Reached): string => `${of.covered} of ${of.total} (${Math.floor(1000 * shareOf(of)) / 10} %)`;
  return [name, inWords(lines), inWords(branches)];
}

/** The page *Mutants*: of the changes that were made to the source on trial, how many a test noticed. */
export function mutantsPage(): string {
  const places = [...new Set(scores.flatMap(([file, { tried }]) => (tried > 0 ? placeOf(file) : [])))].sort();
  const left = new Set(scores.flatMap(([, score]) => score.left));
  const coverage = readCoverage();
  return [
    "# Mutants",
    "",
    "A test that cannot fail shows nothing. To find such tests, the source was changed in one place at a time, by the default mutators of Stryker (a comparison reversed or its equality dropped, a condition fixed as true or false, a sum turned into a difference, a list emptied, a block left out), and the tests of its room were run on each change. A change on which a test fails is killed. `npm run mutants` does it; texts, which are codes here, are not counted.",
    "",
    "If not all changes were tried, those that were are a random sample with a seed; in the questions and the steps of a plan the changes of a comparison were tried before all others. On the parts and the top of `plan` its quick tests were tried, and others on what those let pass. These two are small samples: counted by how many changes each folder of `plan` has, about 86 % of all its changes are killed. A change that no test can notice is explained below; each of the other survivors is a test still to be written, and is listed in `tests/mutants/scores.json`.",
    "",
    ...table(
      ["", "mutants", "tried", "killed", "share", "explained"],
      places.map((place) =>
        row(
          place,
          scores.filter(([file]) => placeOf(file) === place).map(([, score]) => score),
        ),
      ),
      1,
    ),
    "",
    "## Changes that no test can notice",
    "",
    ...table(
      ["change", "why"],
      Object.entries(reasons)
        .filter(([key]) => left.has(key))
        .map(([key, why]) => [`\`\` ${key} \`\``, why]),
      2,
    ),
    "",
    "## Lines and branches",
    "",
    "A test can notice a change only in a line that it runs. `npm run coverage` counts the lines and branches of each folder of `src` that the tests run, without the suites that test the package, the site or another process; no comment in the source leaves code out of the count. The aims are 99 % of lines and 97 % of branches. Most branches that no test runs are there for a value that the types allow to be missing.",
    "",
    ...table(
      ["", "lines", "branches"],
      [
        ...Object.entries(coverage).map(([name, found]) => reached(`\`src/${name}\``, found)),
        reached("all", allOf(coverage)),
      ],
      1,
    ),
  ].join("\n");
}
