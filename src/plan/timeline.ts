import type { Regime } from "../mixing/index.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import type { Moment, Run } from "./state.js";
import type { Step } from "./step-documents.js";
import { stirredIn } from "./stirred.js";
import { unique } from "./unique.js";
import { otherwise, type Reason, stated, unknown, where, withAssumed } from "./unknown.js";

/** One step at the kettle. What is not known is left out; `notKnown` says why. */
export interface PlanStep {
  /** Its place in the process, from 1. */
  readonly number: number;
  /** The step as the document states it, with numbers for quantities. */
  readonly step: Step;
  /** What the step charges [kg], if it charges anything. */
  readonly massCharged?: number;
  /** Which part of its phase that is, from 1, and of how many; left out where it is all of it. */
  readonly part?: { readonly number: number; readonly count: number };
  /** The stirrer meanwhile [rev/s]; left out where nothing says that it turns. */
  readonly speed?: number;
  /** Of the coolant at its inlet, where the step cools through the jacket [°C]. */
  readonly temperatureCoolant?: number;
  /** Since the start [s]. */
  readonly timeStart?: number;
  /** Since the start [s]. */
  readonly timeEnd?: number;
  /** In the vessel after the step, or in the packs from filling on [kg]. */
  readonly mass: number;
  readonly inPacks: boolean;
  /** Before the step [°C]. */
  readonly temperatureStart?: number;
  /** After the step [°C]. */
  readonly temperatureEnd?: number;
  /** Whether the gel has set by the end of the step. */
  readonly set?: boolean;
  /** After the step, while it flows [Pa·s], at the shear rate of the readings [1/s]. */
  readonly viscosity?: {
    readonly viscosity: number;
    readonly shearRate: number;
    readonly beyondReadings: boolean;
    readonly assumptions?: readonly AssumptionCode[];
  };
  /** What the stirrer does at the end of the step: speed [rev/s], power [W], torque [N·m]. */
  readonly stirring?: {
    readonly speed: number;
    readonly power: number;
    readonly torque: number;
    readonly reynolds: number;
    readonly regime: Regime;
  };
  /** Volume fraction of oil in oil and outer phase after the step, of an emulsion. */
  readonly volumeFractionOil?: number;
  /** What time and temperature rest on. */
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
  /** Why time or temperature is not known. */
  readonly notKnown?: Reason;
}

/** The moments of a run as steps with numbers. */
export function timelineOf(run: Run): readonly PlanStep[] {
  return run.moments.map((moment) => {
    const { number, before, after, step, portion, speed, basis, assumptions, duration } = moment;
    const { charge, onHeat, inPacks } = after;
    const charges = !inPacks && charge.contents.length > before.charge.contents.length;
    const set = where("set", () => hasSet(moment));
    const turn = run.turns.filter((one) => one.step === number).at(-1);
    const reason = otherwise(
      () => {
        duration();
        after.temperature();
        return undefined;
      },
      (why) => why,
    );
    const { assumed } = withAssumed(() => [where("time", after.time), where("temperature", after.temperature)]);
    return {
      number,
      step,
      ...(charges && { massCharged: charge.mass - before.charge.mass }),
      ...(portion && portion.count > 1 && { part: { number: portion.number, count: portion.count } }),
      ...(speed && where("speed", speed)),
      ...(isJacketed(step) &&
        where("temperatureCoolant", () => stated(run.job.vessel.jacket, "vessel-jacket").coolant)),
      ...where("timeStart", before.time),
      ...where("timeEnd", after.time),
      mass: charge.mass,
      inPacks,
      ...(before.charge.contents.length > 0 && where("temperatureStart", before.temperature)),
      ...where("temperatureEnd", after.temperature),
      ...set,
      ...(!set.set && where("viscosity", () => viscosityAfter(moment))),
      ...(turn &&
        where("stirring", () => {
          const { speed: turns, power, torque, reynolds, regime } = stirredIn(turn);
          return { speed: turns, power, torque, reynolds, regime };
        })),
      ...(charge.isEmulsion() && where("volumeFractionOil", () => charge.oilFraction())),
      basis: otherwise(
        () => unique(basis?.() ?? []),
        () => [],
      ),
      assumptions: otherwise(
        () => unique([...(assumptions?.() ?? []), ...assumed]),
        () => assumed,
      ),
      ...(reason && { notKnown: reason }),
    };

    function viscosityAfter({ after: { temperature } }: Moment): NonNullable<PlanStep["viscosity"]> {
      if (charge.isEmulsion()) return unknown("nothing-there");
      const { value, assumed } = withAssumed(() => charge.readings(onHeat ? "heating" : "cooling"));
      const { at, shearRate, temperatureMin, temperatureMax } = value;
      const now = temperature();
      const beyondReadings = now < temperatureMin || now > temperatureMax;
      return { viscosity: at(now), shearRate, beyondReadings, ...(assumed.length > 0 && { assumptions: assumed }) };
    }
  });
}

/** Whether the coolant runs in a step. */
function isJacketed(step: Step): boolean {
  return step.do === "cool" && "with" in step && step.with === "jacket";
}

/** Whether a gel that was heated has set; of one that never melted there is no such question. */
function hasSet({ after: { charge, onHeat, temperature } }: Moment): boolean {
  if (charge.isEmulsion() || !charge.heated) return unknown("nothing-there");
  if (onHeat || charge.dose() === 0) return false;
  return temperature() <= charge.setting().temperature;
}
