import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import * as gelwright from "gelwright";
import { root } from "../../tests/support/rooms.js";
import { describe, documents } from "../theme/documents.js";

const publicNames = new Set(Object.values(gelwright).flatMap((room) => Object.keys(room)));

/** The public functions and values whose docstring names a source, by what it says. */
function sourced(): { readonly name: string; readonly source: string }[] {
  return readdirSync(`${root}src`, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .flatMap((file) => [
      ...readFileSync(`${root}src/${file}`, "utf8").matchAll(
        /\/\*\*((?:(?!\*\/).)*)\*\/\s*export (?:function|const) (\w+)/gs,
      ),
    ])
    .filter(([, , name = ""]) => publicNames.has(name))
    .map(([, words = "", name = ""]) => ({ name, source: /@source(.*?)(?:@|$)/s.exec(words)?.[1] ?? "" }));
}

/** Where each key of the bibliography is used: in functions, in pages of the site. */
export function usesOf(keys: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const functions = sourced();
  const pages = documents
    .filter((file) => !file.startsWith("pages/"))
    .map((file) => ({ file, text: readFileSync(`${root}docs/${file}`, "utf8") }));
  return new Map(
    keys.map((key) => [
      key,
      [
        ...functions.filter(({ source }) => source.split(/[\s,;:.()]+/).includes(key)).map(({ name }) => `\`${name}\``),
        ...pages
          .filter(({ text }) => text.includes(`\`${key}\``))
          .map(({ file }) => `[${describe(file).title}](../${file.startsWith("guides/") ? file : basename(file)})`),
      ],
    ]),
  );
}
