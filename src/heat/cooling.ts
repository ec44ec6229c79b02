import { notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/**
 * How long a charge takes to come to a temperature in a room, by Newton's law of cooling.
 *
 * $$t = \frac{C}{UA} \ln \frac{T_0 - T_\mathrm{amb}}{T_1 - T_\mathrm{amb}}$$
 *
 * The charge has one temperature throughout (stirred, or small), and nothing sets on the way. It also holds for a cold
 * charge that warms in the room.
 *
 * @param input.heatCapacity - Heat capacity of the charge, and of the vessel if it cools with it [J/K], above 0.
 * @param input.conductance - Loss to the room per kelvin [W/K], above 0.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], between the start and the room.
 * @returns The time [s].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the end does not lie between start and room.
 * @source openstax-calculus-2 section 4.3, Newton's law of cooling
 * @example
 * ```ts
 * import { coolingTime } from "gelwright/heat";
 * coolingTime({
 *   heatCapacity: 210000,
 *   conductance: 15,
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 * }); // => 13377.160230380906
 * ```
 */
export function coolingTime(input: {
  readonly heatCapacity: number;
  readonly conductance: number;
  readonly temperatureAmbient: number;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
}): number {
  const { heatCapacity, conductance, temperatureAmbient, temperatureStart, temperatureEnd } = record(
    input,
    "input",
    known.coolingTime,
  );
  const capacity = positive(heatCapacity, "heatCapacity");
  const loss = positive(conductance, "conductance");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  if (start === end) return 0;
  // ln(a/b) as ln(1 + (a - b)/b): exact to the last digits for a fall of a hundredth of a kelvin too.
  const fall = (start - end) / (end - ambient);
  if (end === ambient || fall <= 0)
    refuse(
      "unreachable",
      "temperatureEnd",
      end,
      `between start (${start} °C) and ambient (${ambient} °C), ambient left out`,
    );
  return result((capacity / loss) * Math.log1p(fall), "cooling time");
}

/**
 * The temperature of a charge after a time in a room, by Newton's law of cooling; the inverse of `coolingTime`.
 *
 * $$T = T_\mathrm{amb} + (T_0 - T_\mathrm{amb})\,e^{-UA\,t/C}$$
 *
 * @param input.heatCapacity - Heat capacity of the charge, and of the vessel if it cools with it [J/K], above 0.
 * @param input.conductance - Loss to the room per kelvin [W/K], 0 or more.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.duration - Time in the room [s], 0 or more.
 * @returns The temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source openstax-calculus-2 section 4.3, Newton's law of cooling
 * @example
 * ```ts
 * import { temperatureAfterCooling } from "gelwright/heat";
 * temperatureAfterCooling({
 *   heatCapacity: 210000,
 *   conductance: 15,
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   duration: 1800,
 * }); // => 77.1577987114749
 * ```
 */
export function temperatureAfterCooling(input: {
  readonly heatCapacity: number;
  readonly conductance: number;
  readonly temperatureAmbient: number;
  readonly temperatureStart: number;
  readonly duration: number;
}): number {
  const { heatCapacity, conductance, temperatureAmbient, temperatureStart, duration } = record(
    input,
    "input",
    known.temperatureAfterCooling,
  );
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const timeConstants =
    notNegative(duration, "duration") *
    (notNegative(conductance, "conductance") / positive(heatCapacity, "heatCapacity"));
  return result(
    ambient + (temperature(temperatureStart, "temperatureStart") - ambient) * Math.exp(-timeConstants),
    "temperature after cooling",
  );
}

/**
 * A cooling time measured at one volume, for another volume of the same shape.
 *
 * $$t_2 = t_1 \left(\frac{V_2}{V_1}\right)^{1/3} \text{(surface)} \qquad t_2 = t_1 \left(\frac{V_2}{V_1}\right)^{2/3} \text{(conduction)}$$
 *
 * Limited by the surface: stirred, with the same loss per area and kelvin. Limited by conduction: unstirred and set,
 * as a gel in its drum; the exponent is the limit for a surface that holds its temperature.
 *
 * @param input.duration - Time measured [s], above 0.
 * @param input.volume - Volume at which it was measured [m³], above 0.
 * @param input.volumeAtScale - Volume of the other scale [m³], above 0.
 * @param input.limitedBy - `"surface"` or `"conduction"`.
 * @returns The time at scale [s].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition, from the time constants ρVc/(UA) and L²/α of similar shapes
 * @example
 * ```ts
 * import { coolingTimeAtScale } from "gelwright/heat";
 * coolingTimeAtScale({ duration: 1320, volume: 0.001, volumeAtScale: 0.125, limitedBy: "surface" }); // => 6600
 * ```
 */
export function coolingTimeAtScale(input: {
  readonly duration: number;
  readonly volume: number;
  readonly volumeAtScale: number;
  readonly limitedBy: "surface" | "conduction";
}): number {
  const { duration, volume, volumeAtScale, limitedBy } = record(input, "input", known.coolingTimeAtScale);
  if (limitedBy !== "surface" && limitedBy !== "conduction")
    refuse("input", "limitedBy", limitedBy, '"surface" or "conduction"');
  const lengths = Math.cbrt(positive(volumeAtScale, "volumeAtScale") / positive(volume, "volume"));
  return result(
    positive(duration, "duration") * (limitedBy === "surface" ? lengths : lengths * lengths),
    "cooling time at scale",
  );
}
