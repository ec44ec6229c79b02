import { list, positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

const kelvin = 273.15;

/** A setting, dissolving or gel temperature that was measured at one dose of gel former. */
export interface DosePoint {
  /** Mass fraction of gel former, above 0. */
  readonly dose: number;
  /** Temperature [°C] measured at that dose. */
  readonly temperature: number;
}

/**
 * The temperature at which a gel sets (or dissolves) at a dose between measured doses.
 *
 * Between two neighbouring doses the logarithm of the dose is taken as linear in the reciprocal of the absolute
 * temperature, the form that Eldridge and Ferry found for the melting of physical gels:
 *
 * $$\ln c = a + \frac{b}{T}$$
 *
 * Setting and dissolving are different temperatures: give the points of one of them. Both move with the rate of
 * cooling or heating, so the points have to be taken at a rate like the kettle's.
 *
 * @param input.dose - Dose of gel former asked for, as a mass fraction: within the measured doses.
 * @param input.points - Measured doses, each once: at least one; dose above 0, temperature in °C.
 * @returns The temperature [°C].
 * @throws CalculationError `input` where an argument is out of range or a dose stands twice; `range` outside the measured doses.
 * @source eldridge-ferry-1954 the form of the law; its use between any two points is ours
 * @example
 * ```ts
 * import { temperatureAtDose } from "gelwright/gel";
 * temperatureAtDose({ dose: 0.1, points: [{ dose: 0.08, temperature: 55 }, { dose: 0.16, temperature: 65 }] }); // => 58.15410615773237
 * ```
 */
export function temperatureAtDose(input: { readonly dose: number; readonly points: readonly DosePoint[] }): number {
  const { dose, points } = record(input, "input", known.temperatureAtDose);
  positive(dose, "dose");
  const sorted = list(points, "points", 1)
    .map((point, i) => {
      const at = `points[${i}]`;
      record(point, at);
      positive(point.dose, `${at}.dose`);
      return {
        perKelvin: 1 / (temperature(point.temperature, `${at}.temperature`) + kelvin),
        ...point,
      };
    })
    .sort((a, b) => a.dose - b.dose);
  const above = sorted.findIndex((point) => point.dose >= dose);
  const upper = sorted[above];
  const lower = upper?.dose === dose ? upper : sorted[above - 1];
  if (!upper || !lower)
    return refuse(
      "range",
      "dose",
      dose,
      `a dose from ${sorted[0]?.dose} to ${sorted.at(-1)?.dose}, between the measured ones`,
    );
  if (upper === lower) return upper.temperature;
  if (sorted.some((point, i) => point.dose === sorted[i + 1]?.dose))
    refuse("input", "points", "one dose twice", "each dose once");
  // The logarithm of a ratio still tells two doses apart that differ in the last digit.
  const along = Math.log(dose / lower.dose) / Math.log(upper.dose / lower.dose);
  return result(1 / (lower.perKelvin + along * (upper.perKelvin - lower.perKelvin)) - kelvin, "temperature");
}
