import { type Shrinkage, shrinkage } from "../../heat/index.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import type { Basis, Figure } from "../figure.js";
import type { Run } from "../state.js";
import { by, orNotKnown, type Reason, stated, unknown, where } from "../unknown.js";
import { coolingUntil, handlingOf, type PlanHandling } from "./handling.js";
import { filledAt, fillingOf, momentsOf } from "./moments.js";

/** What happens in the pack: when its centre has set, when it may be capped and moved, and how far its content sinks as it cools. */
export interface PlanAfterFilling extends PlanHandling {
  /** Time after filling until the centre of the last pack has set [s]. */
  readonly durationToSet?: number;
  /** How the pack cools. */
  readonly basis?: Basis;
  readonly assumptions?: readonly AssumptionCode[];
  /** Depth of the sink, if all of it shows at the surface [m]. */
  readonly sinkDepth?: number;
  /** Mass that fills the pack up again [kg]. */
  readonly topUpMass?: number;
  /** Why the time until it has set is not known. */
  readonly notKnown?: Reason;
}

/** Time from its filling until the centre of a pack has set [s]: of the last pack, unless another temperature is given. */
export function durationToSet(run: Run, filled: number = filledAt(run, "last-pack")): Figure {
  const { temperature, basis: ofSetting } = fillingOf(run).after.charge.setting();
  const { basis = [], ...cooling } = coolingUntil(run, filled, temperature);
  return { ...cooling, basis: [...basis, ofSetting] };
}

/** How long the packs are at rest after the last is filled [s]. */
export function restOfPacks(run: Run): number {
  return momentsOf(run, "rest")
    .filter(({ before }) => before.inPacks)
    .reduce((sum, { step }) => sum + step.for, 0);
}

/** Shrinkage of a pack's content between filling and the room. */
function shrinkageOf(run: Run): Shrinkage {
  const { charge, temperature } = fillingOf(run).after;
  const { diameter, height } = stated(run.job.pack?.content, "pack-cooling");
  const temperatureEnd = run.job.process.room;
  const temperatureFill = temperature();
  // What is filled at the room's temperature keeps its volume.
  if (temperatureFill === temperatureEnd) unknown("nothing-there");
  const density = charge.density(temperatureEnd);
  const slope = (density - charge.density(temperatureFill)) / (temperatureFill - temperatureEnd);
  const crossSection = (Math.PI / 4) * diameter ** 2;
  return by("shrinkage", () =>
    shrinkage({
      density: { law: "linear", density, temperatureReference: temperatureEnd, slope },
      volume: crossSection * height,
      areaCrossSection: crossSection,
      temperatureFill,
      temperatureEnd,
    }),
  );
}

/** What is known of the packs after filling. */
export function afterFillingOf(run: Run): PlanAfterFilling {
  return {
    ...orNotKnown(() => {
      const { value, basis: [basis] = [], assumptions } = durationToSet(run);
      return {
        ...(value !== undefined && { durationToSet: value }),
        ...(basis && { basis }),
        ...(assumptions && { assumptions }),
      };
    }),
    ...handlingOf(run),
    ...where("sinkDepth", () => shrinkageOf(run).sinkDepth),
    ...where("topUpMass", () => shrinkageOf(run).topUpMass),
  };
}
