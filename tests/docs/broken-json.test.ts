import * as fc from "fast-check";
import { expect, test } from "vitest";
import { brokenAt, lineAndColumn } from "../../docs/try-it/broken.js";

/** Line and column at which a text stops being JSON. */
function placeIn(text: string): string | undefined {
  const broken = brokenAt(text);
  if (!broken) return undefined;
  const { line, column } = lineAndColumn(text, broken.place.start);
  return `line ${line} column ${column}`;
}

/** Each with the place of its first fault; what ends too early is at fault behind its last sign. */
const cases = [
  ['{\n  "a": 1\n  "b": 2\n}', "line 3 column 3"],
  ['// a comment\n{ "a": 1 }', "line 1 column 1"],
  ['{\n  "a": 1, // a comment\n  "b": 2\n}', "line 2 column 11"],
  ['{\n  "a": [1, 2,\n  3\n', "line 3 column 4"],
  ['{ "a": 1, }', "line 1 column 11"],
  ["{ 'a': 1 }", "line 1 column 3"],
  ['{ "a": 1 } x', "line 1 column 12"],
  ["", "line 1 column 1"],
] as const;

test("a fault of JSON is placed where it is, and not where the text ends", () => {
  for (const [text, place] of cases) expect(placeIn(text), text).toBe(place);
});

test("what is said of it names what stands there and what may", () => {
  expect(brokenAt('{ "a": 1 "b": 2 }')).toMatchObject({ found: '"b"', expected: "a comma, or } for the end" });
  expect(brokenAt("// x\n{}")).toMatchObject({ found: "a comment, // x", expected: "no comment: JSON has none" });
});

/** Texts near JSON: sound ones, with a piece put in or taken out. */
const near = fc
  .tuple(
    fc.json(),
    fc.nat(),
    fc.constantFrom("", ",", "}", "]", ":", '"', "//", "/*", "1", "-", "tru", "\u00a0", "\\", "\t", "\n"),
    fc.nat(2),
  )
  .map(([text, at, piece, cut]) => {
    const place = at % (text.length + 1);
    return text.slice(0, place) + piece + text.slice(place + cut);
  });

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

test("a text has a fault exactly where it is no JSON", () => {
  fc.assert(
    fc.property(near, (text) => {
      expect(brokenAt(text) === undefined).toBe(parses(text));
    }),
    { numRuns: 2000 },
  );
});

test("nothing before the fault is wrong: where the engine gives a place, it lies within ours or behind its start", () => {
  fc.assert(
    fc.property(near, (text) => {
      const broken = brokenAt(text);
      if (!broken) return;
      try {
        JSON.parse(text);
      } catch (error) {
        const [, position] = /position (\d+)/.exec(String(error)) ?? [];
        if (position !== undefined) expect(Number(position)).toBeGreaterThanOrEqual(broken.place.start);
      }
    }),
    { numRuns: 2000 },
  );
});
