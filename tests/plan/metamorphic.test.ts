import fc from "fast-check";
import { type JobDocument, runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { isPlain } from "../fuzz/damage.js";
import { changed, coldJob, exampleJob } from "../support/example.js";

// Ways to write one job: nothing that is calculated from it may tell them apart.
const jobs: readonly JobDocument[] = [exampleJob(), coldJob()];

/** Units of one dimension, and how many of each make the first. */
const families: readonly Readonly<Record<string, number>>[] = [
  { kg: 1, g: 1e3, mg: 1e6 },
  { m: 1, cm: 100, mm: 1000 },
  { L: 1, mL: 1000 },
  { h: 1, min: 60, s: 3600 },
  { kW: 1, W: 1000 },
  { Pa·s: 1, mPa·s: 1000, cP: 1000 },
  { "kJ/(kg·K)": 1, "J/(kg·K)": 1000 },
  { "kg/m³": 1000, "g/cm³": 1 },
  { bar: 1, Pa: 1e5, kPa: 100 },
];

/** The same quantity in another unit; any other text as it is. */
function inAnotherUnit(text: string, pick: (count: number) => number): string {
  const [, number, unit = ""] = /^(-?\d+(?:\.\d+)?) (\S+)$/.exec(text) ?? [];
  const family = families.find((one) => unit in one);
  if (number === undefined || family === undefined) return text;
  const units = Object.keys(family);
  const other = units[pick(units.length)] ?? unit;
  const value = (Number(number) * (family[other] ?? 1)) / (family[unit] ?? 1);
  return `${value} ${other}`;
}

/** A copy of a document, each text changed. */
function retold(value: unknown, tell: (text: string) => string): unknown {
  if (typeof value === "string") return tell(value);
  if (Array.isArray(value)) return value.map((one) => retold(one, tell));
  if (!isPlain(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, retold(one, tell)]));
}

/** A copy of a document, the fields of each object in the other order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (!isPlain(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, one]) => [key, turned(one)]),
  );
}

/** What two plans differ in, by place: words at all, numbers by more than a part in 1e9. A fingerprint is of the text. */
function apart(one: unknown, other: unknown, path = "plan"): readonly string[] {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other)) + 1e-12
      ? []
      : [`${path}: ${one} and ${other}`];
  if (typeof one !== "object" || one === null || typeof other !== "object" || other === null)
    return one === other || path.includes("ingerprint") ? [] : [`${path}: ${String(one)} and ${String(other)}`];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) => apart(Reflect.get(one, key), Reflect.get(other, key), `${path}.${key}`));
}

test("quantities in other units of the same dimension give the same plan", () => {
  for (const job of jobs) {
    const own = runPlan(job);
    let changed = 0;
    fc.assert(
      fc.property(fc.array(fc.nat(59), { minLength: 40, maxLength: 40 }), (picks) => {
        let at = 0;
        const document = retold(job, (text) => {
          const told = inAnotherUnit(text, (count) => (picks[at++ % picks.length] ?? 0) % count);
          if (told !== text) changed += 1;
          return told;
        });
        expect(apart(own, runPlan(document))).toEqual([]);
      }),
      { numRuns: 5 },
    );
    expect(changed).toBeGreaterThan(100);
  }
});

/** A plan with each list of objects in an order of its own, by the words of its members and not by where the document has them. */
function inOwnOrder(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (!Array.isArray(value))
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, inOwnOrder(one)]));
  const members = value.map(inOwnOrder);
  if (!members.every((one) => typeof one === "object")) return members;
  return members
    .map((one) => ({ one, words: wordsOf(one).sort().join() }))
    .sort((one, other) => (one.words < other.words ? -1 : Number(one.words > other.words)))
    .map(({ one }) => one);
}

function wordsOf(value: unknown, path = ""): string[] {
  if (typeof value === "string") return [`${path}: ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => wordsOf(one, `${path}.${key}`));
}

test("the order of the fields of an object does not matter", () => {
  for (const job of jobs) expect(apart(inOwnOrder(runPlan(job)), inOwnOrder(runPlan(turned(job))))).toEqual([]);
});

test("the order of the lines of a phase does not matter to any answer", () => {
  for (const job of jobs) {
    const other = changed(job, (draft) => {
      for (const { lines } of draft.formula.phases) lines.reverse();
    });
    expect(apart(inOwnOrder(runPlan(job)), inOwnOrder(runPlan(other)))).toEqual([]);
  }
});
