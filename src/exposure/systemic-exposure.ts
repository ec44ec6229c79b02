import { fraction, notNegative, positive, record, result } from "../guards.js";
import type { ExposureCaution } from "./caution.js";
import * as known from "./known.js";

/** A dose that the body takes up in a day. */
export interface SystemicExposure {
  /** The dose [mg/(kg·d)]. */
  readonly dose: number;
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

/** How one product exposes to an ingredient. */
export interface ProductExposure {
  /** Product that stays on in a day, by body weight [mg/(kg·d)], 0 or more. */
  readonly exposurePerBodyWeight: number;
  /** Mass fraction of the ingredient in it [0 to 1]. */
  readonly massFraction: number;
  /** Part of the ingredient that the skin takes up [0 to 1]. */
  readonly dermalAbsorption: number;
}

/**
 * The systemic exposure dose of an ingredient, by the part of it that the skin takes up.
 *
 * $$D = E\,w\,a$$
 *
 * @param input.exposurePerBodyWeight - Product that stays on in a day, by body weight [mg/(kg·d)], 0 or more.
 * @param input.massFraction - Mass fraction of the ingredient in the product [0 to 1].
 * @param input.dermalAbsorption - Part of the ingredient that the skin takes up [0 to 1]: measured, or the assessor's choice; 1 where nothing is known.
 * @returns The dose [mg/(kg·d)].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source silemulsion-2013 Table 6, whose doses it gives at the printed digits
 * @source sccs-1647-22 systemic exposure dose, from memory
 * @example
 * ```ts
 * import { systemicExposure } from "gelwright/exposure";
 * systemicExposure({ exposurePerBodyWeight: 123.2, massFraction: 0.05, dermalAbsorption: 1 }).dose.toFixed(2); // => "6.16"
 * ```
 */
export function systemicExposure(input: ProductExposure): SystemicExposure {
  return { dose: doseOf(record(input, "input", known.systemicExposure)), caution: "qualified-assessor-decides" };
}

/** The dose of one product [mg/(kg·d)]. */
export function doseOf({ exposurePerBodyWeight, massFraction, dermalAbsorption }: ProductExposure, at = ""): number {
  return result(
    notNegative(exposurePerBodyWeight, `${at}exposurePerBodyWeight`) *
      fraction(massFraction, `${at}massFraction`) *
      fraction(dermalAbsorption, `${at}dermalAbsorption`),
    `${at}dose`,
  );
}

/**
 * The systemic exposure dose of an ingredient, by the amount that a study found taken up by an area of skin.
 *
 * $$D = \frac{m_A\,A\,n}{1000\,m_\mathrm{body}}$$
 *
 * The study must have been made with the product at the share and the amount of use in question.
 *
 * @param input.absorbedPerArea - Amount taken up by the skin [µg/cm²], 0 or more.
 * @param input.area - Skin that the product is put on [cm²], above 0.
 * @param input.applicationsPerDay - How often a day, above 0.
 * @param input.bodyWeight - Body weight [kg], above 0.
 * @returns The dose [mg/(kg·d)].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the dose exceeds what a double holds.
 * @source sccs-1647-22 systemic exposure dose by amount absorbed, from memory
 * @example
 * ```ts
 * import { systemicExposureByArea } from "gelwright/exposure";
 * systemicExposureByArea({ absorbedPerArea: 0.6, area: 500, applicationsPerDay: 2, bodyWeight: 60 }).dose; // => 0.01
 * ```
 */
export function systemicExposureByArea(input: {
  readonly absorbedPerArea: number;
  readonly area: number;
  readonly applicationsPerDay: number;
  readonly bodyWeight: number;
}): SystemicExposure {
  const { absorbedPerArea, area, applicationsPerDay, bodyWeight } = record(
    input,
    "input",
    known.systemicExposureByArea,
  );
  const absorbed =
    notNegative(absorbedPerArea, "absorbedPerArea") *
    positive(area, "area") *
    positive(applicationsPerDay, "applicationsPerDay");
  return {
    dose: result(absorbed / 1000 / positive(bodyWeight, "bodyWeight"), "dose"),
    caution: "qualified-assessor-decides",
  };
}
