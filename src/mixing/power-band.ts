import { positive, record, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import type { Interval } from "../laws/interval.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import { knownOf } from "./impeller-constants.js";
import { powerCurveOf } from "./impeller-curve.js";
import * as known from "./known.js";
import { ribbonPowerBand } from "./ribbon-power-constant.js";

/** Kamei and Hiraoka's correlation against other correlations and sheets, from creeping to turbulent flow. */
export const bladePowerBand: Band = {
  by: "factor",
  min: 0.8,
  max: 1.2,
  basis: "spread",
  sources: ["furukawa-2012", "nagata-1975", "stirring-tables", "dickey-2004"],
};

/** The same for blades and anchors of 0.9 of the vessel and more: 14 % above Nagata's formula at 0.90, 32 % at 0.95. */
export const wideBladePowerBand: Band = {
  by: "factor",
  min: 0.75,
  max: 1.2,
  basis: "spread",
  sources: ["furukawa-2012", "nagata-1975", "anchor-sheet", "stirring-tables"],
};

/** A power curve that the caller measured or had from a maker stands for itself; the library adds no doubt of its own. */
const own: Band = { by: "factor", min: 1, max: 1, basis: "stated", sources: [] };

/** Above this share of the vessel the sources part. */
const wideFrom = 0.9;

/**
 * How sure the power of an impeller is at a Reynolds number: the band of what `powerCurveOf` and `stirring` give for it.
 *
 * $$b_\mathrm{min} = \frac{K_\mathrm{min} + \mathrm{Po}_\mathrm{min}\mathrm{Re}}{K + \mathrm{Po}\,\mathrm{Re}} \qquad b_\mathrm{max} = \frac{K_\mathrm{max} + \mathrm{Po}_\mathrm{max}\mathrm{Re}}{K + \mathrm{Po}\,\mathrm{Re}}$$
 *
 * from the ranges in `impellerConstants`, if nothing but the kind is known; a band of its own for blades by their shape
 * (`bladePowerBand`, `wideBladePowerBand`) and for ribbons by theirs (`ribbonPowerBand`); none for a curve of the
 * impeller's own. A motor is judged at the upper end, a blend time and a cavern at the lower.
 *
 * @param input.impeller - The impeller, as plain data.
 * @param input.vessel - The vessel, as for `powerCurveOf`.
 * @param input.reynolds - Reynolds number, above 0.
 * @returns The band of power, torque and power number, as factors.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where nothing is known of the kind.
 * @source nagata-1975 from memory, for the spread of wide blades; else the ranges of `impellerConstants`
 * @example
 * ```ts
 * import { powerBandOf } from "gelwright/mixing";
 * const { min, max } = powerBandOf({ impeller: { kind: "anchor", diameter: 0.54 }, reynolds: 1 });
 * [min.toFixed(2), max.toFixed(2)]; // => ["0.56", "1.50"]
 * ```
 */
export function powerBandOf(input: {
  readonly impeller: Impeller;
  readonly vessel?: StirredVessel;
  readonly reynolds: number;
}): Band {
  const { impeller, vessel, reynolds } = record(input, "input", known.powerBandOf);
  const at = positive(reynolds, "reynolds");
  const { law } = powerCurveOf(vessel === undefined ? { impeller } : { impeller, vessel });
  if (impeller.power !== undefined) return own;
  if (law === "kamei-hiraoka" && vessel !== undefined)
    return impeller.diameter < wideFrom * vessel.diameter ? bladePowerBand : wideBladePowerBand;
  if (impeller.kind === "helical ribbon" && impeller.starts !== undefined) return ribbonPowerBand;
  const { laminarPowerConstant, powerNumber } = knownOf(impeller, "impeller");
  const powerAt = (end: keyof Interval): number => (laminarPowerConstant?.[end] ?? 0) + (powerNumber?.[end] ?? 0) * at;
  const value = powerAt("value");
  return {
    by: "factor",
    min: result(powerAt("min") / value, "band"),
    max: result(powerAt("max") / value, "band"),
    basis: "spread",
    sources: ["stirring-tables"],
  };
}
