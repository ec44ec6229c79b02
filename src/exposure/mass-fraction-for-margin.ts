import { fraction, positive, record, result } from "../guards.js";
import type { ExposureCaution } from "./caution.js";
import * as known from "./known.js";
import { type PointOfDeparture, systemicDose } from "./margin-of-safety.js";

/** How much of an ingredient a product can hold for a wanted margin. */
export interface MassFractionForMargin {
  /** Its largest mass fraction [0 to 1]. */
  readonly massFractionMax: number;
  /** What sets it: the margin, or the product, which cannot hold more than itself. */
  readonly limitedBy: "margin" | "whole product";
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

/**
 * The largest share of an ingredient at which a product still has a wanted margin of safety.
 *
 * $$w_\mathrm{max} = \min\left(1,\; \frac{D_\mathrm{study}\,b}{M\,E\,a}\right)$$
 *
 * For this product alone. The same ingredient in other products adds to the dose (`aggregateExposure`) and lowers the margin.
 *
 * @param input.exposurePerBodyWeight - Product that stays on in a day, by body weight [mg/(kg·d)], above 0.
 * @param input.dermalAbsorption - Part of the ingredient that the skin takes up [0 to 1].
 * @param input.pointOfDeparture - The dose of the study [mg/(kg·d)], above 0.
 * @param input.bioavailability - Part of that dose that the body took up [above 0 to 1].
 * @param input.margin - The margin that is wanted, above 0: the assessor's.
 * @returns The largest mass fraction [0 to 1], and what sets it.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { massFractionForMargin } from "gelwright/exposure";
 * const { massFractionMax } = massFractionForMargin({
 *   exposurePerBodyWeight: 123.2,
 *   dermalAbsorption: 0.5,
 *   pointOfDeparture: 100,
 *   bioavailability: 0.5,
 *   margin: 100,
 * });
 * massFractionMax.toFixed(5); // => "0.00812"
 * ```
 */
export function massFractionForMargin(
  input: PointOfDeparture & {
    readonly exposurePerBodyWeight: number;
    readonly dermalAbsorption: number;
    readonly margin: number;
  },
): MassFractionForMargin {
  const { exposurePerBodyWeight, dermalAbsorption, margin, ...study } = record(
    input,
    "input",
    known.massFractionForMargin,
  );
  const dose = systemicDose(study) / positive(margin, "margin");
  const pure = result(
    positive(exposurePerBodyWeight, "exposurePerBodyWeight") * fraction(dermalAbsorption, "dermalAbsorption"),
    "dose of the pure ingredient",
  );
  const whole = pure <= dose;
  return {
    massFractionMax: whole ? 1 : dose / pure,
    limitedBy: whole ? "whole product" : "margin",
    caution: "qualified-assessor-decides",
  };
}
