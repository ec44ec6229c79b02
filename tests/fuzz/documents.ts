import { readBatch } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { prepareJob } from "gelwright/plan";
import { join } from "../../src/formula/document.js";
import { allJobsByName } from "../plan/jobs/jobs.js";
import { copyOf, holderOf, isPlain, type Key, placesOf } from "./damage.js";
import { type Random, randomFrom } from "./random.js";

/** A document that is sound, and what reads it. */
export interface Sound {
  readonly name: string;
  readonly document: object;
  readonly read: (document: unknown) => unknown;
}

/** The jobs of the tests and of the docs, and the formulas and batches within them. */
export function soundDocuments(): readonly Sound[] {
  return Object.entries(allJobsByName()).flatMap(([name, job]) => [
    { name, document: job, read: prepareJob },
    { name: `formula of ${name}`, document: job.formula, read: readFormula },
    { name: `batch of ${name}`, document: job.batch, read: readBatch },
  ]);
}

/** Plants one fault at a place and gives the path at which it has to be reported: a value of a type that no document has, or an extra field. */
function plant(document: object, way: readonly Key[], random: Random): string {
  const [holder, key] = holderOf(document, way);
  const value = holder[key];
  if (isPlain(value) && !Array.isArray(value) && random.below(2) === 0) {
    value["wobble"] = Symbol("no value of a document");
    return [...way, "wobble"].reduce(join, "");
  }
  holder[key] = typeof value === "string" && random.below(2) === 0 ? 10n : () => "no value of a document";
  return way.reduce<string>(join, "");
}

/** Whether one of two places holds the other. */
function isWithin(one: readonly Key[], other: readonly Key[]): boolean {
  return one.every((key, i) => key === other[i]) || other.every((key, i) => key === one[i]);
}

/** Plants one to three faults in a document. All of them have to be reported, each at its place, and no others; gives what is wrong with that. */
export function mistold({ name, document, read }: Sound, seed: number, number: number): string | undefined {
  const random = randomFrom(seed + number * 2_654_435_761);
  const copy = copyOf(document);
  const places = placesOf(copy);
  const ways: (readonly Key[])[] = [];
  for (let count = 1 + random.below(3); count > 0; count--) {
    const way = random.of(places);
    if (!ways.some((other) => isWithin(way, other))) ways.push(way);
  }
  const planted = ways.map((way) => plant(copy, way, random));
  const say = (what: string): string =>
    `${name}, seed ${seed}, document ${number}, faults at ${planted.join(" and ")}: ${what}`;
  try {
    read(copy);
  } catch (error) {
    if (!(error instanceof CalculationError)) return say(`threw ${String(error)}`);
    const told = error.faults.map(({ path }) => path);
    const isAt = (path: string, place: string): boolean => path === place || /^[.[]/.test(path.replace(place, ""));
    // If the kind of an object is not known, its other fields are not checked.
    const kindless = told.flatMap((path) => /^(.*)\.(?:kind|do|law|shape)$/.exec(path)?.[1] ?? []);
    const missing = planted.filter(
      (place) => !told.some((path) => isAt(path, place)) && !kindless.some((object) => isAt(place, object)),
    );
    const bred = error.faults.filter(({ path }) => !planted.some((place) => isAt(path, place)));
    if (missing.length > 0) return say(`not told: ${missing.join(", ")}; told: ${told.join(", ")}`);
    if (bred.length > 0) return say(`bred: ${bred.map((fault) => JSON.stringify(fault)).join(", ")}`);
    if (told.length > planted.length) return say(`told twice: ${told.join(", ")}`);
    if (/\b(NaN|Infinity)\b/.test(error.message)) return say(`names NaN or Infinity: ${error.message}`);
    return error.code === "document" ? undefined : say(`is of the code ${error.code}`);
  }
  return say("was taken");
}
