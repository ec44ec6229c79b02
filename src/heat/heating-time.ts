import { notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/** What melts on the way, for the charge as a whole. */
export interface MeltingOnTheWay {
  /** Melting temperature [°C]. */
  readonly temperature: number;
  /** Heat that melts all that melts [J], above 0: its mass times its latent heat. */
  readonly meltingEnergy: number;
  /** Heat capacity of the whole charge once molten [J/K], above 0. */
  readonly heatCapacityMelt: number;
}

/** How long heating takes, and where the energy went. */
export interface HeatingTime {
  /** The whole time [s]. */
  readonly duration: number;
  /** Up to the melting temperature, or to the end if that lies below it [s]; 0 if molten at the start. */
  readonly durationToMelt: number;
  /** At the melting temperature [s]. */
  readonly durationMelting: number;
  /** From the melting temperature to the end [s]. */
  readonly durationAfter: number;
  /** The temperature that this heater would hold in the end [°C]; absent without a loss. */
  readonly temperatureSteady?: number;
  /** From the heater [J]. */
  readonly energySupplied: number;
  /** In the charge, sensible and latent [J]. */
  readonly energyStored: number;
  /** To the room [J]; negative where the room warms the charge. */
  readonly energyLost: number;
}

/**
 * How long a heater of constant power takes to warm a charge that loses heat to the room, and to melt what melts on the way.
 *
 * $$C \frac{dT}{dt} = P - UA\,(T - T_\mathrm{amb}) \qquad t = \frac{C}{UA} \ln \frac{P - UA\,(T_0 - T_\mathrm{amb})}{P - UA\,(T_1 - T_\mathrm{amb})} \qquad t_\mathrm{melt} = \frac{Q_\mathrm{melt}}{P - UA\,(T_m - T_\mathrm{amb})}$$
 *
 * The charge has one temperature throughout (stirred, or small). What is at its melting temperature counts as molten.
 *
 * @param input.power - Heat that reaches the charge [W], 0 or more: the heater's rating times its efficiency.
 * @param input.conductance - Loss to the room per kelvin [W/K], 0 or more.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], not below the start.
 * @param input.heatCapacity - Heat capacity of the charge, and of the vessel if it warms with it [J/K], above 0.
 * @param input.melting - What melts on the way; left out if nothing does.
 * @returns Times [s], the steady temperature [°C], and the energy [J] supplied, stored and lost.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the loss takes all the power before the end.
 * @source openstax-college-physics section 14.3, exercise on heating ice at constant power, for a charge without loss; the loss from memory of perry-2008 section 11, heating of vessels
 * @example
 * ```ts
 * import { heatingTime } from "gelwright/heat";
 * heatingTime({
 *   power: 300,
 *   conductance: 1.1,
 *   temperatureAmbient: 21,
 *   temperatureStart: 21,
 *   temperatureEnd: 80,
 *   heatCapacity: 2040,
 *   melting: { temperature: 62, meltingEnergy: 18000, heatCapacityMelt: 2070 },
 * }).duration; // => 524.9065729601411
 * ```
 */
export function heatingTime(input: {
  readonly power: number;
  readonly conductance: number;
  readonly temperatureAmbient: number;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
  readonly heatCapacity: number;
  readonly melting?: MeltingOnTheWay;
}): HeatingTime {
  const { power, conductance, temperatureAmbient, temperatureStart, temperatureEnd, heatCapacity, melting } = record(
    input,
    "input",
    known.heatingTime,
  );
  const heating = notNegative(power, "power");
  const loss = notNegative(conductance, "conductance");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  const capacity = positive(heatCapacity, "heatCapacity");
  const flowAt = (at: number): number => heating - loss * (at - ambient);
  const steady = loss > 0 ? { temperatureSteady: result(ambient + heating / loss, "temperatureSteady") } : {};

  if (end < start) refuse("input", "temperatureEnd", end, `temperatureStart (${start} °C) or more`);
  if (end > start && flowAt(end) <= 0)
    refuse(
      "unreachable",
      "temperatureEnd",
      end,
      steady.temperatureSteady === undefined
        ? "some power: there is none, and no warmer room"
        : `less than ${Number(steady.temperatureSteady.toPrecision(6))} °C, the steady temperature, where the loss takes all the power`,
    );

  /** Time and loss of a stretch without melting, in forms that hold as the loss goes to nothing. */
  const warm = (from: number, to: number, stored: number): readonly [duration: number, lost: number] => {
    if (to <= from) return [0, 0];
    const flow = flowAt(from);
    // The share of that net flow which the growing loss has taken by the end.
    const taken = (loss * (to - from)) / flow;
    const timeConstants = taken < 0.5 ? -Math.log1p(-taken) : Math.log(flow / flowAt(to));
    const duration = (stored / flow) * (taken > 0 ? timeConstants / taken : 1);
    return [duration, (loss * (from - ambient) + flow * shortfall(timeConstants)) * duration];
  };

  let melts = end;
  let latent = 0;
  let storedAfter = 0;
  if (melting !== undefined) {
    const { temperature: point, meltingEnergy, heatCapacityMelt } = record(melting, "melting");
    const at = temperature(point, "melting.temperature");
    const all = positive(meltingEnergy, "melting.meltingEnergy");
    const capacityMelt = positive(heatCapacityMelt, "melting.heatCapacityMelt");
    if (at <= end) {
      melts = Math.max(at, start);
      latent = at > start ? all : 0;
      storedAfter = capacityMelt * (end - melts);
    }
  }
  const storedBefore = capacity * (melts - start);
  const [durationToMelt, lostBefore] = warm(start, melts, storedBefore);
  const durationMelting = latent > 0 ? latent / flowAt(melts) : 0;
  const [durationAfter, lostAfter] = warm(melts, end, storedAfter);
  const duration = result(durationToMelt + durationMelting + durationAfter, "duration");
  return {
    duration,
    durationToMelt,
    durationMelting,
    durationAfter,
    ...steady,
    energySupplied: result(heating * duration, "energySupplied"),
    energyStored: result(storedBefore + latent + storedAfter, "energyStored"),
    energyLost: result(lostBefore + loss * (melts - ambient) * durationMelting + lostAfter, "energyLost"),
  };
}

/** 1 − (1 − e⁻ˣ)/x, the mean fall of the net heat flow over x time constants; as a series where the difference would cancel. */
function shortfall(x: number): number {
  if (x > 0.5) return 1 + Math.expm1(-x) / x;
  let sum = 0;
  for (let term = x / 2, order = 3; Math.abs(term) > 1e-17 * sum; order++) {
    sum += term;
    term *= -x / order;
  }
  return sum;
}
