import type { ValidInputs } from "../support/fuzz.js";

const row = {
  amountPerDay: 8,
  amountPerBodyWeight: 120,
  retention: 1,
  exposurePerDay: 8,
  exposurePerBodyWeight: 120,
  grade: "first-hand",
};
const product = { exposurePerBodyWeight: 123.2, massFraction: 0.05, dermalAbsorption: 0.5 };
const study = { pointOfDeparture: 100, bioavailability: 0.5 };

export const validInputs: ValidInputs = {
  dailyExposure: [
    [{ productType: "body lotion" }],
    [
      {
        productType: "body gel",
        table: { edition: "own study", jurisdiction: "house", date: "2026-11-28", rows: { "body gel": row } },
      },
    ],
  ],
  systemicExposure: [[product]],
  systemicExposureByArea: [[{ absorbedPerArea: 0.6, area: 500, applicationsPerDay: 2, bodyWeight: 60 }]],
  marginOfSafety: [[{ ...study, systemicExposure: 0.2 }]],
  massFractionForMargin: [[{ exposurePerBodyWeight: 123.2, dermalAbsorption: 0.5, ...study, margin: 100 }]],
  aggregateExposure: [
    [{ products: [{ name: "gel", ...product }] }],
    [
      {
        products: [
          { name: "gel", ...product },
          { name: "cream", ...product },
        ],
        study,
      },
    ],
  ],
  ingredientLimits: [
    [
      {
        ingredients: [{ name: "Oil", amount: "0.3 %" }],
        productType: "body lotion",
        table: {
          jurisdiction: "house",
          date: "2026-11-28",
          rows: [{ name: "Oil", productType: "body lotion", max: "0.6 %" }],
        },
      },
    ],
  ],
};
