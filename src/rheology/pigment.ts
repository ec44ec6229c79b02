import { fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** Density of raw linseed oil as the method of test takes it [kg/m³]. */
const linseed = 930;

/**
 * The oil absorption of a pigment from the rub-out with linseed oil.
 *
 * $$\mathrm{OA} = \frac{93\,V}{m} \quad\text{g per 100 g, with } V \text{ in ml and } m \text{ in g}$$
 *
 * @param input.volumeOil - Oil taken up until a smooth paste holds together [m³], above 0.
 * @param input.massPigment - Pigment weighed in [kg], above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0; 930, linseed oil's, by default.
 * @returns Oil absorption [g of oil per 100 g of pigment].
 * @throws CalculationError `input` where an argument is out of range.
 * @source iso-787-5 from memory
 * @example
 * ```ts
 * import { oilAbsorption } from "gelwright/rheology";
 * oilAbsorption({ volumeOil: 1e-6, massPigment: 0.005 }); // => 18.6
 * ```
 */
export function oilAbsorption(input: {
  readonly volumeOil: number;
  readonly massPigment: number;
  readonly densityOil?: number;
}): number {
  const { volumeOil, massPigment, densityOil = linseed } = record(input, "input", known.oilAbsorption);
  const oil = positive(volumeOil, "volumeOil") * positive(densityOil, "densityOil");
  return result((100 * oil) / positive(massPigment, "massPigment"), "oil absorption");
}

/**
 * The oil that it takes to wet a pigment, by the volume that its oil absorption says.
 *
 * $$m_\mathrm{oil} = m_p\,\frac{\mathrm{OA}}{100}\,\frac{\rho_\mathrm{oil}}{\rho_\mathrm{linseed}}$$
 *
 * Hard to say better without a rub-out in the oil itself: another oil wets more or less well than linseed oil.
 *
 * @param input.massPigment - Pigment [kg], above 0.
 * @param input.oilAbsorption - Oil absorption [g of linseed oil per 100 g of pigment], above 0.
 * @param input.densityOil - Density of the oil that is used [kg/m³], above 0; 930, linseed oil's, by default.
 * @returns Least mass of oil [kg] that wets it; a paste that flows takes more.
 * @throws CalculationError `input` where an argument is out of range.
 * @source iso-787-5 the measure, from memory; that volume counts is common practice, no source
 * @example
 * ```ts
 * import { wettingOil } from "gelwright/rheology";
 * wettingOil({ massPigment: 2, oilAbsorption: 40, densityOil: 930 }); // => 0.8
 * ```
 */
export function wettingOil(input: {
  readonly massPigment: number;
  readonly oilAbsorption: number;
  readonly densityOil?: number;
}): number {
  const { massPigment, oilAbsorption: absorption, densityOil = linseed } = record(input, "input", known.wettingOil);
  const volume = (positive(massPigment, "massPigment") * positive(absorption, "oilAbsorption")) / (100 * linseed);
  return result(volume * positive(densityOil, "densityOil"), "oil");
}

/**
 * The volume fraction at which a pigment is packed, from its oil absorption: the oil of the rub-out just fills the gaps.
 *
 * $$\varphi_m = \frac{1}{1 + \dfrac{\mathrm{OA}}{100}\,\dfrac{\rho_p}{\rho_\mathrm{linseed}}}$$
 *
 * What paint makers call the critical pigment volume concentration; it serves as φ_m of a suspension's viscosity.
 *
 * @param input.oilAbsorption - Oil absorption [g of linseed oil per 100 g of pigment], above 0.
 * @param input.densityPigment - Density of the pigment [kg/m³], above 0.
 * @param input.densityLinseed - Density of linseed oil [kg/m³], above 0; default 930, and 935 in some handbooks.
 * @returns Volume fraction.
 * @throws CalculationError `input` where an argument is out of range.
 * @source lewarchik-2014 the equation, with 935
 * @example
 * ```ts
 * import { packedFraction } from "gelwright/rheology";
 * packedFraction({ oilAbsorption: 20, densityPigment: 4650 }); // => 0.5
 * ```
 */
export function packedFraction(input: {
  readonly oilAbsorption: number;
  readonly densityPigment: number;
  readonly densityLinseed?: number;
}): number {
  const {
    oilAbsorption: absorption,
    densityPigment,
    densityLinseed = linseed,
  } = record(input, "input", known.packedFraction);
  const oil = (positive(absorption, "oilAbsorption") / 100) * positive(densityPigment, "densityPigment");
  return result(1 / (1 + oil / positive(densityLinseed, "densityLinseed")), "packed fraction");
}

/**
 * The let-down of a pigment paste: how much paste and how much base give a batch of the strength wanted.
 *
 * $$m_\mathrm{paste} = m\,\frac{w - w_\mathrm{base}}{w_\mathrm{paste} - w_\mathrm{base}}$$
 *
 * @param input.mass - The batch [kg], above 0.
 * @param input.pigment - Mass fraction of pigment wanted: from that of the base to that of the paste.
 * @param input.pigmentInPaste - Mass fraction of pigment in the paste, more than in the base.
 * @param input.pigmentInBase - Mass fraction of pigment in the base; default 0.
 * @returns Mass of paste and of base [kg].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where no mixture has that strength.
 * @source definition (balance of the pigment)
 * @example
 * ```ts
 * import { letDown } from "gelwright/rheology";
 * letDown({ mass: 20, pigment: 0.025, pigmentInPaste: 0.5 }); // => { paste: 1, base: 19 }
 * ```
 */
export function letDown(input: {
  readonly mass: number;
  readonly pigment: number;
  readonly pigmentInPaste: number;
  readonly pigmentInBase?: number;
}): { readonly paste: number; readonly base: number } {
  const { mass, pigment, pigmentInPaste, pigmentInBase = 0 } = record(input, "input", known.letDown);
  const whole = positive(mass, "mass");
  const wanted = fraction(pigment, "pigment");
  const paste = fraction(pigmentInPaste, "pigmentInPaste");
  const base = fraction(notNegative(pigmentInBase, "pigmentInBase"), "pigmentInBase");
  if (!(paste > base)) refuse("input", "pigmentInPaste", paste, `more than ${base}, as in the base`);
  if (wanted < base || wanted > paste) refuse("unreachable", "pigment", wanted, `from ${base} to ${paste}`);
  const range = paste - base;
  return { paste: (whole * (wanted - base)) / range, base: (whole * (paste - wanted)) / range };
}
