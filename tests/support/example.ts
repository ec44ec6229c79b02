import { readFileSync } from "node:fs";
import type { JobDocument } from "gelwright/plan";

function read(name: string, example = "cuticle-gel"): Partial<JobDocument> {
  const file = new URL(`../../docs/examples/${example}/${name}`, import.meta.url);
  return JSON.parse(readFileSync(file, "utf8")) as Partial<JobDocument>;
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

/** The invented scenario of the cold route, at bench or vessel scale. A fresh copy each time. */
export function coldJob(scale: "beaker" | "vessel" = "vessel"): JobDocument {
  return {
    version: 1,
    formula: read("formula.json", "scrub-gel"),
    bench: read("bench.json", "scrub-gel"),
    ...read(`${scale}.json`, "scrub-gel"),
  } as JobDocument;
}

/** A document, or a part of one, that a test may change at will. */
export type Draft = ReturnType<typeof JSON.parse>;

/** The job with something changed: the change is given a plain, writable copy. */
export function changed(job: JobDocument, change: (draft: Draft) => void): JobDocument {
  const draft = structuredClone(job);
  change(draft);
  return draft;
}

/** The hot route's example with its first melt read while it cools, too. */
export function readOnTheWayDown(job: JobDocument): JobDocument {
  return changed(job, ({ bench }) => {
    bench.viscosities.push({ ...bench.viscosities[0], direction: "cooling" });
  });
}
