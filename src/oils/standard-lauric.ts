import type { StandardOil } from "./standard-oil.js";

/** Coconut oil, by CXS 210-1999. */
export const coconutOil: StandardOil = {
  name: "coconut oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "6:0": [0, 0.7],
    "8:0": [4.6, 10],
    "10:0": [5, 8],
    "12:0": [45.1, 53.2],
    "14:0": [16.8, 21],
    "16:0": [7.5, 10.2],
    "18:0": [2, 4],
    "18:1": [5, 10],
    "18:2": [1, 2.5],
    "18:3": [0, 0.2],
    "20:0": [0, 0.2],
    "20:1": [0, 0.2],
  },
  iodineValue: [6.3, 10.6],
  saponificationValue: [248, 265],
  relativeDensity: [{ range: [0.908, 0.921], temperature: 40, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.448, 1.45], temperature: 40 }],
  tocols: [0, 50],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};

/** Palm kernel oil, by CXS 210-1999. */
export const palmKernelOil: StandardOil = {
  name: "palm kernel oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, text of 2015",
  profile: {
    "6:0": [0, 0.8],
    "8:0": [2.4, 6.2],
    "10:0": [2.6, 5],
    "12:0": [45, 55],
    "14:0": [14, 18],
    "16:0": [6.5, 10],
    "16:1": [0, 0.2],
    "18:0": [1, 3],
    "18:1": [12, 19],
    "18:2": [1, 3.5],
    "18:3": [0, 0.2],
    "20:0": [0, 0.2],
    "20:1": [0, 0.2],
    "22:0": [0, 0.2],
  },
  iodineValue: [14.1, 21.0],
  saponificationValue: [230, 254],
  relativeDensity: [{ range: [0.899, 0.914], temperature: 40, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.448, 1.452], temperature: 40 }],
  tocols: [0, 260],
  read: {
    profile: "second-hand",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
    tocols: "from memory",
  },
};
