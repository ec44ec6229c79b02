import type { Estimate } from "../../gel/index.js";
import type { FlowCurve } from "../../laws/index.js";

/** The yield stress of the set gel that everything here goes by. */
export interface PlanYieldStress {
  /** [Pa]. */
  readonly value: number;
  /** Lower limit [Pa]: of 95 % where trials say it, else the value. */
  readonly min: number;
  /** Upper limit [Pa], likewise. */
  readonly max: number;
  /** Stated, read off a flow curve, or expected by trials. */
  readonly from: string;
}

/** The strength that trials let expect of the set gel, and the dose for another. */
export interface PlanStrength {
  readonly of: "yield stress" | "modulus";
  /** Gel former in the product [0 to 1]. */
  readonly dose: number;
  /** At that dose [Pa], with its 95 % limits. */
  readonly expected?: Estimate;
  /** Strength that is wanted [Pa], and the dose for it [0 to 1] with its 95 % limits. */
  readonly target?: number;
  readonly doseTarget?: Estimate;
  /** How many trials, and what was fitted to them. */
  readonly basis: string;
  /** Why something above is left out. */
  readonly notKnown?: string;
}

/** A temperature at which the gel sets or dissolves at the dose of the product. */
export interface PlanGelPoint {
  readonly what: "sets" | "dissolves";
  /** Gel former in the product [0 to 1]. */
  readonly dose: number;
  /** [°C]. */
  readonly temperature: number;
  /** 95 % limits [°C] of the line through all doses, where it was read between them and there are four or more. */
  readonly line?: Estimate;
  /** Measured at this dose, read between doses, or computed. */
  readonly basis: string;
}

/** The viscosity of the set gel in one use. */
export interface PlanUse {
  readonly use: string;
  /** [1/s]. */
  readonly shearRate: number;
  /** [Pa·s]. */
  readonly viscosity: number;
  /** Whether the rate lies beyond the points. */
  readonly beyondReadings: boolean;
}

/** How the set gel flows, by rheometer points. */
export interface PlanFlow {
  /** At which they were read [°C]. */
  readonly temperature: number;
  /** The model that the points bear out, and its parameters in words. */
  readonly model?: string;
  /** The same, to be handed to whatever takes a flow curve. */
  readonly curve?: FlowCurve;
  /** Yield stress [Pa] and its convention. */
  readonly yieldStress?: { readonly value: number; readonly by: string };
  /** The least and the greatest that other conventions read [Pa]. */
  readonly otherConventions?: { readonly min: number; readonly max: number };
  readonly uses: readonly PlanUse[];
  /** Through the nozzle of the pack: shear rate at its wall [1/s], and the pressure it takes on each metre of its length [Pa/m]. */
  readonly nozzle?: { readonly shearRate: number; readonly pressureGradient: number };
  /** Why the points give no curve. */
  readonly notKnown?: string;
}

/** Films of the gel [m]. */
export interface PlanFilms {
  /** The thickest that does not run down an upright wall once it has set. */
  readonly thicknessMax?: number;
  /** Mean thickness of what has not drained from the wall of the vessel by the end of filling. */
  readonly thicknessOnWall?: number;
}

/** How far air rises while the melt cools, in one segment without stirring or an addition. */
export interface PlanAirSegment {
  /** Step after which it begins. */
  readonly fromStep: number;
  /** Step by whose end it is over. */
  readonly toStep: number;
  /** Depth of the melt [m]. */
  readonly depth: number;
  /** How far bubbles rise through it [m]. */
  readonly distance: number;
  /** Until the whole depth is clear [s]; left out where it is not by the end. */
  readonly durationToClear?: number;
}

/** Air in the melt, in the packs and in the set gel. */
export interface PlanAir {
  /** Diameter of the bubbles asked about [m]. */
  readonly diameter: number;
  readonly segments: readonly PlanAirSegment[];
  /** How far they rise in a pack before it has set, and how deep that is [m]. */
  readonly inPack?: { readonly distance: number; readonly depth: number };
  /** Bubbles [m] that the set gel holds for ever: up to `min` surely, above `max` not. */
  readonly suspended?: { readonly min: number; readonly max: number };
  /** To clear the melt after a step within a time [s]: how warm to keep it [°C], or the absolute pressure above it [Pa]. */
  readonly toClear?: {
    readonly fromStep: number;
    readonly within: number;
    readonly temperature?: number;
    readonly pressure?: number;
  };
  /** Under the stated vacuum: time to clear the melt [s], height of the foam [m], what boils and below which pressure [Pa]. */
  readonly vacuum?: {
    readonly pressure: number;
    readonly duration?: number;
    readonly foam: number;
    readonly boiling?: { readonly material: string; readonly pressure: number };
  };
  /** What is missing. */
  readonly notKnown?: string;
}

/** One kind of particle: when it may go in, and whether it stays up. */
export interface PlanParticle {
  readonly material: string;
  /** What its drag was taken from. */
  readonly drag: string;
  /** Between which temperatures, as the melt shows before it goes in [°C], and when after the heat is off [s]. */
  readonly window?: {
    readonly isOpen: boolean;
    readonly temperatureFrom: number;
    readonly temperatureTo: number;
    readonly timeFrom?: number | undefined;
    readonly timeTo?: number | undefined;
  };
  /** When it goes in by this plan: [°C] and after the heat is off [s]. */
  readonly goesIn?: { readonly temperature: number; readonly time?: number | undefined };
  /** Share of its mass that settles further than allowed [0 to 1], where sizes are stated. */
  readonly massFractionBeyond?: number;
  /** Yield stress that holds it [Pa]: surely from `max`, by no published figure below `min`. */
  readonly yieldStressNeeded?: { readonly min: number; readonly max: number };
  /** The largest of its kind that this gel holds for certain, in diameter or, for a flake, in thickness [m]. */
  readonly largestSuspended?: { readonly of: "diameter" | "thickness"; readonly length: number };
  /** Oil that wets it, by its oil absorption [kg]. */
  readonly wettingOil?: number;
  /** How many times thicker it makes the melt, by its oil absorption. */
  readonly thickening?: number;
  /** What is missing for the window. */
  readonly notKnown?: string;
}
