import type { StandardOil } from "./standard-oil.js";

/** Almond oil, by CXS 210-1999. */
export const almondOil: StandardOil = {
  name: "almond oil",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "16:0": [4, 9],
    "16:1": [0.2, 0.8],
    "18:0": [0, 3],
    "18:1": [62, 76],
    "18:2": [20, 30],
    "18:3": [0, 0.5],
    "20:0": [0, 0.5],
    "20:1": [0, 0.3],
  },
  iodineValue: [85, 109],
  saponificationValue: [183, 207],
  relativeDensity: [{ range: [0.911, 0.929], temperature: 25 }],
  refractiveIndex: [{ range: [1.468, 1.475], temperature: 25 }],
  read: {
    profile: "from memory",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
  },
  note: "The temperatures are from memory as well.",
};

/** Olive oil, by CXS 33-1981. */
export const oliveOil: StandardOil = {
  name: "olive oil",
  standard: "CXS 33-1981, text of 2003 with amendments to 2013",
  profile: {
    "14:0": [0, 0.05],
    "16:0": [7.5, 20],
    "16:1": [0.3, 3.5],
    "17:0": [0, 0.3],
    "17:1": [0, 0.3],
    "18:0": [0.5, 5],
    "18:1": [55, 83],
    "18:2": [3.5, 21],
    "18:3": [0, 1],
    "20:0": [0, 0.6],
    "20:1": [0, 0.4],
  },
  iodineValue: [75, 94],
  saponificationValue: [184, 196],
  relativeDensity: [{ range: [0.91, 0.916], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.4677, 1.4705], temperature: 20 }],
  read: {
    profile: "first-hand",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
  },
  note: "The text of 2003 with amendments to 2013. 18:3 is limited in a footnote that was not read; it is taken as 0 to 1, from memory. Later revisions begin 18:2 at 2.5, from memory.",
};

/** Rapeseed oil, low-erucic, by CXS 210-1999. */
export const rapeseedOil: StandardOil = {
  name: "rapeseed oil, low-erucic",
  standard: "CXS 210-1999, section 3.1, Table 1 and appendix, Table 2, edition of 2019 with amendments",
  profile: {
    "14:0": [0, 0.2],
    "16:0": [2.5, 7],
    "16:1": [0, 0.6],
    "17:0": [0, 0.3],
    "17:1": [0, 0.3],
    "18:0": [0.8, 3],
    "18:1": [51, 70],
    "18:2": [15, 30],
    "18:3": [5, 14],
    "20:0": [0.2, 1.2],
    "20:1": [0.1, 4.3],
    "20:2": [0, 0.1],
    "22:0": [0, 0.6],
    "22:1": [0, 2],
    "22:2": [0, 0.1],
    "24:0": [0, 0.3],
    "24:1": [0, 0.4],
  },
  iodineValue: [105, 126],
  saponificationValue: [182, 193],
  relativeDensity: [{ range: [0.914, 0.92], temperature: 20 }],
  refractiveIndex: [{ range: [1.465, 1.467], temperature: 40 }],
  tocols: [430, 2680],
  read: {
    profile: "second-hand",
    iodineValue: "second-hand",
    saponificationValue: "second-hand",
    relativeDensity: "second-hand",
    refractiveIndex: "second-hand",
    tocols: "second-hand",
  },
};
