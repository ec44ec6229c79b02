import type { StandardOil } from "./standard-oil.js";

/** Caprylic/capric triglyceride: glycerol with the acids of 8 and 10 carbons, by the European Pharmacopoeia. */
export const mediumChainTriglycerides: StandardOil = {
  name: "medium-chain triglycerides (caprylic/capric triglyceride)",
  standard: "European Pharmacopoeia, monograph Triglycerides, medium-chain",
  profile: {
    "6:0": [0, 2],
    "8:0": [50, 80],
    "10:0": [20, 50],
    "12:0": [0, 3],
    "14:0": [0, 1],
  },
  iodineValue: [0, 1],
  saponificationValue: [310, 360],
  relativeDensity: [{ range: [0.93, 0.96], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.44, 1.452], temperature: 20 }],
  read: {
    profile: "second-hand",
    acids: { "14:0": "from memory" },
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
  },
  note: "The limit of 14:0 is from memory. The monograph calls the relative density about 0.95 and the refractive index about 1.446; it asks for 25 to 33 mPa·s and at least 95 % of acids of 8 and 10 carbons.",
};
