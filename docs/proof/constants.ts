import { type Found, isTable, type Reason, readReasons, readRecords, reasonOf } from "../../tests/constants/records.js";
import { type Check, isOutside, isRefusal, rankOf } from "../../tests/support/check.js";
import { readChecks } from "../../tests/support/run-check.js";
import { gradeOf } from "./grades.js";
import { table } from "./markdown.js";

interface Entry {
  readonly key: string;
  readonly file: string;
  readonly room: string;
  readonly found: Found;
}

const survivesSmall = ({ found }: Entry) => typeof found !== "string" && found.survives.includes("+1 %");

function entries(): readonly Entry[] {
  return Object.entries(readRecords()).flatMap(([file, constants]) =>
    Object.entries(constants).map(([name, found]) => ({
      key: `${file}#${name}`,
      file,
      room: file.split("/")[1] ?? "",
      found,
    })),
  );
}

const reasons = readReasons();
const checks = new Map(readChecks().flatMap(({ checks: some }) => some.map((check) => [check.id, check] as const)));

/** The surest check that holds an entry, if one does. */
const holderOf = ({ found }: Entry): Check | undefined =>
  checks.get(typeof found === "string" ? found : (found.by ?? ""));

/** How sure it is. */
function rank(entry: Entry): number | undefined {
  const check = holderOf(entry);
  return check && (isOutside(check) ? 0 : rankOf(check));
}

/** A figure of a source, or one of ours: by its reason, or because only the library's own output holds it. */
function sortOf(entry: Entry): Reason["sort"] {
  const check = holderOf(entry);
  if (check) return check.aside !== "own output" ? "figure" : isRefusal(check) ? "setting" : "judgement";
  const { key, found } = entry;
  if (typeof found === "string" || found.by !== undefined) return "figure";
  return reasons[reasonOf(reasons, key, found.survives) ?? ""]?.sort ?? "figure";
}

/** The share that is held from outside or by an independent method, of all and of parts. */
function shares(all: readonly Entry[]): string[] {
  const row = (name: string, some: readonly Entry[]) => {
    const held = some.filter((entry) => (rank(entry) ?? 2) < 2).length;
    return [name, String(held), String(some.length), `${Math.floor((1000 * held) / some.length) / 10}\u00a0%`];
  };
  const rest = all.filter(({ file }) => !isTable(file));
  return table(
    ["", "held from outside or by an independent method", "of", "share"],
    [
      row("everything that is counted", all),
      row(
        "tables of data, written down row by row",
        all.filter(({ file }) => isTable(file)),
      ),
      row("constants and correlations", rest),
      row(
        "constants and correlations without settings",
        rest.filter((entry) => sortOf(entry) !== "setting"),
      ),
      row(
        "and without judgements of ours",
        rest.filter((entry) => sortOf(entry) === "figure"),
      ),
    ],
    1,
  );
}

function counts(all: readonly Entry[]): string[] {
  const cells = (some: readonly Entry[]) => {
    const found = some.map(rank);
    return [...[0, 1, 2, 3, undefined].map((wanted) => found.filter((one) => one === wanted).length), some.length].map(
      (count) => String(count || ""),
    );
  };
  const rooms = [...new Set(all.map(({ room }) => room))].sort();
  return table(
    ["room", "from outside", "independent method", "same formula", "from memory", "none", "all"],
    [...rooms.map((room) => [`\`${room}\``, ...cells(all.filter((one) => one.room === room))]), ["all", ...cells(all)]],
    1,
  );
}

/** The survivors that share a reason, named file by file. */
function survivors(all: readonly Entry[]): string[] {
  const some = all.filter(({ found }) => typeof found !== "string");
  return Object.entries(reasons).flatMap(([start, { sort, reason }]) => {
    const named = some.filter(
      ({ key, found }) => typeof found !== "string" && reasonOf(reasons, key, found.survives) === start,
    );
    if (named.length === 0) return [];
    const names = named.map((one) => {
      const name = one.key.slice(start === "logarithm" ? 4 : one.key.indexOf("#") + 1);
      const { found } = one;
      const changes = survivesSmall(one) || typeof found === "string" ? "" : ` (${found.survives.join(", ")})`;
      return `\`${name}\`${changes}`;
    });
    return [
      `- **${start === "logarithm" ? "logarithms" : start.replace("src/", "")}** (${sort}): ${reason}<br><small>${names.join(", ")}</small>`,
    ];
  });
}

/** The constants that no check from outside and no independent method holds, by the source of the check that does. */
function lesserHeld(all: readonly Entry[]): string[] {
  const held = new Map<string, Entry[]>();
  for (const entry of all) {
    const check = holderOf(entry);
    if (!check || rankOf(check) < 2) continue;
    const basis = `(${gradeOf(check)}): ${check.source}`;
    held.set(basis, [...(held.get(basis) ?? []), entry]);
  }
  return [...held].map(([basis, some]) => {
    const files = [...new Set(some.map(({ file }) => file.replace("src/", "")))].join(", ");
    const names = some.map(({ key }) => `\`${key.slice(key.indexOf("#") + 1)}\``).join(", ");
    return `- **${files}** ${basis}<br><small>${names}</small>`;
  });
}

/** The section on constants: each that ships was changed, and the checks were run on it. */
export function constantsSection(): readonly string[] {
  const all = entries();
  const caught = all.filter(({ found }) => typeof found === "string" || found.by !== undefined).length;
  const unseen = all.filter(survivesSmall);
  const settings = unseen.filter((entry) => sortOf(entry) === "setting").length;
  return [
    "## Constants",
    "",
    `The library ships ${all.length} constants: numbers of tables, coefficients of correlations, factors of units and bases of logarithms, found by walking the sources. Each was made 1 % larger, twice, half and ten times as large, natural and decimal logarithms were exchanged, 273.15 was left out, and all checks were run on each change. ${caught} cannot move by 1 %, or to another base, without failing a check; ${unseen.length} can move by 1 % unnoticed, and ${settings} of these are settings. The table counts them by the grade of the surest check that fails.`,
    "",
    ...counts(all),
    "",
    "A setting is where a search begins, how finely it goes, or a limit of ours beyond which a law is refused: 1 % more moves no figure. A judgement is a band, a tolerance or a default of ours: no source prints it, and the checks that hold it repeat what the pages state. Both stand in the first rows and are left out of the last ones. The end of a range that a source states is a figure: a check just beyond it must be refused.",
    "",
    "Rows of tables that are from memory were written down a second time, which finds a slip but not a wrong memory. Their sources were searched for again, by several words and figures, in several languages; the [Bibliography](bibliography.md) says for each source what was searched for and what was found: `codex-210-1999`, `codex-33-1981`, `ph-eur-mct`, `nist-hb-133`, `oiml-r-87-2004`, `sccs-1647-22`.",
    "",
    ...shares(all),
    "",
    "### Changes that no check fails",
    "",
    "Named with the sort and the reason. Where no change is named it is the one by 1 %.",
    "",
    ...survivors(all),
    "",
    "### Held by weaker checks alone",
    "",
    "Constants that no check from outside and no independent method holds, each with the grade and the source of the surest check that fails when it is 1 % larger.",
    "",
    ...lesserHeld(all),
  ];
}
