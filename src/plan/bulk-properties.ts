import { conductivityOfMixture, densityOfMixture } from "../formula/index.js";
import { heatCapacityFunction } from "../heat/index.js";
import { conductivityAt, densityAt } from "../laws/index.js";
import { type Content, massOf, moltenOf } from "./moment.js";
import { partsOf } from "./parts.js";

/** Density of the whole at one temperature [kg/m³], or what is missing. */
export function densityThen(contents: readonly Content[], temperature: number): number | string {
  const parts = contents.flatMap(({ material: { density }, mass }) =>
    density ? [{ mass, density: densityAt({ law: density, temperature }) }] : [],
  );
  const known = parts.reduce((sum, { mass }) => sum + mass, 0);
  return known < 0.95 * massOf(contents) || known === 0
    ? "no density of most of the content"
    : densityOfMixture({ parts });
}

/** Density [kg/m³] and conductivity [W/(m·K)] of the whole at one temperature, or what is missing. */
export function bulkProperties(
  contents: readonly Content[],
  temperature: number,
): { readonly density: number; readonly conductivity: number } | string {
  const parts = contents.flatMap(({ material, mass }) => {
    const { density, conductivity } = material;
    if (!density || !conductivity) return [];
    return [
      {
        mass,
        density: densityAt({ law: density, temperature }),
        conductivity: conductivityAt({ law: conductivity, temperature }),
      },
    ];
  });
  // A gram of pigment does not decide how a jar of oil conducts: what lacks a figure may be a twentieth of the mass.
  if (massOf(contents) - parts.reduce((sum, { mass }) => sum + mass, 0) > 0.05 * massOf(contents))
    return "no density or conductivity of most of the content";
  return { density: densityOfMixture({ parts }), conductivity: conductivityOfMixture({ parts }) };
}

/** Specific heat of the whole, melted, at one temperature [J/(kg·K)], or whose is missing. */
export function specificHeatOf(contents: readonly Content[], temperature: number): number | string {
  const parts = partsOf(contents, moltenOf(contents));
  return typeof parts === "string" ? parts : heatCapacityFunction({ parts })(temperature) / massOf(contents);
}
