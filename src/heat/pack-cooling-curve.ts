import { notNegative, record, refuse, result, show, temperature, wholeNumber } from "../guards.js";
import type { SegmentEnd, TemperatureHistory } from "../transient/index.js";
import * as known from "./known.js";
import { type CoolingPack, compilePack } from "./pack.js";
import { timeUntil } from "./pack-cooling-time.js";

/**
 * How a filled pack cools at its centre (or at another place, or in the mean), as points of a curve: to plot, or to let
 * particles settle over it with `settlingOverCurve`.
 *
 * $$t_k = t_1 \left(\frac kn\right)^2, \qquad k = 0 \dots n$$
 *
 * The points are closer at the start, when a surface cools fastest. Conduction alone: no latent heat of gelling, no
 * convection before it sets.
 *
 * @param input - The pack and its content: shape and dimensions [m], conductivity [W/(m·K)], density [kg/m³], specific
 *   heat [J/(kg·K)], heat transfer coefficient [W/(m²·K)] or `"infinite"`, start and surroundings [°C], where (default
 *   the centre); either `temperatureEnd` [°C] or `duration` [s]; and `segments`, into how many the curve is divided,
 *   1 to 10,000 (default 100).
 * @returns Times [s] and temperatures [°C], one more than segments; all at once at 0 s where the end is the start.
 * @throws CalculationError `input` where an argument is no number or out of range, `unreachable` where the end does not
 *   lie between start and surroundings.
 * @source bergman-2011 sections 5.5, 5.6 and 5.8
 * @example
 * ```ts
 * import { packCoolingCurve } from "gelwright/heat";
 * packCoolingCurve({
 *   pack: { shape: "cylinder", diameter: 0.07, height: 0.06 },
 *   conductivity: 0.17,
 *   density: 910,
 *   specificHeat: 2050,
 *   heatTransferCoefficient: 10,
 *   temperatureStart: 60,
 *   temperatureAmbient: 20,
 *   duration: 7200,
 *   segments: 2,
 * }); // => { times: [0, 1800, 7200], temperatures: [60, 54.03644083305568, 27.08924016238784] }
 * ```
 */
export function packCoolingCurve(input: CoolingPack & SegmentEnd & { readonly segments?: number }): TemperatureHistory {
  record(input, "input", known.packCoolingCurve);
  const pack = compilePack(input);
  const { duration, temperatureEnd, segments = 100 } = input;
  if ((duration === undefined) === (temperatureEnd === undefined))
    refuse("input", "duration", show(duration), "either a duration or a temperatureEnd");
  wholeNumber(segments, "segments", 1, 10_000);
  const whole =
    duration === undefined
      ? timeUntil(pack, temperature(temperatureEnd, "temperatureEnd"))
      : notNegative(duration, "duration");
  const times = Array.from({ length: segments + 1 }, (_, k) => whole * (k / segments) ** 2);
  // Rounding may let the flat start rise by a last digit; what is left never does.
  let left = 1;
  const temperatures = times.map((time) => {
    left = Math.min(left, pack.leftAt(time));
    return result(pack.ambient + (pack.start - pack.ambient) * left, "temperatures");
  });
  if (temperatureEnd !== undefined) temperatures[segments] = temperatureEnd;
  return { times, temperatures };
}
