import { notNegative, positive, record, refuse, result } from "../guards.js";
import { integrate } from "../numeric/quadrature.js";
import { root } from "../numeric/root.js";
import { compileIncorporationTime, type Incorporation } from "./addition-times.js";
import * as known from "./known.js";
import { checkOil, type OilToAdd, type VesselWithOil } from "./oil-to-add.js";

/** Oil that is streamed in: what would be one addition goes in over the time that its incorporation takes. */
export interface OilFeed extends OilToAdd, Incorporation {}

/** A moment of a feed, and the vessel then. */
export interface FeedMoment extends VesselWithOil {
  /** Feed rate [kg/s]. */
  readonly rate: number;
}

function compile(input: OilFeed) {
  const oil = checkOil(input);
  const { rateMax } = input;
  const taken = compileIncorporationTime(input);
  const pump = rateMax === undefined ? Number.POSITIVE_INFINITY : positive(rateMax, "rateMax");
  const start = oil.after(0);
  const corners = [...oil.share.corners, ...taken.corners].map((corner) => oil.oilAt(corner) - start.massOil);
  const rateAt = (vessel: VesselWithOil): number => {
    const { volumeFractionOil, massInVessel } = vessel;
    const gel = (oil.share.at(volumeFractionOil) / taken.at(volumeFractionOil)) * massInVessel;
    return positive(Math.min(gel, pump), "feed rate");
  };
  /** Time until so much oil is in: over the logarithm of the content, along which a feed in proportion is a straight line. */
  const timeFor = (massAdded: number): number => {
    if (massAdded === 0) return 0;
    const within = corners.filter((corner) => corner > 0 && corner < massAdded);
    const edges = [0, ...within.sort((a, b) => a - b), massAdded];
    const [time = 0] = integrate(
      edges.map((added) => Math.log1p(added / start.massInVessel)),
      (growth, values) => {
        const added = Math.min(massAdded, start.massInVessel * Math.expm1(growth));
        const vessel = oil.after(added);
        values[0] = vessel.massInVessel / rateAt(vessel);
      },
      1,
      "time",
    );
    return result(time, "time");
  };
  return { oil, rateAt, timeFor };
}

/**
 * How long a continuous feed takes: the limit of ever smaller additions with ever shorter waits.
 *
 * $$\dot m = \min\left(\frac{f(\varphi)}{k(\varphi)\,t_\mathrm{inc}(\varphi)}\,M,\ \dot m_\mathrm{pump}\right) \qquad t = \int \frac{\mathrm dM}{\dot m} \qquad t = \frac{k\,t_\mathrm{inc}}{f}\,\ln\frac{M_\mathrm{end}}{M_0}$$
 *
 * The last form holds where share and incorporation time are constant and the pump never limits. The trials were made with additions:
 * that a stream of the same mean rate works as well is an assumption, to be tried at the bench.
 *
 * @param input - The oil to add: masses [kg], densities [kg/m³], the law of the share, the maximum oil fraction.
 * @param input.incorporationTime - Time in which the bench takes up an addition of that share [s].
 * @param input.incorporationTimeFactor - Factor on it, above 0, or a law of it against the oil fraction; default 1.
 * @param input.rateMax - Maximum rate of the pump [kg/s], above 0; default no limit.
 * @returns Time for all of the oil [s].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where the oil passes the maximum oil fraction; `range` where a law does not reach.
 * @source definition, growth in proportion
 * @example
 * ```ts
 * import { feedDuration } from "gelwright/mixing";
 * const feed = {
 *   massGelFormer: 10, massToAdd: 90, densityOil: 915, densityGelFormer: 1250,
 *   share: { law: "constant", value: 0.05 }, incorporationTime: { law: "constant", value: 60 },
 * } as const;
 * Math.round(feedDuration(feed)); // => 2763
 * Math.round(feedDuration({ ...feed, rateMax: 0.03 })); // => 3670
 * ```
 */
export function feedDuration(input: OilFeed): number {
  const { oil, timeFor } = compile(record(input, "input", known.feedDuration));
  return timeFor(oil.massToAdd);
}

/**
 * The feed rate at a time, and what is in the vessel then.
 *
 * $$\int_{M_0}^{M(t)} \frac{\mathrm dM}{\dot m(M)} = t$$
 *
 * @param input - The feed, as for `feedDuration`.
 * @param input.time - Time since the start [s], 0 to the duration of the feed.
 * @returns Rate [kg/s], masses [kg] and oil fraction.
 * @throws CalculationError as for `feedDuration`; `range` for a time after the end.
 * @source definition, growth in proportion
 * @example
 * ```ts
 * import { feedAt } from "gelwright/mixing";
 * const half = feedAt({
 *   massGelFormer: 10, massToAdd: 90, densityOil: 915, densityGelFormer: 1250,
 *   share: { law: "constant", value: 0.05 }, incorporationTime: { law: "constant", value: 60 },
 *   time: 600 * Math.log(10),
 * });
 * half.massInVessel.toFixed(3); // => "31.623"
 * (60 * half.rate).toFixed(3); // => "1.581"
 * ```
 */
export function feedAt(input: OilFeed & { readonly time: number }): FeedMoment {
  const { time } = record(input, "input", known.feedAt);
  const at = notNegative(time, "time");
  const { oil, rateAt, timeFor } = compile(input);
  const duration = timeFor(oil.massToAdd);
  if (at > duration * (1 + 1e-12)) refuse("range", "time", at, `up to the end of the feed, ${duration} s`);
  const added =
    at === 0
      ? 0
      : at >= duration
        ? oil.massToAdd
        : root((mass) => timeFor(mass) - at, 0, oil.massToAdd, "oil added", 1e-15 * oil.massToAdd);
  const vessel = oil.after(added);
  return { ...vessel, rate: rateAt(vessel) };
}
