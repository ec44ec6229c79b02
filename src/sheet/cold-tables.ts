import type { ColdAddition, ColdAdditions, ColdSpeed, Plan } from "../plan/index.js";
import { clock, massRate, percent, weighed } from "./figures.js";
import type { Table } from "./table.js";

/** What to add, when, and what the vessel holds then, with a box to tick before the next. */
export function additionTable(of: ColdAdditions, timeline: Plan["timeline"]): Table {
  const at = clockOf(of, timeline);
  const more = onTheWay(of);
  return {
    columns: [
      "No.",
      "Oil to add",
      "Oil in by then",
      "Oil by volume",
      "Goes in at",
      "Next not before",
      ...more.columns,
      "Taken up",
      "Done at",
    ],
    rows: of.rows.map((row, i) => {
      const isLast = i === of.rows.length - 1;
      const mass = weighed(row.mass, of.increment);
      return [
        String(i + 1),
        isLast ? `what is left, ${mass}` : mass,
        oilIn(of, i),
        percent(row.volumeFractionOil, 3),
        at(row.timeStart),
        isLast ? "" : at(row.timeEnd),
        ...more.cells(row),
        "☐",
        "",
      ];
    }),
  };
}

/** How fast to pump, from when on, and what the vessel holds then. */
export function streamTable(of: ColdAdditions, timeline: Plan["timeline"]): Table {
  const at = clockOf(of, timeline);
  const more = onTheWay(of);
  return {
    columns: ["No.", "At", "Pump at", "Oil in by then", "Oil by volume", ...more.columns, "Uniform, glossy", "Done at"],
    rows: of.rows.map((row, i) => [
      String(i + 1),
      at(row.timeStart),
      massRate(row.rate ?? 0),
      oilIn(of, i),
      percent(row.volumeFractionOil, 3),
      ...more.cells(row),
      "☐",
      "",
    ]),
  };
}

/** Times of a schedule on the clock of the job. */
function clockOf({ step }: ColdAdditions, timeline: Plan["timeline"]): (time: number | undefined) => string {
  const begins = timeline[step - 1]?.timeStart;
  return (time) => clock(begins === undefined || time === undefined ? undefined : begins + time);
}

/** How thick it is and what it asks of the stirrer, as far as anything of it is known. */
function onTheWay({ rows }: ColdAdditions) {
  const columns: { readonly title: string; readonly cell: (row: ColdAddition) => string }[] = [];
  if (rows.some(({ viscosity, yieldStress }) => viscosity !== undefined || yieldStress !== undefined))
    columns.push({ title: "Thickness then", cell: thickness });
  if (rows.some(({ torque }) => torque !== undefined))
    columns.push({
      title: "Torque then",
      cell: ({ torque }) => (torque === undefined ? "–" : `${digits(torque)} N·m`),
    });
  return {
    columns: columns.map(({ title }) => title),
    cells: (row: ColdAddition) => columns.map(({ cell }) => cell(row)),
  };
}

function digits(value: number): number {
  return Number(value.toPrecision(2));
}

/** What of the phase is in after a row. */
function oilIn({ rows, increment }: ColdAdditions, i: number): string {
  const [first, row] = [rows[0], rows[i]];
  return !first || !row || i === rows.length - 1 ? "all" : weighed(row.massOil - first.massOil + first.mass, increment);
}

function thickness({ viscosity, yieldStress }: ColdAddition): string {
  const parts = [
    ...(viscosity === undefined ? [] : [`${digits(viscosity)} Pa·s`]),
    ...(yieldStress === undefined ? [] : [`flows from ${digits(yieldStress)} Pa`]),
  ];
  return parts.length === 0 ? "–" : parts.join(", ");
}

/** What each speed keeps of the bench's stirring, and what it makes of the rest. */
export function speedTable(speeds: readonly ColdSpeed[]): Table {
  const of = {
    bench: "the bench's",
    plan: "this plan's",
    "tip-speed": "the same tip speed",
    "shear-rate": "the same shear rate",
    "power-per-volume": "the same power per volume",
    reynolds: "the same Reynolds number",
    "blend-time": "the same blend time",
    froude: "the same Froude number",
  };
  return {
    columns: ["Speed", "rpm", "Tip speed", "Mean shear rate", "Power per volume", "Torque", "Reynolds number"],
    rows: speeds.map((row) => [
      of[row.of],
      `${Number((60 * row.speed).toPrecision(3))}`,
      `${digits(row.tipSpeed)} m/s`,
      row.shearRate === undefined ? "not known" : `${digits(row.shearRate)} 1/s`,
      `${digits(row.powerPerVolume)} W/m³`,
      `${digits(row.torque)} N·m`,
      `${digits(row.reynolds)}`,
    ]),
  };
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
      "torque [N·m]",
      "power [W]",
      "temperature [°C]",
    ],
    rows: (cold?.additions ?? []).flatMap(({ step, phase, rows }) =>
      rows.map((row, i) => [
        String(step),
        phase,
        String(i + 1),
        String(row.mass),
        ...[row.share, row.shareMax, row.rate].map(cell),
        String(row.massOil),
        String(row.massInVessel),
        String(row.volumeFractionOil),
        ...[row.timeStart, row.timeIn, row.timeEnd, row.viscosity, row.yieldStress].map(cell),
        ...[row.torque, row.power, row.temperature].map(cell),
      ]),
    ),
  };
}
