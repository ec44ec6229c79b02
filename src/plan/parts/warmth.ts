import type { AssumptionCode } from "../codes/assumptions.js";
import type { Ends } from "../contents.js";
import type { Basis, Figure } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { stirrerOf } from "../stirrer.js";
import { by, otherwise, remembered, stated } from "../unknown.js";

/** What is taken for granted in a temperature, and how much warmer the charge may be for it [K]. */
interface TakenForGranted {
  readonly assumptions: readonly AssumptionCode[];
  readonly warmerMax: number;
}

/** A temperature of a moment as a figure: up to as warm as stirring may have made it, where its heat is left out. */
export function temperatureFigure(run: Run, moment: Moment, value: number, basis: readonly Basis[] = []): Figure {
  const { assumptions, warmerMax } = takenForGranted(run, moment);
  return { min: value, max: value + warmerMax, value, basis, ...(assumptions.length > 0 && { assumptions }) };
}

/** Whether something that was left out keeps a melt warmer than was found, and for longer. */
export function keepsWarm(code: AssumptionCode): boolean {
  return code === leftOut || code === "heat-of-stirring-up-to-the-motor" || code === wallLeftOut;
}

/** The same of a temperature that may not be too warm: without the wall of the vessel the charge may be as warm as it last was for certain. */
export function upToTheWarmest(run: Run, moment: Moment, value: number, basis?: readonly Basis[]): Figure {
  const { max, ...figure } = temperatureFigure(run, moment, value, basis);
  return { ...figure, max: value + warmerAtMost(run, moment, value) };
}

/** The same with its end open where nobody knows how much stirring warms it, for what is computed of it. */
export function temperatureEnds(run: Run, moment: Moment, value: number): Figure {
  const figure = upToTheWarmest(run, moment, value);
  return figure.assumptions?.includes(leftOut) ? { ...figure, max: null } : figure;
}

/** How much warmer than a temperature of a moment the charge may be [K], by the heat of stirring and by a wall that was left out. */
function warmerAtMost(run: Run, moment: Moment, value: number): number {
  const { assumptions, warmerMax } = takenForGranted(run, moment);
  return warmerMax + (assumptions.includes(wallLeftOut) ? Math.max(0, lastSure(run, moment) - value) : 0);
}

/** As warm as the charge last was for certain, or as what was put to it since [°C]: no wall keeps it warmer. */
function lastSure(run: Run, moment: Moment): number {
  const place = run.moments.indexOf(moment);
  const { step, after, warmedBy } = moment;
  const own = after.temperature();
  const before = run.moments[place - 1];
  const isSure = !takenForGranted(run, moment).assumptions.includes(wallLeftOut);
  const { at = own } = step as { readonly at?: number };
  return Math.max(own, ...(isSure ? [] : [at, warmedBy ?? own, before ? lastSure(run, before) : own]));
}

/** A volume at a temperature of a moment as a figure: between what expansion leaves open, and up to as warm as stirring may have made the charge. */
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

  /** Open where the densities do not go so far. */
  function hottest(): number | null {
    return otherwise<number, null>(
      () => by("expansion", () => volumeAt(temperature + warmerMax).max),
      () => null,
    );
  }
}

/** What is taken for granted in the temperatures of a step: its own, and that of the steps before it up to the last that came to a temperature which was asked for. */
export function takenForGranted(run: Run, moment: Moment): TakenForGranted {
  return grantedIn(run)(moment);
}

const grantedIn = remembered(({ moments }: Run) =>
  remembered((moment: Moment): TakenForGranted => {
    const until = moments.slice(0, moments.indexOf(moment) + 1);
    const last = until.map(cameToWhatWasAsked).lastIndexOf(true);
    const since = until.slice(last + 1);
    const assumptions = [...new Set(since.flatMap(assumedIn))];
    return otherwise(
      () => ({
        warmerMax: since.filter(leavesOutStirring).reduce((sum, one) => sum + warmedAtMost(one), 0),
        assumptions: assumptions.map((code) => (code === leftOut ? "heat-of-stirring-up-to-the-motor" : code)),
      }),
      () => ({ warmerMax: 0, assumptions }),
    );
  }),
);

const leftOut: AssumptionCode = "heat-of-stirring-left-out";
const wallLeftOut: AssumptionCode = "vessel-wall-left-out";

function assumedIn({ assumptions }: Moment): readonly AssumptionCode[] {
  return assumptions?.() ?? [];
}

function leavesOutStirring(moment: Moment): boolean {
  return assumedIn(moment).includes(leftOut);
}

/** How much a step may warm the charge [K] if the stirrer gives it all that its motor has, and the charge keeps it. */
function warmedAtMost({ before, after, duration }: Moment): number {
  const { charge } = after;
  const { motor, kind } = stirrerOf(charge.job);
  const { power, efficiency = 1 } = stated(motor, "stirrer-motor", { of: kind });
  const specificHeat = by("heat-balance", () =>
    Math.min(...[before, after].map(({ temperature }) => charge.specificHeat(temperature()))),
  );
  return (power * efficiency * duration()) / (charge.mass * specificHeat);
}

/** A step that goes on until a temperature is reached takes longer for what is left out, and comes to the same temperature. */
function cameToWhatWasAsked({ after, reaches }: Moment): boolean {
  return otherwise(
    () => reaches !== undefined && reaches.asked() === after.temperature(),
    () => false,
  );
}
