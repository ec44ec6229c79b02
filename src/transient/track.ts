import { finite, list, positive, record, refuse, show, temperature } from "../guards.js";
import { integrate, nodes } from "../numeric/quadrature.js";

/** A stretch of heating or cooling, apart from where it ends. */
export interface SegmentInput<Name extends string> {
  /** Where the segment starts [°C]. */
  readonly temperatureStart: number;
  /**
   * The temperature that is approached and never reached [°C]: the room's when cooling, the steady one when heating.
   * Left out where nothing stops the flow, as when heating without a loss.
   */
  readonly temperatureLimit?: number | undefined;
  /** Heat capacity of all that changes its temperature [J/K], above 0; a function of temperature [°C] where it varies. */
  readonly heatCapacity: number | ((temperature: number) => number);
  /** Net heat flow into the vessel [W] at a temperature [°C]: positive warms, negative cools. */
  readonly heatFlow: (temperature: number) => number;
  /** What accumulates: for each name its rate [unit of the total per second] at a temperature [°C]. */
  readonly rates?: Readonly<Record<Name, (temperature: number) => number>> | undefined;
  /** Temperatures at which one of the functions has a breakpoint [°C], in any order. */
  readonly breakpoints?: readonly number[] | undefined;
}

type Curve = (temperature: number) => number;

/** A segment laid out over a position on which its integrands are nearly flat: ln|T − limit|, or T without a limit. */
export interface Track {
  /** Position of the start. */
  readonly from: number;
  /** 1 where the position rises with time, −1 where it falls. */
  readonly forward: number;
  readonly limited: boolean;
  readonly positionOf: Curve;
  readonly temperatureOf: (position: number) => number;
  /** Seconds a unit of position, negative where the position falls with time. */
  readonly paceAt: Curve;
  readonly names: readonly string[];
  /** Puts each rate at a temperature, multiplied by `weight`, into `values` from place 1 on. */
  readonly fill: (temperature: number, weight: number, values: Float64Array) => void;
  /** Duration from one position to another, and the totals where `count` covers them. */
  readonly between: (from: number, to: number, count: number) => Float64Array;
  /** When each of several positions is passed [s], all of which lie ahead of the one before. */
  readonly passing: (positions: readonly number[]) => readonly number[];
}

/** A panel up to this wide [K] is narrow: its twelve nodes stand closer than 1 K. Where heat capacity varies, all are. */
const panelNarrow = 7;

/** Up to this wide [K] six do. */
const panelSlim = 1;

/** The value, if it is a function. */
export function callback(value: Curve | undefined, path: string): Curve {
  return typeof value === "function" ? value : refuse("input", path, show(value), "a function of temperature");
}

/** Checks what a segment is made of and lays it out; `sense` is 1 for a segment that warms, −1 for one that cools. */
export function layTrack(input: SegmentInput<string>, start: number, end: number, sense: number): Track {
  const { temperatureLimit, heatCapacity, rates = {}, breakpoints = [] } = input;
  const limited = temperatureLimit !== undefined;
  const limit = limited ? temperature(temperatureLimit, "temperatureLimit") : 0;
  const side = Math.sign(start - limit);
  if (limited && sense !== 0 && (end - limit) * side <= 0)
    refuse("unreachable", "temperatureEnd", end, `a temperature short of the limit, ${limit} °C`);
  const varying = typeof heatCapacity === "function";
  const capacity = varying ? 0 : positive(heatCapacity, "heatCapacity");
  const heatFlow = callback(input.heatFlow, "heatFlow");
  const names = Object.keys(record(rates, "rates"));
  const paths = names.map((name) => `rates.${name}`);
  const rated = names.map((name, k) => callback(rates[name], paths[k] as string));
  const stops = list(breakpoints, "breakpoints").map((breakpoint, i) => temperature(breakpoint, `breakpoints[${i}]`));
  const positionOf = (at: number): number => (limited ? Math.log(Math.abs(at - limit)) : at);
  const temperatureOf = (position: number): number => (limited ? limit + side * Math.exp(position) : position);
  const paceAt = (at: number): number => {
    const flow = finite(heatFlow(at), "heatFlow");
    if (!(flow * sense > 0))
      refuse(
        "unreachable",
        "heatFlow",
        `${flow} W at ${at} °C`,
        `a flow that ${sense > 0 ? "warms" : "cools"} to the end`,
      );
    // The gap is taken from the rounded temperature that the flow was given: close to the limit both are rounded
    // alike, and their quotient stays smooth.
    return ((varying ? positive(heatCapacity(at), "heatCapacity") : capacity) * (limited ? at - limit : 1)) / flow;
  };
  const fill = (at: number, weight: number, values: Float64Array): void => {
    for (let k = 0; k < rated.length; k += 1)
      values[k + 1] = finite((rated[k] as Curve)(at), paths[k] as string) * weight;
  };
  /** Where the panels between two positions begin and end. */
  const edgesBetween = (from: number, to: number): number[] => {
    const inside = stops.map(positionOf);
    if (varying) {
      // A melting range that was not named must not slip through between two nodes.
      const [first, last] = [temperatureOf(from), temperatureOf(to)];
      const panels = Math.min(100, Math.ceil(Math.abs(last - first) / panelNarrow));
      for (let k = 1; k < panels; k += 1) inside.push(positionOf(first + ((last - first) * k) / panels));
    }
    const within = inside.filter((stop) => (stop - from) * (stop - to) < 0);
    return [from, ...within.sort((one, other) => (one - other) * (to - from)), to];
  };
  const between = (from: number, to: number, count: number): Float64Array => {
    if (from === to) return new Float64Array(count);
    const narrow = varying || Math.abs(temperatureOf(to) - temperatureOf(from)) <= panelNarrow;
    const integrand = (position: number, values: Float64Array): void => {
      const at = temperatureOf(position);
      const pace = paceAt(at);
      values[0] = pace;
      if (count > 1) fill(at, pace, values);
    };
    return integrate(edgesBetween(from, to), integrand, count, "transient", narrow ? nodes.narrow : nodes.wide);
  };
  const passing = (positions: readonly number[]): readonly number[] => {
    const edges = [positionOf(start)];
    let widest = 0;
    const places = positions.map((to) => {
      const from = edges[edges.length - 1] as number;
      if (to === from) return edges.length - 1;
      widest = Math.max(widest, Math.abs(temperatureOf(to) - temperatureOf(from)));
      return edges.push(...edgesBetween(from, to).slice(1)) - 1;
    });
    const passedAt = new Float64Array(edges.length);
    const order = widest <= panelSlim ? nodes.slim : varying || widest <= panelNarrow ? nodes.narrow : nodes.wide;
    const paces = (position: number, values: Float64Array): void => {
      values[0] = paceAt(temperatureOf(position));
    };
    integrate(edges, paces, 1, "transient", order, passedAt);
    return places.map((place) => passedAt[place] as number);
  };
  const forward = limited ? sense * side : sense;
  return {
    from: positionOf(start),
    forward,
    limited,
    positionOf,
    temperatureOf,
    paceAt,
    names,
    fill,
    between,
    passing,
  };
}
