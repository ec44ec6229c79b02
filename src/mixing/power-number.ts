import { list, positive, record, refuse, result, show, variant } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { polyline } from "../numeric/polyline.js";
import { compileBlades } from "./kamei-hiraoka.js";
import * as known from "./known.js";
import type { PowerCurve } from "./power-curve.js";
import { reynoldsLaminar, reynoldsTurbulent } from "./regime.js";

/** A power curve that has been checked, ready to be evaluated at any Reynolds number above 0. */
export type CompiledPowerCurve = (reynolds: number) => number;

function within(reynolds: number, min: number, max: number, extended: boolean): number {
  if (extended || (reynolds >= min && reynolds <= max)) return reynolds;
  const range = min > 0 ? `${min}${max < Number.POSITIVE_INFINITY ? ` to ${max}` : " or more"}` : `at most ${max}`;
  return refuse("range", "Reynolds number", reynolds, `${range}, as the power curve is known, or beyond: "extend"`);
}

/** Between the points of a measured curve, straight on logarithmic axes; beyond them along its first or last stretch. */
function compilePoints(given: PowerCurve & { readonly law: "points" }, path: string): CompiledPowerCurve {
  const places: number[] = [];
  const logarithms = list(given.points, `${path}.points`, 2).map((point, i) => {
    const at = `${path}.points[${i}]`;
    const { reynolds, powerNumber } = record(point, at);
    const place = Math.log(positive(reynolds, `${at}.reynolds`));
    if (place <= (places.at(-1) ?? Number.NEGATIVE_INFINITY))
      refuse("input", `${at}.reynolds`, reynolds, "more than at the point before it");
    places.push(place);
    return Math.log(positive(powerNumber, `${at}.powerNumber`));
  });
  return (reynolds) => Math.exp(polyline(places, logarithms, Math.log(reynolds)));
}

/** Checks a power curve, which faults call `path`. */
export function compilePower(curve: PowerCurve, path: string, extended: boolean): CompiledPowerCurve {
  variant(curve, path, "law", known.powerCurve);
  switch (curve.law) {
    case "laminar": {
      const laminarPowerConstant = positive(curve.laminarPowerConstant, `${path}.laminarPowerConstant`);
      return (reynolds) => laminarPowerConstant / within(reynolds, 0, reynoldsLaminar, extended);
    }
    case "turbulent": {
      const number = positive(curve.powerNumber, `${path}.powerNumber`);
      return (reynolds) => {
        within(reynolds, reynoldsTurbulent, Number.POSITIVE_INFINITY, extended);
        return number;
      };
    }
    case "sum": {
      const laminarPowerConstant = positive(curve.laminarPowerConstant, `${path}.laminarPowerConstant`);
      const number = positive(curve.powerNumber, `${path}.powerNumber`);
      return (reynolds) => laminarPowerConstant / reynolds + number;
    }
    case "points": {
      const numberAt = compilePoints(curve, path);
      const [first, last] = [curve.points[0]?.reynolds, curve.points.at(-1)?.reynolds] as [number, number];
      return (reynolds) => numberAt(within(reynolds, first, last, extended));
    }
    case "kamei-hiraoka":
      return compileBlades(curve, path);
    default:
      return refuse("input", `${path}.law`, show((curve as { law: unknown }).law), "a law of power numbers");
  }
}

/**
 * The power number of an impeller: the power it draws, made dimensionless with density, speed and diameter.
 *
 * $$\mathrm{Po} = \frac{P}{\rho N^3 D^5} = \frac{K}{\mathrm{Re}} \qquad \mathrm{Po} = \mathrm{Po}_\infty \qquad \mathrm{Po} = \frac{K}{\mathrm{Re}} + \mathrm{Po}_\infty$$
 *
 * in creeping flow (Re below 10), in turbulent flow (above 10,000), and over both. For flat and pitched blades the
 * correlation of Kamei and Hiraoka gives the whole curve from their shape:
 *
 * $$\mathrm{Po}_0 = \frac{1.2\,\pi^4\beta^2}{8\,d^3/(D^2 H)}\,f \qquad f = \frac{C_L}{\mathrm{Re}_G} + C_t\left[\left(\frac{C_{tr}}{\mathrm{Re}_G} + \mathrm{Re}_G\right)^{-1} + \left(\frac{f_\infty}{C_t}\right)^{1/m}\right]^m$$
 * $$\mathrm{Po} = \mathrm{Po}_\mathrm{max}\,(1 + x^{-3})^{-1/3} \qquad x = \frac{4.5\,(B_W/D)\,n_B^{0.8}}{(2\theta/\pi)^{0.72}\,\mathrm{Po}_\mathrm{max}^{0.2}} + \frac{\mathrm{Po}_0}{\mathrm{Po}_\mathrm{max}}$$
 *
 * without and with baffles; its further constants stand in the guide to mixing. With baffles the result is never taken
 * below that without, which the correlation allows in creeping flow. Calculated power numbers hold to about a fifth
 * (`powerBandOf`).
 *
 * @param input.power - The power curve, as plain data.
 * @param input.reynolds - Reynolds number, above 0.
 * @param input.beyond - Outside the Reynolds numbers of a law: `"throw"` (default) or `"extend"` it.
 * @returns Power number.
 * @throws CalculationError `input` for a curve that is not whole; `range` outside its Reynolds numbers.
 * @source furukawa-2012 for Kamei and Hiraoka; the two ends definition; their sum ours, no source
 * @example
 * ```ts
 * import { powerNumber } from "gelwright/mixing";
 * const power = { law: "sum", laminarPowerConstant: 44, powerNumber: 1.37 } as const;
 * powerNumber({ power, reynolds: 10 }); // => 5.77
 * ```
 */
export function powerNumber(input: {
  readonly power: PowerCurve;
  readonly reynolds: number;
  readonly beyond?: Beyond;
}): number {
  const { power, reynolds, beyond } = record(input, "input", known.powerNumber);
  const numberAt = compilePower(power, "power", extending(beyond));
  return result(numberAt(positive(reynolds, "reynolds")), "power number");
}
