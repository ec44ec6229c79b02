import { readdirSync, readFileSync } from "node:fs";
import type { JobDocument } from "gelwright/plan";

/** Files in this folder that hold results and no job. */
const results: readonly string[] = [
  "before.json",
  "figures-before.json",
  "verdicts.json",
  "differences.json",
  "rests-on.json",
];

function readJson(path: string): Partial<JobDocument> {
  return JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8")) as Partial<JobDocument>;
}

/** The twenty jobs of this folder by name, in the order of their names. A fresh copy each time. */
export function jobsByName(): Readonly<Record<string, JobDocument>> {
  const names = readdirSync(new URL(".", import.meta.url)).filter(
    (name) => name.endsWith(".json") && !results.includes(name),
  );
  return Object.fromEntries(
    names.sort().map((name) => [name.replace(/\.json$/, ""), readJson(name) as unknown as JobDocument]),
  );
}

/** The four jobs of the examples in the docs, built as their run.mjs does. */
export function exampleJobsByName(): Readonly<Record<string, JobDocument>> {
  const scales = [
    ["cuticle-gel", "beaker"],
    ["cuticle-gel", "kettle"],
    ["scrub-gel", "beaker"],
    ["scrub-gel", "vessel"],
  ] as const;
  return Object.fromEntries(
    scales.map(([example, scale]) => {
      const read = (name: string): Partial<JobDocument> => readJson(`../../../docs/examples/${example}/${name}.json`);
      const job = { version: 1, formula: read("formula"), bench: read("bench"), ...read(scale) };
      return [`${example}-${scale}`, job as unknown as JobDocument];
    }),
  );
}
