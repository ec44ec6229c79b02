import { fitAndrade, fitFlowCurve, fitVogel } from "gelwright/rheology";
import type { ValidInputs } from "../support/fuzz.js";

const points = [
  { shearRate: 0.1, stress: 13.9 },
  { shearRate: 1, stress: 20.2 },
  { shearRate: 3, stress: 26.7 },
  { shearRate: 10, stress: 37.8 },
  { shearRate: 100, stress: 84 },
];
const thinning = [0.001, 0.01, 0.1, 1, 10, 100, 1e4].map((shearRate) => ({
  shearRate,
  stress: shearRate * (0.1 + 50 * (1 + (5 * shearRate) ** 2) ** -0.3),
}));
const sweep = [
  { stress: 1, storageModulus: 400, lossModulus: 40 },
  { stress: 10, storageModulus: 370, lossModulus: 60 },
  { stress: 100, storageModulus: 20, lossModulus: 30 },
];
const readings = [
  { temperature: 25, viscosity: 0.055 },
  { temperature: 50, viscosity: 0.0225 },
  { temperature: 70, viscosity: 0.0131 },
  { temperature: 90, viscosity: 0.0085 },
];
const kinematic = [
  { temperature: 40, kinematicViscosity: 30e-6 },
  { temperature: 100, kinematicViscosity: 5.23e-6 },
];
const curves = [
  { law: "newton", viscosity: 2 },
  { law: "power-law", consistency: 20, flowIndex: 0.5 },
  { law: "bingham", yieldStress: 10, plasticViscosity: 0.5 },
  { law: "casson", yieldStress: 10, plasticViscosity: 0.5 },
  { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 },
  {
    law: "carreau-yasuda",
    viscosityZero: 50,
    viscosityInfinite: 0.1,
    timeConstant: 5,
    flowIndex: 0.4,
    transition: 2,
  },
] as const;
const ripple = { surfaceTension: 0.03, thickness: 100e-6, wavelength: 0.002 };

export const validInputs: ValidInputs = {
  cylinderReading: [
    [
      {
        cylinder: { diameter: 0.02666, diameterCup: 0.02892, length: 0.04, endEffectFactor: 1.1 },
        speed: 0.33,
        torque: 5e-4,
      },
    ],
    [
      {
        cylinder: { diameter: 0.02, diameterCup: 0.03, length: 0.04, endEffectFactor: 1.2 },
        speed: 0.33,
        torque: 5e-4,
        beyond: "extend",
      },
    ],
  ],
  relativeReading: [
    [
      {
        reading: { spindle: "disc 4", speed: 0.33, reading: 43 },
        reference: { spindle: "disc 4", speed: 0.33, reading: 48 },
      },
    ],
  ],
  fitFlowCurve: [
    ...["newton", "power-law", "bingham", "casson", "herschel-bulkley"].map((model) => [{ model, points }]),
    [{ model: "herschel-bulkley", points, weighting: "absolute" }],
    [{ model: "carreau", points: thinning, weighting: "relative", viscosityInfinite: 0.1 }],
  ],
  fittedStressAt: [
    [{ fit: fitFlowCurve({ model: "herschel-bulkley", points }), shearRate: 5 }],
    [{ fit: fitFlowCurve({ model: "casson", points }), shearRate: 5, confidence: 0.9 }],
    [{ fit: fitFlowCurve({ model: "carreau", points: thinning, viscosityInfinite: 0.1 }), shearRate: 5 }],
  ],
  chooseFlowCurve: [
    [{ points, models: ["newton", "power-law", "bingham"], weighting: "relative", scatter: 0.2 }],
    [{ points, models: ["newton", "bingham"], weighting: "absolute", scatter: 10 }],
  ],
  cassonRegression: [[{ points }]],
  yieldStresses: [[{ points: points.slice(1), weighting: "absolute" }]],
  sweepYieldStresses: [[{ points: sweep, drop: 0.1 }]],
  fitAndrade: [[{ points: readings }]],
  fitVogel: [[{ points: readings }], [{ points: readings, weighting: "absolute" }]],
  fittedViscosityAt: [
    [{ fit: fitAndrade({ points: readings }), temperature: 60 }],
    [{ fit: fitVogel({ points: readings }), temperature: 60 }],
  ],
  fitWalther: [[{ points: kinematic, beyond: "throw" }]],
  waltherViscosityAt: [[{ intercept: 9.48716015, slope: 3.73226475, temperature: 50, beyond: "throw" }]],
  thickestFilm: [[{ yieldStress: 12, density: 915, inclination: 45 }]],
  yieldStressForFilm: [[{ thickness: 0.001, density: 915, inclination: 45 }]],
  filmFlow: curves.map((curve) => [{ curve, density: 915, thickness: 0.003, inclination: 60 }]),
  drainedFilm: curves.map((curve) => [{ curve, density: 915, distance: 0.5, duration: 600, inclination: 60 }]),
  capillaryReach: [
    [{ surfaceTension: 0.03, yieldStress: 12, contactAngle: 20, groove: { width: 1e-4, depth: 2e-4 } }],
    [{ surfaceTension: 0.03, yieldStress: 12 }],
  ],
  yieldStressForReach: [
    [{ surfaceTension: 0.03, distance: 0.001, contactAngle: 20, groove: { width: 1e-4, depth: 2e-4 } }],
  ],
  levellingTime: [[{ ...ripple, viscosity: 1, remaining: 0.1 }]],
  residualBrushMark: [[{ ...ripple, yieldStress: 0.5 }]],
  viscositiesInUse: [[{ curve: curves[4], uses: [{ use: "rubbing in", shearRate: 1000 }] }], [{ curve: curves[2] }]],
  nozzleFlow: curves.map((curve) => [{ curve, diameter: 0.002, flowRate: 1e-6 }]),
  flowThroughNozzle: curves.map((curve) => [{ curve, diameter: 0.002, pressureGradient: 1e5 }]),
  ohnesorgeNumber: [
    [{ curve: curves[1], shearRate: 1e4, density: 900, surfaceTension: 0.03, diameter: 3e-4 }],
    [{ curve: curves[5], shearRate: 1e4, density: 900, surfaceTension: 0.03, diameter: 3e-4 }],
  ],
  einsteinViscosity: [[{ volumeFraction: 0.01, beyond: "throw" }]],
  batchelorViscosity: [[{ volumeFraction: 0.05, beyond: "throw" }]],
  maronPierceViscosity: [[{ volumeFraction: 0.3, volumeFractionPacked: 0.6 }]],
  kriegerDoughertyViscosity: [[{ volumeFraction: 0.3, volumeFractionPacked: 0.6, intrinsicViscosity: 3 }]],
  loadAtViscosity: [[{ relativeViscosity: 4, volumeFractionPacked: 0.6, intrinsicViscosity: 3 }]],
  oilAbsorption: [[{ volumeOil: 1e-6, massPigment: 0.005, densityOil: 930 }]],
  wettingOil: [[{ massPigment: 2, oilAbsorption: 40, densityOil: 915 }]],
  packedFraction: [[{ oilAbsorption: 40, densityPigment: 4000, densityLinseed: 935 }]],
  letDown: [[{ mass: 20, pigment: 0.03, pigmentInPaste: 0.5, pigmentInBase: 0.01 }]],
};
