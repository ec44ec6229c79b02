import type { AdditionRow, PlanSchedule, PlanSpeed } from "../plan/index.js";
import type { Sheet } from "./render.js";
import type { Cell, Table } from "./table.js";
import { predicted } from "./tables.js";
import type { Say } from "./words/types.js";

/** What to add, when, and what the vessel holds then, with a box to tick before the next. */
export function additionTable(sheet: Sheet, of: PlanSchedule): Table {
  const { labels, lines } = sheet.words;
  const { say } = sheet;
  const at = clockOf(sheet, of);
  const more = onTheWay(sheet, of);
  return {
    columns: [
      labels.number,
      labels.oilToAdd,
      labels.oilInByThen,
      labels.oilByVolume,
      labels.goesInAt,
      labels.nextNotBefore,
      ...more.columns,
      labels.added,
      labels.scaleReads,
      labels.takenUp,
      labels.by,
    ],
    rows: of.rows.map((row, i) => {
      const isLast = i === of.rows.length - 1;
      const mass = say.weighed(row.mass, of.increment);
      return [
        String(i + 1),
        isLast ? lines.emulsion.whatIsLeft({ mass }) : mass,
        oilIn(sheet, of, i),
        say.percent(row.volumeFractionOil, 3),
        at(row.timeStart),
        isLast ? "" : at(row.timeEnd),
        ...more.cells(row),
        ...["", "", "☐", ""],
      ];
    }),
  };
}

/** How fast to pump, from when on, and what the vessel holds then. */
export function streamTable(sheet: Sheet, of: PlanSchedule): Table {
  const { labels } = sheet.words;
  const { say } = sheet;
  const at = clockOf(sheet, of);
  const more = onTheWay(sheet, of);
  return {
    columns: [
      labels.number,
      labels.at,
      labels.pumpAt,
      labels.oilInByThen,
      labels.oilByVolume,
      ...more.columns,
      labels.scaleReads,
      labels.uniform,
      labels.by,
    ],
    rows: of.rows.map((row, i) => [
      String(i + 1),
      at(row.timeStart),
      say.massRate(row.rate),
      oilIn(sheet, of, i),
      say.percent(row.volumeFractionOil, 3),
      ...more.cells(row),
      ...["", "☐", ""],
    ]),
  };
}

/** Times of a schedule on the clock of the job. */
function clockOf({ plan, say }: Sheet, { step }: PlanSchedule): (time: number | undefined) => string {
  const begins = plan.timeline[step - 1]?.timeStart;
  return (time) => say.clock(begins === undefined || time === undefined ? undefined : begins + time);
}

/** How fast the stirrer turns where that changes, and what torque it takes, as far as that is known. */
function onTheWay({ words, say }: Sheet, { rows }: Pick<PlanSchedule, "rows">) {
  const columns: { readonly title: string; readonly cell: (row: AdditionRow) => Cell }[] = [];
  if (rows.some(({ speed }) => speed !== undefined))
    columns.push({ title: words.labels.turns, cell: ({ speed }) => say.rpm(speed) });
  if (rows.some(({ torque }) => torque !== undefined))
    columns.push({
      title: words.labels.torqueThen,
      cell: (row) => predicted(say.given(row.torque, () => torqueOf(say, row)) || "–"),
    });
  return {
    columns: columns.map(({ title }) => title),
    cells: (row: AdditionRow) => columns.map(({ cell }) => cell(row)),
  };
}

/** The torque with its band, in one unit. */
function torqueOf(say: Say, { torque, torqueMin: min, torqueMax: max }: AdditionRow): string {
  return min === undefined || max === undefined || min === max
    ? say.newtonMetres(torque, 2)
    : say.estimate({ value: torque, min, max }, "torque", 2);
}

/** What of the phase is in after a row. */
function oilIn({ words, say }: Sheet, { rows, increment }: PlanSchedule, i: number): string {
  const [first, row] = [rows[0], rows[i]];
  return !first || !row || i === rows.length - 1
    ? words.labels.all
    : say.weighed(row.massOil - first.massOil + first.mass, increment);
}

/** What each speed keeps of the bench's stirring, and what it makes of the rest. */
export function speedTable({ words, say }: Sheet, speeds: readonly PlanSpeed[]): Table {
  const { labels, lines } = words;
  return {
    columns: [
      labels.speed,
      labels.turns,
      labels.tipSpeed,
      labels.meanShearRate,
      labels.powerPerVolume,
      labels.torque,
      labels.reynolds,
    ],
    rows: speeds.map((row) => [
      lines.emulsion.speedsOf[row.of],
      say.rpm(row.speed),
      `${say.number(row.tipSpeed, 2)} m/s`,
      say.shearRate(row.shearRate, 2),
      `${say.number(row.powerPerVolume, 2)} W/m³`,
      say.newtonMetres(row.torque, 2),
      say.number(row.reynolds, 2),
    ]),
  };
}
