import { record } from "../guards.js";
import { type Segment, vesselSegment } from "../heat/index.js";
import * as known from "./known.js";
import { preparedRun, type RunInput } from "./prepared-run.js";
import type { Run } from "./state.js";
import { otherwise } from "./unknown.js";

/** What changes with time in the vessel, as columns for a plot; one row for each time. What is not known is `null`. */
export interface PlanSeries {
  /** Since the start [s]. */
  readonly times: readonly number[];
  /** Of the charge [°C]. */
  readonly temperatures: readonly (number | null)[];
  /** Of the charge while it flows [Pa·s]. */
  readonly viscosities: readonly (number | null)[];
  /** In the vessel [kg]. */
  readonly masses: readonly number[];
  /** Number of the step. */
  readonly steps: readonly number[];
}

/** So many points a segment: a curve is smooth to the eye. */
const pointsInSegment = 24;

/** The course of a run until the last pack is full. */
function seriesOf({ moments }: Run): PlanSeries {
  const rows: { time: number; temperature: number | null; viscosity: number | null; mass: number; step: number }[] = [];
  for (const { number, before, after, segments } of moments) {
    if (before.inPacks) break;
    const start = otherwise(before.time, () => null);
    if (start === null) break;
    const { mass } = after.charge;
    const at = (time: number, temperature: number | null): void => {
      const viscosity =
        temperature === null
          ? null
          : otherwise(
              () => {
                const readings = after.charge.readings(after.onHeat ? "heating" : "cooling");
                const { temperatureMin, temperatureMax } = readings;
                return temperature < temperatureMin || temperature > temperatureMax ? null : readings.at(temperature);
              },
              () => null,
            );
      rows.push({ time, temperature, viscosity, mass, step: number });
    };
    const found = otherwise(
      () => segments(),
      () => null,
    );
    if (!found) {
      const end = otherwise(after.time, () => null);
      if (end !== null)
        at(
          end,
          otherwise(after.temperature, () => null),
        );
      continue;
    }
    let time = start;
    for (const segment of found) {
      for (const [elapsed, temperature] of pointsOf(segment)) at(time + elapsed, temperature);
      time = (rows.at(-1) as (typeof rows)[number]).time;
    }
  }
  return {
    times: rows.map(({ time }) => time),
    temperatures: rows.map(({ temperature }) => temperature),
    viscosities: rows.map(({ viscosity }) => viscosity),
    masses: rows.map(({ mass }) => mass),
    steps: rows.map(({ step }) => step),
  };
}

/** Times since the segment began [s], and temperatures then [°C]. */
function pointsOf(segment: Segment): readonly (readonly [number, number])[] {
  const parts = Array.from({ length: pointsInSegment + 1 }, (_, i) => i / pointsInSegment);
  if (segment.kind === "ramp") {
    const { temperatureStart, temperatureEnd, duration } = segment;
    return [
      [0, temperatureStart],
      [duration, temperatureEnd],
    ];
  }
  const { temperatureEnd, duration, ...vessel } = segment as typeof segment & {
    duration?: number;
    temperatureEnd?: number;
  };
  if (temperatureEnd !== undefined) {
    const span = temperatureEnd - vessel.temperatureStart;
    return parts.map((part) => {
      const end = vessel.temperatureStart + span * part;
      return [part === 0 ? 0 : vesselSegment({ ...vessel, temperatureEnd: end }).duration, end];
    });
  }
  return parts.map((part) => {
    const elapsed = (duration as number) * part;
    return [
      elapsed,
      part === 0 ? vessel.temperatureStart : vesselSegment({ ...vessel, duration: elapsed }).temperatureEnd,
    ];
  });
}

/**
 * Temperature, viscosity and mass against time, as columns for a plot.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @returns Times [s], temperatures [°C], viscosities [Pa·s], masses [kg], steps; `null` for what is not known.
 * @throws CalculationError `input` for a change that this job does not have.
 * @source definition
 * @example
 * ```ts
 * import { planSeries, prepareJob } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", function: "gel former", specificHeat: "2.1 kJ/(kg·K)" },
 *       oil: { name: "oil", function: "oil", specificHeat: "2 kJ/(kg·K)", density: { value: "945 kg/m³", at: "20 °C" } },
 *     },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 }, doses: [{ gelFormer: "10 %", setsAt: "56 °C", dissolvesAt: "73 °C" }] },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: {
 *     name: "kettle",
 *     workingVolume: { min: "5 L", max: "20 L" },
 *     diameter: "300 mm",
 *     heater: { power: "1 kW" },
 *     heatLoss: "4 W/K",
 *   },
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [
 *       { do: "charge", phase: "A" },
 *       { do: "heat", to: "70 °C", within: "15 min" },
 *       { do: "take off the heat" },
 *       { do: "fill" },
 *     ],
 *   },
 * });
 * const { times, temperatures } = planSeries({ prepared });
 * [Math.round((times.at(-1) ?? 0) / 60), temperatures.at(-1)]; // => [19, 70]
 * ```
 */
export function planSeries(input: RunInput): PlanSeries {
  record(input, "input", known.planSeries);
  return seriesOf(preparedRun(input));
}
