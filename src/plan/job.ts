import type { Batch } from "../batch/index.js";
import type { Formula } from "../formula/index.js";
import type { HeatLossLaw, ViscosityLaw } from "../laws/index.js";
import type { VesselBottom } from "../mixing/index.js";
import type { ColdBench } from "./cold/bench.js";
import type { ColdStep } from "./cold/step.js";
import type { Air, Nozzle, StrengthBench } from "./strength/job.js";
import type { StirrerKind } from "./vessel-document.js";

/** A vessel in the units of the kernels. */
export interface Vessel {
  readonly name: string;
  /** Working volumes [m³]. */
  readonly volumeMin: number;
  readonly volumeMax: number;
  /** Inner diameter [m]. */
  readonly diameter: number;
  readonly bottom?: VesselBottom | undefined;
  /** Their number, and how far each stands out from the wall [m]. */
  readonly baffles?: { readonly count: number; readonly width: number } | undefined;
  /** What heats it: power [W], and the highest temperature of plate, bath or jacket where one limits it [°C]. */
  readonly heater?: { readonly power: number; readonly temperatureMax?: number | undefined } | undefined;
  /** How it loses heat to the room, and where that is from. */
  readonly loss?: { readonly law: HeatLossLaw; readonly from: string } | undefined;
  /** What warms with the charge: mass [kg] and specific heat [J/(kg·K)]. */
  readonly wall?: { readonly mass: number; readonly specificHeat: number } | undefined;
  readonly stirrer?: Stirrer | undefined;
  readonly heatedWall?: Wall | undefined;
  /** Coolant [°C], conductance [W/K] or the coefficient it is found from [W/(m²·K)], and capacity flow [W/K] where the coolant warms on its way. */
  readonly jacket?:
    | (Omit<Wall, "area"> & {
        readonly area?: number | undefined;
        readonly temperature: number;
        readonly conductance?: number | undefined;
        readonly outsideCoefficient?: number | undefined;
        readonly capacityFlow?: number | undefined;
      })
    | undefined;
}

/** What stirs: swept diameter, width of blades and height of arms, height of its upper edge and what is to stand above it [m], usual speed [rev/s], power of its motor at the shaft [W]. */
export interface Stirrer {
  readonly kind: StirrerKind;
  readonly diameter: number;
  readonly blades?: number | undefined;
  /** To the horizontal [°]. */
  readonly bladeAngle?: number | undefined;
  readonly bladeWidth?: number | undefined;
  readonly armHeight?: number | undefined;
  readonly speed?: number | undefined;
  readonly laminarPowerConstant?: number | undefined;
  readonly powerNumber?: number | undefined;
  readonly metznerOttoConstant?: number | undefined;
  readonly revolutionsToBlend?: number | undefined;
  readonly topEdge?: number | undefined;
  readonly cover: number;
  readonly powerMotor?: number | undefined;
  readonly byHand: boolean;
}

/** A wall that heats or cools: area [m²], and the coefficient between it and the charge where one is stated [W/(m²·K)]. */
export interface Wall {
  readonly area: number;
  readonly coefficient?: number | undefined;
  readonly source?: string | undefined;
}

/** Viscosity readings of one composition in one direction. */
export interface Readings {
  readonly phases: readonly string[];
  readonly direction: "heating" | "cooling";
  readonly shearRate: string;
  /** Of a melt that thins under shear: the same shear rate [1/s] and the flow index there. */
  readonly thinning?: { readonly shearRate: number; readonly flowIndex: number } | undefined;
  readonly law: ViscosityLaw;
  /** Where the law ends [°C]: nowhere, or at its outermost readings. */
  readonly temperatureMin: number;
  readonly temperatureMax: number;
  /** Viscosity [Pa·s] at a temperature [°C], the law continued beyond its ends. */
  readonly viscosityOf: (temperature: number) => number;
}

/** What was found at the bench, in the units of the kernels. */
export interface Bench extends StrengthBench {
  readonly source: string;
  readonly oilPerGelFormer?: { readonly min: number; readonly max: number } | undefined;
  readonly doses: readonly {
    readonly dose: number;
    readonly temperatureSetting: number;
    readonly temperatureDissolving: number;
  }[];
  readonly viscosities: readonly Readings[];
  /** Highest viscosity that can be stirred in [Pa·s]. */
  readonly stirrableViscosityMax?: number | undefined;
  /** Yield stress of the set gel [Pa]. */
  readonly yieldStress?: number | undefined;
  /** Settling allowed before the gel has set [m]. */
  readonly settlingAllowed?: number | undefined;
  /** What was found out about the cold route. */
  readonly emulsion?: ColdBench | undefined;
}

/** A step of the hot route in the units of the kernels: temperatures [°C], durations [s], viscosity [Pa·s], speed [rev/s]. */
export type Step = { readonly note?: string | undefined } & (
  | {
      readonly do: "charge";
      readonly phase: string;
      readonly temperature: number;
      readonly duration: number;
      readonly speed?: number | undefined;
    }
  | { readonly do: "heat"; readonly temperature: number; readonly within?: number | undefined }
  | { readonly do: "hold"; readonly duration: number }
  | { readonly do: "take off the heat" }
  | {
      readonly do: "cool";
      readonly temperature: number;
      readonly viscosity?: undefined;
      readonly jacket: boolean;
      readonly within?: number | undefined;
    }
  | { readonly do: "cool"; readonly viscosity: number; readonly temperature?: undefined; readonly jacket: false }
  | { readonly do: "stir"; readonly duration: number; readonly speed?: number | undefined }
  | { readonly do: "fill"; readonly duration: number }
  | { readonly do: "rest"; readonly duration: number }
);

/** A process in the units of the kernels, on one of the two routes. */
export type Process = ProcessFigures &
  (
    | { readonly route: "hot"; readonly steps: readonly Step[] }
    | { readonly route: "cold"; readonly steps: readonly ColdStep[] }
  );

/** What both routes state. */
interface ProcessFigures {
  readonly name: string;
  /** Room and material temperature [°C]. */
  readonly temperatureRoom: number;
  /** Distances kept [K]. */
  readonly flashPointMargin: number;
  readonly settingMargin: number;
  /** Speed of the air over the open vessel [m/s]. */
  readonly airVelocity?: number | undefined;
  readonly air?: Air | undefined;
  /** Length and cleaning [s]. */
  readonly workingDay?: { readonly length: number; readonly vessels: number; readonly cleaning: number } | undefined;
}

/** What the gel is filled into. */
export interface Pack {
  readonly name: string;
  /** Loss of one filled pack to the room as a lump [W/K]. */
  readonly conductance?: number | undefined;
  /** Its content as a cylinder [m], with the coefficient at its surface [W/(m²·K)]. */
  readonly content?:
    | {
        readonly diameter: number;
        readonly height: number;
        readonly coefficient: number;
        readonly source: string;
      }
    | undefined;
  readonly nozzle?: Nozzle | undefined;
}

/** A job that was read: everything a plan is computed from. */
export interface Job {
  readonly formula: Formula;
  readonly bench: Bench;
  readonly batch: Batch;
  readonly vessel: Vessel;
  readonly process: Process;
  readonly pack?: Pack | undefined;
}
