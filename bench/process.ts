import { stagedAdditions, vesselSegment } from "gelwright/heat";
import { type HeatLossLaw, heatLossFunction, specificHeatFunction, viscosityFunction } from "gelwright/laws";
import { coolingSegment } from "gelwright/transient";
import { march } from "../tests/support/ode.js";
import { type Contestant, speedTable } from "./speed.js";

/**
 * A kettle that heats through a melting range, holds, takes three cold additions with cooling between them, cools while
 * its particles settle, and goes on cooling as it is filled. It loses heat by natural convection and radiation.
 */
const room = 21;
const heatLoss: HeatLossLaw = {
  law: "sum",
  parts: [
    { law: "natural convection", surface: "vertical", area: 0.4, height: 0.35 },
    { law: "radiation", area: 0.5, emissivity: 0.3 },
  ],
};
const melting = { temperatureOnset: 63, temperatureEnd: 73 };
const oil = { law: "constant", specificHeat: 2060 } as const;
const charge = { mass: 26, former: 3.1, vessel: 6000 };
const power = 1200;
const hottest = 85;
const hold = 900;
const addition = { mass: 2.8, specificHeat: oil, temperature: room };
const waits = [0, 300, 300];
const fillFrom = 62;
const fill = 1200;

const former = specificHeatFunction({ law: "melting", solid: oil, liquid: oil, latentHeat: 110_000, ...melting });
const solid = (at: number): number =>
  (charge.mass - charge.former) * oil.specificHeat + charge.former * former(at) + charge.vessel;
const whole = (charge.mass + waits.length * addition.mass) * oil.specificHeat + charge.vessel;
const thickness = viscosityFunction({ law: "andrade", factor: 1e-9, activationEnergy: 60_000 });
const settling = (at: number): number => 5.8e-10 / thickness(at);

/** What both have to find: seconds up to filling, the temperature at its end, and the way of the particles. */
type Answer = readonly [seconds: number, temperature: number, way: number];

function ours(): Answer {
  const vessel = { heatLoss, temperatureAmbient: room };
  const heated = vesselSegment({
    ...vessel,
    temperatureStart: room,
    temperatureEnd: hottest,
    heatCapacity: solid,
    breakpoints: [melting.temperatureOnset, melting.temperatureEnd],
    heatSource: { kind: "power", power },
  });
  const added = stagedAdditions({
    ...vessel,
    melt: [{ mass: charge.mass, specificHeat: oil }],
    temperatureStart: hottest,
    heatCapacityVessel: charge.vessel,
    stages: waits.map((duration) => ({ duration, addition })),
  });
  const settled = { ...vessel, heatCapacity: whole, rates: { way: settling } };
  const temperatureStart = added.stages.at(-1)?.temperatureMixed ?? Number.NaN;
  const cooled = coolingSegment({ ...settled, temperatureStart, temperatureEnd: fillFrom });
  const filled = coolingSegment({ ...settled, temperatureStart: fillFrom, duration: fill });
  return [
    heated.duration + hold + added.duration + cooled.duration,
    filled.temperatureEnd,
    cooled.totals.way + filled.totals.way,
  ];
}

const loss = heatLossFunction(heatLoss, room);

/** Time and way from one temperature to another: marched over temperature, so that no end has to be looked for. */
function over(from: number, to: number, flow: (at: number) => number, tolerance: number): readonly number[] {
  const sense = Math.sign(to - from);
  const slope = (x: number): number[] => {
    const at = from + sense * x;
    const perKelvin = sense / flow(at);
    return [perKelvin, settling(at) * perKelvin];
  };
  return march(slope, [0, 0], Math.abs(to - from), tolerance);
}

/** The same by the solver, which gets all help: ends and breakpoints where it can meet them, and the loss compiled once. */
function marched(tolerance: number): Answer {
  const heating = (at: number): number => (power - loss(at)) / solid(at);
  const stops = [room, melting.temperatureOnset, melting.temperatureEnd, hottest];
  let seconds = hold;
  for (let i = 1; i < stops.length; i++)
    seconds += over(stops[i - 1] ?? room, stops[i] ?? hottest, heating, tolerance)[0] ?? Number.NaN;
  let capacity = charge.mass * oil.specificHeat + charge.vessel;
  let now = hottest;
  const cooling = (at: number): number => -loss(at) / capacity;
  for (const wait of waits) {
    if (wait > 0) [now = Number.NaN] = march((_time, [at = Number.NaN]) => [cooling(at)], [now], wait, tolerance);
    const added = addition.mass * oil.specificHeat;
    now = (capacity * now + added * addition.temperature) / (capacity + added);
    capacity += added;
    seconds += wait;
  }
  const [cooled = Number.NaN, way = Number.NaN] = over(now, fillFrom, cooling, tolerance);
  const [end = Number.NaN, whole = Number.NaN] = march(
    (_time, [at = Number.NaN]) => [cooling(at), settling(at)],
    [fillFrom, way],
    fill,
    tolerance,
  );
  return [seconds + cooled, end, whole];
}

/** The whole process, against a general-purpose ODE solver at several tolerances. */
export function processTable(): Promise<string> {
  const truth = marched(1e-14);
  const contestant = (name: string, solve: () => Answer): Contestant => ({
    name,
    run: () => solve(),
    answers: 1,
    error: Math.max(...solve().map((figure, i) => Math.abs(figure / (truth[i] ?? Number.NaN) - 1))).toExponential(0),
  });
  return speedTable("heat, melt, hold, three additions, cool, settle, fill", [
    contestant("gelwright vesselSegment, stagedAdditions, coolingSegment", ours),
    ...[1e-4, 1e-6, 1e-8, 1e-10, 1e-12].map((tolerance) =>
      contestant(`odex 2.0.4, tolerance ${tolerance}`, () => marched(tolerance)),
    ),
  ]);
}
