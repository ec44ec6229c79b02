// Prints the batch sheet for the vessel, then what changed on the way there from the beaker.
import { readFileSync } from "node:fs";
import { exposureFor, labelFor, prepareJob, runPlan } from "gelwright/plan";
import {
  exposureToMarkdown,
  fillCheckToMarkdown,
  labelToMarkdown,
  scalesToMarkdown,
  stabilityToMarkdown,
  toMarkdown,
} from "gelwright/sheet";

const read = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const planFor = (scale) =>
  runPlan({ version: 1, formula: read("formula.json"), bench: read("bench.json"), ...read(scale) });

const beaker = planFor("beaker.json");
const vessel = planFor("vessel.json");

console.log(toMarkdown({ plan: vessel }));
console.log("## From the beaker to the vessel\n");
console.log(scalesToMarkdown({ plans: [beaker, vessel] }));

// What follows on the batch: the form for the filler, the stability plan, the draft of the label and the exposure.
const prepared = prepareJob({
  version: 1,
  formula: read("formula.json"),
  bench: read("bench.json"),
  ...read("vessel.json"),
});
console.log(`\n${fillCheckToMarkdown({ plan: vessel })}`);
console.log(stabilityToMarkdown({ plan: vessel }));
console.log(labelToMarkdown({ label: labelFor({ prepared }) }));
console.log(exposureToMarkdown({ exposure: exposureFor({ prepared }) }));
