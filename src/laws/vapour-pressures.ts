import type { AntoineLaw } from "./vapour-pressure.js";

const kelvin = 273.15;

const antoine = (
  logarithm: "decimal" | "natural",
  [constantA, constantB, constantC]: readonly [number, number, number],
  [min, max]: readonly [number, number],
): AntoineLaw => ({
  law: "antoine",
  logarithm,
  constantA,
  constantB,
  constantC,
  temperatureMin: min - kelvin,
  temperatureMax: max - kelvin,
});

/**
 * Vapour pressures of volatile parts, with the temperatures of their fits; a substance that is not here takes the
 * constants of its own data sheet or handbook in the same form.
 *
 * Water, ethanol, dodecane: poling-2001. Glycerol, limonene: dykyj-1999. All as tabled in chemicals-2025.
 */
export const vapourPressures: Readonly<Record<"water" | "ethanol" | "dodecane" | "glycerol" | "limonene", AntoineLaw>> =
  {
    water: antoine("decimal", [10.11564, 1687.537, -42.98], [273.2, 473.2]),
    ethanol: antoine("decimal", [10.33675, 1648.22, -42.232], [276.5, 369.54]),
    dodecane: antoine("decimal", [9.12285, 1639.27, -91.31], [372.89, 520.24]),
    glycerol: antoine("natural", [24.3225748, 6153.38926, -81.155], [341, 563]),
    limonene: antoine("natural", [22.4719871, 4697.95285, -19.639], [290, 450]),
  };
