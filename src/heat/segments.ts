import { list, notNegative, record, refuse, result, show, temperature } from "../guards.js";
import { integrate } from "../numeric/quadrature.js";
import type { SegmentEnd } from "../transient/segment.js";
import { type HeatedVessel, vesselSegment } from "./vessel-segment.js";

/** One segment of what a batch goes through. */
export type Segment =
  | {
      /** The temperature goes from start to end evenly in time: a hold where the two are the same, or two readings of a logger. */
      readonly kind: "ramp";
      /** [°C]. */
      readonly temperatureStart: number;
      /** [°C]. */
      readonly temperatureEnd: number;
      /** [s], 0 or more. */
      readonly duration: number;
    }
  | ({
      /** A vessel that is heated, cooled, or left to itself (a heat source of 0 W). */
      readonly kind: "vessel";
      /** Temperatures at which heat capacity or loss has a breakpoint [°C]. */
      readonly breakpoints?: readonly number[];
    } & HeatedVessel &
      SegmentEnd);

/** What accumulates over segments, one after another. */
export interface Run<Name extends string> {
  /** [s]. */
  readonly duration: number;
  /** [°C]. */
  readonly temperatureMax: number;
  /** What has accumulated, for each name of the rates. */
  readonly totals: Readonly<Record<Name, number>>;
}

type Rates<Name extends string> = Readonly<Record<Name, (temperature: number) => number>>;

/** Sums rates up over segments; a rate may jump at one of `breakpoints`. */
export function alongSegments<Name extends string>(
  segments: readonly Segment[],
  rates: Rates<Name>,
  breakpoints: readonly number[],
): Run<Name> {
  const names = Object.keys(rates) as Name[];
  const totals = Object.fromEntries(names.map((name) => [name, 0])) as Record<Name, number>;
  let duration = 0;
  let temperatureMax = Number.NEGATIVE_INFINITY;
  list(segments, "segments", 1).forEach((segment, i) => {
    const one = alongOne(record(segment, `segments[${i}]`), rates, names, breakpoints, `segments[${i}]`);
    duration += one.duration;
    temperatureMax = Math.max(temperatureMax, one.temperatureMax);
    for (const name of names) totals[name] = result(totals[name] + one.totals[name], name);
  });
  return { duration: result(duration, "duration"), temperatureMax, totals };
}

function alongOne<Name extends string>(
  segment: Segment,
  rates: Rates<Name>,
  names: readonly Name[],
  breakpoints: readonly number[],
  path: string,
): Run<Name> {
  switch (segment.kind) {
    case "vessel": {
      const { duration, temperatureEnd, totals } = vesselSegment<Name>({
        ...segment,
        rates,
        breakpoints: [...list(segment.breakpoints ?? [], `${path}.breakpoints`), ...breakpoints],
      });
      return { duration, temperatureMax: Math.max(segment.temperatureStart, temperatureEnd), totals };
    }
    case "ramp": {
      const start = temperature(segment.temperatureStart, `${path}.temperatureStart`);
      const end = temperature(segment.temperatureEnd, `${path}.temperatureEnd`);
      const duration = notNegative(segment.duration, `${path}.duration`);
      const sums = overRamp(
        start,
        end,
        names.map((name) => rates[name]),
        breakpoints,
      );
      const totals = Object.fromEntries(names.map((name, i) => [name, duration * (sums[i] as number)]));
      return { duration, temperatureMax: Math.max(start, end), totals: totals as Record<Name, number> };
    }
    default:
      return refuse("input", `${path}.kind`, show((segment as { kind: unknown }).kind), '"ramp" or "vessel"');
  }
}

/** The mean of each rate over a ramp. */
function overRamp(
  start: number,
  end: number,
  rates: readonly ((temperature: number) => number)[],
  breakpoints: readonly number[],
): readonly number[] | Float64Array {
  if (start === end) return rates.map((rate) => rate(start));
  const way = end - start;
  const inside = breakpoints.map((breakpoint) => (breakpoint - start) / way).filter((share) => share > 0 && share < 1);
  const fill = (share: number, values: Float64Array): void => {
    rates.forEach((rate, i) => {
      values[i] = rate(start + share * way);
    });
  };
  return integrate([0, ...inside.sort((one, other) => one - other), 1], fill, rates.length, "ramp");
}
