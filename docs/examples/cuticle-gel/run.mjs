// Prints the batch sheet of the kettle, and what changes on the way there from the beaker.
import { readFileSync } from "node:fs";
import { runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";

const read = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const plan = (scale) =>
  runPlan({ version: 1, formula: read("formula.json"), bench: read("bench.json"), ...read(scale) });

console.log(toMarkdown({ plan: plan("kettle.json") }));
