import type { Plan, PlanLotOrder, TimelineStep, WeighingLine } from "../plan/index.js";
import { celsius, clock, kilograms, percent, weighed } from "./figures.js";
import type { Table } from "./table.js";

/** What to weigh, with room for the hand that weighs. */
export function weighingTable({ weighing }: Plan): Table {
  return {
    columns: ["Phase", "Material", "Share", "Weigh", "Balance", "Right between", "Weighed", "By"],
    rows: weighing.lines.map((line) => [
      line.phase,
      line.material,
      percent(line.massFraction),
      portionsOf(line),
      line.balance,
      `${weighed(line.tolerance.min, line.increment)} to ${weighed(line.tolerance.max, line.increment)}`,
      "",
      "",
    ]),
  };
}

/** What to do, when, and what the kettle should show. */
export function timelineTable({ timeline, cold }: Plan): Table {
  if (cold) return coldTimelineTable(timeline);
  return {
    columns: ["Step", "Do", "From", "To", "Mass", "Temperature after", "Viscosity after", "Done at"],
    rows: timeline.map((step) => [
      String(step.number),
      step.note ? `${step.instruction}. ${step.note}` : step.instruction,
      clock(step.timeStart),
      clock(step.timeEnd),
      `${kilograms(step.mass)}${step.inPacks ? " in the packs" : ""}`,
      celsius(step.temperatureEnd),
      viscosityOf(step),
      "",
    ]),
  };
}

/** On the cold route what counts is the oil that is in. */
function coldTimelineTable(timeline: Plan["timeline"]): Table {
  return {
    columns: ["Step", "Do", "From", "To", "Mass", "Oil by volume", "Temperature after", "Done at"],
    rows: timeline.map((step) => [
      String(step.number),
      step.note ? `${step.instruction}. ${step.note}` : step.instruction,
      clock(step.timeStart),
      clock(step.timeEnd),
      `${kilograms(step.mass)}${step.inPacks ? " in the packs" : ""}`,
      step.volumeFractionOil === undefined ? "not known" : percent(step.volumeFractionOil, 3),
      celsius(step.temperatureEnd),
      "",
    ]),
  };
}

/** When each lot is made. */
export function orderTable({ entries }: Exclude<PlanLotOrder, { readonly notKnown: string }>): Table {
  return {
    columns: ["Lot", "Day", "Step", "From", "To"],
    rows: entries.map(({ lot, day, stage, start, end }) => [String(lot), String(day), stage, clock(start), clock(end)]),
  };
}

/** Which law each figure of the timeline rests on. */
export function basisTable({ timeline }: Plan): Table {
  return { columns: ["Step", "Rests on"], rows: timeline.map((step) => [String(step.number), step.basis]) };
}

export function checkTable({ checks }: Plan): Table {
  return {
    columns: ["Check", "Verdict", "What it says", "Value", "Limit", "Source"],
    rows: checks.map((check) => [check.id, check.verdict, check.statement, check.value, check.limit, check.source]),
  };
}

export function allowanceTable({ allowances, lots }: Plan): Table {
  return {
    columns: ["Allowance", "Mass", "Share of the charge"],
    rows: allowances.map(({ name, mass }) => [name, kilograms(mass), percent(mass / lots.charge)]),
  };
}

/** Weighing with plain numbers, for programs and spreadsheets: kilograms and fractions. */
export function weighingNumbers({ weighing }: Plan): Table {
  return {
    columns: [
      "phase",
      "material",
      "mass fraction",
      "mass exact [kg]",
      "mass [kg]",
      "portions",
      "balance",
      "least [kg]",
      "greatest [kg]",
    ],
    rows: weighing.lines.map((line: WeighingLine) => [
      line.phase,
      line.material,
      String(line.massFraction),
      String(line.massExact),
      String(line.mass),
      String(line.portions.length),
      line.balance,
      String(line.tolerance.min),
      String(line.tolerance.max),
    ]),
  };
}

/** The timeline with plain numbers: seconds, kilograms, °C, Pa·s. An unknown figure is an empty cell. */
export function timelineNumbers({ timeline }: Plan): Table {
  const cell = (value: number | undefined): string => (value === undefined ? "" : String(value));
  return {
    columns: [
      "step",
      "do",
      "from [s]",
      "to [s]",
      "mass [kg]",
      "temperature before [°C]",
      "temperature after [°C]",
      "viscosity after [Pa·s]",
      "basis",
    ],
    rows: timeline.map((step) => [
      String(step.number),
      step.instruction,
      cell(step.timeStart),
      cell(step.timeEnd),
      cell(step.mass),
      cell(step.temperatureStart),
      cell(step.temperatureEnd),
      cell(step.viscosity?.viscosity),
      step.basis,
    ]),
  };
}

/** The mass, and its portions where one weighing would be too much for the balance. */
function portionsOf({ mass, portions, increment }: WeighingLine): string {
  const whole = weighed(mass, increment);
  return portions.length > 1
    ? `${whole}, as ${portions.map((portion) => weighed(portion, increment)).join(" + ")}`
    : whole;
}

function viscosityOf({ set, viscosity }: TimelineStep): string {
  if (set) return "set";
  if (!viscosity) return "not known";
  const figure = `${Number(viscosity.viscosity.toPrecision(2))} Pa·s at ${viscosity.shearRate}`;
  return viscosity.beyondReadings ? `${figure}, beyond the readings` : figure;
}
