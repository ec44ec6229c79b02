import type { StandardOil } from "./standard-oil.js";

/** Safflower seed oil, high-oleic, by CXS 210-1999. */
export const safflowerOilHighOleic: StandardOil = {
  name: "safflower seed oil, high-oleic",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "12:0": [0, 0.2],
    "14:0": [0, 0.2],
    "16:0": [3.6, 6],
    "16:1": [0, 0.2],
    "17:0": [0, 0.1],
    "17:1": [0, 0.1],
    "18:0": [1.5, 2.4],
    "18:1": [70, 83.7],
    "18:2": [9, 19.9],
    "18:3": [0, 1.2],
    "20:0": [0.3, 0.6],
    "20:1": [0.1, 0.5],
    "22:0": [0, 0.4],
    "22:1": [0, 0.3],
    "24:0": [0, 0.3],
    "24:1": [0, 0.3],
  },
  iodineValue: [80, 100],
  saponificationValue: [186, 194],
  relativeDensity: [
    { range: [0.913, 0.919], temperature: 20 },
    { range: [0.91, 0.916], temperature: 25 },
  ],
  refractiveIndex: [
    { range: [1.46, 1.464], temperature: 40 },
    { range: [1.466, 1.47], temperature: 25 },
  ],
  tocols: [250, 700],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};

/** Sunflower seed oil, high-oleic, by CXS 210-1999. */
export const sunflowerOilHighOleic: StandardOil = {
  name: "sunflower seed oil, high-oleic",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "14:0": [0, 0.1],
    "16:0": [2.6, 5],
    "16:1": [0, 0.1],
    "17:0": [0, 0.1],
    "17:1": [0, 0.1],
    "18:0": [2.9, 6.2],
    "18:1": [75, 90.7],
    "18:2": [2.1, 17],
    "18:3": [0, 0.3],
    "20:0": [0.2, 0.5],
    "20:1": [0.1, 0.5],
    "22:0": [0.5, 1.6],
    "22:1": [0, 0.3],
    "24:0": [0, 0.5],
  },
  iodineValue: [78, 90],
  saponificationValue: [182, 194],
  relativeDensity: [{ range: [0.909, 0.915], temperature: 25 }],
  refractiveIndex: [{ range: [1.467, 1.471], temperature: 25 }],
  tocols: [450, 1120],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};

/** Sunflower seed oil, mid-oleic, by CXS 210-1999. */
export const sunflowerOilMidOleic: StandardOil = {
  name: "sunflower seed oil, mid-oleic",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "16:0": [4, 5.5],
    "18:0": [2.1, 5],
    "18:1": [43.1, 71.8],
    "18:2": [18.7, 45.3],
    "18:3": [0, 0.5],
  },
  iodineValue: [94, 122],
  saponificationValue: [190, 191],
  relativeDensity: [{ range: [0.914, 0.916], temperature: 20 }],
  refractiveIndex: [{ range: [1.461, 1.471], temperature: 25 }],
  read: {
    profile: "from memory",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
  },
};
