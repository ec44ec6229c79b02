import type { Result } from "./leaves.js";
import type { Names } from "./names.js";

/** What is counted of one group of results. */
export interface Counts {
  resultsOld: number;
  resultsNew: number;
  leavesOld: number;
  leavesNew: number;
  doubles: number;
  /** A double with other bits, or a value of another kind. */
  digits: number;
  /** A text that the map does not give, though all figures in it are the same. */
  words: number;
  missing: number;
  added: number;
  /** Two old paths of one result that the map sends to one. */
  clashes: number;
}

export interface Difference {
  readonly kind: "digits" | "words" | "missing" | "added" | "clash" | "no result" | "new result";
  readonly group: string;
  readonly id: string;
  /** Where it stands, without the numbers of lists: differences of one kind and place are told once. */
  readonly place: string;
  readonly text: string;
}

export interface Comparison {
  readonly counts: ReadonlyMap<string, Counts>;
  readonly differences: readonly Difference[];
  /** `old -> new` of every field whose name changed, with the number of leaves below it. */
  readonly renamed: ReadonlyMap<string, number>;
}

/** Every result of the old tip against its twin of the new one. */
export function compareTips(old: readonly Result[], now: readonly Result[], names: Names): Comparison {
  const counts = new Map<string, Counts>();
  const differences: Difference[] = [];
  const renamed = new Map<string, number>();
  /** What a path of a function became: the same in all of its results. */
  const chosen = new Map<string, string>();
  const countsOf = (group: string): Counts => {
    const found = counts.get(group) ?? emptyCounts();
    counts.set(group, found);
    return found;
  };
  for (const { group, leaves } of now) {
    countsOf(group).resultsNew++;
    countsOf(group).leavesNew += leaves.length;
  }
  const { pairs, oldAlone, newAlone } = pairsOf(old, now, names);
  for (const { group, leaves } of old) {
    countsOf(group).resultsOld++;
    countsOf(group).leavesOld += leaves.length;
  }
  for (const { group, id } of oldAlone) differences.push(alone("no result", group, id));
  // What only the new tip's tests know to be valid says nothing on the old one.
  const told = newAlone.filter(({ group }) => group !== "valid inputs");
  for (const { group, id } of told) differences.push(alone("new result", group, id));
  for (const [before, after] of pairs) {
    const found = compareResult(before, after, names);
    const sum = countsOf(before.group);
    for (const key of ["doubles", "digits", "words", "missing", "added", "clashes"] as const)
      sum[key] += found.counts[key];
    differences.push(...found.differences);
    for (const [from, to] of found.paths) {
      for (const [i, word] of from.entries())
        if (word !== to[i]) renamed.set(`${word} -> ${to[i]}`, (renamed.get(`${word} -> ${to[i]}`) ?? 0) + 1);
      const place = `${before.call ?? before.id} ${anyIndex(from)}`;
      const known = chosen.get(place) ?? anyIndex(to);
      chosen.set(place, known);
      if (known !== anyIndex(to))
        differences.push({
          kind: "clash",
          group: before.group,
          id: before.id,
          place,
          text: `${place} is ${known} and ${anyIndex(to)}`,
        });
    }
  }
  return { counts, differences, renamed };
}

function alone(kind: Difference["kind"], group: string, id: string): Difference {
  return { kind, group, id, place: `${group} ${id}`, text: kind };
}

/** A path of a result without the numbers of its lists. */
function anyIndex(path: readonly string[]): string {
  return path.map((word) => (word.startsWith("[") ? "[]" : word)).join(".");
}

function emptyCounts(): Counts {
  const zero = { resultsOld: 0, resultsNew: 0, leavesOld: 0, leavesNew: 0, doubles: 0 };
  return { ...zero, digits: 0, words: 0, missing: 0, added: 0, clashes: 0 };
}

interface Pairs {
  readonly pairs: readonly (readonly [Result, Result])[];
  readonly oldAlone: readonly Result[];
  readonly newAlone: readonly Result[];
}

/**
 * Twins have the same name, as mapped. Where two functions became one, or an id is new, the results of one function
 * are matched first with one that is equal, then in their order.
 */
