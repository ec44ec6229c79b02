import { fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** The plant material that goes into the extraction. */
export interface ExtractedPlant {
  /** Mass put in, fresh or dried [kg], above 0. */
  readonly mass: number;
  /** How much of it is organic [0 to 1]: 1 or 0 for a single lot. */
  readonly organicShare: number;
  /**
   * For dried plant: the mass of the fresh plant over that of the dried [1 or more]. Where it was not
   * weighed, by part of the plant: flowers 4.5; from memory: leaves and aerial parts 4.5, bark, seeds, nuts
   * and roots 2.5, fruit 5, watery fruit 8. Left out: the plant is fresh.
   */
  readonly freshPerDried?: number;
}

/** The solvents put in [kg], each 0 or more, 0 where left out. */
export interface ExtractionSolvents {
  readonly water?: number;
  /** Natural and not organic, other than water. */
  readonly natural?: number;
  /** Organic, and natural with it. */
  readonly organic?: number;
  /** Derived natural, wholly of natural origin. */
  readonly derivedNatural?: number;
  /** Derived organic, wholly of organic origin. */
  readonly derivedOrganic?: number;
}

/** The indices of an extract [0 to 1], and what became of the water. */
export interface ExtractIndices {
  readonly natural: number;
  readonly naturalOrigin: number;
  readonly organic: number;
  readonly organicOrigin: number;
  /** Water that brings dried plant back to its fresh mass and counts as plant [kg]. */
  readonly waterOfPlant: number;
  /** Water left to extract with [kg]. */
  readonly waterAsSolvent: number;
}

/**
 * The four indices of a plant extract from what is put into the extraction.
 *
 * $$I_\mathrm{o} = 1 - \frac{m_\mathrm{NS} + m_\mathrm{DNS} + m_\mathrm{DOS}}{m_\mathrm{T}}, \qquad m_\mathrm{H_2O,plant} = \min(k\,m_\mathrm{dried} - m_\mathrm{dried},\; m_\mathrm{H_2O})$$
 *
 * NS, DNS and DOS are the natural, derived natural and derived organic solvents, and $$m_\mathrm{T}$$ is
 * plant and solvents together. Dried plant first takes back its own water, which counts as plant; only
 * the rest is solvent. The other indices count the same masses by what each one is: natural the plant
 * with its natural and organic solvents, organic origin the organic plant with its organic and derived
 * organic solvents. All of it is of natural origin.
 *
 * A solvent that is not natural has no place here: an extract that still holds some is a non-natural
 * material as a whole. A carrier that is mixed in afterwards comes on top: `indexAsSupplied`, with the
 * extract's share as the strength.
 *
 * @param input.plant - Mass put in [kg], how much of it is organic [0 to 1], and for dried plant its fresh over its dried mass [1 or more].
 * @param input.solvents - Masses put in [kg]: water, natural, organic, derived natural, derived organic.
 * @returns The four indices [0 to 1] and the water on either side [kg].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source gost-r-iso-16128-2-2022 annex B example 1, the organic index and the water of dried plant
 * @source iso-16128-2-2017 clause 4, from memory, the other indices
 * @source jcia-qa-2018, an extract with a non-natural solvent
 * @example
 * ```ts
 * import { extractIndex } from "gelwright/natural-origin";
 * const extract = extractIndex({
 *   plant: { mass: 34.4, organicShare: 1, freshPerDried: 4.5 },
 *   solvents: { water: 601 },
 * });
 * extract.organic; // => 0.24362606232294617
 * extract.waterAsSolvent; // => 480.6
 * ```
 */
export function extractIndex(input: {
  readonly plant: ExtractedPlant;
  readonly solvents: ExtractionSolvents;
}): ExtractIndices {
  const { plant, solvents } = record(input, "input", known.extractIndex);
  const { mass, organicShare, freshPerDried = 1 } = record(plant, "plant", known.plant);
  const {
    water = 0,
    natural = 0,
    organic = 0,
    derivedNatural = 0,
    derivedOrganic = 0,
  } = record(solvents, "solvents", known.solvents);
  const dried = positive(mass, "plant.mass");
  const grown = fraction(organicShare, "plant.organicShare");
  if (positive(freshPerDried, "plant.freshPerDried") < 1)
    refuse("input", "plant.freshPerDried", freshPerDried, "1 or more, as fresh plant weighs more than dried");

  const poured = notNegative(water, "solvents.water");
  const waterOfPlant = Math.min(freshPerDried * dried - dried, poured);
  const fresh = dried + waterOfPlant;
  const organicPart = fresh * grown + notNegative(organic, "solvents.organic");
  const naturalPart =
    organicPart + fresh * (1 - grown) + notNegative(natural, "solvents.natural") + (poured - waterOfPlant);
  const derivedOrganicPart = notNegative(derivedOrganic, "solvents.derivedOrganic");
  const total = result(
    naturalPart + derivedOrganicPart + notNegative(derivedNatural, "solvents.derivedNatural"),
    "mass of plant and solvents",
  );
  return {
    natural: naturalPart / total,
    naturalOrigin: 1,
    organic: organicPart / total,
    organicOrigin: (organicPart + derivedOrganicPart) / total,
    waterOfPlant,
    waterAsSolvent: poured - waterOfPlant,
  };
}
