import type { ValidInputs } from "../support/fuzz.js";

export const validInputs: ValidInputs = {
  mixingTemperature: [
    [
      {
        charges: [
          { mass: 70, specificHeat: 2150, temperature: 82 },
          { mass: 30, specificHeat: 1980, temperature: 21 },
        ],
      },
    ],
  ],
};
