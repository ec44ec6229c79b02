import type { CheckFile } from "./checks.js";
import { sources } from "./sources.js";
import { usesOf } from "./uses.js";

/** The page *Bibliography*: every source once, with where it is used. */
export function bibliography(files: readonly CheckFile[]): string {
  const entries = Object.entries(sources).sort(([a], [b]) => a.localeCompare(b, "en"));
  const uses = usesOf(entries.map(([key]) => key));
  const checks = files.flatMap((file) => file.checks);
  const used = (key: string) => {
    const count = checks.filter(({ check }) => check.bibliography === key).length;
    const all = [...(uses.get(key) ?? []), ...(count > 0 ? [`${count} of the [checks](verification.md)`] : [])];
    return all.length > 0 ? ` Used by ${all.join(", ")}.` : "";
  };
  return [
    "# Bibliography",
    "",
    "Every source that a docstring, a page or a check names, by its key. *Second-hand* means that a restatement was read, not the work itself; *from memory* that neither was available.",
    "",
    ...entries.map(
      ([key, entry]) =>
        `- <b id="${key}">${key}</b>: ${entry.authors} (${entry.year}). *${entry.title}*. ${entry.where}. (${entry.read})${used(key)}`,
    ),
  ].join("\n");
}
