// Prints the batch sheet for the kettle, then what changed on the way there from the beaker.
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
const kettle = planFor("kettle.json");

console.log(toMarkdown({ plan: kettle }));

const windowOf = ({ particles }) => {
  const { isOpen, packLacks, temperatureMax, temperatureMin, timeMin, timeMax } = particles[0]?.window ?? {};
  if (packLacks) return ["not known: no pack is stated", "not known"];
  if (!isOpen) return ["none", "none"];
  return [
    `${temperatureMax.toFixed(1)} to ${temperatureMin.toFixed(1)} °C`,
    `${Math.round(timeMin / 60)} to ${Math.round(timeMax / 60)} min`,
  ];
};
const windows = [beaker, kettle].map(windowOf);
console.log("## From the beaker to the kettle\n");
console.log(scalesToMarkdown({ plans: [beaker, kettle] }));
console.log(`| the pearl may go in | ${windows.map(([at]) => at).join(" | ")} |`);
console.log(`| the same, after the heat is off | ${windows.map(([, when]) => when).join(" | ")} |`);

// What follows on the batch: the form for the filler, the stability plan, the draft of the label and the exposure.
const prepared = prepareJob({
  version: 1,
  formula: read("formula.json"),
  bench: read("bench.json"),
  ...read("kettle.json"),
});
console.log(`\n${fillCheckToMarkdown({ plan: kettle })}`);
console.log(stabilityToMarkdown({ plan: kettle }));
console.log(labelToMarkdown({ label: labelFor({ prepared }) }));
console.log(exposureToMarkdown({ exposure: exposureFor({ prepared }) }));
