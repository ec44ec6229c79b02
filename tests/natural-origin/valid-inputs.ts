import type { ValidInputs } from "../support/fuzz.js";

const ingredients = [
  { name: "sunflower oil", mass: 70, natural: 1, naturalOrigin: 1, organic: 0.5, organicOrigin: 0.5 },
  { name: "gel former", mass: 9, naturalOrigin: 0.7 },
  { name: "water", mass: 20, formulationWater: true },
  { name: "fragrance", mass: 1, organicOrigin: 0.2 },
];

export const validInputs: ValidInputs = {
  productContent: [[{ ingredients }], [{ ingredients: [{ mass: 1, formulationWater: true }] }]],
  shortfalls: [[{ ingredients }], [{ ingredients, content: "organic" }]],
  largestShare: [
    [{ ingredients, ingredient: "gel former", claim: 0.9 }],
    [{ ingredients, ingredient: "gel former", replacing: "sunflower oil", claim: 0.95, content: "naturalOrigin" }],
  ],
  molarMassOf: [["C17H34O2"], ["C3H5(C18H33O2)3"]],
  indexByMolarMass: [[{ molarMassNatural: 0.227, molarMass: 0.27 }]],
  indexByRenewableCarbon: [[{ carbonRenewable: 14, carbonTotal: 17 }]],
  extractIndex: [
    [
      {
        plant: { mass: 34.4, organicShare: 1, freshPerDried: 4.5 },
        solvents: { water: 601, natural: 10, organic: 5, derivedNatural: 20, derivedOrganic: 2 },
      },
    ],
  ],
  indexAsSupplied: [[{ index: 0.6, strength: 0.5, carrierIndex: 1 }]],
};
