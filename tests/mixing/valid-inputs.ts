import type { ValidInputs } from "../support/fuzz.js";

const stirring = { speed: 3, diameterImpeller: 0.25, density: 910, viscosity: 0.05 };

export const validInputs: ValidInputs = {
  tipSpeed: [[{ speed: 5, diameterImpeller: 0.1 }]],
  impellerReynolds: [[stirring]],
};
