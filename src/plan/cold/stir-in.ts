import { vesselSegment } from "../../heat/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { type Content, portionOf, type State } from "../moment.js";
import { meet } from "../run/charge.js";
import { vesselOf } from "../run/outcome.js";
import { speedIn } from "../stirring.js";
import { type Turn, turnOf } from "../turning.js";
import type { AddedOil } from "./additions.js";
import type { ColdAddition } from "./plan.js";
import type { AddStep } from "./step.js";

/** Oil that was stirred in: its additions with what each asked of the stirrer, and how warm all of it is then. */
export interface StirredIn {
  readonly rows: readonly ColdAddition[];
  readonly turns: readonly Turn[];
  /** [°C]; undefined where the times are not known. */
  readonly temperature: number | undefined;
}

/** Stirs additions in one by one, each from the room into what stirring has warmed by then. The gel counts as thick as it is at the end of each. */
export function stirIn(
  step: AddStep,
  before: State,
  oil: readonly Content[],
  { form, rows: additions }: Pick<AddedOil, "form" | "rows">,
  where: string,
  job: Job,
): StirredIn {
  const speed = speedIn(step, job);
  const room = job.process.temperatureRoom;
  const turns: Turn[] = [];
  const rows: ColdAddition[] = [];
  let state = before;
  let mass = 0;
  for (const [i, row] of additions.entries()) {
    const { temperature: met } = meet(state, portionOf(oil, row.mass), room, job);
    mass += row.mass;
    state = { ...state, contents: [...before.contents, ...portionOf(oil, mass)], temperature: met };
    // What the bench read of the gel, it read at the room's temperature.
    const turn =
      speed &&
      turnOf(
        job,
        { ...state, temperature: room },
        speed,
        `${where}, ${form === "stream" ? "row" : "addition"} ${i + 1}`,
      );
    if (turn) turns.push(turn);
    const stirred = turn && typeof turn.stirred === "object" ? turn.stirred : undefined;
    const temperature = stirredFor(durationOf(row, additions[i - 1]), state, stirred?.power ?? 0, job);
    state = { ...state, temperature };
    rows.push({
      ...row,
      ...(stirred && { torque: stirred.torque, power: stirred.power }),
      ...(temperature !== undefined && { temperature }),
    });
  }
  // A stream of which no row is known went in all the same.
  const unseen = rows.length === 0 && (speed !== undefined || before.temperature !== room);
  return { rows, turns, temperature: unseen ? undefined : state.temperature };
}

/** How warm the vessel is after a while at one power of the stirrer [°C]: as warm as before where a specific heat is missing, undefined where the while is not known and counts. */
function stirredFor(duration: number | undefined, state: State, power: number, job: Job): number | undefined {
  if (power === 0 && state.temperature === job.process.temperatureRoom) return state.temperature;
  if (duration === undefined) return undefined;
  const vessel = vesselOf(state, job, { kind: "power", power });
  if (typeof vessel === "string" || duration === 0) return state.temperature;
  return attempt(
    () => vesselSegment({ ...vessel, duration }).temperatureEnd,
    () => undefined,
  );
}

/** A row of a schedule lasts until its oil is taken up, one of a stream since the row before; undefined where that is not known [s]. */
function durationOf({ timeStart, timeEnd }: ColdAddition, before: ColdAddition | undefined): number | undefined {
  if (timeStart === undefined) return undefined;
  return timeEnd === undefined ? timeStart - (before?.timeStart ?? 0) : timeEnd - timeStart;
}
