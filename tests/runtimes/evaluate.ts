import * as gelwright from "gelwright";
import hotBench from "../../docs/examples/cuticle-gel/bench.json" with { type: "json" };
import hotFormula from "../../docs/examples/cuticle-gel/formula.json" with { type: "json" };
import hotKettle from "../../docs/examples/cuticle-gel/kettle.json" with { type: "json" };
import coldBench from "../../docs/examples/scrub-gel/bench.json" with { type: "json" };
import coldFormula from "../../docs/examples/scrub-gel/formula.json" with { type: "json" };
import coldVessel from "../../docs/examples/scrub-gel/vessel.json" with { type: "json" };
import { type Called, resultOf } from "../support/look-up.js";

/** Put in by `run.ts`, which bundles this file for every runtime: the inputs of all checks. */
declare const calls: readonly Called[];

/** Numbers and words of a result, each at its place; a function that is a result has none. */
function flat(value: unknown, path: string, into: Record<string, number | string>): void {
  if (typeof value === "number" || typeof value === "string") into[path] = value;
  else if (typeof value === "object" && value !== null)
    for (const [key, one] of Object.entries(value)) flat(one, `${path}.${key}`, into);
}

/** The results by function and check. */
const answers: Record<string, Record<string, number | string>> = {};
function answer(name: string, value: unknown): void {
  const places: Record<string, number | string> = {};
  flat(value, "", places);
  answers[name] = places;
}
for (const call of calls) answer(`${call.call} ${call.id}`, resultOf(gelwright, call));
const jobs = {
  "cuticle gel": { version: 1, formula: hotFormula, bench: hotBench, ...hotKettle },
  "scrub gel": { version: 1, formula: coldFormula, bench: coldBench, ...coldVessel },
};
for (const [name, job] of Object.entries(jobs)) answer(`plan.runPlan ${name}`, gelwright.plan.runPlan(job));
const text = JSON.stringify(answers);
if ("document" in globalThis) Object.assign(globalThis, { answers: text });
else console.log(text);
