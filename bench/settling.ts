import { densityFunction, viscosityFunction } from "gelwright/laws";
import { hinderedFactor, settlingOverCooling } from "gelwright/particles";
import { march } from "../tests/support/ode.js";
import { type Contestant, speedTable } from "./speed.js";

/** Particles in a vessel that cools for four hours: a smooth case, so that the integrators meet no breakpoint. */
const job = {
  diameter: 60e-6,
  densityParticle: 2600,
  densityFluid: { law: "linear", density: 925.6, temperatureReference: 0, slope: 0.42 },
  viscosity: { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 },
  volumeFraction: 0.01,
  heatCapacity: 108_000,
  heatLoss: { law: "newton", conductance: 15 },
  temperatureAmbient: 20,
  temperatureStart: 85,
  duration: 14_400,
} as const;

const viscosity = viscosityFunction(job.viscosity);
const density = densityFunction(job.densityFluid);
const hindered = hinderedFactor({ volumeFraction: job.volumeFraction });

/** The same equations marched through time: temperature [°C] and way [m] after some seconds. */
function marched([temperature, way]: readonly [number, number], seconds: number, tolerance: number): [number, number] {
  const [end = Number.NaN, distance = Number.NaN] = march(
    (_time, [now = Number.NaN]) => [
      (-job.heatLoss.conductance * (now - job.temperatureAmbient)) / job.heatCapacity,
      (9.80665 * job.diameter ** 2 * (job.densityParticle - density(now)) * hindered) / (18 * viscosity(now)),
    ],
    [temperature, way],
    seconds,
    tolerance,
  );
  return [end, distance];
}

/** The way by many short stretches at the tightest tolerance: what the others are held against. */
function reference(): number {
  const segments = 256;
  let state: [number, number] = [job.temperatureStart, 0];
  for (let i = 0; i < segments; i++) state = marched(state, job.duration / segments, 1e-14);
  return state[1];
}

/** Settling while a vessel cools, against a general-purpose ODE solver at several tolerances. */
export function settlingTable(): Promise<string> {
  const truth = reference();
  const contestant = (name: string, run: () => number): Contestant => ({
    name,
    run,
    answers: 1,
    error: Math.abs(run() / truth - 1).toExponential(0),
  });
  return speedTable("settling over four hours of cooling", [
    contestant("gelwright settlingOverCooling", () => settlingOverCooling(job).distance),
    ...[1e-4, 1e-6, 1e-8, 1e-10, 1e-12].map((tolerance) =>
      contestant(
        `odex 2.0.4, tolerance ${tolerance}`,
        () => marched([job.temperatureStart, 0], job.duration, tolerance)[1],
      ),
    ),
  ]);
}
