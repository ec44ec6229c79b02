import * as plan from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { plansByName } from "./jobs/plans.js";

/** Every list of codes that the room exports, by its name. */
const lists = Object.entries(plan as unknown as Readonly<Record<string, unknown>>).flatMap(
  ([name, value]): readonly (readonly [string, readonly string[]])[] => (Array.isArray(value) ? [[name, value]] : []),
);
const codes = new Set(lists.flatMap(([, list]) => list));

/** Words of other rooms' types: their functions take and give them, and so do the documents. */
const kernelWords = new Set([
  ...["tip-speed", "power-per-volume", "reynolds", "blend-time", "shear-rate", "froude"],
  ...["laminar", "transitional", "turbulent"],
  ...["wall", "bottom"],
  ...["newton", "power-law", "bingham", "casson", "herschel-bulkley", "carreau", "carreau-yasuda"],
]);

/** What a document that does not state it is read as. */
const defaults = new Set(["largest", "as at the bench", "time"]);

/** The figure that a kernel refused, by the name of its argument: as many as kernels have arguments. */
const refused = /notKnown(\[\])?\.quantity$|reason\.quantity$/;

/** A document states a currency only as part of a price. */
const currency = "cost.currency";

const pattern = /^[a-z][a-z0-9-]{1,40}$/;

/** Every leaf of a value with its path, the places in lists left out. */
function* leaves(value: unknown, path = ""): Generator<readonly [string, unknown]> {
  if (typeof value !== "object" || value === null) yield [path, value];
  else if (Array.isArray(value)) for (const member of value) yield* leaves(member, `${path}[]`);
  else for (const [key, member] of Object.entries(value)) yield* leaves(member, path === "" ? key : `${path}.${key}`);
}

/** Every text of a document, the names of its fields among them: a material has its key. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (typeof value !== "object" || value === null) return [];
  return [...(Array.isArray(value) ? [] : Object.keys(value)), ...Object.values(value).flatMap(textsOf)];
}

describe("codes", () => {
  test.each(lists)("%s are codes, each of them once", (_name, list) => {
    expect(list.filter((code) => !pattern.test(code))).toEqual([]);
    expect(new Set(list).size).toBe(list.length);
    expect(list.length).toBeGreaterThan(0);
  });
});

describe.each(plansByName())("the plan of %s", (_name, { job, plan: result }) => {
  const texts = new Set(textsOf(job));

  /** Whether a text is a code or the caller's own. */
  function isKnown(path: string, text: string): boolean {
    if (codes.has(text) || texts.has(text) || kernelWords.has(text) || defaults.has(text)) return true;
    if (path === currency) return [...texts].some((price) => price.includes(` ${text}/`));
    if (path === "fingerprint") return /^[0-9a-f]{64}$/.test(text);
    return refused.test(path) && pattern.test(text);
  }

  test("holds no text but codes and the caller's words", () => {
    const foreign = [...leaves(result)].filter(([path, leaf]) => typeof leaf === "string" && !isKnown(path, leaf));
    expect(foreign).toEqual([]);
  });

  test("holds numbers that are finite, and nothing else that JSON has no word for", () => {
    const odd = [...leaves(result)].filter(
      ([, leaf]) =>
        !(leaf === null || typeof leaf === "string" || typeof leaf === "boolean" || Number.isFinite(leaf as number)),
    );
    expect(odd).toEqual([]);
  });

  test("is the same after a journey as JSON", () => {
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    expect(result).toStrictEqual(JSON.parse(JSON.stringify(result)));
  });
});
