import type { ValidInputs } from "../support/fuzz.js";

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 };
const readings = [
  { temperature: 90, viscosity: 0.01 },
  { temperature: 60, viscosity: 0.05 },
  { temperature: 25, viscosity: 40 },
];
const setting = {
  diameter: 100e-6,
  densityParticle: 1400,
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
  volumeFraction: 0.01,
  heatCapacity: 90000,
  heatLoss: { law: "newton", conductance: 12 },
  temperatureAmbient: 20,
  temperatureStart: 85,
};
const read = {
  ...setting,
  densityFluid: { law: "constant", density: 905 },
  viscosity: { law: "readings", points: readings },
  beyond: "extend",
};

export const validInputs: ValidInputs = {
  stokesVelocity: [
    [{ diameter: 100e-6, densityParticle: 1400, densityFluid: 910, viscosity: 0.05 }],
    [{ diameter: 100e-6, densityParticle: 1.2, densityFluid: 910, viscosity: 0.002, beyond: "extend" }],
  ],
  hinderedFactor: [[{ volumeFraction: 0.05 }]],
  settlingOverCooling: [
    [{ ...setting, temperatureEnd: 30 }],
    [{ ...setting, duration: 43200 }],
    [{ ...read, temperatureEnd: 25 }],
  ],
  additionTemperature: [
    [{ ...setting, temperatureEnd: 30, settlingAllowed: 0.005 }],
    [{ ...read, temperatureEnd: 25, settlingAllowed: 0.005 }],
  ],
  yieldStressToHold: [[{ diameter: 200e-6, densityParticle: 1400, densityFluid: 910 }]],
  settlingOverCurve: [
    [{ ...setting, times: [0, 600, 1800, 7200], temperatures: [85, 80, 60, 30] }],
    [{ ...read, times: [0, 600, 1800], temperatures: [70, 70, 30] }],
  ],
};
