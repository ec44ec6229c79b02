import type { Particle } from "../../formula/index.js";
import { flakeOfVolume } from "../../particles/index.js";
import { kriegerDoughertyViscosity, packedFraction } from "../../rheology/index.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import type { LawCode } from "../codes/bases.js";
import type { FieldCode } from "../codes/reasons.js";
import type { Run } from "../state.js";
import { by, otherwise, type Reason, where, withAssumed } from "../unknown.js";
import { dragOf, type Entering, enteringIn } from "./entering.js";
import { fillingTakesTime, heatOff, makesMelt, type WhichPack } from "./moments.js";
import { timeOfPassing } from "./passing.js";
import { wettingOilOf } from "./pastes.js";
import { largestOf, massFractionBeyond, settlingOf } from "./settling.js";
import { type LargestSuspended, largestSuspendedOf, yieldStressNeeded } from "./suspended.js";
import { windowOf } from "./window.js";

/** The size of a particle; of a flake how wide it is, too. */
function sizeOf({ diameter, thickness }: Particle): PlanParticle["size"] {
  if (thickness === undefined) return { diameter };
  return {
    diameter,
    thickness,
    ...where("width", () => by("flake-drag", () => flakeOfVolume({ diameter, thickness }).width)),
  };
}

function settledInto(entering: Entering, which: WhichPack): NonNullable<PlanParticle["settles"]> {
  const { inVessel, inPack } = settlingOf(entering, which)(largestOf(entering.particle));
  return { inVessel, ...where("inPack", inPack) };
}

/** How many times thicker all particles make the melt, packed as the oil absorption of this one has it. */
function thickeningOf({ particle, after }: Entering, oilAbsorption: number): number {
  const volumeFraction = after.charge.grains();
  return by("suspension-viscosity", () =>
    kriegerDoughertyViscosity({
      volumeFraction,
      volumeFractionPacked: packedFraction({ oilAbsorption, densityPigment: particle.density }),
    }),
  );
}

/** One kind of particle: when it may go in, how far it settles and whether it stays up. */
export interface PlanParticle {
  /** Key of the material. */
  readonly material: string;
  /** Step in which it goes in, from 1; left out for what is in the vessel from the start. */
  readonly step?: number;
  /** By which law the melt resists it. */
  readonly drag?: LawCode;
  /** Between which temperatures it may go in, as the melt shows before [°C], and when after the heat is off [s]. */
  readonly window?: {
    readonly isOpen: boolean;
    readonly temperatureMax: number;
    readonly temperatureMin: number;
    /** The field that would tell how far down it can be stirred, if it is not stated: it may close earlier. */
    readonly openBy?: FieldCode;
    /** Why the way in the pack is not known, if it is not: the window may open later. */
    readonly packLacks?: Reason;
    /** What is taken for granted in it. */
    readonly assumptions?: readonly AssumptionCode[];
    /** Opens at `temperatureMax`. */
    readonly timeMin?: number;
    /** Closes at `temperatureMin`. */
    readonly timeMax?: number;
  };
  /** Why the window is not known. */
  readonly windowNotKnown?: Reason;
  /** When it goes in by this run: [°C] and after the heat is off [s]. */
  readonly goesIn?: { readonly temperature: number; readonly time?: number };
  /** How far the largest of it settle until the last pack has set, downwards positive [m]. */
  readonly settles?: { readonly inVessel: number; readonly inPack?: number };
  /** The same until the first pack has set, which is filled hottest; left out where filling takes no time. */
  readonly settlesFirst?: { readonly inVessel: number; readonly inPack?: number };
  /** Its size [m]: diameter of the sphere of equal volume, and of a flake its width as sold and its thickness. */
  readonly size: { readonly diameter: number; readonly width?: number; readonly thickness?: number };
  /** Share of its mass that settles further than allowed [0 to 1], if sizes are stated. */
  readonly massFractionBeyond?: number;
  /** Yield stress that holds it [Pa]: surely from `max`, by no published figure below `min`. */
  readonly yieldStressNeeded?: { readonly min: number; readonly value: number; readonly max: number };
  readonly largestSuspended?: LargestSuspended;
  /** Oil that wets it, by its oil absorption [kg]. */
  readonly wettingOil?: number;
  /** How many times thicker the particles make the melt, by its oil absorption. */
  readonly thickening?: number;
}

/** Every kind of particle, each time that it goes in, with what is known of it. */
export function particlesOf(run: Run): readonly PlanParticle[] {
  return enteringIn(run).map((entering): PlanParticle => {
    const { material, particle, number } = entering;
    const { oilAbsorption } = particle;
    return {
      material: material.key,
      step: number,
      size: sizeOf(particle),
      ...where("drag", () => dragOf(particle).key),
      ...(makesMelt(run) && { ...windowResult(entering), ...goingIn(entering), ...settles(entering) }),
      ...where("yieldStressNeeded", () => {
        const { min, value, max } = yieldStressNeeded(run, particle);
        return { min, value, max };
      }),
      ...where("largestSuspended", () => largestSuspendedOf(run, particle)),
      ...(oilAbsorption !== undefined && {
        ...where("wettingOil", () => wettingOilOf(entering, 100 * oilAbsorption)),
        ...where("thickening", () => thickeningOf(entering, 100 * oilAbsorption)),
      }),
    };
  });
}

function windowResult(entering: Entering): Pick<PlanParticle, "window" | "windowNotKnown"> {
  const { run, place } = entering;
  return otherwise(
    () => {
      const { value, assumed } = withAssumed(() => windowOf(entering));
      const { temperatureMax, temperatureMin, openBy, packLacks } = value;
      const isOpen = temperatureMax > temperatureMin;
      const sinceOff = (temperature: number): number =>
        timeOfPassing(temperature, run, place) - heatOff(run, place).time();
      return {
        window: {
          isOpen,
          temperatureMax,
          temperatureMin,
          ...(openBy && { openBy }),
          ...(packLacks && { packLacks }),
          ...(assumed.length > 0 && { assumptions: assumed }),
          ...(isOpen && {
            ...where("timeMin", () => sinceOff(temperatureMax)),
            ...where("timeMax", () => sinceOff(temperatureMin)),
          }),
        },
      };
    },
    (windowNotKnown) => ({ windowNotKnown }),
  );
}

function goingIn({ run, place, before }: Entering): Pick<PlanParticle, "goesIn"> {
  return where("goesIn", () => ({
    temperature: before.temperature(),
    ...where("time", () => before.time() - heatOff(run, place).time()),
  }));
}

function settles(entering: Entering): Pick<PlanParticle, "settles" | "settlesFirst" | "massFractionBeyond"> {
  const { particle, run } = entering;
  return {
    ...where("settles", () => settledInto(entering, "last-pack")),
    ...(fillingTakesTime(run) && where("settlesFirst", () => settledInto(entering, "first-pack"))),
    ...(particle.sizes && where("massFractionBeyond", () => massFractionBeyond(entering, "last-pack"))),
  };
}
