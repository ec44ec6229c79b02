import { positive, record, refuse, result, show } from "../guards.js";
import * as known from "./known.js";

/** What a viscometer showed with a spindle whose shear rate is not known: a disc, a bar, a spindle in any beaker. */
export interface SpindleReading {
  /** Which spindle, by the name on its shaft, with the beaker if there are several. */
  readonly spindle: string;
  /** [rev/s], above 0. */
  readonly speed: number;
  /** What it showed, above 0: a torque, a share of the full scale or a viscosity, in one unit for all readings. */
  readonly reading: number;
}

/**
 * How many times as thick as another a liquid is, by two readings of one spindle at one speed.
 *
 * $$k = \frac{\text{reading}}{\text{reading of the other}}$$
 *
 * A disc that turns in a beaker shears the liquid at rates from zero up, so that what the viscometer shows is a viscosity
 * for a Newtonian liquid alone. For a gel that thins it is a relative figure: it tells two lots apart, if both were read
 * with the same spindle, at the same speed, in the same beaker, after the same time and at the same temperature. Readings
 * of two spindles or speeds are refused. For a point of the flow curve take a cylinder in a cup, `cylinderReading`.
 *
 * @param input.reading - Spindle, speed [rev/s] and what the viscometer showed.
 * @param input.reference - The same for what it is compared with, such as the lot that was kept.
 * @returns Quotient of the two readings: above 1 where the liquid is the thicker one.
 * @throws CalculationError `input` where spindles or speeds are not the same, or an argument is out of range; `range` where no double holds the quotient.
 * @source definition
 * @example
 * ```ts
 * import { relativeReading } from "gelwright/rheology";
 * const kept = { spindle: "disc 4, 600 mL beaker", speed: 20 / 60, reading: 48.5 };
 * relativeReading({ reading: { ...kept, reading: 43.65 }, reference: kept }); // => 0.9
 * ```
 */
export function relativeReading(input: {
  readonly reading: SpindleReading;
  readonly reference: SpindleReading;
}): number {
  const { reading, reference } = record(input, "input", known.relativeReading);
  const one = read(reading, "reading");
  const other = read(reference, "reference");
  if (one.spindle !== other.spindle)
    refuse("input", "reading.spindle", show(one.spindle), `that of the other reading, ${show(other.spindle)}`);
  if (one.speed !== other.speed)
    refuse("input", "reading.speed", one.speed, `that of the other reading, ${other.speed} rev/s`);
  return result(one.reading / other.reading, "quotient");
}

function read(given: SpindleReading, path: string): SpindleReading {
  const { spindle, speed, reading } = record(given, path);
  if (typeof spindle !== "string" || spindle.trim() === "") refuse("input", `${path}.spindle`, show(spindle), "a name");
  return { spindle, speed: positive(speed, `${path}.speed`), reading: positive(reading, `${path}.reading`) };
}
