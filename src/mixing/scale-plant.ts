import { positive, record, refuse, result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import type { StirredBatch } from "./stirring.js";
import { type AtScale, sameShape, stirringAtScale } from "./stirring-at-scale.js";

/** A plant of another shape than the bench. */
export interface StirredPlant {
  /** Its impeller, as plain data. */
  readonly impeller: Impeller;
  /** Its vessel, from which blades and anchors have their power curve. */
  readonly vessel?: StirredVessel;
  /** Of its batch [m³], above 0. */
  readonly volume: number;
}

/** The plant of a scale-up, told in one of two ways. */
export interface PlantOfScaleUp {
  /** Diameter of its impeller, in a plant of the bench's shape [m], above 0. */
  readonly diameterImpellerPlant?: number;
  /** Or a plant of another shape. */
  readonly plant?: StirredPlant;
}

/** A plant that has been checked. */
export interface Plant {
  readonly at: AtScale;
  /** The same beyond the range of its laws: a search may look there on its way, its answer may not. */
  readonly search: AtScale;
  /** Diameter of its impeller over the bench's. */
  readonly diameterRatio: number;
  /** Volume of its batch over the bench's. */
  readonly volumeRatio: number;
  /** Whether it is known to have the bench's shape. */
  readonly sameShape: boolean;
}

/** Checks the plant for a batch that has been checked at the bench. */
export function compilePlant(
  input: StirredBatch & { readonly volume: number } & PlantOfScaleUp,
  beyond: Beyond | undefined,
): Plant {
  const { impeller, vessel, density, curve, volume, plant, diameterImpellerPlant } = input;
  const scales = (batch: StirredBatch, held: number, path?: string) => ({
    at: stirringAtScale(batch, held, beyond, path),
    search: stirringAtScale(batch, held, "extend", path),
  });
  if (plant === undefined) {
    const s = positive(diameterImpellerPlant, "diameterImpellerPlant") / impeller.diameter;
    const [large, around] = sameShape(impeller, vessel, result(s, "scale"));
    const batch = { impeller: large, density, curve, ...(around === undefined ? {} : { vessel: around }) };
    const volumeRatio = s ** 3;
    const held = result(volume * volumeRatio, "volume");
    return { ...scales(batch, held), diameterRatio: s, volumeRatio, sameShape: true };
  }
  if (diameterImpellerPlant !== undefined)
    refuse("input", "diameterImpellerPlant", diameterImpellerPlant, "nothing beside a plant of its own shape");
  const { impeller: other, vessel: around, volume: held } = record(plant, "plant");
  const batch = { impeller: other, density, curve, ...(around === undefined ? {} : { vessel: around }) };
  return {
    ...scales(batch, positive(held, "plant.volume"), "plant."),
    diameterRatio: result(other.diameter / impeller.diameter, "scale"),
    volumeRatio: result(held / volume, "ratio of volumes"),
    sameShape: false,
  };
}
