import type { StandardOil } from "./standard-oil.js";

/** Grapeseed oil, by CXS 210-1999. */
export const grapeseedOil: StandardOil = {
  name: "grapeseed oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "14:0": [0, 0.3],
    "16:0": [5.5, 11],
    "16:1": [0, 1.2],
    "18:0": [3, 6.5],
    "18:1": [12, 28],
    "18:2": [58, 78],
    "18:3": [0, 1],
    "20:0": [0, 1],
    "20:1": [0, 0.3],
    "22:0": [0, 0.5],
  },
  iodineValue: [128, 150],
  saponificationValue: [188, 194],
  relativeDensity: [{ range: [0.92, 0.926], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.467, 1.477], temperature: 40 }],
  tocols: [240, 410],
  read: {
    profile: "from memory",
    iodineValue: "second-hand",
    saponificationValue: "from memory",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "from memory",
  },
};

/** Safflower seed oil, by CXS 210-1999. */
export const safflowerOil: StandardOil = {
  name: "safflower seed oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "16:0": [5.3, 8],
    "18:0": [1.9, 2.9],
    "18:1": [8.4, 21.3],
    "18:2": [67.8, 83.2],
    "18:3": [0, 0.1],
    "20:0": [0.2, 0.4],
    "20:1": [0.1, 0.3],
    "22:0": [0, 1],
  },
  iodineValue: [136, 148],
  saponificationValue: [186, 198],
  relativeDensity: [{ range: [0.922, 0.927], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.467, 1.47], temperature: 40 }],
  tocols: [240, 670],
  read: {
    profile: "from memory",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
    tocols: "from memory",
  },
};

/** Soya bean oil, by CXS 210-1999. */
export const soyaOil: StandardOil = {
  name: "soya bean oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "12:0": [0, 0.1],
    "14:0": [0, 0.2],
    "16:0": [8, 13.5],
    "16:1": [0, 0.2],
    "18:0": [2, 5.4],
    "18:1": [17, 30],
    "18:2": [48, 59],
    "18:3": [4.5, 11],
    "20:0": [0.1, 0.6],
    "20:1": [0, 0.5],
    "20:2": [0, 0.1],
    "22:0": [0, 0.7],
    "22:1": [0, 0.3],
    "24:0": [0, 0.5],
  },
  iodineValue: [124, 139],
  saponificationValue: [189, 195],
  relativeDensity: [{ range: [0.919, 0.925], temperature: 20 }],
  refractiveIndex: [{ range: [1.466, 1.47], temperature: 40 }],
  tocols: [600, 3370],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};

/** Sunflower seed oil, by CXS 210-1999. */
export const sunflowerOil: StandardOil = {
  name: "sunflower seed oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, as amended in 2022",
  profile: {
    "16:0": [5, 7.6],
    "18:0": [2.7, 6.5],
    "18:1": [14, 43],
    "18:2": [45.4, 74],
    "18:3": [0, 0.3],
    "20:0": [0.1, 0.5],
    "20:1": [0, 0.3],
    "22:0": [0.3, 1.5],
    "22:1": [0, 0.3],
    "24:0": [0, 0.5],
  },
  iodineValue: [118, 141],
  saponificationValue: [187, 194],
  relativeDensity: [{ range: [0.916, 0.923], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.461, 1.475], temperature: 40 }],
  read: {
    profile: "from memory",
    iodineValue: "second-hand",
    saponificationValue: "first-hand",
    relativeDensity: "first-hand",
    refractiveIndex: "first-hand",
  },
  note: "18:1 and 18:2 were read first-hand in the list of amendments, the other acids are from memory.",
};
