import type { ValidInputs } from "../support/fuzz.js";

const sound = { "16:0": 7, "18:0": 3, "18:1 n-9": 64, "18:2 n-6": 26 };
const oil = {
  name: "seed oil",
  standard: "an invented standard",
  profile: { "16:0": [4, 9], "18:1": [60, 80], "18:2": [15, 30] },
  iodineValue: [85, 109],
  saponificationValue: [183, 207],
  relativeDensity: [{ range: [0.91, 0.93], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.46, 1.48] }],
  tocols: [0, 500],
  read: {
    profile: "from memory",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
    tocols: "from memory",
  },
};

const toluene = { dispersion: 18, polar: 1.4, hydrogenBonding: 2 };
const ethanol = { dispersion: 15.8, polar: 8.8, hydrogenBonding: 19.4 };
const almond = {
  density: 915,
  viscosity: 0.07,
  refractiveIndex: 1.471,
  specificHeat: 1980,
  iodineValue: 98,
  saponificationValue: 191,
  oxidisability: 3.2,
  requiredHlb: 7,
  naturalOrigin: 1,
  price: 12.5,
  allergens: [],
};

export const validInputs: ValidInputs = {
  oxidationRanking: [
    [
      {
        oils: [
          {
            name: "almond oil",
            oxidisability: 3.2,
            massFraction: 0.2,
            equivalentTime: 9e5,
            equivalentTimeOffHeat: 5e5,
          },
          {
            name: "rosehip oil",
            oxidisability: 12,
            massFraction: 0.1,
            equivalentTime: 9e5,
            equivalentTimeOffHeat: 5e5,
          },
        ],
      },
    ],
  ],
  fattyAcid: [["C18:1 n-9"], ["oleic acid"], ["24:0"], ["18:1-OH n-9"]],
  readProfile: [[{ percentages: { "oleic acid": 80, "C18:2 (n-6)": 19 } }]],
  profileValues: [[{ profile: sound }], [{ profile: { "18:1": 90 }, sumTolerance: 10 }]],
  profileValueRanges: [[{ ranges: { "16:0": [4, 10], "18:1": [60, 80], "18:2": [15, 30] } }]],
  checkCertificate: [
    [
      {
        oil,
        certificate: {
          profile: sound,
          iodineValue: 100,
          saponificationValue: 190,
          relativeDensity: { value: 0.92, temperature: 20 },
          refractiveIndex: { value: 1.47, temperature: 20 },
          tocols: 100,
        },
      },
    ],
    [{ oil, certificate: {} }],
  ],
  profileOfBlend: [
    [
      {
        parts: [
          { mass: 30, profile: sound },
          { mass: 70, profile: { "8:0": 60, "10:0": 40 } },
        ],
      },
    ],
  ],
  viscosityByArrhenius: [
    [
      {
        parts: [
          { share: 0.6, viscosity: 0.06 },
          { share: 0.4, viscosity: 0.02 },
        ],
      },
    ],
  ],
  viscosityByKendallMonroe: [
    [
      {
        parts: [
          { moles: 0.6, viscosity: 0.06 },
          { moles: 0.4, viscosity: 0.02 },
        ],
      },
    ],
  ],
  viscosityByGrunbergNissan: [
    [
      {
        parts: [
          { moles: 0.6, viscosity: 0.06 },
          { moles: 0.4, viscosity: 0.02 },
        ],
      },
    ],
    [
      {
        parts: [
          { moles: 0.6, viscosity: 0.06 },
          { moles: 0.4, viscosity: 0.02 },
        ],
        interactions: [{ between: [0, 1], term: -0.4 }],
      },
    ],
  ],
  grunbergNissanTerm: [
    [
      {
        parts: [
          { moles: 0.6, viscosity: 0.06 },
          { moles: 0.4, viscosity: 0.02 },
        ],
        viscosityBlend: 0.035,
      },
    ],
  ],
  viscosityBlendingNumber: [[{ kinematicViscosity: 20e-6 }]],
  viscosityByBlendingNumber: [
    [
      {
        parts: [
          { mass: 0.6, kinematicViscosity: 5e-6 },
          { mass: 0.4, kinematicViscosity: 20e-6 },
        ],
      },
    ],
  ],
  hlbOfBlend: [
    [
      {
        parts: [
          { mass: 1.6, hlb: 15 },
          { mass: 1.4, hlb: 4.7 },
        ],
      },
    ],
  ],
  requiredHlb: [
    [
      {
        parts: [
          { mass: 35, requiredHlb: 12 },
          { mass: 1, requiredHlb: 10 },
        ],
      },
    ],
  ],
  surfactantShare: [[{ hlb: 10.5, hlbFirst: 15, hlbSecond: 4.3 }]],
  solubilityOfBlend: [
    [
      {
        parts: [
          { volume: 1, parameters: toluene },
          { volume: 2, parameters: ethanol },
        ],
      },
    ],
  ],
  solubilityDistance: [
    [{ first: toluene, second: ethanol }],
    [{ first: toluene, second: ethanol, interactionRadius: 8 }],
  ],
  nearestBlend: [[{ first: toluene, second: ethanol, target: { dispersion: 15.8, polar: 5.3, hydrogenBonding: 7.2 } }]],
  relativeOxidation: [
    [
      {
        parts: [
          { mass: 90, oxidisability: 1.6 },
          { mass: 10, oxidisability: 14 },
        ],
        oxidisabilityReference: 1.6,
      },
    ],
  ],
  antioxidantDose: [
    [
      {
        massOil: 25,
        massFractionTarget: 1e-3,
        massFractionPresent: 4.5e-4,
        strength: 0.7,
        lossOnDrying: 0.02,
        inPlaceOf: "nothing",
      },
    ],
    [{ massOil: 25, massFractionTarget: 1e-3, strength: 0.7 }],
  ],
  inductionTime: [
    [
      {
        readings: [
          { temperature: 100, duration: 150000 },
          { temperature: 110, duration: 72000 },
          { temperature: 120, duration: 34000 },
        ],
        temperature: 90,
        confidence: 0.9,
      },
    ],
  ],
  peroxideRise: [
    [
      {
        readings: [
          { time: 0, peroxideValue: 2 },
          { time: 1e6, peroxideValue: 3.1 },
          { time: 2e6, peroxideValue: 3.9 },
          { time: 3e6, peroxideValue: 5 },
        ],
        confidence: 0.9,
      },
    ],
  ],
  substitute: [
    [
      {
        parts: [
          { mass: 60, oil: { ...almond, name: "almond oil" } },
          { mass: 40, oil: { ...almond, name: "light ester", allergens: ["linalool"] } },
        ],
        replaced: "almond oil",
        by: { name: "squalane", density: 810, refractiveIndex: 1.452 },
        temperature: 20,
      },
    ],
  ],
};
