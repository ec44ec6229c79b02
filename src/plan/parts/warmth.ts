import type { Ends } from "../contents.js";
import type { Basis, Figure } from "../figure.js";
import type { Moment, Run, State } from "../state.js";
import { by, otherwise } from "../unknown.js";
import { stirringLeftOut, takenForGranted, wallLeftOut } from "./taken-for-granted.js";

/** A temperature of a moment as a figure: up to what the heat of stirring may add, if that is left out. */
export function temperatureFigure(run: Run, moment: Moment, value: number, basis: readonly Basis[] = []): Figure {
  const { assumptions, warmerMax } = takenForGranted(run, moment);
  return { min: value, max: value + warmerMax, value, basis, ...(assumptions.length > 0 && { assumptions }) };
}

/** How cool a state of a moment may be [°C]: what is left while packs are filled cools faster than a full vessel. */
export function coolestIn(state: State, { after, coolest }: Moment): number | null {
  return state === after && coolest ? coolest() : state.temperature();
}

/** The same for a question of what is too warm: if the wall of the vessel is left out, up to the temperature at which the charge last was for certain. */
export function upToTheWarmest(run: Run, moment: Moment, value: number, basis?: readonly Basis[]): Figure {
  const { max, ...figure } = temperatureFigure(run, moment, value, basis);
  return { ...figure, max: finiteOrOpen(value + warmerAtMost(run, moment, value)) };
}

/** How warm a state of a moment may be [°C], if what is left in a vessel that is drained is warmed faster; `null` if nothing bounds it. */
export function warmestIn(state: State, run: Run, moment: Moment): number | null {
  const value = state.temperature();
  const { warmerMax } = takenForGranted(run, moment);
  return finiteOrOpen(value + warmerMax + (state === moment.after ? drainedAtMost(run, moment, value) : 0));
}

/** An end of a figure: open where nothing bounds it. */
function finiteOrOpen(end: number): number | null {
  return Number.isFinite(end) ? end : null;
}

/** How much warmer than a temperature what was filled from a vessel that was warmed meanwhile may be [K]; without end if nothing bounds it. */
function drainedAtMost({ moments }: Run, moment: Moment, value: number): number {
  const { warmest } = moments.slice(0, moments.indexOf(moment) + 1).find((one) => one.warmest) ?? {};
  return warmest ? Math.max(0, (warmest() ?? Number.POSITIVE_INFINITY) - value) : 0;
}

/** The same for what is computed from the temperature: the end is open if nothing bounds the heat of stirring. */
export function temperatureEnds(run: Run, moment: Moment, value: number): Figure {
  const figure = upToTheWarmest(run, moment, value);
  return figure.assumptions?.includes(stirringLeftOut) ? { ...figure, max: null } : figure;
}

/** How much warmer than a temperature of a moment the charge may be [K], by the heat of stirring, by a wall that is left out and by draining a vessel that is warmed. */
function warmerAtMost(run: Run, moment: Moment, value: number): number {
  const { assumptions, warmerMax } = takenForGranted(run, moment);
  const byWall = assumptions.includes(wallLeftOut) ? Math.max(0, lastSure(run, moment) - value) : 0;
  return warmerMax + Math.max(byWall, drainedAtMost(run, moment, value));
}

/** The temperature that the charge last had for certain, or that of what was put to it since, if that was warmer [°C]: a wall keeps it no warmer. */
function lastSure(run: Run, moment: Moment): number {
  const { step, after, warmedBy } = moment;
  const own = after.temperature();
  if (!takenForGranted(run, moment).assumptions.includes(wallLeftOut)) return own;
  const before = run.moments[run.moments.indexOf(moment) - 1];
  const { at = own } = step as { readonly at?: number };
  return Math.max(own, at, warmedBy ?? own, before ? lastSure(run, before) : own);
}

/** A volume at a temperature of a moment as a figure: between the ends of an expansion that is not stated, and up to the warmest that the charge may be. */
export function volumeFigure(
  run: Run,
  moment: Moment,
  temperature: number,
  volumeAt: (temperature: number) => Ends,
  basis: readonly Basis[],
): Figure {
  const { assumptions: warmth } = takenForGranted(run, moment);
  const warmerMax = warmerAtMost(run, moment, temperature);
  const { min, max } = volumeAt(temperature);
  const assumptions = min === max ? warmth : [...warmth, "expansion-up-to-the-usual" as const];
  return {
    min,
    max: warmerMax > 0 ? hottest() : max,
    ...(min === max && { value: min }),
    basis,
    ...(assumptions.length > 0 && { assumptions }),
  };

  /** Open if nothing bounds that temperature, or the densities do not hold there. */
  function hottest(): number | null {
    if (finiteOrOpen(warmerMax) === null) return null;
    return otherwise<number, null>(
      () => by("expansion", () => volumeAt(temperature + warmerMax).max),
      () => null,
    );
  }
}
