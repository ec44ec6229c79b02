import { pressureToClear, temperatureToClear } from "../../particles/index.js";
import type { Figure } from "../figure.js";
import type { Run } from "../state.js";
import { by, orNotKnown, otherwise, type Reason, stated, unknown, where } from "../unknown.js";
import { airAsked, bubbleOf } from "./bubble.js";
import { type AirSegment, airSegmentsIn, heldBubbles, riseInPack } from "./bubbles.js";
import { gelOf } from "./droplets.js";
import { boilingIn, boilsBelow, clearingUnderVacuum, foamUnderVacuum } from "./vacuum.js";

/** How far air rises while the melt cools, in one stretch. */
export interface PlanAirSegment {
  /** Step after which it begins. */
  readonly fromStep: number;
  /** Step by whose end it is over. */
  readonly toStep: number;
  /** Depth of the melt [m]. */
  readonly depth?: number;
  /** How far bubbles rise through it [m]. */
  readonly distance?: number;
  /** Until the whole depth is clear [s]; left out where it is not by the end. */
  readonly durationToClear?: number;
  /** Why the way is not known. */
  readonly notKnown?: Reason;
}

/** Air in the melt, in the packs and in the set gel. */
export interface PlanAir {
  /** Diameter of the bubbles asked about [m]. */
  readonly diameter: number;
  readonly segments: readonly PlanAirSegment[];
  /** How far they rise in a pack before it has set, and how deep that is [m]. */
  readonly inPack?: { readonly distance: number; readonly depth: number };
  /** Bubbles that the set gel holds for good [m]: up to `min` surely, above `max` not. */
  readonly suspended?: Pick<Figure, "min" | "value" | "max">;
  /** From this step on air that is drawn in stays: no later stretch lets it out; left out if none does. */
  readonly staysFromStep?: number;
  /** To clear the melt after a step within a time [s]: how warm to keep it [°C], or the absolute pressure above it [Pa]. */
  readonly toClear?: {
    readonly fromStep: number;
    readonly within: number;
    readonly temperature?: number;
    readonly pressure?: number;
  };
  /** Under the stated vacuum: time to clear the melt [s], height of the foam [m], what boils first and below which pressure [Pa]. */
  readonly vacuum?: {
    readonly pressure: number;
    readonly duration?: number;
    readonly foam?: number;
    readonly boiling?: { readonly material: string; readonly pressure: number };
    /** Why the height of the foam is not known. */
    readonly notKnown?: Reason;
  };
}

/** What is known of the air that was stirred into the melt; not known if the process asks about no bubbles. */
export function airOf(run: Run): PlanAir {
  const { bubbleDiameter: diameter, vacuum } = airAsked(run);
  const segments = airSegmentsIn(run);
  return {
    diameter,
    segments: segments.map(segmentResult),
    ...where("inPack", () => riseInPack(run)),
    ...where("suspended", () => {
      const { charge } = gelOf(run);
      const { min, value, max } = heldBubbles(run, charge.fluidDensity(run.job.process.room));
      return { min, max, ...(value !== undefined && { value }) };
    }),
    ...where("staysFromStep", () => staysFrom(segments)),
    ...where("toClear", () => toClear(run, segments)),
    ...(vacuum && {
      vacuum: {
        pressure: vacuum.pressure,
        ...orNotKnown(() => ({ foam: foamUnderVacuum(run).max })),
        ...where("duration", () => clearingUnderVacuum(run)),
        ...where("boiling", () => boilsFirst(run)),
      },
    }),
  };
}

/** The step from which air that is drawn in stays: after the last stretch that clears. */
function staysFrom(segments: readonly AirSegment[]): number {
  const clear = segments.map(({ distance, depth }) => (distance().min ?? 0) >= depth());
  const next = segments[clear.lastIndexOf(true) + 1];
  return clear.includes(true) && next ? next.fromStep : unknown("nothing-there");
}

function segmentResult({ fromStep, toStep, depth, distance, durationToClear }: AirSegment): PlanAirSegment {
  return {
    fromStep,
    toStep,
    ...where("depth", depth),
    ...orNotKnown(() => ({ distance: distance().value ?? unknown("no-method") })),
    ...where("durationToClear", durationToClear),
  };
}

/** How warm, or under which vacuum, the first melt of which the way is known clears in the time wanted. */
function toClear(run: Run, segments: readonly AirSegment[]): NonNullable<PlanAir["toClear"]> {
  const duration = stated(airAsked(run).clearWithin, "process-air");
  const isKnown = ({ distance }: AirSegment): boolean =>
    otherwise(
      () => distance().min !== null,
      () => false,
    );
  const { start, fromStep, depth: deep } = segments.find(isKnown) ?? unknown("not-done");
  const { charge, temperature: before } = start;
  const { law, at } = charge.readings("cooling");
  const densityFluid = charge.fluidDensity(before());
  const bubble = { ...bubbleOf(airAsked(run)), densityFluid, depth: deep(), duration };
  const viscosity = at(before());
  return {
    fromStep,
    within: duration,
    ...where("temperature", () => by("bubble-rise", () => temperatureToClear({ ...bubble, viscosity: law }))),
    ...where("pressure", () => by("bubble-rise", () => pressureToClear({ ...bubble, viscosity }))),
  };
}

/** What boils first, and below which pressure at the most [Pa]. */
function boilsFirst(run: Run): { readonly material: string; readonly pressure: number } {
  const [first] = boilingIn(run)
    .filter(({ step }) => step === undefined)
    .map((boiling) => {
      const { max } = boilsBelow(run, boiling);
      return { material: boiling.content.material.key, pressure: max ?? unknown("no-method", { law: "boiling" }) };
    })
    .sort((one, other) => other.pressure - one.pressure);
  return first ?? unknown("nothing-there");
}
