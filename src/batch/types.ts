import type { Quantity } from "../units/index.js";
import type { Balance } from "./balance.js";

/** What is to arrive: a mass, a volume at 20 °C, or packs with a fill of each. */
export type TargetDocument =
  | { readonly mass: Quantity<"mass"> }
  | { readonly volume: Quantity<"volume"> }
  | {
      /** Number of packs. */
      readonly packs: number;
      readonly fillMass: Quantity<"mass">;
    }
  | {
      /** Number of packs. */
      readonly packs: number;
      readonly fillVolume: Quantity<"volume">;
    };

/** What an allowance takes from. Everything in the batch where both are left out. */
export interface TakesFrom {
  /** Keys of materials: what evaporates. */
  readonly materials?: readonly string[];
  /** Names of the phases that are in the vessel by then. */
  readonly phases?: readonly string[];
  /** Where the figure comes from. */
  readonly source?: string;
}

/** What is kept back of a lot; at least one of the three. */
export interface SamplesDocument {
  /** Packs, as full as those that are asked for: retained samples, and what is opened. */
  readonly packs?: number;
  /** Whether the samples of the job's stability test come out of it. */
  readonly stabilityTest?: boolean;
  /** Checks of the fill of a lot whose packs are not sold: of each as many packs as the mean is taken of. */
  readonly fillChecks?: number;
}

/** One loss between weighing and pack, of one lot. */
export type AllowanceDocument =
  /** A share of what is there: evaporation, transfer. */
  | ({ readonly kind: "share"; readonly name: string; readonly share: Quantity<"massFraction"> } & TakesFrom)
  /** The same mass in every lot: hold-up, samples. */
  | ({ readonly kind: "mass"; readonly name: string; readonly mass: Quantity<"mass"> } & TakesFrom)
  /** What is kept back of every lot, in whole packs; a plan works out those of its stability test and of its fill checks. */
  | ({ readonly kind: "samples"; readonly name: string; readonly source?: string } & SamplesDocument)
  /** The film that stays in the vessel; as thick as the yield stress holds where no thickness is given. */
  | { readonly kind: "film"; readonly name: string; readonly thickness?: Quantity<"length">; readonly source?: string };

/** A balance or scale. */
export interface BalanceDocument {
  readonly name: string;
  readonly increment: Quantity<"mass">;
  /** Largest load, container included. */
  readonly capacity: Quantity<"mass">;
  /** Smallest net mass that it weighs closely enough. */
  readonly minimumWeight: Quantity<"mass">;
}

/** What there is of a material; several entries of one material add up. */
export interface StockDocument {
  /** Key of the material: a premix is opened into its materials. */
  readonly material: string;
  /** What may be used up. */
  readonly mass: Quantity<"mass">;
  /** Where the figure comes from: a stock list with its day. */
  readonly source?: string;
}

/** A batch as people order it. */
export interface BatchDocument {
  readonly version: 1;
  /** Address of the JSON Schema, for editors; not read. */
  readonly $schema?: string;
  readonly target: TargetDocument;
  /** Density of the product at 20 °C; default mixed from the materials' densities. */
  readonly density?: Quantity<"density">;
  /** Number of equal lots; default the fewest that fit the working volume of the vessel at 20 °C. */
  readonly lots?: number;
  /** Losses in the order of the process. */
  readonly allowances?: readonly AllowanceDocument[];
  readonly balances: readonly BalanceDocument[];
  /** Container on the balance. */
  readonly tare?: Quantity<"mass">;
  /** How far a reading may be off, relative to the mass; 0.5 % where it is left out (common practice, no source). */
  readonly weighingTolerance?: Quantity<"massFraction">;
  /** What there is of the materials. */
  readonly stock?: readonly StockDocument[];
}

/** What there is of a material, in the units of the kernels. */
export interface Stock {
  /** Key of the material. */
  readonly material: string;
  /** [kg]. */
  readonly mass: number;
  readonly source?: string | undefined;
}

/** A loss in the units of the kernels. */
export type BatchAllowance = {
  readonly name: string;
  readonly materials?: readonly string[] | undefined;
  readonly phases?: readonly string[] | undefined;
  readonly source?: string | undefined;
} & (
  | {
      readonly kind: "share";
      /** Share lost [0 to below 1]. */
      readonly fraction: number;
    }
  | {
      readonly kind: "mass";
      /** Mass lost [kg]. */
      readonly mass: number;
    }
  | {
      readonly kind: "samples";
      /** Packs that are kept back, as full as those that are asked for. */
      readonly packs?: number | undefined;
      /** Product that is kept back in another form [kg]. */
      readonly mass?: number | undefined;
      /** Whether a plan is to add those of its stability test. */
      readonly stabilityTest?: boolean | undefined;
      /** Checks of the fill whose packs a plan is to add. */
      readonly fillChecks?: number | undefined;
    }
  | {
      readonly kind: "film";
      /** Thickness [m]; left out where the yield stress is to set it. */
      readonly thickness?: number | undefined;
    }
);

/** A batch in the units of the kernels. */
export interface Batch {
  /** Mass [kg] or volume [m³] of finished product in all. */
  readonly target: { readonly mass: number } | { readonly volume: number };
  /** Number of packs, where the target is in packs. */
  readonly packs?: number | undefined;
  /** Number of equal lots, where one is asked for. */
  readonly lots?: number | undefined;
  /** Density at 20 °C [kg/m³]. */
  readonly density?: number | undefined;
  readonly allowances: readonly BatchAllowance[];
  readonly balances: readonly Balance[];
  /** Container [kg]. */
  readonly tare: number;
  /** Relative weighing tolerance. */
  readonly tolerance: number;
  /** What there is of the materials, where a stock list is stated. */
  readonly stock?: readonly Stock[] | undefined;
}
