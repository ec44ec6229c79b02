// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const batchelorViscosity: Known = [["volumeFraction"], ["beyond"]];
export const capillaryReach: Known = [
  ["surfaceTension", "yieldStress"],
  ["contactAngle", "groove"],
];
export const cassonRegression: Known = [["points"], []];
export const chooseFlowCurve: Known = [["points"], ["models", "weighting", "viscosityInfinite", "scatter"]];
export const cylinderReading: Known = [["cylinder", "speed", "torque"], ["beyond"]];
export const drainedFilm: Known = [["curve", "density", "distance", "duration"], ["inclination"]];
export const einsteinViscosity: Known = [["volumeFraction"], ["beyond"]];
export const filmFlow: Known = [["curve", "density", "thickness"], ["inclination"]];
export const fitAndrade: Known = [["points"], []];
export const fitFlowCurve: Known = [
  ["model", "points"],
  ["weighting", "viscosityInfinite"],
];
export const fitVogel: Known = [["points"], ["weighting"]];
export const fitWalther: Known = [["points"], ["beyond"]];
export const fittedStressAt: Known = [["fit", "shearRate"], ["confidence"]];
export const fittedViscosityAt: Known = [["fit", "temperature"], []];
export const flowThroughNozzle: Known = [["curve", "diameter", "pressureGradient"], []];
export const kriegerDoughertyViscosity: Known = [["volumeFraction", "volumeFractionPacked"], ["intrinsicViscosity"]];
export const letDown: Known = [["mass", "pigment", "pigmentInPaste"], ["pigmentInBase"]];
export const levellingTime: Known = [["surfaceTension", "thickness", "wavelength", "viscosity"], ["remaining"]];
export const loadAtViscosity: Known = [["relativeViscosity", "volumeFractionPacked"], ["intrinsicViscosity"]];
export const maronPierceViscosity: Known = [["volumeFraction", "volumeFractionPacked"], []];
export const nozzleFlow: Known = [["curve", "diameter", "flowRate"], []];
export const ohnesorgeNumber: Known = [["curve", "shearRate", "density", "surfaceTension", "diameter"], []];
export const oilAbsorption: Known = [["volumeOil", "massPigment"], ["densityOil"]];
export const packedFraction: Known = [["oilAbsorption", "densityPigment"], ["densityLinseed"]];
export const relativeReading: Known = [["reading", "reference"], []];
export const residualBrushMark: Known = [["surfaceTension", "thickness", "wavelength", "yieldStress"], []];
export const sweepYieldStresses: Known = [["points"], ["drop"]];
export const thickestFilm: Known = [["yieldStress", "density"], ["inclination"]];
export const viscositiesInUse: Known = [["curve"], ["uses"]];
export const waltherViscosityAt: Known = [["intercept", "slope", "temperature"], ["beyond"]];
export const wettingOil: Known = [["massPigment", "oilAbsorption"], ["densityOil"]];
export const yieldStressForFilm: Known = [["thickness", "density"], ["inclination"]];
export const yieldStressForReach: Known = [
  ["surfaceTension", "distance"],
  ["contactAngle", "groove"],
];
export const yieldStresses: Known = [["points"], ["weighting"]];
