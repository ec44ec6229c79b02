import { conductivityOfMixture, densityOfMixture, type Material } from "../formula/index.js";
import { densityGlycerinWater } from "../gel/index.js";
import { conductivityAt, type DensityLaw, densityAt, densityFunction } from "../laws/index.js";
import { remembered, stated, unknown } from "./unknown.js";

/** What of one material is in the vessel, by the phase that it came with. */
export interface Content {
  readonly phase: string;
  readonly material: Material;
  /** Mass [kg]. */
  readonly mass: number;
}

/** What lacks a density or a conductivity may be a twentieth of the mass: a gram of pigment does not decide how a jar of oil conducts. */
const knownMin = 0.95;

/** Mass [kg]. */
export function massOf(parts: readonly { readonly mass: number }[]): number {
  return parts.reduce((sum, { mass }) => sum + mass, 0);
}

/** So much of some contents, mixed as they are; nothing of them for no mass. */
export function portionOf(contents: readonly Content[], mass: number): readonly Content[] {
  const share = mass / massOf(contents);
  return mass > 0 ? contents.map((content) => ({ ...content, mass: content.mass * share })) : [];
}

/** Whether something counts as glycerin in an outer phase. */
export function isGlycerin({ material }: Pick<Content, "material">): boolean {
  return material.propertiesOf === "glycerin";
}

/** Whether something counts as water in an outer phase. */
export function isWater({ material }: Pick<Content, "material">): boolean {
  return material.propertiesOf === "water" || material.function === "water" || material.formulationWater;
}

/** Density by a law at a temperature [kg/m³], which is compiled once; where it ends it goes on. */
const densityBy: (law: DensityLaw) => (temperature: number) => number = remembered((law: DensityLaw) =>
  densityFunction(law, { beyond: "extend" }),
);

/** Density of some contents at a temperature [kg/m³]: volumes add up, but glycerin and water, which contract, go by their table. */
export function densityOf(contents: readonly Content[], temperature: number): number {
  const glycerin = massOf(contents.filter(isGlycerin));
  const water = massOf(contents.filter(isWater));
  const pair = glycerin > 0 && water > 0 && temperature >= 0 && temperature <= 60;
  const parts: { readonly mass: number; readonly density: number }[] = pair
    ? [
        {
          mass: glycerin + water,
          density: densityGlycerinWater({
            massFractionGlycerin: glycerin / (glycerin + water),
            temperature,
            beyond: "extend",
          }),
        },
      ]
    : [];
  for (const content of contents) {
    if (pair && (isGlycerin(content) || isWater(content))) continue;
    const { density: law } = content.material;
    if (law) parts.push({ mass: content.mass, density: densityBy(law)(temperature) });
  }
  const whole = massOf(contents);
  if (whole === 0) unknown("nothing-there");
  if (massOf(parts) < knownMin * whole) lacking(contents, "density");
  return densityOfMixture({ parts });
}

/** From which end to which a figure may lie. */
export interface Ends {
  /** Lower end, in the unit of its figure. */
  readonly min: number;
  /** Upper end, likewise. */
  readonly max: number;
}

/**
 * Volumetric expansion of oils, waxes and water of such gels at most [1/K], where none is stated: common practice, no source.
 *
 * @internal
 */
export const usualExpansionMax = 1.2e-3;

/**
 * Volume of some contents at a temperature [m³]. What states no expansion expands from the temperature of its density by
 * nothing, or by the most that is usual.
 */
export function volumeOf(contents: readonly Content[], temperature: number): Ends {
  const whole = massOf(contents);
  const volume = whole / densityOf(contents, temperature);
  const own = ({ material: { density: law }, mass }: Content): number =>
    law ? mass / densityBy(law)(temperature) : (mass / whole) * volume;
  const more = contents.reduce((sum, content) => sum + own(content) * expansionLeftOut(content, temperature), 0);
  return orMore(volume, more);
}

/** A volume at 20 °C [m³] at another temperature, if no expansion is stated. */
export function expanded(volume: number, temperature: number): Ends {
  return orMore(volume, volume * usualExpansionMax * (temperature - roomOfDensities));
}

function orMore(volume: number, more: number): Ends {
  return { min: volume + Math.min(0, more), max: volume + Math.max(0, more) };
}

/** The most that the volume of a material may have grown from the temperature of its density, as a share of it, where no expansion is stated; below 0 where it is cooler. */
export function expansionLeftOut(
  { material: { density: law } }: Pick<Content, "material">,
  temperature: number,
): number {
  if (law?.law === "polynomial" || (law?.law === "linear" && law.slope !== 0)) return 0;
  const from = law?.law === "linear" ? law.temperatureReference : roomOfDensities;
  return usualExpansionMax * (temperature - from);
}

/** Densities are tabled at this temperature, unless they say another [°C]. */
const roomOfDensities = 20;

/** Conductivity of some contents at a temperature [W/(m·K)]. */
export function conductivityOf(contents: readonly Content[], temperature: number): number {
  const parts = contents.flatMap(({ material: { conductivity: law, density }, mass }) =>
    law && density
      ? [
          {
            mass,
            density: densityAt({ law: density, temperature }),
            conductivity: conductivityAt({ law, temperature }),
          },
        ]
      : [],
  );
  if (massOf(parts) < knownMin * massOf(contents)) lacking(contents, "conductivity");
  return conductivityOfMixture({ parts });
}

/** Share of the volume of some contents that is particles of any kind. */
export function grainsOf(contents: readonly Content[]): number {
  const volumeOf = ({ material, mass }: Content): number =>
    mass /
    (material.particle?.density ??
      densityAt({ law: stated(material.density, "material-density", { of: material.key }), temperature: 20 }));
  const sum = (of: readonly Content[]): number => of.reduce((total, one) => total + volumeOf(one), 0);
  const particles = contents.filter(({ material }) => material.particle);
  return particles.length === 0 ? 0 : sum(particles) / sum(contents);
}

/** Names the heaviest material that lacks a property. */
function lacking(contents: readonly Content[], property: "density" | "conductivity"): never {
  const [heaviest] = contents
    .filter(({ material }) => !material[property] || !material.density)
    .sort((one, other) => other.mass - one.mass);
  const without = heaviest?.material.density ? property : "density";
  return unknown("not-stated", { field: `material-${without}`, ...(heaviest && { of: heaviest.material.key }) });
}
