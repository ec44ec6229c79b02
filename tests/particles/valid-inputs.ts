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
const readMelt = {
  densityFluid: { law: "constant", density: 905 },
  viscosity: { law: "readings", points: readings },
  beyond: "extend",
};
const read = {
  ...setting,
  ...readMelt,
};

const bubble = { diameter: 100e-6, densityFluid: 910, densityGas: 1.2, surface: "mobile" };
const { diameter: _, densityParticle: __, volumeFraction: ___, ...melting } = setting;
/** A suspension whose temperature over time is given, so that nothing is asked of the vessel. */
const { heatCapacity: _c, heatLoss: _l, temperatureAmbient: _a, temperatureStart: _s, ...suspension } = setting;
const { diameter: _d, ...ofAnySize } = setting;
const foam = { level: 0.4, volumeFractionGas: 0.05, pressureBefore: 101325 };
const water = {
  vapourPressure: {
    law: "antoine",
    logarithm: "decimal",
    constantA: 10.11564,
    constantB: 1687.537,
    constantC: -42.98,
    temperatureMin: 0.05,
    temperatureMax: 200.05,
  },
  moleFraction: 0.5,
};
const grain = { diameter: 100e-6, densityParticle: 1400, densityFluid: 910, viscosity: 0.5 };
const drags = [
  { law: "stokes" },
  { law: "schiller-naumann" },
  { law: "cheng" },
  { law: "haider-levenspiel" },
  { law: "haider-levenspiel", sphericity: 0.7 },
  { law: "ganser", sphericity: 0.4 },
  { law: "disc", aspectRatio: 0.05, orientation: "broadside" },
  { law: "spheroid", aspectRatio: 0.3, orientation: "random" },
];
const small = { diameter: 1e-6, densityParticle: 1400, densityFluid: 900, temperature: 25 };

export const validInputs: ValidInputs = {
  stokesVelocity: [
    [{ diameter: 100e-6, densityParticle: 1400, densityFluid: 910, viscosity: 0.05 }],
    [{ diameter: 100e-6, densityParticle: 1.2, densityFluid: 910, viscosity: 0.002, beyond: "extend" }],
  ],
  hinderedFactor: [[{ volumeFraction: 0.05 }], [{ volumeFraction: 0.05, reynolds: 0.5 }]],
  settlingOverCooling: [
    [{ ...setting, temperatureEnd: 30 }],
    [{ ...setting, duration: 43200 }],
    [{ ...read, temperatureEnd: 25 }],
    [{ ...setting, temperatureEnd: 30, drag: { law: "cheng" } }],
  ],
  additionTemperature: [
    [{ ...setting, temperatureEnd: 30, settlingAllowed: 0.005 }],
    [{ ...read, temperatureEnd: 25, settlingAllowed: 0.005 }],
  ],
  yieldStressToSuspend: [[{ diameter: 200e-6, densityParticle: 1400, densityFluid: 910 }]],
  settlingOverCurve: [
    [{ ...suspension, times: [0, 600, 1800, 7200], temperatures: [85, 80, 60, 30] }],
    [{ ...suspension, ...readMelt, times: [0, 600, 1800], temperatures: [70, 70, 30] }],
  ],
  dragCoefficient: drags.map((drag) => [{ reynolds: 0.05, drag, beyond: "throw" }]),
  terminalVelocity: drags.map((drag) => [{ ...grain, drag }]),
  flakeOfVolume: [[{ diameter: 60e-6, thickness: 10e-6 }]],
  flakeShape: [[{ diameter: 200e-6, thickness: 20e-6 }]],
  yieldStressToSuspendFlake: [[{ thickness: 20e-6, densityParticle: 1400, densityFluid: 910 }]],
  thickestSuspendedFlake: [[{ yieldStress: 0.5, densityParticle: 1400, densityFluid: 910 }]],
  largestSuspendedDiameter: [[{ yieldStress: 0.5, densityParticle: 1400, densityFluid: 910 }]],
  largestSuspendedDensityDifference: [[{ yieldStress: 0.5, diameter: 200e-6 }]],
  compositeDensity: [
    [
      {
        parts: [
          { massFraction: 0.6, density: 2800 },
          { massFraction: 0.4, density: 4230 },
        ],
      },
    ],
  ],
  coatedSphereDensity: [[{ diameterCore: 100e-6, thicknessCoat: 2e-6, densityCore: 1380, densityCoat: 2700 }]],
  brownianDiffusivity: [[{ diameter: 1e-6, viscosity: 0.05, temperature: 25 }]],
  pecletNumber: [[small]],
  sedimentationLength: [[small]],
  settlingBySize: [
    [
      {
        ...ofAnySize,
        temperatureStart: 60,
        temperatureEnd: 30,
        settlingAllowed: 0.005,
        sizes: [
          { diameter: 40e-6, massFraction: 0.5 },
          { diameter: 80e-6, massFraction: 0.5 },
        ],
      },
    ],
  ],
  additionWindow: [
    [{ ...setting, temperatureEnd: 30, settlingAllowed: 0.005, stirrableViscosityMax: 10 }],
    [{ ...read, temperatureEnd: 25, settlingAllowed: 0.005, stirrableViscosityMax: 10 }],
  ],
  dropVelocity: [[{ diameter: 100e-6, densityDrop: 1250, densityFluid: 915, viscosityDrop: 1, viscosity: 0.06 }]],
  bubbleRise: [[{ ...bubble, viscosity: 1 }]],
  clearingTime: [
    [{ ...bubble, viscosity: 1, depth: 0.3 }],
    [{ ...bubble, viscosity: 1, depth: 0.3, pressure: 5000, pressureOfDiameter: 1e5 }],
  ],
  pressureToClear: [[{ ...bubble, viscosity: 1, depth: 0.3, duration: 3600, pressureOfDiameter: 1e5 }]],
  viscosityToClear: [[{ ...bubble, depth: 0.3, duration: 3600 }]],
  temperatureToClear: [[{ ...bubble, depth: 0.3, duration: 3600, viscosity: melt }]],
  riseOverCooling: [[{ ...melting, diameter: 80e-6, surface: "mobile", temperatureEnd: 30 }]],
  clearingOverCooling: [[{ ...melting, diameter: 80e-6, temperatureEnd: 30, depth: 0.1 }]],
  foamHead: [[{ ...foam, pressure: 5000 }]],
  pressureForFoamHead: [[{ ...foam, levelMax: 0.6 }]],
  boilingPressure: [[{ ...water, temperature: 60 }]],
  boilingTemperature: [[{ ...water, pressure: 5000 }]],
};
