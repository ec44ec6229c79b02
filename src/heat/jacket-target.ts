import { notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";

/** A batch that is to come to a temperature in a wanted time. */
export interface TimeTarget {
  /** Time wanted [s], above 0. */
  readonly duration: number;
  /** Temperature of the batch before [°C]. */
  readonly temperatureStart: number;
  /** Temperature wanted [°C]. */
  readonly temperatureEnd: number;
}

/**
 * The temperature of the medium that cools or warms a batch in a wanted time.
 *
 * $$t_1 = T_2 - \frac{T_1 - T_2}{e^{K\theta/C} - 1}$$
 *
 * @param input.duration - Time wanted [s], above 0.
 * @param input.heatCapacity - Heat capacity of the batch [J/K], above 0.
 * @param input.conductance - Between medium and batch [W/K], above 0: `jacketConductance` where the medium flows.
 * @param input.temperatureStart - Temperature of the batch before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], other than the start.
 * @param input.temperatureMin - Coldest medium that there is [°C]; left out for any.
 * @param input.temperatureMax - Hottest medium that there is [°C]; left out for any.
 * @returns The temperature of the medium at its inlet [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where there is no such medium, with the time that the coldest or hottest would take.
 * @source perry-2008 section 11, batch operations, solved for the medium
 * @example
 * ```ts
 * import { mediumTemperatureForDuration } from "gelwright/heat";
 * mediumTemperatureForDuration({
 *   duration: 3000,
 *   heatCapacity: 1050000,
 *   conductance: 360,
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 * }); // => 22.741510895545947
 * ```
 */
export function mediumTemperatureForDuration(
  input: TimeTarget & {
    readonly heatCapacity: number;
    readonly conductance: number;
    readonly temperatureMin?: number;
    readonly temperatureMax?: number;
  },
): number {
  const { duration, heatCapacity, conductance, temperatureMin, temperatureMax } = record(
    input,
    "input",
    known.mediumTemperatureForDuration,
  );
  const timeConstant = positive(heatCapacity, "heatCapacity") / positive(conductance, "conductance");
  const start = temperature(input.temperatureStart, "temperatureStart");
  const end = temperature(input.temperatureEnd, "temperatureEnd");
  if (start === end) refuse("input", "temperatureEnd", end, "other than temperatureStart");
  const min = temperatureMin === undefined ? -kelvin : temperature(temperatureMin, "temperatureMin");
  const max = temperatureMax === undefined ? Number.MAX_VALUE : temperature(temperatureMax, "temperatureMax");
  const medium = end - (start - end) / Math.expm1(positive(duration, "duration") / timeConstant);
  if (medium >= min && medium <= max && medium > -kelvin) return medium;
  const outermost = medium < end ? min : max;
  const change = (start - end) / (end - outermost);
  return refuse(
    "unreachable",
    "duration",
    duration,
    change > 0
      ? `${timeConstant * Math.log1p(change)} s or more, the time with a medium of ${outermost} °C`
      : `a temperatureEnd that a medium of ${outermost} °C comes to`,
  );
}

/**
 * The largest batch that reaches a temperature in a wanted time with a given jacket.
 *
 * $$m = \frac{1}{c}\left(\frac{K\theta}{\ln\frac{T_1 - t_1}{T_2 - t_1}} - C_\mathrm{vessel}\right)$$
 *
 * The conductance is that of the area which the batch wets: a smaller batch may wet less.
 *
 * @param input.duration - Time wanted [s], above 0.
 * @param input.conductance - Between medium and batch [W/K], above 0: `jacketConductance` where the medium flows.
 * @param input.temperatureMedium - Temperature of the medium at its inlet [°C].
 * @param input.temperatureStart - Temperature of the batch before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], between start and medium.
 * @param input.specificHeat - Specific heat of the batch [J/(kg·K)], above 0.
 * @param input.heatCapacityVessel - Heat capacity of the vessel, if it cools with the batch [J/K], 0 or more; default 0.
 * @returns The mass of the batch [kg], above 0.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the end does not lie between start and medium, or where the empty vessel alone takes longer.
 * @source perry-2008 section 11, batch operations, solved for the mass
 * @example
 * ```ts
 * import { batchMassForDuration } from "gelwright/heat";
 * batchMassForDuration({
 *   duration: 3600,
 *   conductance: 360,
 *   temperatureMedium: 15,
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 *   specificHeat: 2100,
 * }); // => 728.3658864201914
 * ```
 */
export function batchMassForDuration(
  input: TimeTarget & {
    readonly conductance: number;
    readonly temperatureMedium: number;
    readonly specificHeat: number;
    readonly heatCapacityVessel?: number;
  },
): number {
  const { conductance, specificHeat, heatCapacityVessel = 0 } = record(input, "input", known.batchMassForDuration);
  const timeConstants = timeConstantsOf(input, input.temperatureMedium);
  const vessel = notNegative(heatCapacityVessel, "heatCapacityVessel");
  const through = positive(conductance, "conductance");
  const capacity = through * (positive(input.duration, "duration") / timeConstants);
  if (capacity <= vessel)
    refuse(
      "unreachable",
      "duration",
      input.duration,
      `above ${(timeConstants * vessel) / through} s, the time of the empty vessel`,
    );
  return result((capacity - vessel) / positive(specificHeat, "specificHeat"), "mass");
}

/**
 * The flow of medium that cools or warms a batch in a wanted time.
 *
 * $$w c \left(1 - e^{-UA/wc}\right) = \frac{C}{\theta} \ln\frac{T_1 - t_1}{T_2 - t_1}$$
 *
 * @param input.duration - Time wanted [s], above 0.
 * @param input.heatCapacity - Heat capacity of the batch [J/K], above 0.
 * @param input.conductance - Heat-transfer coefficient times area of the jacketed wall [W/K], above 0.
 * @param input.temperatureInlet - Temperature of the medium at its inlet [°C].
 * @param input.temperatureStart - Temperature of the batch before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], between start and inlet.
 * @returns Mass flow times specific heat of the medium [W/K], above 0.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the end does not lie between start and inlet, or where no flow is enough, with the time that the largest takes.
 * @source perry-2008 section 11, batch operations with a non-isothermal medium, solved for the flow
 * @example
 * ```ts
 * import { capacityFlowForDuration } from "gelwright/heat";
 * capacityFlowForDuration({
 *   duration: 3000,
 *   heatCapacity: 1050000,
 *   conductance: 360,
 *   temperatureInlet: 15,
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 * }); // => 897.4441543178481
 * ```
 */
export function capacityFlowForDuration(
  input: TimeTarget & {
    readonly heatCapacity: number;
    readonly conductance: number;
    readonly temperatureInlet: number;
  },
): number {
  const { duration, heatCapacity, conductance, temperatureInlet } = record(
    input,
    "input",
    known.capacityFlowForDuration,
  );
  const wall = positive(conductance, "conductance");
  const timeConstants = timeConstantsOf(input, temperatureInlet);
  const capacity = positive(heatCapacity, "heatCapacity");
  const share = (capacity * timeConstants) / positive(duration, "duration") / wall;
  if (!(share < 1))
    refuse("unreachable", "duration", duration, `above ${(capacity * timeConstants) / wall} s, the time with any flow`);
  // The share is (1 − e⁻ʸ)/y of y = UA/wc, which lies between the bounds of that curve.
  const spare = (y: number): number => (y === 0 ? 1 : -Math.expm1(-y) / y) - share;
  return result(wall / root(spare, 1 - share, (1 + 1e-9) / share, "capacity flow"), "capacity flow");
}

/** ln((T₁ − t₁)/(T₂ − t₁)): how many time constants the way takes. */
function timeConstantsOf({ temperatureStart, temperatureEnd }: TimeTarget, temperatureMedium: number): number {
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  const medium = temperature(temperatureMedium, "medium");
  const change = (start - end) / (end - medium);
  if (end === medium || !(change > 0))
    refuse(
      "unreachable",
      "temperatureEnd",
      end,
      `between start (${start} °C) and medium (${medium} °C), both left out`,
    );
  return Math.log1p(change);
}
