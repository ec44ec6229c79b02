// `npm run hostile`: what a document or a text costs that somebody wrote to do harm, against its size. Times drift with the
// machine; that they grow with the size and no faster is what counts. The table stands in docs/guides/documents.md.
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { trend } from "gelwright/stability";
import { parseQuantity } from "gelwright/units";
import { markdownText } from "../src/sheet/escape.js";
import { table } from "./table.js";

const sizes = [100, 1000, 10_000, 100_000];

const oil = { name: "oil", function: "oil" };
const line = { material: "oil", amount: "1 g" };
const many = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i));
const keyed = <T>(count: number, key: string, value: T): Record<string, T> =>
  Object.fromEntries(many(count, (i) => [`${key} ${i}`, value]));
const formulaWith = (more: object): object => ({
  version: 1,
  name: "trial",
  materials: { oil },
  phases: [{ name: "A", lines: [line] }],
  ...more,
});

/** What has so many letters or values, and what is done with it. A document has a dozen values beside those that are counted. */
const cases: readonly (readonly [string, (size: number) => () => unknown])[] = [
  ["a quantity of commas, letters", (size) => parsing(`${",".repeat(size)}1,2 kg`)],
  ["a quantity of spaces, letters", (size) => parsing(`1${" ".repeat(size)}kg`)],
  ["a cell of spaces, letters", (size) => () => markdownText(`a${" ".repeat(size)}b`)],
  ["fields that there are not, values", (size) => reading(keyed(size - 12, "nme", 1))],
  ["sound lines, values", (size) => reading(lines(size / 6 - 2, (i) => ({ material: `oil ${i}`, amount: "1 g" })))],
  ["lines without sense, values", (size) => reading(lines(size / 6 - 2, () => ({ material: "oil", amount: "1 z" })))],
  [
    "names that stand for nothing, values",
    (size) => reading(lines(size / 6 - 2, (i) => ({ ...line, material: `o ${i}` }))),
  ],
  ["phases, values", (size) => reading({ phases: many(size / 6 - 2, (i) => ({ name: `A ${i}`, lines: [line] })) })],
  [
    "materials at fault, values",
    (size) => reading({ materials: { oil, ...keyed(size / 4 - 4, "o", { ...oil, strength: "x" }) } }),
  ],
  [
    "readings of a trend, points",
    (size) => () => trend({ readings: many(size, (i) => ({ time: i, value: i + (i % 2) })) }),
  ],
];

/** Materials, and as many lines of one phase. */
function lines(count: number, make: (i: number) => object): object {
  return { materials: { oil, ...keyed(count, "oil", oil) }, phases: [{ name: "A", lines: many(count, make) }] };
}

function parsing(text: string): () => unknown {
  return refused(() => parseQuantity(text, "mass"));
}

function reading(more: object): () => unknown {
  const document = formulaWith(more);
  return refused(() => readFormula(document));
}

/** What is done, whether it ends in an answer or a refusal. */
function refused(run: () => unknown): () => void {
  return () => {
    try {
      run();
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
    }
  };
}

/** The shortest time of some runs [ms]. */
function time(run: () => unknown): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 5; i++) {
    const start = performance.now();
    run();
    shortest = Math.min(shortest, performance.now() - start);
  }
  return shortest;
}

const rows = cases.map(([what, make]) => {
  time(make(1000));
  return [what, ...sizes.map((size) => String(Number(time(make(size)).toPrecision(2))))];
});
console.log(table(["ms", ...sizes.map((size) => size.toLocaleString("en"))], rows));
