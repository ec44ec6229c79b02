import type { StandardOil } from "./standard-oil.js";

/** Flaxseed oil, by CXS 210-1999. */
export const flaxseedOil: StandardOil = {
  name: "flaxseed oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "12:0": [0, 0.3],
    "14:0": [0, 0.2],
    "16:0": [4, 11.3],
    "16:1": [0, 0.5],
    "18:0": [2, 8],
    "18:1": [9.8, 36],
    "18:2": [8.3, 30],
    "18:3": [43.8, 70],
    "20:0": [0, 1],
    "20:1": [0, 1.2],
    "22:0": [0, 0.5],
    "22:1": [0, 1.2],
    "24:0": [0, 0.3],
  },
  iodineValue: [170, 211],
  saponificationValue: [185, 197],
  relativeDensity: [{ range: [0.925, 0.935], temperature: 25 }],
  refractiveIndex: [
    { range: [1.472, 1.487], temperature: 20 },
    { range: [1.472, 1.475], temperature: 40 },
  ],
  tocols: [150, 905],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};

/** Walnut oil, by CXS 210-1999. */
export const walnutOil: StandardOil = {
  name: "walnut oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "16:0": [6, 8],
    "16:1": [0, 0.4],
    "17:0": [0, 0.1],
    "17:1": [0, 0.1],
    "18:0": [1, 3],
    "18:1": [14, 23],
    "18:2": [54, 65],
    "18:3": [9, 15.4],
    "20:0": [0, 0.3],
    "20:1": [0, 0.3],
    "22:0": [0, 0.2],
  },
  iodineValue: [132, 162],
  saponificationValue: [189, 198],
  relativeDensity: [{ range: [0.923, 0.925], temperature: 25, temperatureWater: 25 }],
  refractiveIndex: [
    { range: [1.472, 1.475], temperature: 25 },
    { range: [1.469, 1.471], temperature: 40 },
  ],
  tocols: [309, 455],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};
