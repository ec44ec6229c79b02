import { type DatedTable, readDate, readDatedTable } from "../formula/dated-table.js";
import { nameKey, readName } from "../formula/ingredient-name.js";
import { list, record, refuse } from "../guards.js";
import { exactShare, withinWhole } from "../units/exact.js";
import { compare, nearestDouble, plus, total } from "../units/rational.js";
import type { LabellingCaution } from "./caution.js";
import * as known from "./known.js";

/**
 * What a glitter or scrub particle is made of. Whether a polymer counts as natural, degradable or soluble is proved by the
 * test that the law names; the caller states the outcome.
 */
export type ParticleNature =
  | "synthetic polymer"
  | "natural polymer"
  | "degradable polymer"
  | "soluble polymer"
  | "inorganic";

const natures: readonly ParticleNature[] = [
  "synthetic polymer",
  "natural polymer",
  "degradable polymer",
  "soluble polymer",
  "inorganic",
];

/** A glitter, a scrub or another solid particle in the product. */
export interface LabelParticle {
  /** Its name. */
  readonly name: string;
  /** Its share of the product, as text: `"0.5 %"`. */
  readonly amount: string;
  /** What it is made of; of a coated particle, what is restricted of it; left out: not stated. */
  readonly nature?: ParticleNature;
}

/** From when synthetic polymer particles are restricted in one type of product. */
export interface ParticleRestriction {
  /** The type of product, in the caller's words. */
  readonly productType: string;
  /** The first day on which the restriction holds, as `"2027-10-17"`. */
  readonly from: string;
  /** The share of such particles at which the restriction begins, as text: that share is restricted. */
  readonly amountMin: string;
}

/** Restrictions with the place and the day for which they hold: the caller's data, with no default. */
export interface ParticleTable extends DatedTable {
  /** One row for each type of product. */
  readonly rows: readonly ParticleRestriction[];
}

/** What the table says of the particles of a product. */
export interface MicroplasticFlag extends DatedTable {
  /**
   * - `"restricted"`: synthetic polymer at or above the share, on or after the first day;
   * - `"restricted-later"`: likewise, before the first day;
   * - `"below-share"`: there is none, or less than the share, whatever is not stated;
   * - `"not-known"`: the table has no row for the type of product, or what is not stated decides.
   */
  readonly status: "restricted" | "restricted-later" | "below-share" | "not-known";
  /** The first day on which the restriction holds; absent where the table has no row for the type of product. */
  readonly from?: string;
  /** Synthetic polymer particles, as a mass fraction of the product [0 to 1]: stated, and with all that is not stated. */
  readonly share: { readonly min: number; readonly max: number };
  /** Particles whose material is not stated. */
  readonly notStated: readonly string[];
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/**
 * Whether a table of restrictions reaches the glitter and scrub of a product on a given day.
 *
 * Shares are summed as exact decimals of their text over all particles. A particle whose nature is not stated may be
 * synthetic: it can lead to `"not-known"`, never to a better status. The table is the caller's, with its place and date;
 * it has no default. Dates are compared as days of the calendar, the first day included.
 *
 * @param input.particles - The particles in the product, with amounts as text; an empty list for none.
 * @param input.productType - The type of product, as a row of the table names it. The caller picks it.
 * @param input.date - The day asked about, as `"2026-11-28"`.
 * @param input.table - The restrictions, with their place and date.
 * @returns The status, its first day, and the share of synthetic particles between bounds.
 * @throws CalculationError `input` where an argument is out of range, particles add up to more than 100 %, or two rows are for one type of product.
 * @source eu-2023-2055 entry 78, in restatements: at or above a share, from a day that depends on the type of product
 * @example
 * ```ts
 * import { microplasticFlag } from "gelwright/labelling";
 * const table = {
 *   jurisdiction: "EU",
 *   date: "2026-11-28",
 *   rows: [{ productType: "leave-on", from: "2029-10-17", amountMin: "0.01 %" }],
 * };
 * const particles = [{ name: "glitter", amount: "0.3 %", nature: "synthetic polymer" as const }];
 * microplasticFlag({ particles, productType: "leave-on", date: "2029-10-16", table }).status; // => "restricted-later"
 * microplasticFlag({ particles, productType: "leave-on", date: "2029-10-17", table }).status; // => "restricted"
 * ```
 */
export function microplasticFlag(input: {
  readonly particles: readonly LabelParticle[];
  readonly productType: string;
  readonly date: string;
  readonly table: ParticleTable;
}): MicroplasticFlag {
  const { particles, productType, date, table } = record(input, "input", known.microplasticFlag);
  const dated = readDatedTable(table, "table");
  const day = readDate(date, "date");
  const row = rowFor(table.rows, productType);

  const read = list(particles, "particles").map((particle, i) => {
    const { name, amount, nature } = record(particle, `particles[${i}]`, known.particle);
    if (nature !== undefined && !natures.includes(nature))
      return refuse("input", `particles[${i}].nature`, nature, `one of ${natures.join(", ")}`);
    return {
      name: readName(name, `particles[${i}].name`),
      share: exactShare(amount, `particles[${i}].amount`),
      nature,
    };
  });
  withinWhole(total(read.map(({ share }) => share)), "particles");
  const shareOf = (nature: ParticleNature | undefined) =>
    total(read.filter((particle) => particle.nature === nature).map(({ share }) => share));
  const min = shareOf("synthetic polymer");
  const max = plus(min, shareOf(undefined));

  let status: MicroplasticFlag["status"] = "not-known";
  if (row && compare(min, row.share) >= 0) status = day >= row.from ? "restricted" : "restricted-later";
  else if (row && compare(max, row.share) < 0) status = "below-share";
  return {
    status,
    ...(row && { from: row.from }),
    share: { min: nearestDouble(min), max: nearestDouble(max) },
    notStated: read.flatMap(({ name, nature }) => (nature === undefined ? [name] : [])).sort(),
    ...dated,
    caution: "responsible-person-decides",
  };
}

function rowFor(rows: readonly ParticleRestriction[], productType: string) {
  const wanted = nameKey(productType, "productType");
  const read = list(rows, "table.rows").map((row, i) => {
    const at = `table.rows[${i}]`;
    const { productType: type, from, amountMin } = record(row, at);
    return {
      key: nameKey(type, `${at}.productType`),
      from: readDate(from, `${at}.from`),
      share: exactShare(amountMin, `${at}.amountMin`),
    };
  });
  const [row, another] = read.filter(({ key }) => key === wanted);
  return another ? refuse("input", "table.rows", productType, "one row for each type of product") : row;
}
