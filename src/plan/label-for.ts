import { record, refuse } from "../guards.js";
import type { ClaimFigure, FragranceAllergens, IngredientList, MicroplasticFlag } from "../labelling/index.js";
import {
  type CertificationShortfall,
  type CertifiedShares,
  certificationShortfalls,
  certifiedShares,
  claimFigure,
  fragranceAllergens,
  ingredientList,
  microplasticFlag,
} from "../labelling/index.js";
import type { ClaimedIndex } from "./documents/label.js";
import type { NotKnown } from "./figure.js";
import { type Job, namesOf } from "./job.js";
import * as known from "./known.js";
import { certifiedLines, claimLines, labelLines, linesOf, particlesIn } from "./label-lines.js";
import { changedJob, fingerprintOfRun, type RunInput } from "./prepared-run.js";
import { by, orNotKnown, stated } from "./unknown.js";

/** The draft of a label: what the arithmetic gives, for the person who answers for the product to decide on. */
export interface PlanLabel {
  readonly version: 1;
  /** Of the documents, with the changes made to them, as `fingerprint` gives it. */
  readonly fingerprint: string;
  /** Names as the documents have them. */
  readonly names: { readonly formula: string; readonly materials: Readonly<Record<string, string>> };
  /** As the tables name it, in the caller's words. */
  readonly productType: string;
  /** Ingredients in the order of the label, with the allergens that are to be named if a list of them is given. */
  readonly list: IngredientList | NotKnown;
  /** Keys of the materials without a name for the label: their own name stands in its place. */
  readonly withoutListingName: readonly string[];
  readonly allergens?: FragranceAllergens | NotKnown;
  /** Whether the particles are restricted, if a table of restrictions is given. */
  readonly particles?: MicroplasticFlag | NotKnown;
  readonly claims: readonly ({ readonly of: ClaimedIndex } & (ClaimFigure | NotKnown))[];
  /** Shares by class, if every material has one or a standard is asked. */
  readonly certified?: (CertifiedShares & { readonly shortfalls: readonly CertificationShortfall[] }) | NotKnown;
}

/**
 * Drafts the label of a job: order of ingredients, fragrance allergens, restricted particles, figures to be claimed, and
 * shares by the classes of a certification standard.
 *
 * Every table is the caller's, from the job's `label`; only the order of ingredients has a default, the EU's. Shares are
 * compared as exact decimals of twelve digits, which give back every share that people write. Nothing is decided: what may
 * stand on a label is law that differs by place and date.
 *
 * @param input.prepared - A job as `prepareJob` gives it, with `label`.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @returns The draft; a part that is not known says why.
 * @throws CalculationError `input` for a change that this job does not have, or a job without `label`.
 * @source definition; each part names the source of its rule
 * @example
 * ```ts
 * import { labelFor, prepareJob } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", listingName: "Gel Former", function: "gel former", allergens: [] },
 *       oil: { name: "sunflower oil", listingName: "Sunflower Seed Oil", function: "oil", allergens: [] },
 *       scent: { name: "fragrance", listingName: "Parfum", function: "fragrance", allergens: [{ name: "Linalool", share: "2 %" }] },
 *     },
 *     phases: [
 *       {
 *         name: "A",
 *         lines: [
 *           { material: "former", amount: "10 %" },
 *           { material: "oil", amount: "q.s." },
 *           { material: "scent", amount: "0.3 %" },
 *         ],
 *       },
 *     ],
 *   },
 *   bench: { source: "bench log" },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "20 g" }],
 *   },
 *   vessel: { name: "kettle", workingVolume: { min: "5 L", max: "20 L" }, diameter: "300 mm" },
 *   process: { name: "hot route", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 *   label: {
 *     productType: "body oil",
 *     use: "leave-on",
 *     allergens: { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }] },
 *   },
 * });
 * const { list } = labelFor({ prepared });
 * "names" in list && list.names; // => ["Sunflower Seed Oil", "Gel Former", "Parfum", "Linalool"]
 * ```
 */
export function labelFor(input: RunInput): PlanLabel {
  record(input, "input", known.labelFor);
  const { job } = changedJob(input);
  const { formula } = job;
  const label = labelOf(job);
  const { productType, use, order, allergens: table, particles: restrictions, date, claims = [] } = label;
  const lines = labelLines(formula);
  return {
    version: 1,
    fingerprint: fingerprintOfRun(input),
    names: {
      formula: formula.name,
      materials: namesOf(job),
    },
    productType,
    list: orNotKnown(() =>
      by("ingredient-order", () =>
        ingredientList({ lines, ...(order && { rule: order }), ...(table && { allergens: { use, table } }) }),
      ),
    ),
    withoutListingName: [...new Set(linesOf(formula).map(({ of }) => of))]
      .filter(({ listingName, ingredients }) => listingName === undefined && !ingredients)
      .map(({ key }) => key),
    ...(table && {
      allergens: orNotKnown(() => by("fragrance-allergens", () => fragranceAllergens({ lines, use, table }))),
    }),
    ...(restrictions && {
      particles: orNotKnown(() => {
        const day = stated(date, "label-date");
        const asked = { particles: particlesIn(formula), productType, date: day, table: restrictions };
        return by("microplastics", () => microplasticFlag(asked));
      }),
    }),
    claims: claims.map(({ of, basis, decimals = 0 }) => ({
      of,
      ...orNotKnown(() => by("claim-figure", () => claimFigure({ lines: claimLines(formula, of), basis, decimals }))),
    })),
    ...certifiedOf(job),
  };
}

function labelOf({ label }: Job): NonNullable<Job["label"]> {
  return label ?? refuse("input", "prepared", "a job without label", "a job that states what its label is drafted for");
}

/** Shares by class: only if somebody has sorted the materials, or asks for a standard. */
function certifiedOf(job: Job): Pick<PlanLabel, "certified"> {
  const { formula } = job;
  const { certified: table, productType } = labelOf(job);
  const isSorted = linesOf(formula).every(({ of }) => of.certified);
  if (!table && !isSorted) return {};
  return {
    certified: orNotKnown(() => {
      const lines = certifiedLines(formula);
      return by("certified-shares", () => ({
        ...certifiedShares({ lines, ...(table && { table, productType }) }),
        shortfalls: certificationShortfalls({ lines, figure: "natural origin of product" }),
      }));
    }),
  };
}
