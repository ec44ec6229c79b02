import { notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";
import { logMean } from "./log-mean.js";

/** How long a plate takes whose temperature and power are limited. */
export interface PlateHeatingTime {
  /** The whole time [s]. */
  readonly duration: number;
  /** For which the plate gives its full power [s]; after it the temperature of the plate is what limits. */
  readonly durationFullPower: number;
  /** The temperature that the vessel would hold in the end [°C]. */
  readonly temperatureSteady: number;
}

/**
 * How long a hot plate or jacket takes to warm a charge: at full power first, then limited by its own temperature.
 *
 * $$q = \min\bigl(P,\;K\,(T_\mathrm{heater} - T)\bigr) \qquad t = \sum \frac{C\,\Delta T}{\ln\text{-mean}(q_0 - q_{\mathrm{loss},0},\;q_1 - q_{\mathrm{loss},1})}$$
 *
 * The closed form of `vesselSegment` for Newton's law of loss and a constant heat capacity.
 *
 * @param input.temperatureHeater - Temperature at which plate or jacket is held [°C].
 * @param input.conductanceHeater - From plate or jacket to the charge [W/K], above 0.
 * @param input.powerMax - Its maximum power [W], above 0; left out if there is no limit.
 * @param input.conductance - Loss to the room per kelvin [W/K], 0 or more.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], not below the start.
 * @param input.heatCapacity - Heat capacity of charge and vessel [J/K], above 0.
 * @returns Times [s] and the steady temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the steady temperature is not above the end.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { plateHeatingTime } from "gelwright/heat";
 * plateHeatingTime({
 *   temperatureHeater: 150,
 *   conductanceHeater: 5,
 *   powerMax: 300,
 *   conductance: 1.1,
 *   temperatureAmbient: 20,
 *   temperatureStart: 20,
 *   temperatureEnd: 85,
 *   heatCapacity: 2040,
 * }).duration; // => 504.89307201523724
 * ```
 */
export function plateHeatingTime(input: {
  readonly temperatureHeater: number;
  readonly conductanceHeater: number;
  readonly powerMax?: number;
  readonly conductance: number;
  readonly temperatureAmbient: number;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
  readonly heatCapacity: number;
}): PlateHeatingTime {
  const { powerMax, temperatureStart, temperatureEnd, heatCapacity } = record(input, "input", known.plateHeatingTime);
  const heater = temperature(input.temperatureHeater, "temperatureHeater");
  const conductance = positive(input.conductanceHeater, "conductanceHeater");
  const loss = notNegative(input.conductance, "conductance");
  const ambient = temperature(input.temperatureAmbient, "temperatureAmbient");
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  const capacity = positive(heatCapacity, "heatCapacity");
  const max = powerMax === undefined ? Number.POSITIVE_INFINITY : positive(powerMax, "powerMax");
  if (end < start) refuse("input", "temperatureEnd", end, `temperatureStart (${start} °C) or more`);
  const free = heater - max / conductance;
  const netAt = (at: number): number => Math.min(max, conductance * (heater - at)) - loss * (at - ambient);
  const shared = ambient + (conductance / (conductance + loss)) * (heater - ambient);
  const temperatureSteady = result(shared < free ? ambient + max / loss : shared, "temperatureSteady");
  if (end > start && !(netAt(end) > 0))
    refuse("unreachable", "temperatureEnd", end, `less than ${temperatureSteady} °C, the steady temperature`);
  const warm = (from: number, to: number): number =>
    to > from ? (capacity * (to - from)) / logMean(netAt(from), netAt(to)) : 0;
  const change = Math.min(end, Math.max(start, free));
  const durationFullPower = warm(start, change);
  return { duration: result(durationFullPower + warm(change, end), "duration"), durationFullPower, temperatureSteady };
}
