import { list, positive, record, result, temperature } from "../guards.js";
import * as known from "./known.js";

/** How a part melts: at one temperature, which is an idealisation of a melting range. */
export interface Melting {
  /** Melting temperature [°C]. */
  readonly temperature: number;
  /** Latent heat of melting [J/kg], above 0. */
  readonly latentHeat: number;
  /** Specific heat of the melt [J/(kg·K)], above 0. */
  readonly specificHeatMelt: number;
}

/** One part of a charge that is warmed or cooled as a whole, and may melt at one temperature. */
export interface MeltingPart {
  /** Mass [kg], above 0. */
  readonly mass: number;
  /** Specific heat [J/(kg·K)], above 0; below the melting temperature where the part melts. */
  readonly specificHeat: number;
  /** Left out for a part that is liquid (or solid) throughout. */
  readonly melting?: Melting;
}

/** Heat taken up, or given off where negative. */
export interface HeatToWarm {
  /** All of it [J]. */
  readonly heat: number;
  /** What changes the temperature [J]. */
  readonly sensible: number;
  /** What melts, or is given off in setting [J]. */
  readonly latent: number;
}

/**
 * The heat that brings a charge from one temperature to another, with what melts in between.
 *
 * $$Q = \sum_i m_i \left[ \int_{T_0}^{T_1} c_i\,dT + L_i\,\bigl(T_0 < T_{m,i} \le T_1\bigr) \right]$$
 *
 * A part counts as molten at its melting temperature and above, so that the heat depends on the two
 * temperatures alone: segments add up, and cooling gives back what warming took, with the sign turned.
 *
 * @param input.parts - The parts of the charge, at least one; count the vessel as a part if it warms with the charge.
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature after [°C].
 * @returns The heat [J] with its sensible and its latent share; negative in cooling.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source openstax-university-physics-2 section 1.4, Q = mcΔT, and section 1.5, Q = mL
 * @example
 * ```ts
 * import { heatToWarm } from "gelwright/heat";
 * const oil = { mass: 80, specificHeat: 2050 };
 * const wax = { mass: 12, specificHeat: 2100, melting: { temperature: 63, latentHeat: 185000, specificHeatMelt: 2350 } };
 * heatToWarm({ parts: [oil, wax], temperatureStart: 20, temperatureEnd: 85 }).heat; // => 14584000
 * ```
 */
export function heatToWarm(input: {
  readonly parts: readonly MeltingPart[];
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
}): HeatToWarm {
  const { parts, temperatureStart, temperatureEnd } = record(input, "input", known.heatToWarm);
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  let sensible = 0;
  let latent = 0;
  list(parts, "parts", 1).forEach((part, i) => {
    const at = `parts[${i}]`;
    const { mass, specificHeat, melting } = record(part, at, known.meltingPart);
    const capacity = positive(mass, `${at}.mass`) * positive(specificHeat, `${at}.specificHeat`);
    if (melting === undefined) {
      sensible += capacity * (end - start);
      return;
    }
    const { temperature: point, latentHeat, specificHeatMelt } = record(melting, `${at}.melting`);
    const melts = temperature(point, `${at}.melting.temperature`);
    const capacityMelt = mass * positive(specificHeatMelt, `${at}.melting.specificHeatMelt`);
    sensible +=
      capacity * (Math.min(end, melts) - Math.min(start, melts)) +
      capacityMelt * (Math.max(end, melts) - Math.max(start, melts));
    latent += mass * positive(latentHeat, `${at}.melting.latentHeat`) * (Number(end >= melts) - Number(start >= melts));
  });
  return {
    heat: result(sensible + latent, "heat"),
    sensible: result(sensible, "sensible"),
    latent: result(latent, "latent"),
  };
}
