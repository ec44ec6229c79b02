// Prints the batch sheet for the vessel, then what changed on the way there from the beaker.
import { readFileSync } from "node:fs";
import { runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";

const read = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const planFor = (scale) =>
  runPlan({ version: 1, formula: read("formula.json"), bench: read("bench.json"), ...read(scale) });

const beaker = planFor("beaker.json");
const vessel = planFor("vessel.json");

console.log(toMarkdown({ plan: vessel }));

const each = (figure) => [beaker, vessel].map(figure);
const rows = [
  ["", ...each((plan) => plan.vessel)],
  ["charge", ...each((plan) => `${plan.lots.charge.toPrecision(4)} kg`)],
  ["additions of oil", ...each(({ cold }) => `${cold.additions[0].rows.length}`)],
  ["first addition", ...each(({ cold }) => `${(1000 * cold.additions[0].rows[0].mass).toPrecision(3)} g`)],
  ["oil by volume in the end", ...each(({ cold }) => `${(100 * cold.gel.volumeFractionOil).toFixed(2)} %`)],
  [
    "time until all of it is in",
    ...each(({ cold }) => `${Math.round(cold.additions[0].rows.at(-1).timeEnd / 60)} min`),
  ],
];
console.log("## From the beaker to the vessel\n");
for (const [i, row] of rows.entries()) console.log(`| ${row.join(" | ")} |${i === 0 ? "\n|---|---|---|" : ""}`);
