import { list, notNegative, positive, record, refuse, temperature } from "../guards.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { runSegment, type SegmentEnd, type SegmentResult } from "../transient/segment.js";
import type { SegmentInput } from "../transient/track.js";
import {
  balanceBetween,
  type CompiledHeatBalance,
  capacityFunction,
  compileHeatBalance,
  type HeatBalance,
} from "./heat-balance.js";
import * as known from "./known.js";

/** A vessel that is heated or cooled on purpose while it loses heat to the room. */
export interface HeatedVessel extends HeatBalance {
  /** Where it starts [°C]. */
  readonly temperatureStart: number;
  /** Heat capacity of vessel and content [J/K], above 0; a function of temperature [°C] where it varies or something melts. */
  readonly heatCapacity: number | ((temperature: number) => number);
  /** The heat source is held back so that it changes the temperature no faster than this [K/s], above 0; left out if nothing holds it back. */
  readonly rateMax?: number | undefined;
}

/** What vesselSegment sums up in any case. */
export type Energy = "energySupplied" | "energyLost";

/**
 * How long any heat source takes to warm or cool a vessel that loses heat by any law, with the energy and whatever else
 * accumulates.
 *
 * $$t = \int_{T_0}^{T_1} \frac{C(T)}{q_\mathrm{supply}(T) - q_\mathrm{loss}(T)}\,\mathrm dT$$
 *
 * Melting is part of the heat capacity, as a function of temperature. A heat source that is limited to `rateMax` never
 * cools: if the loss alone is faster, the heat source is off.
 *
 * @param input - Start [°C], heat capacity [J/K], heat source, heat-loss law, room [°C], largest rate [K/s], rates [1/s] and
 *   breakpoints [°C]; and either `temperatureEnd` [°C] or `duration` [s]. A segment of a history may be handed in with
 *   its `kind`.
 * @returns The end [°C], the duration [s] and the totals, `energySupplied` and `energyLost` [J] among them; in cooling both count as they flow, so that what a jacket takes is negative.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where heat source and loss hold each other before the end; `range` where a law ends before.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { vesselSegment } from "gelwright/heat";
 * const heated = vesselSegment({
 *   temperatureStart: 20,
 *   temperatureEnd: 85,
 *   heatCapacity: 2040,
 *   heatSource: { kind: "medium", temperature: 150, conductance: 5, powerMax: 300 },
 *   heatLoss: { law: "newton", conductance: 1.1 },
 *   temperatureAmbient: 20,
 * });
 * heated.duration; // => 504.8930720152374
 * ```
 */
export function vesselSegment<Name extends string = never>(
  input: HeatedVessel & Pick<SegmentInput<Name>, "rates" | "breakpoints"> & SegmentEnd & { readonly kind?: "vessel" },
): SegmentResult<Name | Energy> {
  const end = record(input, "input", known.vesselSegment).temperatureEnd;
  if (input.kind !== undefined && input.kind !== "vessel") refuse("input", "kind", input.kind, '"vessel", or nothing');
  const { sourceAt, lossAt, segment } = laidOut(
    input,
    end === undefined ? undefined : temperature(end, "temperatureEnd"),
  );
  const rates = { ...record(input.rates ?? {}, "rates"), energySupplied: sourceAt, energyLost: lossAt } as Readonly<
    Record<Name | Energy, (temperature: number) => number>
  >;
  return runSegment({ ...segment, rates }, input);
}

/** What a vessel's segment may be without where it ends. */
type VesselSegmentInput = HeatedVessel & Pick<SegmentInput<never>, "breakpoints">;

/** A vessel as a segment, with what flows in and out of it; `end` is the temperature it is run to, if it is run to one. */
export function laidOut(
  input: VesselSegmentInput & { readonly duration?: number | undefined },
  end: number | undefined,
): Pick<CompiledHeatBalance, "sourceAt" | "lossAt"> & { readonly segment: SegmentInput<never> } {
  const balance = compileHeatBalance(input);
  const start = temperature(input.temperatureStart, "temperatureStart");
  const limit = limitOf(balance, input, start, end);
  const { sourceAt, breakpoints } = heldBack(balance, input, start, end ?? limit);
  const { lossAt } = balance;
  return {
    sourceAt,
    lossAt,
    segment: {
      temperatureStart: start,
      temperatureLimit: limit,
      heatCapacity: input.heatCapacity,
      heatFlow: (at) => sourceAt(at) - lossAt(at),
      breakpoints: [
        ...breakpoints,
        ...list(input.breakpoints ?? [], "breakpoints"),
        ...aboutAmbient(balance, input, limit),
      ],
    },
  };
}

/**
 * The temperature that the vessel comes to in the end, where the segment could come near it; undefined where it does
 * not. It is looked for no farther than the segment can reach, since a loss law need not hold beyond.
 */
function limitOf(
  { netAt, medium, ambient }: CompiledHeatBalance,
  { duration, heatCapacity }: HeatedVessel & { readonly duration?: number | undefined },
  start: number,
  end: number | undefined,
): number | undefined {
  const net = netAt(start);
  if (net === 0) return undefined;
  if (medium !== undefined) {
    const outermost = net > 0 ? Math.max(medium, ambient) : Math.min(medium, ambient);
    // A stirrer may warm the charge beyond medium and room.
    if (net < 0 || netAt(outermost) <= 0) return balanceBetween(netAt, start, outermost);
  } else if (net < 0) return balanceBetween(netAt, start, ambient);
  const farthest = end ?? start + (net * notNegative(duration, "duration")) / capacityFunction(heatCapacity)(start);
  if (!(farthest > start) || netAt(farthest) > 0) return undefined;
  const limit = balanceBetween(netAt, start, farthest);
  if (end !== undefined)
    refuse("unreachable", "temperatureEnd", end, `less than ${limit} °C, where the loss takes all the power`);
  return limit;
}

/**
 * Edges that close in on the room's temperature, near which convection rises as a power of the excess. A segment with a
 * limit has edges that do so by themselves, and a loss in proportion needs none.
 */
function aboutAmbient(
  { ambient }: CompiledHeatBalance,
  { heatLoss }: HeatBalance,
  limit: number | undefined,
): readonly number[] {
  return limit !== undefined || heatLoss.law === "newton"
    ? []
    : [0, 0.05, 0.4, 2].flatMap((excess) => [Math.max(-kelvin, ambient - excess), ambient + excess]);
}

/** The heat source, held back to the largest rate where there is one, and where it has breakpoints between `start` and `end`. */
function heldBack(
  { sourceAt, lossAt, netAt, breakpoints }: CompiledHeatBalance,
  { rateMax, heatCapacity }: HeatedVessel,
  start: number,
  end: number | undefined,
): Pick<CompiledHeatBalance, "sourceAt" | "breakpoints"> {
  if (rateMax === undefined) return { sourceAt, breakpoints };
  const rate = positive(rateMax, "rateMax");
  const capacityAt = capacityFunction(heatCapacity);
  const held = (at: number): number => {
    const full = sourceAt(at);
    const max = capacityAt(at) * rate;
    return full > 0 ? Math.min(full, Math.max(0, lossAt(at) + max)) : Math.max(full, Math.min(0, lossAt(at) - max));
  };
  const spare = (at: number): number => Math.abs(netAt(at)) - capacityAt(at) * rate;
  const frees = end !== undefined && spare(start) > 0 && spare(end) < 0;
  return { sourceAt: held, breakpoints: frees ? [...breakpoints, balanceBetween(spare, start, end)] : breakpoints };
}
