import type { Material } from "../formula/index.js";
import type { Part } from "../heat/index.js";
import { specificHeatAt } from "../laws/index.js";
import type { Content } from "./contents.js";
import { otherwise, stated } from "./unknown.js";

type SpecificHeat = NonNullable<Material["specificHeat"]>;

/** A law of specific heat that ends no further than this from the room is continued to it [K]: common practice, no source. */
const near = 10;

/** What decides how the contents of a vessel take up heat. */
export interface TakingUp {
  readonly contents: readonly Content[];
  /** Keys of the materials that have melted or dissolved. */
  readonly molten: ReadonlySet<string>;
  /** Whether they were ever warmed by more than stirring. */
  readonly heated: boolean;
  /** [°C]. */
  readonly room: number;
  /** Where a material melts in them. */
  readonly meltingOf: (material: Material) => Material["melting"];
}

/**
 * Contents as the heat kernels take them: what is solid melts on the way up; what has dissolved does not freeze above
 * the setting temperature. What has one specific heat at all temperatures is one part.
 */
export function heatParts({ contents, molten, heated, room, meltingOf }: TakingUp): readonly Part[] {
  const parts: Part[] = [];
  let mass = 0;
  let capacity = 0;
  for (const { material, mass: own } of contents) {
    const melting = meltingOf(material);
    const specificHeat = heated ? toTheRoom(material, room) : inTheRoom(material, room);
    if (melting && !molten.has(material.key))
      parts.push({
        mass: own,
        specificHeat: { law: "melting", solid: specificHeat, liquid: specificHeat, ...melting },
      });
    else if (specificHeat.law === "constant") {
      mass += own;
      capacity += own * specificHeat.specificHeat;
    } else parts.push({ mass: own, specificHeat });
  }
  return mass > 0 ? [{ mass, specificHeat: capacity / mass }, ...parts] : parts;
}

/** Where a material melts; gel former in an oil is dissolved at the dissolving temperature, however high it melts by itself. */
export function meltingInOil(
  { melting, function: purpose }: Material,
  dissolvingTemperature: () => number,
): Material["melting"] {
  if (!melting || purpose !== "gel former") return melting;
  const dissolves = otherwise(dissolvingTemperature, () => melting.temperatureEnd);
  if (dissolves >= melting.temperatureEnd) return melting;
  const { temperatureOnset: onset, latentHeat } = melting;
  const width = melting.temperatureEnd - onset;
  return { temperatureOnset: Math.min(onset, dissolves - width), temperatureEnd: dissolves, latentHeat };
}

function specificHeatOf({ specificHeat, key }: Material): SpecificHeat {
  return stated(specificHeat, "material-specific-heat", { of: key });
}

/** The specific heat of what is warmed from the room's temperature: a law that begins a little above that is continued down to it. */
function toTheRoom(material: Material, room: number): SpecificHeat {
  const law = specificHeatOf(material);
  if (law.law !== "polynomial" || law.temperatureMin === undefined) return law;
  const { temperatureMin } = law;
  return room < temperatureMin && room >= temperatureMin - near ? { ...law, temperatureMin: room } : law;
}

/** The specific heat at the room's temperature, of what is only ever stirred there. */
function inTheRoom(material: Material, room: number): SpecificHeat {
  const law = specificHeatOf(material);
  if (law.law !== "polynomial") return law;
  const { temperatureMin = room, temperatureMax = room } = law;
  if (room < temperatureMin - near || room > temperatureMax + near) return law;
  return { law: "constant", specificHeat: specificHeatAt({ law, temperature: room, beyond: "extend" }) };
}
