import { mixingTemperature, vesselLeg } from "gelwright/heat";
import { type HeatLossLaw, heatLossFunction, specificHeatFunction, viscosityFunction } from "gelwright/laws";
import { march } from "../tests/support/ode.js";
import { type Contestant, speedTable } from "./speed.js";

/** A kettle that heats through a melting range, holds, takes three cold additions with cooling between, and is filled. */
const room = 21;
const heatLoss: HeatLossLaw = {
  law: "sum",
  parts: [
    { law: "natural convection", surface: "vertical", area: 0.4, height: 0.35 },
    { law: "radiation", area: 0.5, emissivity: 0.3 },
  ],
};
const melt = { temperatureOnset: 63, temperatureEnd: 73 };
const oil = { law: "constant", specificHeat: 2060 } as const;
const former = specificHeatFunction({ law: "melting", solid: oil, liquid: oil, latentHeat: 110_000, ...melt });
const thickness = viscosityFunction({ law: "andrade", factor: 1e-9, activationEnergy: 60_000 });
const heating = (at: number): number => 26 * 2060 + 6000 + 3.1 * (former(at) - 2060);
const addition = { mass: 2.8, specificHeat: 2055, temperature: room };
const setsAt = 57;
const settling = (at: number): number => 5.8e-7 / thickness(at) / 1000;

/** What both have to find: seconds from cold to set, and the way of the particles after the last addition. */
type Answer = readonly [seconds: number, way: number];

/** One stretch from one temperature to another at a heat capacity, or over a time. */
interface Stretch {
  readonly from: number;
  readonly to?: number;
  readonly seconds?: number;
  readonly capacity: (temperature: number) => number;
  readonly power: number;
}

/** The stretches are the same for all; how one is solved is the contestant's. */
function run(
  solve: (stretch: Stretch) => { readonly end: number; readonly seconds: number; readonly way: number },
): Answer {
  let mass = 26;
  let { end, seconds } = solve({ from: room, to: 85, capacity: heating, power: 1200 });
  seconds += 900;
  for (let i = 0; i < 3; i++) {
    end = mixingTemperature({ charges: [{ mass: mass + 2.9, specificHeat: 2060, temperature: end }, addition] });
    mass += addition.mass;
    const whole = mass * 2060 + 6000;
    const stood = solve({ from: end, seconds: 300, capacity: () => whole, power: 0 });
    end = stood.end;
    seconds += stood.seconds;
  }
  const whole = mass * 2060 + 6000;
  const cooled = solve({ from: end, to: setsAt, capacity: () => whole, power: 0 });
  return [seconds + cooled.seconds, cooled.way];
}

const ours = (): Answer =>
  run(({ from, to, seconds, capacity, power }) => {
    const leg = vesselLeg({
      temperatureStart: from,
      temperatureAmbient: room,
      heatCapacity: capacity,
      heatLoss,
      supply: { supply: "power", power },
      kinks: [melt.temperatureOnset, melt.temperatureEnd],
      rates: { way: settling },
      ...(to === undefined ? { duration: seconds ?? 0 } : { temperatureEnd: to }),
    });
    return { end: leg.temperatureEnd, seconds: leg.duration, way: leg.totals.way };
  });

const loss = heatLossFunction(heatLoss, room);

/** The same, marched: over temperature where the end is one, over time where it is that; split at the melting range. */
const marched = (tolerance: number) => (): Answer =>
  run(({ from, to, seconds = 0, capacity, power }) => {
    const flow = (at: number): number => (power - loss(at)) / capacity(at);
    if (to === undefined) {
      const [end = Number.NaN, way = Number.NaN] = march(
        (_time, [now = Number.NaN]) => [flow(now), settling(now)],
        [from, 0],
        seconds,
        tolerance,
      );
      return { end, seconds, way };
    }
    const between = [melt.temperatureOnset, melt.temperatureEnd].filter((kink) => (kink - from) * (kink - to) < 0);
    const stops = [from, ...between.sort((one, other) => (one - other) * Math.sign(to - from)), to];
    let state: number[] = [0, 0];
    for (let i = 1; i < stops.length; i++) {
      const start = stops[i - 1] ?? from;
      const reach = (stops[i] ?? to) - start;
      const slope = (x: number): number[] => {
        const at = start + Math.sign(reach) * x;
        const perKelvin = Math.sign(reach) / flow(at);
        return [perKelvin, settling(at) * perKelvin];
      };
      state = march(slope, state, Math.abs(reach), tolerance);
    }
    return { end: to, seconds: state[0] ?? Number.NaN, way: state[1] ?? Number.NaN };
  });

/** The whole process, against a general-purpose ODE solver at several tolerances. */
export function processTable(): Promise<string> {
  const truth = marched(1e-14)();
  const error = ([seconds, way]: Answer): number =>
    Math.max(Math.abs(seconds / truth[0] - 1), Math.abs(way / truth[1] - 1));
  const contestant = (name: string, solve: () => Answer): Contestant => ({
    name,
    run: () => solve()[0],
    answers: 1,
    error: error(solve()).toExponential(0),
  });
  return speedTable("a process: heat through a melting range, hold, three additions, cool to setting with settling", [
    contestant("gelwright vesselLeg", ours),
    ...[1e-4, 1e-6, 1e-8, 1e-10, 1e-12].map((tolerance) =>
      contestant(`odex 2.0.4, tolerance ${tolerance}`, marched(tolerance)),
    ),
  ]);
}
