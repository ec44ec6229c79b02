// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const air: Known = [["conductivity", "kinematicViscosity", "prandtl"], []];
export const airProperties: Known = [["temperature"], ["pressure"]];
export const apparentViscosityAt: Known = [["curve", "shearRate"], []];
export const bandAround: Known = [["value", "band"], []];
export const conductivity: Readonly<Record<string, Known>> = {
  constant: [["law", "conductivity"], []],
  polynomial: [
    ["law", "coefficients"],
    ["temperatureMin", "temperatureMax"],
  ],
};
export const conductivityAt: Known = [["law", "temperature"], ["beyond"]];
export const conductivityFunctionOptions: Known = [[], ["beyond"]];
export const density: Readonly<Record<string, Known>> = {
  constant: [["law", "density"], []],
  linear: [
    ["law", "density", "temperatureReference", "slope"],
    ["temperatureMin", "temperatureMax"],
  ],
  polynomial: [
    ["law", "coefficients"],
    ["temperatureMin", "temperatureMax"],
  ],
};
export const densityAt: Known = [["law", "temperature"], ["beyond"]];
export const densityFunctionOptions: Known = [[], ["beyond"]];
export const enthalpyBetween: Known = [["law", "temperatureStart", "temperatureEnd"], ["beyond"]];
export const flowCurve: Readonly<Record<string, Known>> = {
  newton: [["law", "viscosity"], []],
  "power-law": [["law", "consistency", "flowIndex"], []],
  bingham: [["law", "yieldStress", "plasticViscosity"], []],
  casson: [["law", "yieldStress", "plasticViscosity"], []],
  "herschel-bulkley": [["law", "yieldStress", "consistency", "flowIndex"], []],
  "carreau-yasuda": [["law", "viscosityZero", "viscosityInfinite", "timeConstant", "flowIndex", "transition"], []],
};
export const heatLoss: Readonly<Record<string, Known>> = {
  newton: [["law", "conductance"], []],
  "natural convection": [
    ["law", "area", "surface"],
    ["air", "beyond", "height", "diameter", "perimeter"],
  ],
  radiation: [["law", "area", "emissivity"], []],
  layers: [["law", "area", "layers", "outside"], ["heatTransferCoefficientInside"]],
  sum: [["law", "parts"], []],
};
export const heatLossAt: Known = [["law", "temperature", "temperatureAmbient"], []];
export const heatLossPart: Readonly<Record<string, Known>> = {
  newton: [["law", "conductance"], []],
  "natural convection": [
    ["law", "area", "surface"],
    ["air", "beyond", "height", "diameter", "perimeter"],
  ],
  radiation: [["law", "area", "emissivity"], []],
  layers: [["law", "area", "layers", "outside"], ["heatTransferCoefficientInside"]],
};
export const layer: Known = [["thickness", "conductivity"], []];
export const layers: Known = [["law", "area", "layers", "outside"], ["heatTransferCoefficientInside"]];
export const melt: Readonly<Record<string, Known>> = {
  constant: [["law", "viscosity"], []],
  andrade: [["law", "factor", "activationEnergy"], []],
  "vogel-fulcher-tammann": [["law", "lnFactor", "coefficient", "temperatureVogel"], []],
  readings: [["law", "points"], []],
};
export const nusseltHorizontalPlate: Known = [["rayleigh", "facing"], ["beyond"]];
export const nusseltVerticalCylinder: Known = [["rayleigh", "prandtl", "height", "diameter"], ["beyond"]];
export const nusseltVerticalPlate: Known = [["rayleigh", "prandtl"], ["beyond"]];
export const outerTemperature: Known = [["law", "temperature", "temperatureAmbient"], []];
export const rayleighNumber: Known = [["temperatureSurface", "temperatureAmbient", "length"], ["air"]];
export const shearRateAt: Known = [["curve", "stress"], []];
export const shearStressAt: Known = [["curve", "shearRate"], []];
export const smoothSpecificHeat: Readonly<Record<string, Known>> = {
  constant: [["law", "specificHeat"], []],
  polynomial: [
    ["law", "coefficients"],
    ["temperatureMin", "temperatureMax"],
  ],
};
export const specificHeat: Readonly<Record<string, Known>> = {
  constant: [["law", "specificHeat"], []],
  polynomial: [
    ["law", "coefficients"],
    ["temperatureMin", "temperatureMax"],
  ],
  melting: [["law", "solid", "liquid", "latentHeat", "temperatureOnset", "temperatureEnd"], []],
};
export const specificHeatAt: Known = [["law", "temperature"], ["beyond"]];
export const specificHeatFunctionOptions: Known = [[], ["beyond"]];
export const surfaceLoss: Readonly<Record<string, Known>> = {
  newton: [["law", "conductance"], []],
  "natural convection": [
    ["law", "area", "surface"],
    ["air", "beyond", "height", "diameter", "perimeter"],
  ],
  radiation: [["law", "area", "emissivity"], []],
};
export const temperatureAtViscosity: Known = [["law", "viscosity"], ["beyond"]];
export const vapourPressure: Readonly<Record<string, Known>> = {
  antoine: [["law", "logarithm", "constantA", "constantB", "constantC", "temperatureMin", "temperatureMax"], []],
  "dippr-101": [["law", "coefficients", "temperatureMin", "temperatureMax"], []],
};
export const vapourPressureAt: Known = [["law", "temperature"], ["beyond"]];
export const viscosity: Readonly<Record<string, Known>> = {
  constant: [["law", "viscosity"], []],
  andrade: [["law", "factor", "activationEnergy"], []],
  "vogel-fulcher-tammann": [["law", "lnFactor", "coefficient", "temperatureVogel"], []],
  readings: [["law", "points"], []],
  setting: [["law", "melt", "temperatureSetting", "steepness"], []],
};
export const viscosityAt: Known = [["law", "temperature"], ["beyond"]];
export const viscosityFunctionOptions: Known = [[], ["beyond"]];
