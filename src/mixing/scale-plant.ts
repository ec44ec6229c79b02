import { positive, record, result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import * as known from "./known.js";
import { type ImpellerSize, impellerDiameter } from "./sizes.js";
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

/** A plant of the bench's shape, which one length tells. */
export interface PlantOfSameShape {
  /** Its impeller by its diameter alone [m], above 0. */
  readonly impeller: ImpellerSize;
}

/** The plant of a scale-up, told in one of two ways. */
export interface PlantOfScaleUp {
  /** Of the bench's shape, told by the diameter of its impeller alone, or of another. */
  readonly plant: PlantOfSameShape | StirredPlant;
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

/** Whether more is told than the diameter of the impeller: then it is a plant of another shape, and told in full. */
function isOther(plant: PlantOfSameShape | StirredPlant): plant is StirredPlant {
  const told = (what: object) => Object.entries(what).flatMap(([name, value]) => (value === undefined ? [] : [name]));
  const ofImpeller = told(record(plant.impeller, "plant.impeller"));
  return [...told(plant), ...ofImpeller].some((name) => name !== "impeller" && name !== "diameter");
}

/** Checks the plant for a batch that has been checked at the bench. */
export function compilePlant(
  input: StirredBatch & { readonly volume: number } & PlantOfScaleUp,
  beyond: Beyond | undefined,
): Plant {
  const { impeller, vessel, density, curve, volume } = input;
  const plant = record(input.plant, "plant", known.plantOfScaleUp);
  const scales = (batch: StirredBatch, held: number, path?: string) => ({
    at: stirringAtScale(batch, held, beyond, path),
    search: stirringAtScale(batch, held, "extend", path),
  });
  if (!isOther(plant)) {
    const s = impellerDiameter(plant.impeller, "plant.impeller") / impeller.diameter;
    const [large, around] = sameShape(impeller, vessel, result(s, "scale"));
    const batch = { impeller: large, density, curve, ...(around === undefined ? {} : { vessel: around }) };
    const volumeRatio = s ** 3;
    const held = result(volume * volumeRatio, "volume");
    return { ...scales(batch, held), diameterRatio: s, volumeRatio, sameShape: true };
  }
  const { impeller: other, vessel: around, volume: held } = plant;
  const batch = { impeller: other, density, curve, ...(around === undefined ? {} : { vessel: around }) };
  return {
    ...scales(batch, positive(held, "plant.volume"), "plant."),
    diameterRatio: result(other.diameter / impeller.diameter, "scale"),
    volumeRatio: result(held / volume, "ratio of volumes"),
    sameShape: false,
  };
}
