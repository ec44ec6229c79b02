// Prints the batch sheet for the kettle, then what changed on the way there from the beaker.
import { readFileSync } from "node:fs";
import { runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";

const read = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const planFor = (scale) =>
  runPlan({ version: 1, formula: read("formula.json"), bench: read("bench.json"), ...read(scale) });

const beaker = planFor("beaker.json");
const kettle = planFor("kettle.json");

console.log(toMarkdown({ plan: kettle }));

const film = ({ allowances, lots }) =>
  allowances.filter(({ name }) => name.startsWith("film")).reduce((sum, { mass }) => sum + mass, 0) / lots.charge;
const minutes = ({ timeline }, number) => {
  const { timeStart, timeEnd } = timeline[number - 1];
  return timeStart === undefined || timeEnd === undefined
    ? "not known"
    : `${Math.round((timeEnd - timeStart) / 60)} min`;
};
const windowOf = ({ particles }) => {
  const { isOpen, temperatureFrom, temperatureTo, timeFrom, timeTo } = particles[0]?.window ?? {};
  if (!isOpen) return ["none", "none"];
  return [
    `${temperatureFrom.toFixed(1)} to ${temperatureTo.toFixed(1)} °C`,
    `${Math.round(timeFrom / 60)} to ${Math.round(timeTo / 60)} min`,
  ];
};
const rows = [
  ["", beaker.vessel, kettle.vessel],
  ["charge", ...[beaker, kettle].map(({ lots }) => `${lots.charge.toPrecision(4)} kg`)],
  [
    "share lost to a film of the same thickness",
    ...[beaker, kettle].map((plan) => `${(100 * film(plan)).toFixed(2)} %`),
  ],
  ["heating to 85 °C", minutes(beaker, 2), minutes(kettle, 2)],
  ["cooling from 85 to 80 °C", minutes(beaker, 5), minutes(kettle, 5)],
  ["thickening until the pearl goes in", minutes(beaker, 7), minutes(kettle, 7)],
  ["the pearl may go in", windowOf(beaker)[0], windowOf(kettle)[0]],
  ["the same, after the heat is off", windowOf(beaker)[1], windowOf(kettle)[1]],
];
console.log("## From the beaker to the kettle\n");
for (const [i, row] of rows.entries()) console.log(`| ${row.join(" | ")} |${i === 0 ? "\n|---|---|---|" : ""}`);
