import { CalculationError } from "gelwright/error";
import { prepareJob } from "gelwright/plan";
import { expect, test } from "vitest";
import { allJobsByName } from "./jobs/jobs.js";
import { kindOf } from "./jobs/walk.js";

type Path = readonly (string | number)[];

/** Every object and list of a document, at any depth. */
function* holdersIn(value: unknown, path: Path = []): Generator<Path> {
  if (typeof value !== "object" || value === null) return;
  if (path.length > 0) yield path;
  for (const [key, member] of Object.entries(value))
    yield* holdersIn(member, [...path, Array.isArray(value) ? Number(key) : key]);
}

/** A document with something else at a place. */
function withAt(document: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const inner = withAt((document as Readonly<Record<string, unknown>>)[key], rest, value);
  if (Array.isArray(document)) return document.map((member, i) => (i === key ? inner : member));
  return { ...(document as object), [key]: inner };
}

const named = (path: Path): string => path.map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`)).join("");

/** Each kind of object or list once, in the first of the jobs that has it. */
const kinds = new Map<string, { readonly path: Path; readonly job: unknown }>();
for (const job of Object.values(allJobsByName()))
  for (const path of holdersIn(job)) {
    const kind = kindOf(named(path));
    if (!kinds.has(kind)) kinds.set(kind, { path, job });
  }

function faultsOf(document: unknown): readonly string[] {
  try {
    prepareJob(document as never);
    return [];
  } catch (error) {
    if (error instanceof CalculationError && error.code === "document") return error.faults.map(({ path }) => path);
    throw error;
  }
}

test("a number or nothing where an object or a list belongs is told at its place, and breeds no other fault", () => {
  const wrong = [...kinds].flatMap(([kind, { path, job }]) =>
    [7, null].flatMap((value) => {
      const faults = faultsOf(withAt(job, path, value));
      // Every word of the place stands in the path that the fault has.
      const isTold = faults.length === 1 && path.every((key) => faults[0]?.includes(String(key)));
      return isTold ? [] : [`${kind} is ${value}: ${faults.join(", ")}`];
    }),
  );
  expect(wrong).toEqual([]);
  expect(kinds.size).toBeGreaterThan(80);
});
