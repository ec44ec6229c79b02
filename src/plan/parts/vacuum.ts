import type { Material } from "../../formula/index.js";
import { moleFraction } from "../../heat/index.js";
import { vapourPressures } from "../../laws/index.js";
import { boilingPressure, clearingTime, foamHead } from "../../particles/index.js";
import type { Charge } from "../charge.js";
import { type Content, type Ends, isWater, massOf } from "../contents.js";
import { exactly, type Figure } from "../figure.js";
import type { Job } from "../job.js";
import { levelAt } from "../level.js";
import type { Moment, Run, State } from "../state.js";
import { by, otherwise, stated, unknown } from "../unknown.js";
import { depthsIn } from "../vessel-shape.js";
import { airAsked, bubbleOf } from "./bubble.js";
import { molarMassOfOil } from "./evaporation.js";
import { lastState, momentsOf } from "./moments.js";
import { temperatureEnds } from "./warmth.js";
import { waterActivityOf } from "./water-activity.js";

type Vacuum = NonNullable<NonNullable<Job["process"]["air"]>["vacuum"]>;

/** The vacuum that the process draws once a phase is in. */
export function vacuumAsked({ job }: Run): Vacuum {
  return stated(job.process.air?.vacuum, "process-air");
}

/** The vessel once the phase is in after which the vacuum is drawn. */
export function vacuumState(run: Run): Moment {
  const { afterPhase } = vacuumAsked(run);
  const charged = run.moments.filter(({ step }) => "phase" in step && step.phase === afterPhase).at(-1);
  return charged ?? unknown("not-done", { of: afterPhase });
}

function depthUnderVacuum(run: Run): number {
  const { charge, temperature } = vacuumState(run).after;
  return levelAt(charge, temperature());
}

/** Between which heights the melt stands under the vacuum with all its air, none of it burst, over the depths that the bottom lets it have [m]. */
export function foamUnderVacuum(run: Run): Ends {
  const { air: volumeFractionGas, pressure } = vacuumAsked(run);
  const headOf = (depth: number): number =>
    by("foam-head", () => foamHead({ level: depth / (1 - volumeFractionGas), volumeFractionGas, pressure }));
  const { min, max } = depthsIn(run.job.vessel, depthUnderVacuum(run));
  return { min: headOf(min), max: headOf(max) };
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

/** A vacuum over some charge, and what of that may boil. */
export interface Boiling {
  readonly content: Content;
  /** Absolute pressure [Pa]. */
  readonly pressure: number;
  /** The de-aerating step in which it is drawn; left out for the one of the process. */
  readonly step?: number;
  readonly charge: Charge;
  /** [°C]. */
  readonly temperature: () => number;
  /** The moment whose end it is; left out where the run never comes to it. */
  readonly moment?: Moment;
}

/** Every volatile material and all water under every vacuum: that of the process, and those of the steps that de-aerate. Under that of a phase that is never charged, all of the formula. */
export function boilingIn(run: Run): readonly Boiling[] {
  const { vacuum } = run.job.process.air ?? {};
  const ofProcess = vacuum
    ? otherwise(
        () => boilingOf(vacuumState(run), vacuumState(run).after, vacuum.pressure),
        () =>
          Object.values(run.job.formula.materials)
            .filter(mayBoil)
            .map((material) => ({
              content: { phase: "", material, mass: 0 },
              pressure: vacuum.pressure,
              charge: lastState(run).charge,
              temperature: () => vacuumState(run).after.temperature(),
            })),
      )
    : [];
  const ofSteps = momentsOf(run, "de-aerate").flatMap((moment) => {
    const { step, number, before, after } = moment;
    if (step.pressure === undefined) return [];
    const temperature = () => Math.max(before.temperature(), after.temperature());
    return boilingOf(moment, { ...before, temperature }, step.pressure).map((one) => ({ ...one, step: number }));
  });
  return [...ofProcess, ...ofSteps];
}

function boilingOf(
  moment: Moment,
  { charge, temperature }: Pick<State, "charge" | "temperature">,
  pressure: number,
): readonly Boiling[] {
  const materials = [...new Set(charge.contents.map(({ material }) => material))].filter(mayBoil);
  return materials.map((material) => {
    const own = charge.contents.filter((content) => content.material === material);
    const phase = own[0]?.phase ?? "";
    return { content: { phase, material, mass: massOf(own) }, pressure, charge, temperature, moment };
  });
}

function mayBoil(material: Material): boolean {
  return material.volatile !== undefined || isWater({ material });
}

/** Molar mass of water [kg/mol]: definition. */
const molarMassOfWater = 0.018015;

/** Below which pressure a material boils out [Pa], up to the warmest that the charge may be: water of an emulsion by its activity there, all else by its share in moles of an ideal solution. */
export function boilsBelow(run: Run, boiling: Boiling): Figure {
  const { moment } = boiling;
  const temperature = boiling.temperature();
  const found = boilsBelowAt(run, boiling, temperature);
  if (!moment) return found;
  const { max, assumptions } = temperatureEnds(run, moment, temperature);
  return {
    ...found,
    max: max === null ? null : boilsBelowAt(run, boiling, max).max,
    ...(assumptions && { assumptions }),
  };
}

function boilsBelowAt(run: Run, { content: { material, mass, phase }, charge }: Boiling, at: number): Figure {
  const basis = [{ kind: "law", key: "boiling", of: material.key }] as const;
  const isOuter = charge.isEmulsion() && phase === run.job.bench.emulsion?.outerPhase;
  if (isOuter && isWater({ material })) {
    const saturated = by("boiling", () => boilingPressure({ vapourPressure: vapourPressures.water, temperature: at }));
    const { min, max, basis: activity = [] } = waterActivityOf(run);
    const times = (end: number | null): number | null => (end === null ? null : end * saturated);
    return { min: times(min), max: times(max), basis: [...basis, ...activity] };
  }
  // It is not known where a material boils that forms no ideal solution in oil.
  if (isOuter) return unknown("no-method", { law: "boiling", of: material.key });
  const ofWater = { molarMass: molarMassOfWater, vapourPressure: vapourPressures.water };
  const { molarMass, vapourPressure } = material.volatile ?? ofWater;
  const massFraction = mass / (charge.isEmulsion() ? massOf(charge.oil()) : charge.mass);
  const found = by("boiling", () =>
    boilingPressure({
      vapourPressure,
      moleFraction: moleFraction({ massFraction, molarMass, molarMassRest: molarMassOfOil }),
      temperature: at,
    }),
  );
  return exactly(found, basis);
}
