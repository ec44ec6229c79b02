import { readBatch } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { prepareJob } from "gelwright/plan";
import { exampleJobsByName, jobsByName } from "../plan/jobs/jobs.js";
import { copyOf, isPlain } from "./damage.js";
import { type Random, randomFrom } from "./random.js";

type Key = string | number;

/** A document that is sound, and what reads it. */
export interface Sound {
  readonly name: string;
  readonly document: object;
  readonly read: (document: unknown) => unknown;
}

/** The jobs of the tests and of the docs, and the formulas and batches within them. */
export function soundDocuments(): readonly Sound[] {
  return Object.entries({ ...jobsByName(), ...exampleJobsByName() }).flatMap(([name, job]) => [
    { name, document: job, read: prepareJob },
    { name: `formula of ${name}`, document: job.formula, read: readFormula },
    { name: `batch of ${name}`, document: job.batch, read: readBatch },
  ]);
}

/** Every place of a document, as the way to it. */
function placesOf(value: unknown, way: readonly Key[] = []): (readonly Key[])[] {
  if (!isPlain(value)) return [];
  return Object.keys(value).flatMap((key) => {
    const own = [...way, Array.isArray(value) ? Number(key) : key];
    return [own, ...placesOf(value[key], own)];
  });
}

/** The path as faults write it. */
function pathOf(way: readonly Key[]): string {
  return way.reduce<string>((path, key) => {
    if (typeof key === "number") return `${path}[${key}]`;
    if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(key)) return `${path}[${JSON.stringify(key)}]`;
    return path === "" ? key : `${path}.${key}`;
  }, "");
}

/** Plants one fault at a place and gives the path where it has to be told: a value of no type there is, or a field too many. */
function plant(document: object, way: readonly Key[], random: Random): string {
  let holder = document as Record<Key, unknown>;
  for (const key of way.slice(0, -1)) holder = holder[key] as Record<Key, unknown>;
  const key = way.at(-1) as Key;
  const value = holder[key];
  if (isPlain(value) && !Array.isArray(value) && random.below(2) === 0) {
    value["wobble"] = Symbol("no value of a document");
    return pathOf([...way, "wobble"]);
  }
  holder[key] = typeof value === "string" && random.below(2) === 0 ? 10n : () => "no value of a document";
  return pathOf(way);
}

/** Where one of two places holds the other. */
function isWithin(one: readonly Key[], other: readonly Key[]): boolean {
  return one.every((key, i) => key === other[i]) || other.every((key, i) => key === one[i]);
}

/** Plants one to three faults in a document, and gives what is wrong with what is told of them: all of them, at their places, and no others. */
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
    // Where nobody knows of which kind an object is, nothing is told of its other fields.
    const kindless = told.flatMap((path) => /^(.*)\.(?:kind|do|law|shape)$/.exec(path)?.[1] ?? []);
    const missing = planted.filter(
      (place) => !told.some((path) => isAt(path, place)) && !kindless.some((object) => isAt(place, object)),
    );
    // A step that cools has two shapes; with a fault in the second, what the first has is told beside it.
    const isOtherShape = (path: string): boolean => {
      const [, step] = /^(process\.steps\[\d+\])\.to(?:Viscosity)?$/.exec(path) ?? [];
      return step !== undefined && planted.some((place) => isAt(place, step));
    };
    const bred = error.faults.filter(({ path }) => !planted.some((place) => isAt(path, place)) && !isOtherShape(path));
    if (missing.length > 0) return say(`not told: ${missing.join(", ")}; told: ${told.join(", ")}`);
    if (bred.length > 0) return say(`bred: ${bred.map((fault) => JSON.stringify(fault)).join(", ")}`);
    if (told.length > planted.length && !told.some(isOtherShape)) return say(`told twice: ${told.join(", ")}`);
    if (/\b(NaN|Infinity)\b/.test(error.message)) return say(`speaks of no number: ${error.message}`);
    return error.code === "document" ? undefined : say(`is of the code ${error.code}`);
  }
  return say("was taken");
}
