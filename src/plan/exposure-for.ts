import {
  type DailyExposure,
  dailyExposure,
  type IngredientLimits,
  ingredientLimits,
  marginOfSafety,
  massFractionForMargin,
  systemicExposure,
} from "../exposure/index.js";
import { record, refuse } from "../guards.js";
import type { NotKnown } from "./figure.js";
import { type Job, namesOf } from "./job.js";
import * as known from "./known.js";
import { linesOf, listingNameOf, shareText } from "./label-lines.js";
import { changedJob, fingerprintOfRun, type RunInput } from "./prepared-run.js";
import { by, orNotKnown, otherwise, where } from "./unknown.js";

/** The exposure to one material. It is arithmetic for a qualified assessor. */
export interface AssessedMaterial {
  /** Its key. */
  readonly material: string;
  /** Its share of the product [0 to 1]. */
  readonly massFraction: number;
  /** What the body takes up in a day [mg/(kg·d)]. */
  readonly dose: number;
  /** Dose of the study over that dose, if a study is stated. */
  readonly margin?: number;
  /** The largest share that leaves the margin that the assessor wants [0 to 1]. */
  readonly massFractionMax?: number;
}

/** What a qualified assessor has asked about exposure, as arithmetic. */
export interface PlanExposure {
  readonly version: 1;
  /** Of the documents, with the changes made to them, as `fingerprint` gives it. */
  readonly fingerprint: string;
  /** Names as the documents have them. */
  readonly names: { readonly formula: string; readonly materials: Readonly<Record<string, string>> };
  readonly daily: DailyExposure | NotKnown;
  readonly materials: readonly (AssessedMaterial | ({ readonly material: string } & NotKnown))[];
  /** The ingredients against the table of largest shares, if one is given. */
  readonly limits?: IngredientLimits | NotKnown;
}

/**
 * Exposure to a job's product and to some of its materials, as arithmetic for a qualified assessor.
 *
 * Daily exposure by type of product; for each material that the job's `exposure` names the systemic exposure dose, the
 * margin to the dose of a study, and the largest share that leaves a wanted margin; all ingredients against a table of
 * largest shares. Type of product, absorption, study and margin are the assessor's choice, and nothing is decided here.
 *
 * @param input.prepared - A job as `prepareJob` gives it, with `exposure`.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @returns The figures; one that is not known says why.
 * @throws CalculationError `input` for a change that this job does not have, or a job without `exposure`.
 * @source definition; `dailyExposure` and `marginOfSafety` name theirs
 * @example
 * ```ts
 * import { exposureFor, prepareJob } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", function: "gel former" },
 *       oil: { name: "sunflower oil", function: "oil" },
 *     },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
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
 *   exposure: {
 *     productType: "hand cream",
 *     materials: [{ material: "former", dermalAbsorption: "50 %", study: { pointOfDeparture: 500, bioavailability: 0.5 } }],
 *   },
 * });
 * const [former] = exposureFor({ prepared }).materials;
 * former && "dose" in former && [former.dose.toFixed(3), former.margin?.toFixed(0)]; // => ["1.635", "153"]
 * ```
 */
export function exposureFor(input: RunInput): PlanExposure {
  record(input, "input", known.exposureFor);
  const { job } = changedJob(input);
  const { formula, exposure } = job;
  if (!exposure)
    return refuse("input", "prepared", "a job without exposure", "a job that states what is asked about exposure");
  const { productType, table, materials = [], limits } = exposure;
  const daily = (): DailyExposure =>
    by("daily-exposure", () => dailyExposure({ productType, ...(table && { table }) }));
  return {
    version: 1,
    fingerprint: fingerprintOfRun(input),
    names: {
      formula: formula.name,
      materials: namesOf(job),
    },
    daily: orNotKnown(daily),
    materials: materials.map((one) =>
      otherwise(
        () => assessed(job, one, daily().exposurePerBodyWeight),
        (notKnown) => ({ material: one.material, notKnown }),
      ),
    ),
    ...(limits && {
      limits: orNotKnown(() =>
        by("ingredient-limits", () =>
          ingredientLimits({ ingredients: ingredientsOf(job), productType, table: limits }),
        ),
      ),
    }),
  };
}

type Asked = NonNullable<NonNullable<Job["exposure"]>["materials"]>[number];

function assessed({ formula }: Job, asked: Asked, exposurePerBodyWeight: number): AssessedMaterial {
  const { material, dermalAbsorption, study, marginMin: margin } = asked;
  const massFraction = formula.lines
    .filter((line) => line.material === material)
    .reduce((sum, line) => sum + line.massFraction, 0);
  const { dose } = by("systemic-exposure", () =>
    systemicExposure({ exposurePerBodyWeight, massFraction, dermalAbsorption }),
  );
  return {
    material,
    massFraction,
    dose,
    ...(study &&
      where(
        "margin",
        () => by("systemic-exposure", () => marginOfSafety({ ...study, systemicExposure: dose })).margin,
      )),
    ...(study &&
      margin !== undefined &&
      where(
        "massFractionMax",
        () =>
          by("systemic-exposure", () =>
            massFractionForMargin({ ...study, exposurePerBodyWeight, dermalAbsorption, margin }),
          ).massFractionMax,
      )),
  };
}

/** All ingredients by their names for the label, mixed materials by their parts. */
function ingredientsOf({ formula }: Job): readonly { readonly name: string; readonly amount: string }[] {
  return linesOf(formula).flatMap(({ line: { massFraction }, of }) =>
    (of.ingredients ?? [{ name: listingNameOf(of), massFraction: 1 }]).map((part) => ({
      name: part.name,
      amount: shareText(massFraction * part.massFraction),
    })),
  );
}
