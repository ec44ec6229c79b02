// Run before typedoc: writes the pages and figures that are made from data, so that what they claim is what was run.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as gelwright from "gelwright";
import { type Check, compare, type Deviation } from "../tests/support/check.js";
import { draw } from "./plots/figure.js";
import { figures } from "./plots/figures.js";

const root = fileURLToPath(new URL("../", import.meta.url));
const read = <T>(file: string): T => JSON.parse(readFileSync(`${root}${file}`, "utf8")) as T;

interface Entry {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  readonly where: string;
  readonly read: string;
}

const cell = (text: string) => text.replaceAll("|", "\\|").replaceAll("\n", " ");

function bibliography(): string {
  const entries = Object.entries(read<Record<string, Entry>>("docs/bibliography.json"));
  return [
    "---\ntitle: Bibliography\n---",
    "",
    "Every source that a docstring or a check names, by its key. *Second-hand* means that somebody's restatement was read and not the work itself; *from memory* that neither was at hand.",
    "",
    ...entries
      .sort(([a], [b]) => a.localeCompare(b, "en"))
      .map(
        ([key, entry]) =>
          `- **${key}**: ${entry.authors} (${entry.year}). *${entry.title}*. ${entry.where}. (${entry.read})`,
      ),
  ].join("\n");
}

type Call = (...args: unknown[]) => unknown;

/** How far a compared number is off, as a share of what was expected. */
function off({ actual, expected, holds }: Deviation): number {
  if (typeof actual !== "number" || typeof expected !== "number") return holds ? 0 : Number.POSITIVE_INFINITY;
  return expected === 0 ? Math.abs(actual) : Math.abs(actual / expected - 1);
}

function row(check: Check): string {
  const [room = "", name = ""] = check.call.split(".");
  const call = (gelwright as unknown as Record<string, Record<string, Call>>)[room]?.[name];
  if (!call) throw new Error(`${check.id} calls ${check.call}, which there is not`);
  const inputs = (Array.isArray(check.inputs) ? check.inputs : [check.inputs]) as unknown[];
  const deviations = compare(call(...inputs), check);
  const worst = Math.max(...deviations.map(off));
  const trust = check.read ? `${check.kind}, ${check.read}` : check.kind;
  return `| ${[check.id, cell(check.source), trust, worst === 0 ? "exact" : worst.toExponential(0)].join(" | ")} |`;
}

function verification(): string {
  const files = readdirSync(`${root}tests/checks`).filter((name) => name.endsWith(".json"));
  return [
    "---\ntitle: Verification\n---",
    "",
    "Every value from outside that the tests hold the library to, and how far off it is: the largest relative deviation of any number compared, as found when this page was built. A published figure carries no more digits than were printed, so that a deviation of half its last digit is agreement. *Worked by hand* shows that the arithmetic is right, not that the equation is.",
    ...files.flatMap((file) => [
      "",
      `## ${file.replace(".json", "")}`,
      "",
      "| check | source | kind | off by |",
      "| --- | --- | --- | --- |",
      ...read<Check[]>(`tests/checks/${file}`).map(row),
    ]),
  ].join("\n");
}

mkdirSync(`${root}docs/pages`, { recursive: true });
writeFileSync(`${root}docs/pages/bibliography.md`, `${bibliography()}\n`);
writeFileSync(`${root}docs/pages/verification.md`, `${verification()}\n`);
for (const figure of figures()) writeFileSync(`${root}docs/pages/${figure.name}.svg`, draw(figure));
