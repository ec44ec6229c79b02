import { largestBatch, type StockUse } from "../../batch/index.js";
import { stockOf, usesOf } from "../../batch/stock.js";
import type { NotKnown } from "../figure.js";
import { scalingInput } from "../scaling.js";
import type { Run } from "../state.js";
import { by, orNotKnown, otherwise } from "../unknown.js";
import { leavesFilmOpen, yieldStressOfFilm } from "./films.js";
import { yieldStressOf } from "./yield-stress.js";

/** What there is in stock, and what it makes. Masses in kg. */
export interface PlanStock {
  /** What all lots take of each material, beside what there is of it and what to buy. */
  readonly materials: readonly StockUse[];
  /** The largest batch that the stock makes: a material that the list does not hold does not limit it. */
  readonly largest: LargestFromStock | NotKnown;
}

/** The largest batch that a stock makes. */
export interface LargestFromStock {
  /** Finished product in the packs [kg]. */
  readonly mass: number;
  /** Whole packs, if packs were asked for. */
  readonly packs?: number;
  /** Equal lots. */
  readonly lots: number;
  /** Keys of the materials that limit it; none where the vessel does. */
  readonly limitedBy: readonly string[];
}

/** What all lots of a run take of each material, beside the stock. */
export function stockUsesOf({ job: { formula, batch }, scaled }: Run): readonly StockUse[] {
  return usesOf(scaled, stockOf(formula, batch));
}

/** What there is in stock, and what it makes, with films as thick as in this run. */
export function stockIn(run: Run): PlanStock {
  return {
    materials: stockUsesOf(run),
    largest: orNotKnown(() => {
      const { scaled, limitedBy } = by("mass-balance", () => largestBatch(scalingInput(run.job, yieldStressIn(run))));
      const { massTarget: mass, packs, lots } = scaled;
      return { mass, ...(packs !== undefined && { packs }), lots, limitedBy };
    }),
  };
}

/** The yield stress from which the film of a run was computed [Pa], if it was. */
function yieldStressIn(run: Run): number | undefined {
  const own = (): number | undefined =>
    otherwise(
      () => yieldStressOf(run.job).value,
      () => undefined,
    );
  return leavesFilmOpen(run.job) ? otherwise(() => yieldStressOfFilm(run), own) : undefined;
}
