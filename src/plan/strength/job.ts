import type { CrystallisingPair, Trial } from "../../gel/index.js";
import type { BubbleSurface } from "../../particles/index.js";
import type { FlowReading, ShearInUse, YieldConvention } from "../../rheology/index.js";

/** Trials of dose [mass fraction] against strength [Pa]. */
export interface StrengthTrials {
  readonly of: "yield stress" | "modulus";
  readonly trials: readonly Trial[];
  readonly threshold?: number | undefined;
  /** Strength wanted [Pa]. */
  readonly target?: number | undefined;
}

/** Rheometer points of the set gel at a temperature [°C]. */
export interface FlowPoints {
  readonly temperature: number;
  readonly points: readonly FlowReading[];
  readonly yieldStressBy?: YieldConvention | undefined;
  readonly uses: readonly ShearInUse[];
}

/** What of the bench tells strength and flow. */
export interface StrengthBench {
  readonly strengthTrials?: StrengthTrials | undefined;
  readonly flowCurve?: FlowPoints | undefined;
  readonly idealSolubility?: CrystallisingPair | undefined;
}

/** Air in the melt: bubble [m]; time to clear in [s]; vacuum [Pa], volume fraction of air, and the height it may rise to [m]. */
export interface Air {
  readonly diameter: number;
  readonly surface?: BubbleSurface | undefined;
  readonly clearWithin?: number | undefined;
  readonly vacuum?:
    | { readonly afterPhase: string; readonly pressure: number; readonly air: number; readonly rim: number }
    | undefined;
}

/** Bore [m], flow [m³/s] and, for a spray, surface tension [N/m]. */
export interface Nozzle {
  readonly diameter: number;
  readonly flowRate: number;
  readonly surfaceTension?: number | undefined;
}
