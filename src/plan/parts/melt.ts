import type { DensityLaw, HeatLossLaw, ViscosityLaw } from "../../laws/index.js";
import type { Charge } from "../charge.js";
import type { Figure } from "../figure.js";
import { lossOf } from "../loss.js";
import { otherwise, remembered, stated } from "../unknown.js";

/** Density of the air in bubbles, near the temperature and pressure of a room [kg/m³]. */
export const densityOfAir = 1.2;

/** Between the setting temperature and so much above it the density of the fluid is a straight line [K]. */
const span = 10;

/** A composition that cools and thickens in the vessel until it sets. */
export interface CoolingMelt {
  /** Setting temperature [°C]. */
  readonly sets: number;
  /** Heat capacity of the charge and of what of the vessel cools along [J/K]. */
  readonly heatCapacity: (temperature: number) => number;
  readonly heatLoss: HeatLossLaw;
  /** [°C]. */
  readonly temperatureAmbient: number;
  readonly viscosity: ViscosityLaw;
  /** Density of what particles and bubbles move in. */
  readonly densityFluid: DensityLaw;
}

/** How a charge cools and thickens in the vessel, left to itself. */
export const meltOf: (charge: Charge) => CoolingMelt = remembered((charge: Charge): CoolingMelt => {
  const { vessel, process } = charge.job;
  const { law: viscosity } = charge.readings("cooling");
  const { temperature: sets } = charge.setting();
  const { law: heatLoss } = stated(lossOf(vessel), "vessel-heat-loss", { of: vessel.name });
  const density = charge.fluidDensity(sets);
  return {
    sets,
    // What has dissolved does not freeze on the way down to the setting temperature.
    heatCapacity: charge.dissolved().heatCapacity().at,
    heatLoss,
    temperatureAmbient: process.room,
    viscosity,
    densityFluid: {
      law: "linear",
      density,
      temperatureReference: sets,
      slope: (density - charge.fluidDensity(sets + span)) / span,
    },
  };
});

/** A figure that rests on readings of the viscosity: said to be extended if it needs them beyond their end. */
export function byReadings(charge: Charge, temperatures: () => readonly number[], figure: Figure): Figure {
  const isBeyond = otherwise(
    () => {
      const { temperatureMin, temperatureMax } = charge.readings("cooling");
      return temperatures().some((temperature) => temperature < temperatureMin || temperature > temperatureMax);
    },
    () => false,
  );
  return {
    ...figure,
    basis: [...(figure.basis ?? []), { kind: "reading", key: "bench-viscosities", source: charge.job.bench.source }],
    ...(isBeyond && { assumptions: [...(figure.assumptions ?? []), "beyond-readings" as const] }),
  };
}
