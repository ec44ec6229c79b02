import { type Found, readReasons, readRecords, reasonOf } from "../../tests/constants/records.js";
import { isOutside, rankOf } from "../../tests/support/check.js";
import { readChecks } from "../../tests/support/run-check.js";
import { table } from "./markdown.js";

interface Entry {
  readonly key: string;
  readonly room: string;
  readonly found: Found;
}

const survivesSmall = ({ found }: Entry) => typeof found !== "string" && found.survives.includes("+1 %");

function entries(): readonly Entry[] {
  return Object.entries(readRecords()).flatMap(([file, constants]) =>
    Object.entries(constants).map(([name, found]) => ({
      key: `${file}#${name}`,
      room: file.split("/")[1] ?? "",
      found,
    })),
  );
}

function counts(all: readonly Entry[]): string[] {
  const checks = new Map(readChecks().flatMap(({ checks: some }) => some.map((check) => [check.id, check] as const)));
  const rank = ({ found }: Entry) => {
    const check = checks.get(typeof found === "string" ? found : (found.by ?? ""));
    return check && (isOutside(check) ? 0 : rankOf(check));
  };
  const cells = (some: readonly Entry[]) => {
    const ranks = some.map(rank);
    return [...[0, 1, 2, 3, undefined].map((wanted) => ranks.filter((one) => one === wanted).length), some.length].map(
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
  const reasons = readReasons();
  const some = all.filter(({ found }) => typeof found !== "string");
  return Object.entries(reasons).flatMap(([start, reason]) => {
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
      `- **${start === "logarithm" ? "logarithms" : start.replace("src/", "")}**: ${reason}<br><small>${names.join(", ")}</small>`,
    ];
  });
}

/** The section on constants: each that ships was changed, and the checks were run on it. */
export function constantsSection(): readonly string[] {
  const all = entries();
  const caught = all.filter(({ found }) => typeof found === "string" || found.by !== undefined).length;
  return [
    "## Constants",
    "",
    `The library ships ${all.length} constants: numbers of tables, coefficients of correlations, factors of units and bases of logarithms, found by walking the sources. Each was made 1 % larger, twice, half and ten times as large, natural and decimal logarithms were exchanged, 273.15 was left out, and all checks were run on each change. ${caught} cannot move by 1 %, or to another base, without failing a check. The table says by which grade the surest check is that fails.`,
    "",
    ...counts(all),
    "",
    "### Changes that no check fails",
    "",
    "Named with the reason. Where no change is named it is the one by 1 %.",
    "",
    ...survivors(all),
  ];
}
