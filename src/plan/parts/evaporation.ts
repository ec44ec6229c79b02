import type { Material } from "../../formula/index.js";
import { evaporationCoefficient, evaporationOverRun } from "../../heat/index.js";
import { airProperties } from "../../laws/index.js";
import type { NotKnown } from "../figure.js";
import type { Job } from "../job.js";
import type { Moment, Run } from "../state.js";
import { by, otherwise, stated } from "../unknown.js";
import { massOfMaterial, momentsWith } from "./in-vessel.js";
import { segmentsWith } from "./thermal-exposure.js";

/** Molar mass of what the volatile part is dissolved in [kg/mol]: triglycerides of plant oils, common practice, no source. */
export const molarMassOfOil = 0.88;

/** Shares of what was charged [0 to 1]. */
export interface PredictedLoss {
  /** From vapour pressure and the air over the vessel. */
  readonly predicted: number;
  /** The most that is possible at all, as into a vacuum. */
  readonly max: number;
}

/** What one volatile material loses, by its key; or why that is not known. */
export type Evaporation = {
  readonly material: string;
  /** As the batch document states it, for the charge to make up [0 to 1]. */
  readonly stated?: number;
} & (PredictedLoss | NotKnown);

/** The loss of each volatile material from its charge to the last pack: predicted, at most, and as the batch document states it. */
export function evaporationOf(run: Run): readonly Evaporation[] {
  return Object.values(run.job.formula.materials).flatMap((material): readonly Evaporation[] => {
    const [charged] = momentsWith(run, material.key);
    const { volatile, key } = material;
    if (!volatile || !charged) return [];
    const known = { material: key, ...statedLoss(run.job, key) };
    return [
      otherwise(
        (): Evaporation => ({ ...known, ...predicted(run, volatile, charged, key) }),
        (notKnown) => ({ ...known, notKnown }),
      ),
    ];
  });
}

function predicted(run: Run, volatile: NonNullable<Material["volatile"]>, charged: Moment, key: string): PredictedLoss {
  const { process, vessel } = run.job;
  const { after } = charged;
  const airVelocity = stated(process.airVelocity, "process-air-speed");
  const segments = segmentsWith(run, key);
  const mass = massOfMaterial(charged, key);
  return by(
    "evaporation",
    () => {
      const { kinematicViscosity } = airProperties({ temperature: after.temperature() });
      const { coefficient } = evaporationCoefficient({
        airVelocity,
        length: vessel.diameter,
        kinematicViscosity,
        diffusivity: volatile.diffusivity,
      });
      const { predicted: loss, max } = evaporationOverRun({
        volatile: { mass, molarMass: volatile.molarMass, vapourPressure: volatile.vapourPressure },
        rest: { mass: after.charge.mass - mass, molarMass: molarMassOfOil },
        area: (Math.PI / 4) * vessel.diameter ** 2,
        coefficient,
        segments,
      });
      return { predicted: loss.fraction, max: max.fraction };
    },
    { of: key },
  );
}

/** The share of a material that the batch document states as lost, if it states one. */
function statedLoss({ batch }: Job, key: string): Pick<Evaporation, "stated"> {
  const kept = batch.allowances.flatMap((allowance) =>
    allowance.kind === "share" && allowance.materials?.includes(key) ? [1 - allowance.fraction] : [],
  );
  return kept.length === 0 ? {} : { stated: 1 - kept.reduce((product, share) => product * share, 1) };
}
