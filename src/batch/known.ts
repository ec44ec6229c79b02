// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const allowance: Readonly<Record<string, Known>> = {
  proportional: [
    ["kind", "name", "fraction"],
    ["part", "lines"],
  ],
  fixed: [
    ["kind", "name", "mass"],
    ["part", "lines"],
  ],
};
export const batch: Known = [
  ["target", "allowances", "balances", "tare", "tolerance"],
  ["packs", "lots", "density", "stock"],
];
export const batchAllowance: Readonly<Record<string, Known>> = {
  share: [
    ["name", "kind", "fraction"],
    ["materials", "phases", "source"],
  ],
  mass: [
    ["name", "kind", "mass"],
    ["materials", "phases", "source"],
  ],
  samples: [
    ["name", "kind"],
    ["materials", "phases", "source", "packs", "mass", "stabilityTest", "fillChecks"],
  ],
  film: [
    ["name", "kind"],
    ["materials", "phases", "source", "thickness"],
  ],
};
export const chargeFor: Known = [["delivered", "lines", "allowances"], []];
export const chooseBalance: Known = [["name", "mass", "balances"], ["tare"]];
export const costOf: Known = [["lines", "delivered"], ["packs"]];
export const deliveredFrom: Known = [["charge", "allowances"], []];
export const filmAllowances: Known = [["thickness", "density", "diameter", "name"], ["bottom"]];
export const filmMass: Known = [["thickness", "density", "area"], []];
export const filmThickness: Known = [["yieldStress", "density"], []];
export const largestBatch: Known = [
  ["formula", "batch"],
  ["vessel", "yieldStress"],
];
export const lotStage: Known = [
  ["name", "duration"],
  ["needs", "alone"],
];
export const materialsToBuy: Known = [
  ["formula", "batch"],
  ["vessel", "yieldStress"],
];
export const minimumWeight: Known = [["standardDeviation", "increment"], ["uncertainty"]];
export const orderLots: Known = [
  ["lots", "stages"],
  ["resources", "workingDay", "turnover"],
];
export const reconcile: Known = [["lines", "delivered", "accounted"], []];
export const roundToBalances: Known = [["lines"], ["totalMin"]];
export const scaleFormula: Known = [
  ["formula", "batch"],
  ["vessel", "yieldStress"],
];
export const splitIntoLots: Known = [
  ["volumeMin", "volumeMax"],
  ["volume", "mass", "density"],
];
export const target: Known = [[], ["mass", "volume", "density", "packs", "fillMass", "fillVolume"]];
export const weighedLine: Known = [["name", "planned", "actual"], ["tolerance"]];
export const weighingTolerance: Known = [["mass", "increment", "relative"], ["massMax"]];
