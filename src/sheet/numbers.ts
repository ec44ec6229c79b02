import type { Answer, QuantityCode } from "../plan/index.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";
import { basisOf, saidOf, subjectOf, toDo } from "./tables.js";

/** The unit of the kernels for each quantity: of a fraction what it is a fraction of, and 1 for what has none. */
const units: { readonly [Code in QuantityCode]: string } = {
  temperature: "°C",
  "temperature-difference": "K",
  duration: "s",
  mass: "kg",
  volume: "m³",
  "mass-fraction": "kg/kg",
  "volume-fraction": "m³/m³",
  ratio: "1",
  length: "m",
  speed: "rev/s",
  power: "W",
  torque: "N·m",
  pressure: "Pa",
  stress: "Pa",
  count: "1",
  "index-difference": "1",
  activity: "1",
  viscosity: "Pa·s",
};

/** An unknown figure is an empty cell. */
function cell(value: number | null | undefined): string {
  return value === undefined || value === null ? "" : String(value);
}

function head(name: string, unit: string): string {
  return `${name} [${unit}]`;
}

/** Weighing with plain numbers, for programs and spreadsheets: kilograms, and kilograms of a kilogram. */
export function weighingNumbers({ plan: { weighing }, words: { labels }, say }: Sheet): Table {
  return {
    columns: [
      labels.phase,
      labels.material,
      head(labels.massFraction, units["mass-fraction"]),
      head(labels.massExact, "kg"),
      head(labels.mass, "kg"),
      labels.portions,
      labels.balance,
      head(labels.massMin, "kg"),
      head(labels.massMax, "kg"),
    ],
    rows: weighing.lines.map((line) => [
      line.phase,
      say.material(line.material),
      cell(line.massFraction),
      cell(line.massExact),
      cell(line.mass),
      String(line.portions.length),
      line.balance,
      cell(line.tolerance.min),
      cell(line.tolerance.max),
    ]),
  };
}

/** The timeline with plain numbers: seconds, kilograms, °C, Pa·s. */
export function timelineNumbers(sheet: Sheet): Table {
  const { plan, words } = sheet;
  const { labels } = words;
  return {
    columns: [
      labels.step,
      labels.do,
      head(labels.from, "s"),
      head(labels.to, "s"),
      head(labels.mass, "kg"),
      head(labels.temperatureBefore, "°C"),
      head(labels.temperatureAfter, "°C"),
      head(labels.viscosityAfter, "Pa·s"),
      head(labels.volumeFractionOil, units["volume-fraction"]),
      labels.restsOn,
    ],
    rows: plan.timeline.map((step) => [
      String(step.number),
      toDo(sheet, step),
      cell(step.timeStart),
      cell(step.timeEnd),
      cell(step.mass),
      cell(step.temperatureStart),
      cell(step.temperatureEnd),
      cell(step.viscosity?.viscosity),
      cell(step.volumeFractionOil),
      basisOf(sheet, step),
    ]),
  };
}

/** Every answer with the numbers from which its verdict follows, in the unit of its row. */
export function answerNumbers(sheet: Sheet): Table {
  const { plan, words } = sheet;
  const { labels } = words;
  return {
    columns: [
      labels.check,
      labels.about,
      labels.verdict,
      labels.side,
      labels.statement,
      labels.unit,
      labels.min,
      labels.value,
      labels.max,
      labels.limitMin,
      labels.limitMax,
      labels.restsOn,
    ],
    rows: plan.answers.map((answer: Answer) => {
      const { id, verdict, side, quantity, figure, limit } = answer;
      const said = saidOf(sheet, answer);
      return [
        id,
        subjectOf(sheet, answer),
        verdict,
        side,
        said.statement,
        units[quantity],
        cell(figure.min),
        cell(figure.value),
        cell(figure.max),
        cell(limit.min?.max),
        cell(limit.max?.min),
        said.restsOn.join("; "),
      ];
    }),
  };
}

/** Additions with plain numbers: kilograms, fractions, seconds, Pa·s and Pa. */
export function additionNumbers({ plan, words: { labels } }: Sheet): Table {
  return {
    columns: [
      labels.step,
      labels.phase,
      labels.number,
      head(labels.mass, "kg"),
      head(labels.share, units["mass-fraction"]),
      head(labels.shareMax, units["mass-fraction"]),
      head(labels.rate, "kg/s"),
      head(labels.oilIn, "kg"),
      head(labels.inTheVessel, "kg"),
      head(labels.volumeFractionOil, units["volume-fraction"]),
      head(labels.begins, "s"),
      head(labels.isIn, "s"),
      head(labels.isTakenUp, "s"),
      head(labels.viscosity, "Pa·s"),
      head(labels.yieldStress, "Pa"),
      head(labels.torque, "N·m"),
      head(labels.power, "W"),
      head(labels.temperature, "°C"),
    ],
    rows: (plan.emulsion?.schedules ?? []).flatMap((schedule) =>
      "notKnown" in schedule
        ? []
        : schedule.rows.map((row, i) => [
            String(schedule.step),
            schedule.phase,
            String(i + 1),
            cell(row.mass),
            ...[row.share, row.shareMax, row.rate, row.massOil, row.massInVessel, row.volumeFractionOil].map(cell),
            ...[row.timeStart, row.timeIn, row.timeEnd, row.viscosity, row.yieldStress].map(cell),
            ...[row.torque, row.power, row.temperature].map(cell),
          ]),
    ),
  };
}
