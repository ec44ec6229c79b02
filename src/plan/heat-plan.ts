/** What one material that is to be spared went through in the vessel; or why that is not known. */
export type OilThermalExposure =
  | { readonly material: string; readonly notKnown: string }
  | {
      /** Name of the material. */
      readonly material: string;
      /** How warm it got [°C]. */
      readonly temperatureMax: number;
      /** From its charge to the last pack [s]. */
      readonly duration: number;
      /** How much of that it was above a temperature [s]. */
      readonly durationAbove: number;
      /** That temperature [°C]. */
      readonly temperatureAbove: number;
      /** The time [s] at its reference temperature [°C] that would have done as much, where its sensitivity is known. */
      readonly equivalent?: { readonly duration: number; readonly temperature: number };
    };

/** What the heat of the run does to one oil, and what it would do if the oil waited until the heat is off. */
export type OxidationRank =
  | { readonly material: string; readonly notKnown: string }
  | {
      /** Name of the material. */
      readonly material: string;
      /** Whether it is in the vessel while that is on the heat. */
      readonly onHeat: boolean;
      /** Cox value from its fatty acids. */
      readonly oxidisability: number;
      /** Share of the product [0 to 1]. */
      readonly massFraction: number;
      /** The time [s] at `temperatureReference` [°C] that does as much as its way through the vessel. */
      readonly equivalentTime: number;
      /** The same if it is charged after the heat is off [s]. */
      readonly equivalentTimeOffHeat: number;
      /** The temperature of the room, at which all these times count [°C]. */
      readonly temperatureReference: number;
      /** Cox value times share times the equivalent time, as planned [s]. */
      readonly burden: number;
      /** The same if it is charged after the heat is off [s]. */
      readonly burdenOffHeat: number;
      /** What charging it after the heat is off takes away [s]. */
      readonly spared: number;
      /** What it has of all that the heat does to the oils that are known [0 to 1]. */
      readonly share: number;
      /** Whether the mix would come too near its setting temperature if it waited. */
      readonly setsIfOffHeat: boolean;
    };

/** What one volatile material loses, as shares of what was charged [0 to 1]. */
export interface PlanEvaporation {
  /** Name of the material. */
  readonly material: string;
  /** As the batch document states it, for the charge to make up. */
  readonly stated?: number;
  /** From vapour pressure and the air over the vessel. */
  readonly predicted?: number;
  /** The most that is possible at all, as into a vacuum. */
  readonly max?: number;
  /** What the prediction rests on. */
  readonly basis?: string;
  /** Why there is no prediction. */
  readonly notKnown?: string;
}

/** What happens in the pack after filling. What is not known is left out. */
export interface AfterFilling {
  /** Until the centre of a pack has passed the setting temperature [s]. */
  readonly durationToSet?: number | undefined;
  /** How far the content sinks as it cools to the room [m]. */
  readonly sinkDepth?: number;
  /** What would make up for it in one pack [kg]. */
  readonly topUp?: number;
  /** The law behind the time. */
  readonly basis?: string;
  /** What is missing. */
  readonly notKnown?: string;
}
