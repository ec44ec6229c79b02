import type { AssumptionCode } from "../codes/assumptions.js";
import type { Moment, Run } from "../state.js";
import { motorPower } from "../stirrer.js";
import { by, otherwise, remembered } from "../unknown.js";

/** What is taken for granted in the temperatures of a step. */
interface TakenForGranted {
  readonly assumptions: readonly AssumptionCode[];
  /** How much warmer the charge may be than was found, by the heat of stirring [K]; 0 if the motor does not bound it. */
  readonly warmerMax: number;
}

export const stirringLeftOut: AssumptionCode = "heat-of-stirring-left-out";
export const wallLeftOut: AssumptionCode = "vessel-wall-left-out";
const upToTheMotor: AssumptionCode = "heat-of-stirring-up-to-the-motor";

/** Whether something that was left out keeps a melt warmer than was found, and for longer. */
export function keepsWarm(code: AssumptionCode): boolean {
  return code === stirringLeftOut || code === upToTheMotor || code === wallLeftOut;
}

/** What is taken for granted in the temperatures of a step: by the step itself, and by the steps before it back to the last that came to the temperature which it asks for. */
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
        assumptions: assumptions.map((code) => (code === stirringLeftOut ? upToTheMotor : code)),
      }),
      () => ({ warmerMax: 0, assumptions }),
    );
  }),
);

function assumedIn({ assumptions }: Moment): readonly AssumptionCode[] {
  return assumptions?.() ?? [];
}

function leavesOutStirring(moment: Moment): boolean {
  return assumedIn(moment).includes(stirringLeftOut);
}

/** How much a step warms the charge [K] if the stirrer gives all that its motor has, and the charge keeps it. */
function warmedAtMost({ before, after, duration }: Moment): number {
  const { charge } = after;
  const specificHeat = by("heat-balance", () =>
    Math.min(...[before, after].map(({ temperature }) => charge.specificHeat(temperature()))),
  );
  return (motorPower(charge.job).max * duration()) / (charge.mass * specificHeat);
}

/** A step that lasts until a temperature is reached takes longer for what is left out, and comes to the same temperature. */
function cameToWhatWasAsked({ after, reaches }: Moment): boolean {
  return otherwise(
    () => reaches !== undefined && reaches.asked() === after.temperature(),
    () => false,
  );
}
