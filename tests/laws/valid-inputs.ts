import { vapourPressures } from "gelwright/laws";
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
  { law: "linear", density: 925.59, temperatureReference: 0, slope: 0.41757, temperatureMin: -40 },
  { law: "polynomial", coefficients: [999.8, 0.05, -0.0075], temperatureMin: 0, temperatureMax: 100 },
];
const conductivities = [
  { law: "constant", conductivity: 0.17 },
  {
    law: "polynomial",
    coefficients: [0.18071, -2.7604e-4, -1.7749e-7],
    temperatureMin: -40,
    temperatureMax: 150,
  },
];
const specificHeats = [
  { law: "constant", specificHeat: 2000 },
  { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] },
  { law: "polynomial", coefficients: [1984.2, 1.4733], temperatureMin: -40, temperatureMax: 150 },
  {
    law: "melting",
    solid: { law: "constant", specificHeat: 2100 },
    liquid: { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008], temperatureMax: 150 },
    latentHeat: 185000,
    temperatureOnset: 58,
    temperatureEnd: 68,
  },
];
const air = { conductivity: 0.0272, kinematicViscosity: 1.75e-5, prandtl: 0.705 };
const outside = [
  { law: "natural convection", surface: "vertical", area: 1.2, height: 0.6, diameter: 0.6 },
  { law: "radiation", area: 1.2, emissivity: 0.3 },
];
const layers = {
  law: "layers",
  area: 1.2,
  layers: [
    { thickness: 0.003, conductivity: 15 },
    { thickness: 0.05, conductivity: 0.04 },
  ],
  heatTransferCoefficientInside: 80,
  outside,
};
const losses = [
  { law: "newton", conductance: 15 },
  { law: "natural convection", surface: "vertical", area: 1.2, height: 0.6, air, beyond: "throw" },
  { law: "natural convection", surface: "facing up", area: 0.3, perimeter: 2, beyond: "extend" },
  { law: "natural convection", surface: "facing down", area: 0.3, perimeter: 2, air },
  ...outside,
  layers,
  { law: "sum", parts: [...outside, layers] },
];
const extended = ["throw", "extend"];

const flowCurves = [
  { law: "newton", viscosity: 2 },
  { law: "power-law", consistency: 20, flowIndex: 0.5 },
  { law: "bingham", yieldStress: 10, plasticViscosity: 0.5 },
  { law: "casson", yieldStress: 10, plasticViscosity: 0.5 },
  { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 },
  { law: "carreau-yasuda", viscosityZero: 50, viscosityInfinite: 1, timeConstant: 5, flowIndex: 0.4, transition: 2 },
];

export const validInputs: ValidInputs = {
  shearStressAt: flowCurves.map((curve) => [{ curve, shearRate: 5 }]),
  apparentViscosityAt: flowCurves.map((curve) => [{ curve, shearRate: 5 }]),
  shearRateAt: flowCurves.map((curve) => [{ curve, stress: 50 }]),
  yieldStressOf: flowCurves.map((curve) => [curve]),
  viscosityFunction: laws.flatMap((law) => [[law], [law, { beyond: "extend" }]]),
  viscosityAt: laws.map((law) => [{ law, temperature: 65, beyond: "throw" }]),
  viscosityRange: laws.map((law) => [law]),
  viscosityBreakpoints: laws.map((law) => [law]),
  temperatureAtViscosity: laws.slice(1).flatMap((law) => extended.map((beyond) => [{ law, viscosity: 0.051, beyond }])),
  densityFunction: densities.flatMap((law) => [[law], [law, { beyond: "extend" }]]),
  densityAt: densities.flatMap((law) => extended.map((beyond) => [{ law, temperature: 60, beyond }])),
  conductivityFunction: conductivities.flatMap((law) => [[law], [law, { beyond: "extend" }]]),
  conductivityAt: conductivities.flatMap((law) => extended.map((beyond) => [{ law, temperature: 60, beyond }])),
  heatLossFunction: losses.map((law) => [law, 20]),
  heatLossAt: losses.map((law) => [{ law, temperature: 85, temperatureAmbient: 20 }]),
  outerTemperature: [[{ law: layers, temperature: 85, temperatureAmbient: 20 }]],
  bandAround: [
    [{ value: 0.3, band: { by: "difference", min: -0.03, max: 0.03, basis: "judgement", sources: [] } }],
    [{ value: 200, band: { by: "factor", min: 0.8, max: 1.25, basis: "spread", sources: ["raju-2011"] } }],
  ],
  rayleighNumber: [
    [{ temperatureSurface: 85, temperatureAmbient: 20, length: 0.6 }],
    [{ temperatureSurface: 85, temperatureAmbient: 20, length: 0.6, air }],
  ],
  airProperties: [[{ temperature: 40 }], [{ temperature: 40, pressure: 90000 }]],
  nusseltVerticalPlate: [[{ rayleigh: 1e9, prandtl: 0.7, beyond: "throw" }], [{ rayleigh: 0, prandtl: 0.7 }]],
  nusseltVerticalCylinder: extended.map((beyond) => [
    { rayleigh: 1e9, prandtl: 0.7, height: 1, diameter: 0.5, beyond },
  ]),
  nusseltHorizontalPlate: ["up", "down"].flatMap((facing) => [
    [{ rayleigh: 1e6, facing }],
    [{ rayleigh: 1e3, facing, beyond: "extend" }],
  ]),
  specificHeatFunction: specificHeats.flatMap((law) => [[law], [law, { beyond: "extend" }]]),
  specificHeatAt: specificHeats.flatMap((law) => extended.map((beyond) => [{ law, temperature: 60, beyond }])),
  specificHeatBreakpoints: specificHeats.map((law) => [law]),
  enthalpyBetween: specificHeats.flatMap((law) =>
    extended.map((beyond) => [{ law, temperatureStart: 20, temperatureEnd: 85, beyond }]),
  ),
  vapourPressureAt: [
    [{ law: vapourPressures.water, temperature: 80, beyond: "throw" }],
    [
      {
        law: {
          law: "dippr-101",
          coefficients: [73.649, -7258.2, -7.3037, 4.1653e-6, 2],
          temperatureMin: 0.01,
          temperatureMax: 373.946,
        },
        temperature: 80,
      },
    ],
  ],
};
