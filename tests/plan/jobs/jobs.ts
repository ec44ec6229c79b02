import { readdirSync, readFileSync } from "node:fs";
import type { JobDocument } from "gelwright/plan";
import { coldJob, exampleJob } from "../../support/example.js";

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

/** The jobs of this folder and the four of the examples in the docs, by name. A fresh copy each time. */
export function allJobsByName(): Readonly<Record<string, JobDocument>> {
  return {
    ...jobsByName(),
    "cuticle-gel-beaker": exampleJob("beaker"),
    "cuticle-gel-kettle": exampleJob("kettle"),
    "scrub-gel-beaker": coldJob("beaker"),
    "scrub-gel-vessel": coldJob("vessel"),
  };
}
