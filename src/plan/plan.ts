import type { WeighedLot } from "../batch/index.js";
import type { NotKnown } from "./figure.js";
import type { PlanAfterFilling } from "./parts/after-filling.js";
import type { PlanAir } from "./parts/air.js";
import type { Cost, Lots, Weighing } from "./parts/batch.js";
import type { Caution } from "./parts/cautions.js";
import type { PlanEmulsion } from "./parts/emulsion.js";
import type { Evaporation } from "./parts/evaporation.js";
import type { PlanFillingLimits } from "./parts/filling-limits.js";
import type { PlanFilms } from "./parts/films.js";
import type { PlanFlow } from "./parts/flow.js";
import type { PlanGelPoint } from "./parts/gel-points.js";
import type { PlanAllergens } from "./parts/listed.js";
import type { LotOrder } from "./parts/lot-order.js";
import type { NaturalOrigin } from "./parts/natural-origin.js";
import type { Note } from "./parts/note.js";
import type { PlanOilLimits } from "./parts/oil-limits.js";
import type { RankedOil } from "./parts/oxidation-ranking.js";
import type { PlanPacks } from "./parts/packs.js";
import type { PlanParticle } from "./parts/particles.js";
import type { WeighingPaste } from "./parts/pastes.js";
import type { PlanSamples } from "./parts/samples.js";
import type { ScaleMetrics } from "./parts/scale.js";
import type { Source } from "./parts/sources.js";
import type { PlanStability } from "./parts/stability.js";
import type { PlanStock } from "./parts/stock.js";
import type { MaterialExposure } from "./parts/thermal-exposure.js";
import type { PlanStrength, PlanYieldStress } from "./parts/trials.js";
import type { Answer } from "./questions/question.js";
import type { StepLimits } from "./step-limits.js";
import type { PlanStep } from "./timeline.js";

/** The run of a job: everything that stands on the batch sheet, in the units of the kernels, as numbers and codes. */
export interface Plan {
  readonly version: 1;
  /** Of the documents, with the changes made to them, as `fingerprint` gives it. */
  readonly fingerprint: string;
  /** Names as the documents have them. */
  readonly names: {
    readonly formula: string;
    readonly process: string;
    readonly vessel: string;
    readonly pack?: string;
    /** Name of each material, by its key. */
    readonly materials: Readonly<Record<string, string>>;
    /** Name for the ingredient list of each material that states one, by its key. */
    readonly listing: Readonly<Record<string, string>>;
  };
  /** How many equal lots, and what one of them holds: the figures below are for one lot. */
  readonly lots: Lots;
  readonly weighing: Weighing;
  /** Particles that are wetted before they go in, with oil of the lot that is kept back for it. */
  readonly pastes?: readonly WeighingPaste[];
  /** What the process takes from one lot [kg], in its order. */
  readonly allowances: WeighedLot["allowances"];
  /** What is kept back of one lot, if allowances for samples are stated. */
  readonly samples?: readonly PlanSamples[];
  readonly timeline: readonly PlanStep[];
  /** Between which temperatures steps charge, and up to which they heat, of those that have such a limit. */
  readonly stepLimits: readonly StepLimits[];
  /** What changes with the size of the vessel, for `comparePlans`. */
  readonly scale: ScaleMetrics;
  /** When each lot is made, if there are several or a working day is stated. */
  readonly lotOrder?: LotOrder | NotKnown;
  /** How cool a melt may get while it is filled, if it sets and that is known. */
  readonly fillingLimits?: PlanFillingLimits;
  /** What happens in the pack. */
  readonly afterFilling: PlanAfterFilling;
  /** What goes into a pack, if its label states how much. */
  readonly packs?: PlanPacks;
  /** What there is in stock, and what it makes, if a stock list is stated. */
  readonly stock?: PlanStock;
  /** The stability test, if one is stated. */
  readonly stability?: PlanStability;
  /** When particles may go in, and what holds them. */
  readonly particles: readonly PlanParticle[];
  /** Where the finished melt sets and dissolves. */
  readonly gelPoints: readonly PlanGelPoint[];
  /** The yield stress of the set gel. */
  readonly yieldStress?: PlanYieldStress;
  /** What trials let expect of the dose. */
  readonly strength?: PlanStrength;
  /** What rheometer points say. */
  readonly flow?: PlanFlow;
  readonly films: PlanFilms;
  /** Whether air leaves, if a bubble is asked about. */
  readonly air?: PlanAir;
  /** What the heat-sensitive materials went through. */
  readonly thermalExposures: readonly MaterialExposure[];
  /** The oils, ranked by what waiting until the heat is off would spare. */
  readonly oxidationRanking: readonly RankedOil[];
  /** What the volatile materials lose. */
  readonly evaporation: readonly Evaporation[];
  /** Limits of the oils by themselves, where the materials state what they need. */
  readonly oilLimits?: PlanOilLimits;
  /** Fragrance allergens in the product, and materials for which they are not stated. */
  readonly allergens: PlanAllergens;
  readonly naturalOrigin: NaturalOrigin;
  /** Additions of oil and the gel to be expected, of an emulsion. */
  readonly emulsion?: PlanEmulsion;
  /** Cost of the materials; left out where it is not known. */
  readonly cost: Cost | NotKnown;
  /** The answer to every question that the process raises. */
  readonly answers: readonly Answer[];
  readonly notes: readonly Note[];
  readonly cautions: readonly Caution[];
  /** Where the figures of the documents come from. */
  readonly sources: readonly Source[];
}
