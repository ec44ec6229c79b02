import { readFileSync } from "node:fs";
import { describe, docs, documents } from "../theme/documents.js";

/** A section of a page of theory, with the names in code marks that it speaks of. */
export interface Theory {
  /** Address from the front page. */
  readonly url: string;
  readonly page: string;
  readonly heading: string;
  readonly names: ReadonlySet<string>;
}

/** The place of a heading on its page, as the generator of the site makes it. */
function placeOf(heading: string): string {
  return heading
    .toLowerCase()
    .replaceAll(/[`*?,.:()'"!]/g, "")
    .trim()
    .replaceAll(/\s+/g, "-");
}

/** Every section of every page of theory. */
export function theory(): readonly Theory[] {
  return documents
    .filter((file) => !file.includes("/"))
    .flatMap((file) => {
      const { name, title } = describe(file);
      const parts = readFileSync(docs + file, "utf8").split(/^(?=##? )/m);
      return parts
        .filter((part) => part.startsWith("#"))
        .map((part, i) => {
          const heading = part.slice(part.indexOf(" ") + 1, part.indexOf("\n"));
          return {
            url: `documents/${name}.html${i === 0 ? "" : `#${placeOf(heading)}`}`,
            page: title,
            heading,
            names: new Set(
              [...part.matchAll(/\b([a-z]+[A-Z]\w*)\b|`(\w+)`/g)].map(([, name = "", marked = name]) => marked),
            ),
          };
        });
    });
}
