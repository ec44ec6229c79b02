import { notNegative, positive, record, refuse, show, temperature } from "../guards.js";

/** What gives heat to a vessel, or takes heat from it, as plain data. */
export type Supply =
  | {
      /** A heater of constant power. */
      readonly supply: "power";
      /** Heat that reaches the vessel [W], 0 or more: the rating times the efficiency. */
      readonly power: number;
    }
  | {
      /** A hot plate, or a jacket with a hot or cold medium: in proportion to the difference of temperature. */
      readonly supply: "medium";
      /** Temperature of plate or medium [°C]. */
      readonly temperature: number;
      /** From medium to vessel [W/K], above 0; a function of the charge's temperature [°C] where it varies; `jacketConductance` where the medium flows. */
      readonly conductance: number | ((temperature: number) => number);
      /** The most that the plate or the chiller gives or takes [W], above 0; left out where nothing limits it. */
      readonly powerMost?: number | undefined;
    }
  | {
      /** A stirrer, all of whose power becomes heat, by itself or beside something else. */
      readonly supply: "stirrer";
      /** What it gives to the charge [W], 0 or more; a function of the charge's temperature [°C] where it thickens. */
      readonly power: number | ((temperature: number) => number);
      /** What heats or cools the vessel beside it; left out where nothing does. */
      readonly beside?: Supply | undefined;
    };

/** A supply that has been checked. */
export interface CompiledSupply {
  /** Heat into the vessel [W] at a temperature [°C]. */
  readonly flowAt: (temperature: number) => number;
  /** Where it has a kink [°C]. */
  readonly kinks: readonly number[];
  /** Temperature of the medium [°C], where there is one. */
  readonly medium: number | undefined;
}

/** Checks a supply, which faults call `supply`. */
export function compileSupply(supply: Supply): CompiledSupply {
  record(supply, "supply");
  switch (supply.supply) {
    case "power": {
      const power = notNegative(supply.power, "supply.power");
      return { flowAt: () => power, kinks: [], medium: undefined };
    }
    case "medium": {
      const medium = temperature(supply.temperature, "supply.temperature");
      const { conductance: given } = supply;
      const most = supply.powerMost === undefined ? undefined : positive(supply.powerMost, "supply.powerMost");
      if (typeof given === "function") {
        const passed = (at: number): number => positive(given(at), "supply.conductance") * (medium - at);
        // Where it begins to give its most is not told ahead: the leg looks for it.
        const flowAt = most === undefined ? passed : (at: number) => Math.max(-most, Math.min(most, passed(at)));
        return { flowAt, kinks: [], medium };
      }
      const conductance = positive(given, "supply.conductance");
      if (most === undefined) return { flowAt: (at) => conductance * (medium - at), kinks: [], medium };
      // Farther from the medium than this the supply gives its most.
      const reach = most / conductance;
      const kinks = [medium - reach, medium + reach].filter(
        (kink) => kink > -273.15 && kink < Number.POSITIVE_INFINITY,
      );
      return { flowAt: (at) => Math.max(-most, Math.min(most, conductance * (medium - at))), kinks, medium };
    }
    case "stirrer": {
      const { power, beside } = supply;
      const steady = typeof power === "function" ? undefined : notNegative(power, "supply.power");
      const stirs = (at: number): number =>
        steady ?? notNegative((power as (temperature: number) => number)(at), "supply.power");
      if (beside === undefined) return { flowAt: stirs, kinks: [], medium: undefined };
      if (record(beside, "supply.beside").supply === "stirrer")
        refuse("input", "supply.beside.supply", beside.supply, "what heats or cools: one stirrer is enough");
      const { flowAt, kinks, medium } = compileSupply(beside);
      return { flowAt: (at) => stirs(at) + flowAt(at), kinks, medium };
    }
    default:
      return refuse(
        "input",
        "supply.supply",
        show((supply as { supply: unknown }).supply),
        '"power", "medium" or "stirrer"',
      );
  }
}
