import type { StandardOil } from "./standard-oil.js";

/**
 * Castor oil, virgin, by the European Pharmacopoeia. Its acid carries a hydroxyl group: `18:1-OH` is not oleic acid, and
 * the oil is far thicker than others, about 297 mm²/s at 38 °C and 20 at 99 °C (fgregg-svo).
 */
export const castorOil: StandardOil = {
  name: "castor oil",
  standard: "European Pharmacopoeia 11.6, monograph Castor oil, virgin, as in the British Pharmacopoeia 2025",
  profile: {
    "16:0": [0, 2],
    "18:0": [0, 2.5],
    "18:1": [2.5, 6],
    "18:1-OH": [85, 92],
    "18:2": [2.5, 7],
    "18:3": [0, 1],
    "20:1": [0, 1],
  },
  iodineValue: [82, 90],
  saponificationValue: [176, 187],
  relativeDensity: [{ range: [0.952, 0.965], temperature: 20 }],
  refractiveIndex: [{ range: [1.477, 1.481], temperature: 20 }],
  read: {
    profile: "from memory",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
  },
  note: "Ranges but for the acids from a supplier's sheet of the pharmacopoeia's grade. The monograph itself, read in a public copy that ends before the acids, calls the relative density about 0.958 and the refractive index about 1.479, and asks for a hydroxyl value of at least 160.",
};
