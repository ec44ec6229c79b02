import { fitDoseResponse, fitGelPoint } from "gelwright/gel";
import type { ValidInputs } from "../support/fuzz.js";

const trials = [
  { dose: 0.04, strength: 2.1 },
  { dose: 0.05, strength: 7.4 },
  { dose: 0.06, strength: 15.2 },
  { dose: 0.08, strength: 41 },
  { dose: 0.1, strength: 78 },
  { dose: 0.12, strength: 131 },
];
const fit = fitDoseResponse({ trials });
const points = [
  { dose: 0.05, temperature: 48 },
  { dose: 0.08, temperature: 55 },
  { dose: 0.16, temperature: 65 },
];
const line = fitGelPoint({ points });
const crystallising = {
  temperatureMelting: 69.3,
  heatOfFusion: 61_000,
  molarMassGelFormer: 0.2845,
  molarMassOil: 0.88,
};

const open = {
  massGlycerin: 0.0085,
  massWater: 0.0015,
  area: 0.01,
  coefficient: 0.0018,
  relativeHumidity: 0.6,
  temperature: 25,
};

const rinsed = {
  massOil: 0.82,
  densityOil: 915,
  oil: { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 },
  massGlycerin: 0.15,
  massWater: 0.02,
  solids: { mass: 0.01, density: 1080, refractiveIndex: 1.47 },
  diameter: 4e-6,
  temperature: 25,
  beyond: "extend",
};

const { oil: _, ...withoutIndex } = rinsed;

