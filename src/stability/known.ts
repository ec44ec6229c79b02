// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const ageingKinetics: Readonly<Record<string, Known>> = {
  arrhenius: [["law", "activationEnergy"], []],
  q10: [["law", "q10"], []],
};
export const centrifugeSpeed: Known = [["relativeCentrifugalForce", "radius"], []];
export const colourDifference1976: Known = [["first", "second"], []];
export const colourDifference2000: Known = [["first", "second"], ["weights"]];
export const equivalentStorage: Known = [
  ["temperature", "temperatureReference", "kinetics", "duration"],
  ["transitions"],
];
export const gravityTime: Known = [
  ["speed", "radiusMin", "radiusMax", "duration"],
  ["yieldStress", "volumeFractionDispersed", "newtonian"],
];
export const meanKineticTemperature: Known = [["readings"], ["activationEnergy", "transitions"]];
export const oilBleed: Known = [
  ["massVessel", "massFilled", "massCollectorBefore", "massCollectorAfter", "uncertaintyWeighing"],
  [],
];
export const relativeCentrifugalForce: Known = [["speed", "radius"], []];
export const shelfLife: Known = [
  ["lots", "limits"],
  ["confidence", "significance", "scatter"],
];
export const shelfLifeLimits: Known = [[], ["min", "max"]];
export const storageCondition: Known = [
  ["name", "pullDays", "packsPerPull"],
  ["temperature", "packsReserve"],
];
export const storageFor: Known = [
  ["temperature", "temperatureReference", "kinetics", "durationReference"],
  ["transitions"],
];
export const temperatureCycles: Known = [["stays", "cycles", "temperatureStart"], ["transitions"]];
export const temperatureReading: Known = [["temperature"], ["duration"]];
export const testPlan: Known = [
  ["conditions", "massPack"],
  ["temperatureReference", "kinetics", "transitions"],
];
export const trend: Known = [["readings"], ["confidence"]];
export const viscosityDrift: Known = [["readings", "duration"], ["confidence"]];
export const weights: Known = [[], ["lightness", "chroma", "hue"]];
export const welchTest: Known = [["first", "second"], ["confidence"]];
