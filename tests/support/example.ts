import { readFileSync } from "node:fs";
import type { JobDocument } from "gelwright/plan";

const folder = new URL("../../docs/examples/cuticle-gel/", import.meta.url);

function read(name: string): Partial<JobDocument> {
  return JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Partial<JobDocument>;
}

/** The invented scenario of the docs, at bench or vessel scale. A fresh copy each time. */
export function exampleJob(scale: "beaker" | "kettle" = "kettle"): JobDocument {
  return {
    version: 1,
    formula: read("formula.json"),
    bench: read("bench.json"),
    ...read(`${scale}.json`),
  } as JobDocument;
}

/** The job with something changed: the change is given a plain, writable copy. */
export function changed(job: JobDocument, change: (draft: ReturnType<typeof JSON.parse>) => void): JobDocument {
  const draft = structuredClone(job);
  change(draft);
  return draft;
}
