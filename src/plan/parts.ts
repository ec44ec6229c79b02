import type { Part } from "../heat/index.js";
import type { Vessel } from "./job.js";
import type { Content } from "./moment.js";

/**
 * Some contents as the heat kernels take them, and the vessel wall where it warms along; or whose specific heat is missing.
 *
 * What is solid melts on the way up. What has dissolved does not freeze at its melting range on the way down: it sets at
 * the gel's setting temperature, which is as far as these figures go.
 */
export function partsOf(
  contents: readonly Content[],
  molten: ReadonlySet<string>,
  wall?: Vessel["wall"],
): readonly Part[] | string {
  const parts: Part[] = wall
    ? [{ mass: wall.mass, specificHeat: { law: "constant", specificHeat: wall.specificHeat } }]
    : [];
  for (const { material, mass } of contents) {
    const { key, name, specificHeat, melting } = material;
    if (specificHeat === undefined) return `no specific heat of ${name}`;
    const isSolid = melting && !molten.has(key);
    parts.push({
      mass,
      specificHeat: isSolid ? { law: "melting", solid: specificHeat, liquid: specificHeat, ...melting } : specificHeat,
    });
  }
  return parts;
}
