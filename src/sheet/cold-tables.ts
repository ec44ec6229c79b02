import type { ColdAddition, ColdAdditions, Plan } from "../plan/index.js";
import { clock, percent, weighed } from "./figures.js";
import type { Table } from "./table.js";

/** What to add, when, and what the vessel holds then, with a box to tick before the next. */
export function additionTable(of: ColdAdditions, timeline: Plan["timeline"]): Table {
  const begins = timeline[of.step - 1]?.timeStart;
  const at = (time: number | undefined): string =>
    clock(begins === undefined || time === undefined ? undefined : begins + time);
  const thick = of.rows.some(({ viscosity, yieldStress }) => viscosity !== undefined || yieldStress !== undefined);
  const stream = of.form === "stream";
  const start = of.rows[0] ? of.rows[0].massOil - of.rows[0].mass : 0;
  return {
    columns: stream
      ? [
          "No.",
          "At",
          "Pump at",
          "Oil in by then",
          "Oil by volume",
          ...(thick ? ["Thickness then"] : []),
          "Uniform, glossy",
          "Done at",
        ]
      : [
          "No.",
          "Oil to add",
          "Oil in by then",
          "Oil by volume",
          "Goes in at",
          "Next not before",
          ...(thick ? ["Thickness then"] : []),
          "Taken up",
          "Done at",
        ],
    rows: of.rows.map((row, i) => {
      const last = i === of.rows.length - 1;
      const oilIn = weighed(row.massOil - start, of.increment);
      const then = [
        percent(row.volumeFractionOil, 3),
        ...(stream ? [] : [at(row.timeStart), last ? "" : at(row.timeEnd)]),
      ];
      return [
        String(i + 1),
        ...(stream
          ? [at(row.timeStart), rate(row)]
          : [last ? `what is left, ${weighed(row.mass, of.increment)}` : weighed(row.mass, of.increment)]),
        last ? "all" : oilIn,
        ...then,
        ...(thick ? [thickness(row)] : []),
        "☐",
        "",
      ];
    }),
  };
}

function rate({ rate: perSecond = 0 }: ColdAddition): string {
  const aMinute = 60 * perSecond;
  return aMinute < 1 ? `${Number((1000 * aMinute).toPrecision(3))} g/min` : `${Number(aMinute.toPrecision(3))} kg/min`;
}

function thickness({ viscosity, yieldStress }: ColdAddition): string {
  const parts = [
    ...(viscosity === undefined ? [] : [`${Number(viscosity.toPrecision(2))} Pa·s`]),
    ...(yieldStress === undefined ? [] : [`yields at ${Number(yieldStress.toPrecision(2))} Pa`]),
  ];
  return parts.length === 0 ? "–" : parts.join(", ");
}

/** Additions with plain numbers: kilograms, fractions, seconds, Pa·s and Pa. An unknown figure is an empty cell. */
export function additionNumbers({ cold }: Plan): Table {
  const cell = (value: number | undefined): string => (value === undefined ? "" : String(value));
  return {
    columns: [
      "step",
      "phase",
      "number",
      "mass [kg]",
      "share",
      "greatest share",
      "rate [kg/s]",
      "oil in [kg]",
      "in the vessel [kg]",
      "volume fraction of oil",
      "begins [s]",
      "is in [s]",
      "is taken up [s]",
      "viscosity [Pa·s]",
      "yield stress [Pa]",
    ],
    rows: (cold?.additions ?? []).flatMap(({ step, phase, rows }) =>
      rows.map((row, i) => [
        String(step),
        phase,
        String(i + 1),
        String(row.mass),
        ...[row.share, row.shareGreatest, row.rate].map(cell),
        String(row.massOil),
        String(row.massInVessel),
        String(row.volumeFractionOil),
        ...[row.timeStart, row.timeIn, row.timeEnd, row.viscosity, row.yieldStress].map(cell),
      ]),
    ),
  };
}
