import { fraction, positive, record, refuse, result } from "../guards.js";
import type { ExposureCaution } from "./caution.js";
import * as known from "./known.js";

/** Where the dose of a toxicological study starts from. */
export interface PointOfDeparture {
  /** The dose of the study [mg/(kg·d)], above 0. */
  readonly pointOfDeparture: number;
  /** Part of that dose that the body took up [above 0 to 1]; 1 if the dose is already systemic. */
  readonly bioavailability: number;
}

/** A margin of safety. */
export interface MarginOfSafety {
  /** The margin: how many times the exposure goes into the dose of the study. */
  readonly margin: number;
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

/** The systemic point of departure [mg/(kg·d)]. */
export function systemicDose({ pointOfDeparture, bioavailability }: PointOfDeparture): number {
  const part = fraction(bioavailability, "bioavailability");
  if (part === 0) refuse("input", "bioavailability", part, "a fraction above 0, up to 1");
  return result(positive(pointOfDeparture, "pointOfDeparture") * part, "systemic point of departure");
}

/**
 * The margin of safety: the dose of a study over the dose that a product brings.
 *
 * $$M = \frac{D_\mathrm{study}\,b}{D}$$
 *
 * It is a number for a qualified assessor. Which study and which dose are taken, what part of an oral dose counts as taken
 * up, and what margin is wanted is that person's judgement: the guidance takes half of an oral dose where nothing is
 * known of it, and a margin of 100 as a rule (`cehtra-mos`), with exceptions either way.
 *
 * @param input.pointOfDeparture - The dose of the study [mg/(kg·d)], above 0.
 * @param input.bioavailability - Part of that dose that the body took up [above 0 to 1]; 1 if the dose is already systemic.
 * @param input.systemicExposure - The dose that the product brings [mg/(kg·d)], above 0.
 * @returns The margin of safety.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the margin exceeds what a double holds.
 * @source cehtra-mos, the quotient and the part of an oral dose
 * @example
 * ```ts
 * import { marginOfSafety } from "gelwright/exposure";
 * marginOfSafety({ pointOfDeparture: 600, bioavailability: 0.5, systemicExposure: 0.2414 }).margin.toFixed(0); // => "1243"
 * ```
 */
export function marginOfSafety(input: PointOfDeparture & { readonly systemicExposure: number }): MarginOfSafety {
  const { systemicExposure, ...study } = record(input, "input", known.marginOfSafety);
  return {
    margin: result(systemicDose(study) / positive(systemicExposure, "systemicExposure"), "margin"),
    caution: "qualified-assessor-decides",
  };
}
