import type { AssumptionCode } from "../codes/assumptions.js";
import type { Ends } from "../contents.js";
import type { Basis, Figure } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { stirrerOf } from "../stirrer.js";
import { by, otherwise, stated, unknown } from "../unknown.js";

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

/** A volume at a temperature of a moment as a figure: between what expansion leaves open, and up to as warm as stirring may have made the charge. */
export function volumeFigure(
  run: Run,
  moment: Moment,
  temperature: number,
  volumeAt: (temperature: number) => Ends,
  basis: readonly Basis[],
): Figure {
  const { assumptions: warmth, warmerMax } = takenForGranted(run, moment);
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
export function takenForGranted({ moments }: Run, moment: Moment): TakenForGranted {
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
}

const leftOut: AssumptionCode = "heat-of-stirring-left-out";

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
    () => (reaches?.asked() ?? unknown("not-done")) === after.temperature(),
    () => false,
  );
}