function pairsOf(old: readonly Result[], now: readonly Result[], names: Names): Pairs {
  const free = new Map<string, Result[]>();
  for (const result of now) {
    const key = keyOf(result.group, placeOf(result));
    free.set(key, [...(free.get(key) ?? []), result]);
  }
  const pairs: [Result, Result][] = [];
  const take = (before: Result, fits: (after: Result) => boolean): boolean => {
    for (const place of placesNow(before, names)) {
      const left = free.get(keyOf(before.group, place)) ?? [];
      const at = left.findIndex(fits);
      if (at < 0) continue;
      pairs.push([before, left[at] as Result]);
      left.splice(at, 1);
      return true;
    }
    return false;
  };
  const hasName = (before: Result) => (after: Result) =>
    after.id === before.id || placesNow(before, names).some((place) => after.id === place + numberOf(before));
  const equal = (before: Result) => (after: Result) => compareResult(before, after, names).differences.length === 0;
  const passes = [
    (before: Result) => take(before, (after) => hasName(before)(after) && (!isOfMany(before) || equal(before)(after))),
    (before: Result) => isOfMany(before) && take(before, equal(before)),
    (before: Result) => take(before, hasName(before)),
    (before: Result) => isOfMany(before) && take(before, () => true),
  ];
  const oldAlone = passes.reduce((rest, pass) => rest.filter((before) => !pass(before)), old);
  return { pairs, oldAlone, newAlone: [...free.values()].flat() };
}

const keyOf = (group: string, place: string): string => `${group}\n${place}`;

/** Whether its function or page gives several results, that may have changed their names or their order. */
function isOfMany({ group }: Result): boolean {
  return group === "checks" || group === "examples" || group === "valid inputs";
}

function numberOf({ id, group }: Result): string {
  return group === "checks" ? "" : (/ \d+$/.exec(id)?.[0] ?? "");
}

/** The function, or the page: what holds the results that are matched. */
function placeOf(result: Result): string {
  if (!isOfMany(result)) return result.id;
  return result.call ?? result.id.replace(/ \d+$/, "");
}

/** Where a result of the old tip may stand on the new one. */
function placesNow(result: Result, names: Names): readonly string[] {
  const place = placeOf(result);
  return /^\w+\.\w+$/.test(place) ? names.calls(place) : [place];
}

interface ResultCompared {
  readonly counts: Counts;
  readonly differences: readonly Difference[];
  readonly paths: readonly (readonly [from: readonly string[], to: readonly string[]])[];
}

function compareResult(before: Result, after: Result, names: Names): ResultCompared {
  const counts = emptyCounts();
  const paths: (readonly [readonly string[], readonly string[]])[] = [];
  const differences: Difference[] = [];
  const { group, id } = before;
  const say = (kind: Difference["kind"], path: readonly string[], text: string) =>
    differences.push({ kind, group, id, place: `${before.call ?? group} ${anyIndex(path)}`, text });
  const left = new Map(after.leaves.map(([path, value]) => [path.join("."), value]));
  const reached = new Set<string>();
  for (const [path, value] of before.leaves) {
    const candidates = names.paths(path);
    const there = candidates.filter((one) => left.has(one.join(".")));
    const choice = there.find((one) => !reached.has(one.join("."))) ?? there[0];
    const to = choice?.join(".");
    if (value.startsWith("double ")) counts.doubles++;
    if (choice === undefined || to === undefined) {
      counts.missing++;
      say("missing", path, `${path.join(".")} (${candidates.map((one) => one.join(".")).join(" or ")}): ${value}`);
      continue;
    }
    const found = left.get(to) ?? "";
    paths.push([path, choice]);
    if (reached.has(to)) {
      counts.clashes++;
      say("clash", path, `${path.join(".")} and another become ${to}`);
    } else if (!isSame(value, found, names)) {
      const kind = figuresIn(value) === figuresIn(found) && value.startsWith("text ") ? "words" : "digits";
      counts[kind]++;
      say(kind, path, `${path.join(".")}: ${short(value)}\n      now ${short(found)}`);
    }
    reached.add(to);
  }
  for (const [path, value] of after.leaves)
    if (!reached.has(path.join("."))) {
      counts.added++;
      say("added", path, `${path.join(".")}: ${value}`);
    }
  return { counts, differences, paths };
}

const short = (text: string): string => (text.length > 300 ? `${text.slice(0, 300)} ...` : text);

function isSame(value: string, found: string, names: Names): boolean {
  if (value === found) return true;
  if (!value.startsWith("text ") || !found.startsWith("text ")) return false;
  const [before, after] = [value.slice(5), found.slice(5)];
  return isRenamed(before, after, names) || areCellsRenamed(before, after, names);
}

const isRenamed = (before: string, after: string, names: Names): boolean => names.texts(before).includes(after);

/** Tables in Markdown or CSV, and JSON: each cell is a name or a text of its own. */
function areCellsRenamed(before: string, after: string, names: Names): boolean {
  const [old, now] = [before, after].map((line) => line.split(/\s*[|,:"\n]\s*/)) as [string[], string[]];
  return old.length > 1 && old.length === now.length && old.every((cell, i) => isRenamed(cell, now[i] ?? "", names));
}

/** All figures of a text, in their order. */
function figuresIn(text: string): string {
  return (text.match(/\d+(?:[.,]\d+)*(?:e[+-]?\d+)?/g) ?? []).join(" ");
}
