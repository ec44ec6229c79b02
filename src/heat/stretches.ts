import { list, notNegative, record, refuse, result, show, temperature } from "../guards.js";
import type { LegEnd } from "../leg/leg.js";
import { integrate } from "../numeric/quadrature.js";
import { type SuppliedVessel, vesselLeg } from "./vessel-leg.js";

/** One stretch of what a batch goes through. */
export type Stretch =
  | {
      /** The temperature goes from start to end evenly in time: a hold where the two are the same, or two readings of a logger. */
      readonly stretch: "ramp";
      /** [°C]. */
      readonly temperatureStart: number;
      /** [°C]. */
      readonly temperatureEnd: number;
      /** [s], 0 or more. */
      readonly duration: number;
    }
  | ({
      /** A vessel that is heated, cooled, or left to itself (a supply of 0 W). */
      readonly stretch: "vessel";
      /** Temperatures at which heat capacity or loss has a kink [°C]. */
      readonly kinks?: readonly number[];
    } & SuppliedVessel &
      LegEnd);

/** What accumulates over stretches, one after another. */
export interface Run<Name extends string> {
  /** [s]. */
  readonly duration: number;
  /** [°C]. */
  readonly temperatureHighest: number;
  /** What has accumulated, for each name of the rates. */
  readonly totals: Readonly<Record<Name, number>>;
}

type Rates<Name extends string> = Readonly<Record<Name, (temperature: number) => number>>;

/** Sums rates up over stretches; a rate may jump at one of `kinks`. */
export function alongStretches<Name extends string>(
  stretches: readonly Stretch[],
  rates: Rates<Name>,
  kinks: readonly number[],
): Run<Name> {
  const names = Object.keys(rates) as Name[];
  const totals = Object.fromEntries(names.map((name) => [name, 0])) as Record<Name, number>;
  let duration = 0;
  let temperatureHighest = Number.NEGATIVE_INFINITY;
  list(stretches, "stretches", 1).forEach((stretch, i) => {
    const one = alongOne(record(stretch, `stretches[${i}]`), rates, names, kinks, `stretches[${i}]`);
    duration += one.duration;
    temperatureHighest = Math.max(temperatureHighest, one.temperatureHighest);
    for (const name of names) totals[name] = result(totals[name] + one.totals[name], name);
  });
  return { duration: result(duration, "duration"), temperatureHighest, totals };
}

function alongOne<Name extends string>(
  stretch: Stretch,
  rates: Rates<Name>,
  names: readonly Name[],
  kinks: readonly number[],
  path: string,
): Run<Name> {
  switch (stretch.stretch) {
    case "vessel": {
      const { duration, temperatureEnd, totals } = vesselLeg<Name>({
        ...stretch,
        rates,
        kinks: [...list(stretch.kinks ?? [], `${path}.kinks`), ...kinks],
      });
      return { duration, temperatureHighest: Math.max(stretch.temperatureStart, temperatureEnd), totals };
    }
    case "ramp": {
      const start = temperature(stretch.temperatureStart, `${path}.temperatureStart`);
      const end = temperature(stretch.temperatureEnd, `${path}.temperatureEnd`);
      const duration = notNegative(stretch.duration, `${path}.duration`);
      const sums = overRamp(
        start,
        end,
        names.map((name) => rates[name]),
        kinks,
      );
      const totals = Object.fromEntries(names.map((name, i) => [name, duration * (sums[i] as number)]));
      return { duration, temperatureHighest: Math.max(start, end), totals: totals as Record<Name, number> };
    }
    default:
      return refuse("input", `${path}.stretch`, show((stretch as { stretch: unknown }).stretch), '"ramp" or "vessel"');
  }
}

/** The mean of each rate over a ramp. */
function overRamp(
  start: number,
  end: number,
  rates: readonly ((temperature: number) => number)[],
  kinks: readonly number[],
): readonly number[] | Float64Array {
  if (start === end) return rates.map((rate) => rate(start));
  const way = end - start;
  const inside = kinks.map((kink) => (kink - start) / way).filter((share) => share > 0 && share < 1);
  const fill = (share: number, values: Float64Array): void => {
    rates.forEach((rate, i) => {
      values[i] = rate(start + share * way);
    });
  };
  return integrate([0, ...inside.sort((one, other) => one - other), 1], fill, rates.length, "ramp");
}
