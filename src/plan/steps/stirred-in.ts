import { vesselSegment } from "../../heat/index.js";
import { type Balance, balanceOf } from "../balance.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import { type Content, portionOf } from "../contents.js";
import { meet } from "../meeting-temperature.js";
import type { AdditionRow, State, Turn, Work } from "../state.js";
import { stirredIn, torqueBand } from "../stirred.js";
import { by, cell, otherwise, stated, unknown, where } from "../unknown.js";
import type { SpeedAt } from "./oil-speeds.js";

/** A schedule that was stirred in. */
export interface Stirred {
  readonly rows: readonly AdditionRow[];
  readonly turns: readonly Turn[];
  readonly temperature: () => number;
  readonly assumptions: readonly AssumptionCode[];
}

/** Stirs additions in one by one, each from the room into what stirring has warmed by then. The gel counts as thick as it is at the end of each. */
export function stirIn(
  additions: readonly AdditionRow[],
  before: State,
  oil: readonly Content[],
  { job, number }: Work,
  speedAt: SpeedAt,
  follows: boolean,
): Stirred {
  const room = job.process.room;
  const turns: Turn[] = [];
  const rows: AdditionRow[] = [];
  const assumptions = new Set<AssumptionCode>();
  let state = before;
  let mass = 0;
  for (const [i, row] of additions.entries()) {
    const met = meet(state, portionOf(oil, row.mass), room);
    mass += row.mass;
    const charge = before.charge.with(portionOf(oil, mass));
    const mixed: State = { ...state, charge, temperature: met };
    // What goes in portion by portion meets the oil of those before it, a stream what is in by then.
    const isStream = row.rate !== undefined;
    const previous = additions[i - 1]?.volumeFractionOil ?? before.charge.oilFraction();
    const speed = speedAt(isStream ? row.volumeFractionOil : previous);
    const turn: Turn | undefined = speed && { step: number, addition: i + 1, speed, state: mixed };
    if (turn) turns.push(turn);
    const stirred =
      turn &&
      otherwise(
        () => stirredIn(turn),
        () => undefined,
      );
    const { power = 0 } = stirred ?? {};
    const balance = otherwise(
      () => balanceOf(mixed, { kind: "power", power }),
      () => undefined,
    );
    for (const code of (stirred && balance?.assumptions) ?? ["heat-of-stirring-left-out"]) assumptions.add(code);
    const temperature = cell(() => warmed(row, additions[i - 1], mixed, power, balance));
    state = { ...mixed, temperature };
    rows.push({
      ...row,
      ...(follows && speed && where("speed", speed)),
      ...(stirred && { torque: stirred.torque, power: stirred.power }),
      ...(stirred &&
        otherwise(
          () => {
            const { min, max } = torqueBand(stirred, job);
            return { torqueMin: min, torqueMax: max };
          },
          () => ({}),
        )),
      ...otherwise(
        () => ({ temperature: temperature() }),
        () => ({}),
      ),
    });
  }
  // A stream of which no row is known went in all the same; how much it warmed the charge is not known.
  const isUnseen = (): boolean => rows.length === 0 && (speedAt(0) !== undefined || before.temperature() !== room);
  const { temperature } = state;
  return {
    rows,
    turns,
    assumptions: [...assumptions],
    temperature: () => (isUnseen() ? unknown("not-stated", { field: "emulsion-incorporation-time" }) : temperature()),
  };
}

/** How warm the vessel is after a while at one power of the stirrer [°C]: as warm as before if a specific heat is missing. */
function warmed(
  row: AdditionRow,
  before: AdditionRow | undefined,
  state: State,
  power: number,
  balance: Balance | undefined,
): number {
  const temperature = state.temperature();
  if (power === 0 && temperature === state.charge.job.process.room) return temperature;
  const duration = durationOf(row, before);
  if (duration === 0) return temperature;
  return balance
    ? by("heat-balance", () => vesselSegment({ ...balance.vessel, duration }).temperatureEnd)
    : temperature;
}

/** A row of a schedule lasts until its oil is incorporated, one of a stream since the row before [s]. */
function durationOf({ timeStart, timeEnd }: AdditionRow, before: AdditionRow | undefined): number {
  const start = stated(timeStart, "emulsion-incorporation-time");
  return timeEnd === undefined ? start - (before?.timeStart ?? 0) : timeEnd - start;
}
