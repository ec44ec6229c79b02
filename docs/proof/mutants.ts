import { allOf, type Reached, readCoverage, shareOf } from "../../tests/coverage/record.js";
import { explainedIn, readReasons, readScores } from "../../tests/mutants/records.js";
import { table } from "./markdown.js";

const scores = Object.entries(readScores());
const reasons = readReasons();

/** Where a file is counted: a room, and of `plan` the folder, the judge, or all other files at its top. */
function placeOf(file: string): string {
  const [, room = "", part = ""] = file.split("/");
  const isOwn = room === "plan" && (part === "judge.ts" || !part.endsWith(".ts"));
  return isOwn ? `src/plan/${part}` : `src/${room}`;
}

const places = [...new Set(scores.flatMap(([file, { tried }]) => (tried > 0 ? placeOf(file) : [])))].sort();

function foundIn(place: string): { readonly mutants: number; readonly tried: number; readonly killed: number } {
  const found = { mutants: 0, tried: 0, killed: 0 };
  for (const [file, { mutants, tried, killed }] of scores) {
    if (placeOf(file) !== place) continue;
    found.mutants += mutants;
    found.tried += tried;
    found.killed += killed;
  }
  return found;
}

const percent = (share: number): string => `${Math.floor(1000 * share) / 10}\u00a0%`;

function row(place: string): string[] {
  const { mutants, tried, killed } = foundIn(place);
  const explained = scores
    .filter(([file]) => placeOf(file) === place)
    .reduce((total, [, score]) => total + explainedIn(score, reasons), 0);
  return [`\`${place}\``, ...[mutants, tried, killed].map(String), percent(killed / tried), String(explained)];
}

/** The share of the changes of `plan` that is killed, if in each of its folders it is that of the changes that were tried. */
function shareOfPlan(): number {
  const found = places.filter((place) => place.startsWith("src/plan")).map(foundIn);
  const killed = found.reduce((sum, { mutants, tried, killed: some }) => sum + (mutants * some) / tried, 0);
  return killed / found.reduce((sum, { mutants }) => sum + mutants, 0);
}

function reached(name: string, { lines, branches }: { readonly lines: Reached; readonly branches: Reached }): string[] {
  const inWords = (of: Reached): string => `${of.covered} of ${of.total} (${Math.floor(1000 * shareOf(of)) / 10} %)`;
  return [name, inWords(lines), inWords(branches)];
}

/** The page *Mutants*: of the changes that were made to the source on trial, how many a test noticed. */
export function mutantsPage(): string {
  const left = new Set(scores.flatMap(([, score]) => score.left));
  const coverage = readCoverage();
  return [
    "# Mutants",
    "",
    "A test that cannot fail shows nothing. To find such tests, the source was changed in one place at a time, by the default mutators of Stryker (a comparison reversed or its equality dropped, a condition fixed as true or false, a sum turned into a difference, a list emptied, a block left out), and the tests of its room were run on each change. A change on which a test fails is killed. `npm run mutants` does it; texts, which are codes here, are not counted.",
    "",
    `If not all changes were tried, those that were are a random sample with a seed; in the questions and the steps of a plan the changes of a comparison were tried before all others. On the parts and the top of \`plan\` its quick tests were tried, and others on what those let pass. These two are small samples: weighted by how many changes each folder of \`plan\` has, ${percent(shareOfPlan())} of all its changes are killed. A change that no test can notice is explained below; each of the other survivors is a test still to be written, and is listed in \`tests/mutants/scores.json\`.`,
    "",
    ...table(["", "mutants", "tried", "killed", "share", "explained"], places.map(row), 1),
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
