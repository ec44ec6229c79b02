import type { ValidInputs } from "../support/fuzz.js";

export const validInputs: ValidInputs = {
  ratioOf: [[{ gelFormer: 8, oil: 88 }]],
  ratioOfShare: [[{ shareGelFormer: 0.08 }]],
  shareOfRatio: [[{ ratio: 11.5 }]],
  massesForTotal: [[{ total: 60, ratio: 11 }]],
  oilForGelFormer: [[{ gelFormer: 2.5, ratio: 11 }]],
  gelFormerForOil: [[{ oil: 33, ratio: 11 }]],
  checkRatio: [
    [{ ratio: 11.5, least: 8, greatest: 12, source: "bench trials" }],
    [{ ratio: 11.5 }],
    [{ ratio: 7, least: 8 }],
  ],
  volumeFractionOfOil: [[{ massFractionOil: 0.8, densityOil: 915, densityGelFormer: 1250 }]],
  massFractionOfOil: [[{ volumeFractionOil: 0.85, densityOil: 915, densityGelFormer: 1250 }]],
  temperatureAtDose: [
    [
      {
        dose: 0.1,
        points: [
          { dose: 0.08, temperature: 55 },
          { dose: 0.16, temperature: 65 },
        ],
      },
    ],
  ],
};