export const validInputs: ValidInputs = {
  ratioOf: [[{ gelFormer: 8, oil: 88 }]],
  ratioOfShare: [[{ shareGelFormer: 0.08 }]],
  shareOfRatio: [[{ ratio: 11.5 }]],
  massesForTotal: [[{ total: 60, ratio: 11 }]],
  oilForGelFormer: [[{ gelFormer: 2.5, ratio: 11 }]],
  gelFormerForOil: [[{ oil: 33, ratio: 11 }]],
  checkRatio: [[{ ratio: 11.5, min: 8, max: 12 }], [{ ratio: 11.5 }], [{ ratio: 7, min: 8 }]],
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
  packingOf: [[{ volumeFractionOil: 0.86, volumeFractionOilMax: 0.9 }], [{ volumeFractionOil: 0.6 }]],
  checkOilFraction: [
    [{ volumeFractionOil: 0.86, volumeFractionOilMax: 0.9 }],
    [{ volumeFractionOil: 0.86 }],
    [{ volumeFractionOil: 0.9, volumeFractionOilMax: 0.9 }],
  ],
  interfaceOfDroplets: [[{ volumeOil: 0.001, diameter: 5e-6 }]],
  surfactantForDroplets: [[{ volumeOil: 0.001, diameter: 5e-6, adsorption: 2e-6, strength: 0.5 }]],
  smallestDroplet: [[{ volumeOil: 0.001, massSurfactant: 0.005, adsorption: 2e-6, strength: 0.5 }]],
  modulusOfDroplets: [[{ volumeFractionOil: 0.86, diameter: 5e-6, interfacialTension: 0.005 }]],
  yieldStressOfDroplets: [[{ volumeFractionOil: 0.86, diameter: 5e-6, interfacialTension: 0.005 }]],
  oilFractionForModulus: [[{ modulus: 500, diameter: 5e-6, interfacialTension: 0.005 }]],
  oilFractionForYieldStress: [[{ yieldStress: 50, diameter: 5e-6, interfacialTension: 0.005 }]],
  criticalCapillaryNumber: [[{ viscosityRatio: 0.3 }]],
  largestDroplet: [[{ viscosityOil: 0.06, viscosityAround: 12, shearRate: 50, interfacialTension: 0.005 }]],
  laplacePressure: [[{ interfacialTension: 0.005, diameter: 1e-5 }]],
  dropletDiameterInShear: [
    [{ viscosityOil: 0.06, viscosityGelFormer: 0.6, viscosityEmulsion: 12, shearRate: 50, interfacialTension: 0.005 }],
  ],
  waterActivity: [[{ massFractionGlycerin: 0.85, temperature: 25, norrishConstant: -1.16 }]],
  glycerinAtHumidity: [[{ relativeHumidity: 0.5, temperature: 25, norrishConstant: -1.16 }]],
  stillAirCoefficient: [[{ gap: 0.015, temperature: 25 }]],
  uptakeDuration: [
    [{ ...open, massFractionGlycerinEnd: 0.8 }],
    [{ ...open, norrishConstant: -1.16, waterActivityEnd: 0.5 }],
  ],
  waterTakenUpAfter: [[{ ...open, duration: 3600 }]],
  waterTakenUp: [[{ massGlycerin: 9, massWater: 1, relativeHumidity: 0.5, temperature: 25, norrishConstant: -1.16 }]],
  checkWaterActivity: [[{ min: 0.72, max: 0.77 }], [{ min: 0.4, max: 0.4 }], [{ min: 0.8, max: 0.8 }]],
  densityGlycerinWater: [
    [{ massFractionGlycerin: 0.85, temperature: 20 }],
    [{ massFractionGlycerin: 0.85, temperature: 40, beyond: "extend" }],
  ],
  refractiveIndexGlycerinWater: [
    [{ massFractionGlycerin: 0.85, temperature: 25 }],
    [{ massFractionGlycerin: 0.85, temperature: 40, beyond: "extend" }],
  ],
  glycerinForIndexMatch: [
    [
      {
        oil: { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 },
        temperature: 25,
        mismatch: 0.001,
        solids: { volumeFraction: 0.05, refractiveIndex: 1.47 },
        beyond: "extend",
      },
    ],
  ],
  temperatureForIndexMatch: [
    [
      {
        oil: { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 },
        massFractionGlycerin: 0.85,
        solids: { volumeFraction: 0.02, refractiveIndex: 1.45 },
        beyond: "extend",
      },
    ],
  ],
  scatteringEfficiency: [
    [{ diameter: 2e-6, refractiveIndexDroplet: 1.46, refractiveIndexOuter: 1.45, wavelength: 589e-9, theory: "mie" }],
    [{ diameter: 2e-6, refractiveIndexDroplet: 1.46, refractiveIndexOuter: 1.45 }],
  ],
  turbidity: [
    [
      {
        diameter: 2e-6,
        refractiveIndexDroplet: 1.46,
        refractiveIndexOuter: 1.45,
        wavelength: 589e-9,
        volumeFractionOil: 0.85,
        air: { volumeFraction: 0.01, diameter: 5e-5 },
      },
    ],
  ],
  transmittance: [[{ turbidity: 20, depth: 0.05 }]],
  gelWithWater: [
    [{ ...rinsed, massWaterAdded: 0.05, interfacialTension: 0.005, mismatchUncertainty: 0.0004 }],
    [{ ...rinsed, massWaterAdded: 0.5 }],
  ],
  waterUntilMilky: [[{ ...rinsed, depth: 2e-4, transmittanceMin: 0.5, mismatchUncertainty: 0.0004 }]],
  waterUntilFlowing: [
    [{ ...withoutIndex, interfacialTension: 0.005, stress: 30 }],
    [{ ...withoutIndex, interfacialTension: 0.005, stress: 3 }],
  ],
  fitDoseResponse: [[{ trials, confidence: 0.9 }], [{ trials, threshold: 0.02 }]],
  strengthAtDose: [[{ fit, dose: 0.07, confidence: 0.9, beyond: "extend" }]],
  doseForStrength: [[{ fit, strength: 50, confidence: 0.9, beyond: "extend" }]],
  fitGelPoint: [[{ points }]],
  gelPointAtDose: [[{ line, dose: 0.1, confidence: 0.9 }]],
  doseForGelPoint: [[{ line, temperature: 60, confidence: 0.9 }]],
  dissolvingTemperature: [[{ ...crystallising, massFractionGelFormer: 0.1 }]],
  dissolvedGelFormer: [[{ ...crystallising, temperature: 40 }]],
};
