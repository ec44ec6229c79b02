import { positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/**
 * The conductance of a jacket whose medium flows through and leaves at another temperature than it entered.
 *
 * $$K = w c \left(1 - e^{-UA/wc}\right)$$
 *
 * It refers to the temperature difference to the *inlet*, so that the equations for a medium of one temperature apply.
 * The medium moves as a plug along a wall of constant U.
 *
 * @param input.conductance - Heat-transfer coefficient times area of the jacketed wall [W/K], above 0.
 * @param input.capacityFlow - Mass flow times specific heat of the medium [W/K], above 0.
 * @returns The conductance to the inlet temperature [W/K], below both.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source perry-2008 section 11, batch operations with a non-isothermal medium
 * @example
 * ```ts
 * import { jacketConductance } from "gelwright/heat";
 * jacketConductance({ conductance: 360, capacityFlow: 1672 }); // => 323.882048361218
 * ```
 */
export function jacketConductance(input: { readonly conductance: number; readonly capacityFlow: number }): number {
  const { conductance, capacityFlow } = record(input, "input", known.jacketConductance);
  const flow = positive(capacityFlow, "capacityFlow");
  return result(-flow * Math.expm1(-positive(conductance, "conductance") / flow), "conductance of the jacket");
}

/** How long a jacket takes, and what its medium does meanwhile. */
export interface JacketTime {
  /** [s]. */
  readonly duration: number;
  /** Heat into the batch at the start [W]; negative in cooling. */
  readonly heatFlowStart: number;
  /** Heat into the batch at the end [W]; negative in cooling. */
  readonly heatFlowEnd: number;
  /** Medium at the outlet at the start [°C]. */
  readonly temperatureOutletStart: number;
  /** Medium at the outlet at the end [°C]. */
  readonly temperatureOutletEnd: number;
  /** Logarithmic mean difference between batch and medium at the start [K]. */
  readonly meanDifferenceStart: number;
}

/**
 * How long a stirred batch takes to cool or warm through its jacket, by a medium of one temperature or one that flows
 * through.
 *
 * $$\ln\frac{T_1 - t_1}{T_2 - t_1} = \frac{UA}{C}\,\theta \qquad \ln\frac{T_1 - t_1}{T_2 - t_1} = \frac{w c}{C}\,\frac{K - 1}{K}\,\theta,\quad K = e^{UA/wc}$$
 *
 * Nothing is lost to the room and nothing sets: `vesselSegment` has both. U is constant, though a gel that thickens
 * lowers it: with the U of the coldest stretch the time is on the long side.
 *
 * @param input.heatCapacity - Heat capacity of the batch [J/K], above 0.
 * @param input.conductance - Heat-transfer coefficient times area of the jacketed wall [W/K], above 0.
 * @param input.capacityFlow - Mass flow times specific heat of the medium [W/K], above 0; left out for a medium of one temperature, such as one that boils, condenses or is in excess.
 * @param input.temperatureInlet - Temperature of the medium at its inlet [°C].
 * @param input.temperatureStart - Temperature of the batch before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], between start and inlet.
 * @returns Time [s]; heat flow [W], outlet [°C] at start and end; mean difference [K].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the end does not lie between start and inlet.
 * @source perry-2008 section 11, batch operations
 * @example
 * ```ts
 * import { jacketTime } from "gelwright/heat";
 * jacketTime({
 *   heatCapacity: 1050000,
 *   conductance: 360,
 *   capacityFlow: 1672,
 *   temperatureInlet: 15,
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 * }).duration; // => 2746.8726899440376
 * ```
 */
export function jacketTime(input: {
  readonly heatCapacity: number;
  readonly conductance: number;
  readonly capacityFlow?: number;
  readonly temperatureInlet: number;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
}): JacketTime {
  const { heatCapacity, conductance, capacityFlow, temperatureInlet, temperatureStart, temperatureEnd } = record(
    input,
    "input",
    known.jacketTime,
  );
  const capacity = positive(heatCapacity, "heatCapacity");
  const wall = positive(conductance, "conductance");
  const through = capacityFlow === undefined ? wall : jacketConductance({ conductance: wall, capacityFlow });
  const inlet = temperature(temperatureInlet, "temperatureInlet");
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  const change = (start - end) / (end - inlet);
  if (start !== end && !(end !== inlet && change > 0))
    refuse("unreachable", "temperatureEnd", end, `between start (${start} °C) and inlet (${inlet} °C), inlet left out`);
  const outletAt = (at: number): number =>
    inlet + (capacityFlow === undefined ? 0 : (through / capacityFlow) * (at - inlet));
  return {
    duration: start === end ? 0 : result((capacity / through) * Math.log1p(change), "duration"),
    heatFlowStart: result(through * (inlet - start), "heatFlowStart"),
    heatFlowEnd: result(through * (inlet - end), "heatFlowEnd"),
    temperatureOutletStart: outletAt(start),
    temperatureOutletEnd: outletAt(end),
    meanDifferenceStart: result((through / wall) * Math.abs(start - inlet), "meanDifferenceStart"),
  };
}
