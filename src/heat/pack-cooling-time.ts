import { record, refuse, result, temperature } from "../guards.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";
import { type CompiledPack, type CoolingPack, compilePack } from "./pack.js";

/** The time after which a checked pack has come to a temperature [s]. */
export function timeUntil({ start, ambient, unit, leftAt }: CompiledPack, end: number): number {
  if (end === start) return 0;
  const wanted = (end - ambient) / (start - ambient);
  if (!(wanted > 0 && wanted < 1))
    refuse(
      "unreachable",
      "temperatureEnd",
      end,
      `between start (${start} °C) and ambient (${ambient} °C), ambient left out`,
    );
  // A surface that is held at the ambient temperature is there at once.
  if (leftAt(1e-99 * unit) === 0) return 0;
  let low = 0;
  let high = unit;
  while (leftAt(high) > wanted) {
    low = high;
    high = result(2 * high, "time until");
  }
  // In logarithms, in which the late fall is a straight line.
  return root((time) => Math.log(leftAt(time) / wanted), low, high, "time until");
}

/**
 * How long a filled pack takes until its centre reaches a temperature, such as the setting temperature or that at which
 * it may be capped; with `where`, at another place or on average over its volume.
 *
 * $$\theta(t) = \frac{T_1 - T_\mathrm{amb}}{T_0 - T_\mathrm{amb}}$$
 *
 * Conduction alone, with constant properties. Two things are left out: the latent heat of gelling or
 * melting, which keeps the content warm for longer, and the convection before it sets, which cools it faster. It also
 * holds for a cold pack that warms.
 *
 * @param input - The pack and its content: shape and dimensions [m], conductivity [W/(m·K)], density [kg/m³], specific
 *   heat [J/(kg·K)], heat transfer coefficient [W/(m²·K)] or `"infinite"`, start and surroundings [°C], where (default
 *   the centre); and `temperatureEnd` [°C], between start and surroundings.
 * @returns Time [s].
 * @throws CalculationError `input` where an argument is no number or out of range, `unreachable` where the end does not
 *   lie between start and surroundings.
 * @source bergman-2011 sections 5.5, 5.6 and 5.8
 * @example
 * ```ts
 * import { packCoolingTime } from "gelwright/heat";
 * packCoolingTime({
 *   pack: { shape: "cylinder", diameter: 0.57, height: 0.85 },
 *   conductivity: 0.17,
 *   density: 910,
 *   specificHeat: 2050,
 *   heatTransferCoefficient: 8,
 *   temperatureStart: 60,
 *   temperatureAmbient: 20,
 *   temperatureEnd: 30,
 * }); // => 306627.2567835752
 * ```
 */
export function packCoolingTime(input: CoolingPack & { readonly temperatureEnd: number }): number {
  record(input, "input", known.packCoolingTime);
  return timeUntil(compilePack(input), temperature(input.temperatureEnd, "temperatureEnd"));
}
