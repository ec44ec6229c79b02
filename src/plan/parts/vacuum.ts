import { moleFraction } from "../../heat/index.js";
import { boilingPressure, clearingTime, foamHead } from "../../particles/index.js";
import type { Content } from "../contents.js";
import type { Job } from "../job.js";
import type { Moment, Run } from "../state.js";
import { levelAt } from "../stirred.js";
import { by, stated, unknown } from "../unknown.js";
import { airAsked, bubbleOf } from "./bubbles.js";
import { molarMassOfOil } from "./evaporation.js";

type Vacuum = NonNullable<NonNullable<Job["process"]["air"]>["vacuum"]>;

/** The vacuum that the process draws once a phase is in. */
export function vacuumAsked({ job }: Run): Vacuum {
  return stated(job.process.air?.vacuum, "process-air");
}

/** The vessel once the phase is in after which the vacuum is drawn. */
export function vacuumState(run: Run): Moment {
  const { afterPhase } = vacuumAsked(run);
  const charged = run.moments.find(({ step }) => "phase" in step && step.phase === afterPhase);
  return charged ?? unknown("not-done", { of: afterPhase });
}

function depthUnderVacuum(run: Run): number {
  const { charge, temperature } = vacuumState(run).after;
  return levelAt(charge, temperature());
}

/** How high the melt stands under the vacuum with all its air, none of it burst [m]. */
export function foamUnderVacuum(run: Run): number {
  const { air: volumeFractionGas, pressure } = vacuumAsked(run);
  const level = depthUnderVacuum(run) / (1 - volumeFractionGas);
  return by("foam-head", () => foamHead({ level, volumeFractionGas, pressure }));
}

/** Time to clear the melt under the vacuum, at the temperature that it has then [s]. */
export function clearingUnderVacuum(run: Run): number {
  const { charge, temperature, onHeat } = vacuumState(run).after;
  const viscosity = charge.readings(onHeat ? "heating" : "cooling").at(temperature());
  const densityFluid = charge.fluidDensity(temperature());
  const { pressure } = vacuumAsked(run);
  const depth = depthUnderVacuum(run);
  return by("bubble-rise", () =>
    clearingTime({ ...bubbleOf(airAsked(run)), densityFluid, viscosity, depth, pressure }),
  );
}

/** What of the melt under the vacuum is volatile. */
export function volatilesUnderVacuum(run: Run): readonly Content[] {
  const contents = vacuumState(run).after.charge.contents.filter(({ material }) => material.volatile);
  const keys = [...new Set(contents.map(({ material }) => material))];
  return keys.flatMap((material) => {
    const [one, ...others] = contents.filter((content) => content.material === material);
    return one ? [{ ...one, mass: others.reduce((sum, { mass }) => sum + mass, one.mass) }] : [];
  });
}

/** Below which pressure a volatile material boils out [Pa]: by its share in moles of an ideal solution. */
export function boilsBelow(run: Run, { material, mass }: Content): number {
  const { charge, temperature } = vacuumState(run).after;
  const { molarMass, vapourPressure } = material.volatile ?? unknown("nothing-there", { of: material.key });
  const at = temperature();
  return by("boiling", () =>
    boilingPressure({
      vapourPressure,
      moleFraction: moleFraction({ massFraction: mass / charge.mass, molarMass, molarMassRest: molarMassOfOil }),
      temperature: at,
    }),
  );
}
