import type { ValidInputs } from "../support/fuzz.js";

const points = [
  { temperature: 80, viscosity: 0.0105 },
  { temperature: 25, viscosity: 0.055 },
  { temperature: 50, viscosity: 0.0225 },
];
const melts = [
  { law: "constant", viscosity: 0.05 },
  { law: "andrade", factor: 1.3e-6, activationEnergy: 26400 },
  { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 },
  { law: "readings", points },
];
const laws = [...melts, ...melts.map((melt) => ({ law: "setting", melt, temperatureSetting: 62, steepness: 0.4 }))];
const densities = [
  { law: "constant", density: 910 },
  { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
];
const specificHeats = [
  { law: "constant", specificHeat: 2000 },
  { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] },
];
const loss = { law: "newton", conductance: 15 };

export const validInputs: ValidInputs = {
  viscosityFunction: laws.flatMap((law) => [[law], [law, { beyond: "extend" }]]),
  viscosityAt: laws.map((law) => [{ law, temperature: 65, beyond: "throw" }]),
  viscosityRange: laws.map((law) => [law]),
  viscosityKinks: laws.map((law) => [law]),
  temperatureAtViscosity: laws
    .slice(1)
    .flatMap((law) => ["throw", "extend"].map((beyond) => [{ law, viscosity: 0.051, beyond }])),
  densityFunction: densities.map((law) => [law]),
  densityAt: densities.map((law) => [{ law, temperature: 60 }]),
  heatLossFunction: [[loss, 20]],
  heatLossAt: [[{ law: loss, temperature: 85, temperatureAmbient: 20 }]],
  specificHeatFunction: specificHeats.map((law) => [law]),
  specificHeatAt: specificHeats.map((law) => [{ law, temperature: 60 }]),
};
