import { readFileSync } from "node:fs";
import { docs } from "../theme/documents.js";
import { table } from "./markdown.js";

/** The page *Glossary*, from the terms that the page *Names* holds, in the order of the alphabet. */
export function glossary(): string {
  const [, terms = ""] = readFileSync(`${docs}guides/names.md`, "utf8").split("## Terms of the trade\n");
  const rows = [...terms.matchAll(/^\| (.+?) \| (.+?) \| (.+?) \|$/gm)]
    .map(([, term = "", meaning = "", where = ""]) => [term, meaning, where] as const)
    .filter(([term]) => term !== "term" && !term.startsWith("---"))
    .sort(([a], [b]) => a.localeCompare(b, "en"));
  if (rows.length < 20) throw new Error("the page Names has no terms of the trade");
  const anchored = rows.map(([term, meaning, where]) => [
    `<span id="${term
      .split(",")[0]
      ?.toLowerCase()
      .replaceAll(/[^a-z]+/g, "-")}"></span>**${term}**`,
    meaning,
    where,
  ]);
  return [
    "# Glossary",
    "",
    "What the terms of these pages mean, and where each is used. [Names](../guides/names.md) says how names of functions and arguments are built.",
    "",
    "## Terms",
    "",
    ...table(["term", "meaning", "where"], anchored, 3),
  ].join("\n");
}
