// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const additionTemperature: Known = [
  [
    "diameter",
    "densityParticle",
    "densityFluid",
    "viscosity",
    "temperatureStart",
    "heatCapacity",
    "heatLoss",
    "temperatureAmbient",
    "temperatureEnd",
    "settlingAllowed",
  ],
  ["volumeFraction", "drag", "beyond"],
];
export const additionWindow: Known = [
  [
    "diameter",
    "densityParticle",
    "densityFluid",
    "viscosity",
    "temperatureStart",
    "heatCapacity",
    "heatLoss",
    "temperatureAmbient",
    "temperatureEnd",
    "settlingAllowed",
    "stirrableViscosityMax",
  ],
  ["volumeFraction", "drag", "beyond"],
];
export const boilingPressure: Known = [
  ["vapourPressure", "temperature"],
  ["moleFraction", "beyond"],
];
export const boilingTemperature: Known = [
  ["vapourPressure", "pressure"],
  ["moleFraction", "beyond"],
];
export const brownianDiffusivity: Known = [["diameter", "viscosity", "temperature"], []];
export const bubbleRise: Known = [
  ["diameter", "densityFluid", "viscosity"],
  ["densityGas", "surface", "beyond"],
];
export const clearingOverCooling: Known = [
  [
    "diameter",
    "densityFluid",
    "viscosity",
    "temperatureStart",
    "heatCapacity",
    "heatLoss",
    "temperatureAmbient",
    "temperatureEnd",
    "depth",
  ],
  ["surface", "beyond"],
];
export const clearingTime: Known = [
  ["diameter", "densityFluid", "depth", "viscosity"],
  ["densityGas", "surface", "beyond", "pressureOfDiameter", "pressure"],
];
export const coatedSphereDensity: Known = [["diameterCore", "thicknessCoat", "densityCore", "densityCoat"], []];
export const compositeDensity: Known = [["parts"], []];
export const drag: Readonly<Record<string, Known>> = {
  stokes: [["law"], []],
  "schiller-naumann": [["law"], []],
  cheng: [["law"], []],
  "haider-levenspiel": [["law"], ["sphericity"]],
  ganser: [["law", "sphericity"], []],
  disc: [["law", "aspectRatio", "orientation"], []],
  spheroid: [["law", "aspectRatio", "orientation"], []],
};
export const dragCoefficient: Known = [["reynolds", "drag"], ["beyond"]];
export const dropVelocity: Known = [
  ["diameter", "densityDrop", "densityFluid", "viscosityDrop", "viscosity"],
  ["beyond"],
];
export const flakeOfVolume: Known = [["diameter", "thickness"], []];
export const flakeShape: Known = [["diameter", "thickness"], []];
export const foamHead: Known = [["level", "volumeFractionGas", "pressure"], ["pressureBefore"]];
export const hinderedFactor: Known = [["volumeFraction"], ["reynolds"]];
export const largestSuspendedDensityDifference: Known = [["yieldStress", "diameter"], []];
export const largestSuspendedDiameter: Known = [["yieldStress", "densityParticle", "densityFluid"], []];
export const pecletNumber: Known = [["diameter", "densityParticle", "densityFluid", "temperature"], []];
export const pressureForFoamHead: Known = [["level", "volumeFractionGas", "levelMax"], ["pressureBefore"]];
export const pressureToClear: Known = [
  ["diameter", "densityFluid", "depth", "viscosity", "duration"],
  ["densityGas", "surface", "beyond", "pressureOfDiameter"],
];
export const riseOverCooling: Known = [
  ["diameter", "densityFluid", "viscosity", "temperatureStart", "heatCapacity", "heatLoss", "temperatureAmbient"],
  ["surface", "beyond", "temperatureEnd", "duration"],
];
export const sedimentationLength: Known = [["diameter", "densityParticle", "densityFluid", "temperature"], []];
export const settlingBySize: Known = [
  [
    "densityParticle",
    "densityFluid",
    "viscosity",
    "temperatureStart",
    "heatCapacity",
    "heatLoss",
    "temperatureAmbient",
    "sizes",
    "settlingAllowed",
  ],
  ["volumeFraction", "drag", "beyond", "temperatureEnd", "duration"],
];
export const settlingOverCooling: Known = [
  [
    "diameter",
    "densityParticle",
    "densityFluid",
    "viscosity",
    "temperatureStart",
    "heatCapacity",
    "heatLoss",
    "temperatureAmbient",
  ],
  ["volumeFraction", "drag", "beyond", "temperatureEnd", "duration"],
];
export const settlingOverCurve: Known = [
  ["diameter", "densityParticle", "densityFluid", "viscosity", "times", "temperatures"],
  ["volumeFraction", "drag", "beyond"],
];
export const stokesVelocity: Known = [["diameter", "densityParticle", "densityFluid", "viscosity"], ["beyond"]];
export const temperatureToClear: Known = [
  ["diameter", "densityFluid", "depth", "duration", "viscosity"],
  ["densityGas", "surface", "beyond"],
];
export const terminalVelocity: Known = [
  ["diameter", "densityParticle", "densityFluid", "viscosity", "drag"],
  ["beyond"],
];
export const thickestSuspendedFlake: Known = [["yieldStress", "densityParticle", "densityFluid"], []];
export const viscosityToClear: Known = [
  ["diameter", "densityFluid", "depth", "duration"],
  ["densityGas", "surface", "beyond"],
];
export const yieldStressToSuspend: Known = [["diameter", "densityParticle", "densityFluid"], []];
export const yieldStressToSuspendFlake: Known = [["thickness", "densityParticle", "densityFluid"], []];
