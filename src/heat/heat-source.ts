import { notNegative, positive, record, refuse, show, temperature, variant } from "../guards.js";
import * as known from "./known.js";

/** What gives heat to a vessel, or takes heat from it, as plain data. */
export type HeatSource =
  | {
      /** A heater of constant power. */
      readonly kind: "power";
      /** Heat that reaches the vessel [W], 0 or more: the rating times the efficiency. */
      readonly power: number;
    }
  | {
      /** A hot plate, or a jacket with a hot or cold medium: in proportion to the difference of temperature. */
      readonly kind: "medium";
      /** Temperature of plate or medium [°C]. */
      readonly temperature: number;
      /** From medium to vessel [W/K], above 0; a function of the charge's temperature [°C] where it varies; `jacketConductance` where the medium flows. */
      readonly conductance: number | ((temperature: number) => number);
      /** The most that the plate or the chiller gives or takes [W], above 0; left out where nothing limits it. */
      readonly powerMax?: number | undefined;
    }
  | {
      /** A stirrer, all of whose power becomes heat, by itself or beside something else. */
      readonly kind: "stirrer";
      /** What it gives to the charge [W], 0 or more; a function of the charge's temperature [°C] where it thickens. */
      readonly power: number | ((temperature: number) => number);
      /** What heats or cools the vessel beside it; left out where nothing does. */
      readonly beside?: HeatSource | undefined;
    };

/** A heat source that has been checked. */
export interface CompiledHeatSource {
  /** Heat into the vessel [W] at a temperature [°C]. */
  readonly flowAt: (temperature: number) => number;
  /** Where it has a breakpoint [°C]. */
  readonly breakpoints: readonly number[];
  /** Temperature of the medium [°C], where there is one. */
  readonly medium: number | undefined;
}

/** Checks a heat source, which faults call `heatSource`. */
export function compileHeatSource(heatSource: HeatSource): CompiledHeatSource {
  variant(heatSource, "heatSource", "kind", known.heatSource);
  switch (heatSource.kind) {
    case "power": {
      const power = notNegative(heatSource.power, "heatSource.power");
      return { flowAt: () => power, breakpoints: [], medium: undefined };
    }
    case "medium": {
      const medium = temperature(heatSource.temperature, "heatSource.temperature");
      const { conductance: given } = heatSource;
      const max = heatSource.powerMax === undefined ? undefined : positive(heatSource.powerMax, "heatSource.powerMax");
      if (typeof given === "function") {
        const passed = (at: number): number => positive(given(at), "heatSource.conductance") * (medium - at);
        // Where it begins to give its most is not told ahead: the segment looks for it.
        const flowAt = max === undefined ? passed : (at: number) => Math.max(-max, Math.min(max, passed(at)));
        return { flowAt, breakpoints: [], medium };
      }
      const conductance = positive(given, "heatSource.conductance");
      if (max === undefined) return { flowAt: (at) => conductance * (medium - at), breakpoints: [], medium };
      // Farther from the medium than this the heat source gives its most.
      const reach = max / conductance;
      const breakpoints = [medium - reach, medium + reach].filter(
        (breakpoint) => breakpoint > -273.15 && breakpoint < Number.POSITIVE_INFINITY,
      );
      return { flowAt: (at) => Math.max(-max, Math.min(max, conductance * (medium - at))), breakpoints, medium };
    }
    case "stirrer": {
      const { power, beside } = heatSource;
      const steady = typeof power === "function" ? undefined : notNegative(power, "heatSource.power");
      const stirs = (at: number): number =>
        steady ?? notNegative((power as (temperature: number) => number)(at), "heatSource.power");
      if (beside === undefined) return { flowAt: stirs, breakpoints: [], medium: undefined };
      if (record(beside, "heatSource.beside").kind === "stirrer")
        refuse("input", "heatSource.beside.kind", beside.kind, "what heats or cools: one stirrer is enough");
      const { flowAt, breakpoints, medium } = compileHeatSource(beside);
      return { flowAt: (at) => stirs(at) + flowAt(at), breakpoints, medium };
    }
    default:
      return refuse(
        "input",
        "heatSource.kind",
        show((heatSource as { kind: unknown }).kind),
        '"power", "medium" or "stirrer"',
      );
  }
}
