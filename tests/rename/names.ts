// How old names become new ones, from the tables of `map.ts` in the new checkout. A word with two meanings becomes one
// of several: the comparison takes the one that is there, and holds every function to one choice a path.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** What old names may have become: what is likeliest first, themselves last. */
export interface Names {
  readonly calls: (call: string) => readonly string[];
  readonly paths: (path: readonly string[]) => readonly (readonly string[])[];
  readonly texts: (text: string) => readonly string[];
}

type Table = Readonly<Record<string, string>>;

/** The tables of `map.ts`. */
interface Tables {
  readonly everywhere?: Table;
  readonly there?: readonly { readonly old: string; readonly new: string }[];
  readonly functions?: Table;
  readonly rooms?: Table;
  readonly checkIds?: Table;
  readonly values?: Table;
  readonly rules?: readonly { readonly old: string; readonly new: string }[];
  readonly internal?: Table;
  /** Sentences that were written anew, after review. */
  readonly sentences?: readonly (readonly [old: string | RegExp, now: string])[];
}

/** The tables of `map.ts`, what its script knows beyond them in `rules.ts`, and what only the results show. */
export async function namesOf(checkout: string): Promise<Names> {
  const load = async (name: string): Promise<Tables> => {
    const file = join(checkout, "tests/rename", name);
    return existsSync(file) ? ((await import(pathToFileURL(file).href)) as Tables) : {};
  };
  const [map, { rules = [], internal = {} }] = [await load("map.ts"), await load("rules.ts")];
  const more = [...rules, ...[internal, seenInResults].flatMap(wordsIn)];
  return namesFrom({ ...map, there: [...(map.there ?? []), ...more] });
}

const wordsIn = (table: Table) => Object.entries(table).map(([old, now]) => ({ old, new: now }));

/** Keys of `heat.stirredCorrelations`, that are kinds of impellers now. */
const seenInResults: Table = {
  discTurbine: "disc turbine",
  flatBladeTurbine: "flat-blade turbine",
  pitchedBladeTurbine: "pitched-blade turbine",
  helicalRibbon: "helical ribbon",
};

function namesFrom({
  everywhere = {},
  there = [],
  functions = {},
  rooms = {},
  checkIds = {},
  values = {},
  sentences = [],
}: Tables): Names {
  const wordsOf = (word: string): readonly string[] => {
    const found = [
      ...there.filter((one) => one.old === word).map((one) => one.new),
      everywhere[word],
      values[word],
      word,
    ];
    return [...new Set(found.filter((one) => one !== undefined))];
  };
  const calls = (call: string): readonly string[] => {
    const [room = "", name = ""] = call.split(".");
    const plain = functions[call] ?? `${rooms[room] ?? room}.${everywhere[name] ?? name}`;
    return [...new Set([plain, plain.replace(/ByLaw$/, ""), call])];
  };
  const idOf = (text: string): string => {
    const [id = "", ...rest] = text.split(":");
    return [checkIds[id] ?? id, ...rest].join(":");
  };
  const inText = (text: string, change: (word: string) => string) => text.replaceAll(/[A-Za-z][\w]*/g, change);
  const last = (word: string) => everywhere[word] ?? word;
  const rewritten = (text: string) => sentences.reduce((so, [old, now]) => so.replaceAll(old, now), text);
  return {
    calls,
    paths: (path) =>
      path.reduce<readonly (readonly string[])[]>(
        (so, word) => so.flatMap((start) => wordsOf(word).map((one) => [...start, one])),
        [[]],
      ),
    texts: (text) => {
      const now = rewritten(text);
      const camel = inText(now, (word) => (/[a-z][A-Z]/.test(word) ? last(word) : word));
      return [
        text,
        values[text],
        idOf(text),
        now,
        camel,
        inText(now, last),
        inText(now, (word) => wordsOf(word)[0] ?? word),
      ].filter((one) => one !== undefined);
    },
  };
}
