import { type Check, isOutside, kinds, type Quality, qualities } from "../../tests/support/check.js";
import type { CheckFile } from "./checks.js";
import { table } from "./markdown.js";
import { sources } from "./sources.js";

/** What sort of source was read for a check, where one was. */
function qualityOf({ quality, bibliography: key }: Check): Quality | undefined {
  return quality ?? sources[key ?? ""]?.quality;
}

/** Whether a check is counted among those from outside: it is one, and nothing takes it down. */
export function isCountedOutside(check: Pick<Check, "kind" | "aside">): boolean {
  return isOutside(check) && check.aside === undefined;
}

/** The grade of a check in words: how it was had, from what sort of source, and what takes it down. */
export function gradeOf(check: Check): string {
  const quality = check.kind === "published" ? qualityOf(check) : undefined;
  return [check.kind, quality, check.read, check.aside].filter((word) => word !== undefined).join(", ");
}

/** How many checks of each kind a file has, without those that are aside. */
export function countsByKind(files: readonly CheckFile[]): string[] {
  const cells = (checks: readonly Check[]) => {
    const headline = checks.filter(({ aside }) => aside === undefined);
    return [
      ...kinds.map((kind) => headline.filter((one) => one.kind === kind).length),
      checks.length - headline.length,
      checks.length,
    ].map((count) => (count === 0 ? "" : String(count)));
  };
  const checksOf = ({ checks }: CheckFile) => checks.map(({ check }) => check);
  return table(
    ["", ...kinds, "aside", "all"],
    [...files.map((file) => [file.name, ...cells(checksOf(file))]), ["all", ...cells(files.flatMap(checksOf))]],
    1,
  );
}

/** How many of the checks from outside rest on which sort of source. */
export function countsByQuality(files: readonly CheckFile[]): string[] {
  const outside = files.flatMap(({ checks }) => checks.map(({ check }) => check)).filter(isCountedOutside);
  const reads = ["first-hand", "second-hand", undefined] as const;
  const count = (quality: Quality, read: Check["read"]) =>
    outside.filter((check) => qualityOf(check) === quality && check.read === read).length;
  return table(
    ["source", "read first-hand", "read second-hand", "run"],
    qualities
      .map((quality) => [quality, ...reads.map((read) => String(count(quality, read) || ""))])
      .filter(([, ...cells]) => cells.some((cell) => cell !== "")),
    1,
  );
}
