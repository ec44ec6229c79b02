import { byName, readName } from "../formula/ingredient-name.js";
import { list, record, result } from "../guards.js";
import type { ExposureCaution } from "./caution.js";
import * as known from "./known.js";
import { type PointOfDeparture, systemicDose } from "./margin-of-safety.js";
import { doseOf, type ProductExposure } from "./systemic-exposure.js";

/** What one product adds to a dose. */
export interface ProductDose {
  /** The product. */
  readonly name: string;
  /** The dose that it brings [mg/(kg·d)]. */
  readonly dose: number;
}

/** What several products bring together. */
export interface AggregateExposure {
  /** The dose of all products [mg/(kg·d)]. */
  readonly dose: number;
  /** The dose of each, the larger first, equal ones by name. */
  readonly products: readonly ProductDose[];
  /** The margin of safety of all together; absent without a study, or where nothing is taken up. */
  readonly margin?: number;
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

/**
 * The systemic exposure dose of an ingredient from all the products that bring it.
 *
 * $$D = \sum_p E_p\,w_p\,a_p$$
 *
 * Every product is taken to be used every day by the same person, each at its own high percentile: more than most people
 * use. Which products belong to the sum is the assessor's choice.
 *
 * @param input.products - The products: exposure by body weight [mg/(kg·d)], mass fraction of the ingredient [0 to 1], part taken up [0 to 1].
 * @param input.study - The dose of a study [mg/(kg·d)] and the part of it that the body took up [above 0 to 1], for the margin; may be left out.
 * @returns The dose of all [mg/(kg·d)], of each, and the margin.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a result exceeds what a double holds.
 * @source definition
 * @example
 * ```ts
 * import { aggregateExposure } from "gelwright/exposure";
 * const { dose, margin } = aggregateExposure({
 *   products: [
 *     { name: "body gel", exposurePerBodyWeight: 123.2, massFraction: 0.01, dermalAbsorption: 0.5 },
 *     { name: "hand gel", exposurePerBodyWeight: 32.7, massFraction: 0.01, dermalAbsorption: 0.5 },
 *   ],
 *   study: { pointOfDeparture: 300, bioavailability: 0.5 },
 * });
 * dose.toFixed(4); // => "0.7795"
 * margin?.toFixed(0); // => "192"
 * ```
 */
export function aggregateExposure(input: {
  readonly products: readonly (ProductExposure & { readonly name: string })[];
  readonly study?: PointOfDeparture;
}): AggregateExposure {
  const { products, study } = record(input, "input", known.aggregateExposure);
  const doses = list(products, "products", 1)
    .map((product, i) => {
      const at = `products[${i}]`;
      const { name, ...each } = record(product, at);
      return { name: readName(name, `${at}.name`), dose: doseOf(each, `${at}.`) };
    })
    .sort((a, b) => b.dose - a.dose || byName(a, b));
  const dose = result(
    doses.reduce((sum, each) => sum + each.dose, 0),
    "dose",
  );
  const start = study === undefined ? undefined : systemicDose(record(study, "study"));
  return {
    dose,
    products: doses,
    ...(start !== undefined && dose > 0 && { margin: result(start / dose, "margin") }),
    caution: "qualified-assessor-decides",
  };
}
