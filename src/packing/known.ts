// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const acceptSample: Known = [["test", "nominal", "tolerableError", "contents"], ["contentsSecond"]];
export const allPacksTest: Known = [["packs", "shareDefectiveMax"], ["noneBeyondTwo"]];
export const batchTest: Known = [["sampleSize", "defectivesMax", "mean", "noneBeyondTwo"], ["second"]];
export const batchTestFor: Known = [["table", "packs"], []];
export const correctionFactor: Known = [["sampleSize", "confidence"], []];
export const errorTable: Known = [
  ["nominalMin", "rows", "jurisdiction", "act", "date", "grade", "source"],
  ["roundUpTo"],
];
export const errorTableRow: Known = [["nominalMax"], ["errorRelative", "error", "roundUpTo"]];
export const fillLimits: Known = [
  ["massFill", "spread", "sampleSize"],
  ["massTare", "spreadTare", "deviations"],
];
export const fillMass: Known = [["volume", "density"], ["temperature"]];
export const fillerVolume: Known = [["mass", "density", "temperatureFill"], []];
export const headSpace: Known = [
  ["volumePack", "mass", "density", "temperatureClosing", "temperatureMax"],
  ["pressureClosing", "vapourPressureClosing", "vapourPressureMax"],
];
export const overfillCost: Known = [["massFill", "nominal", "price", "packs"], []];
export const packsFromBatch: Known = [
  ["massBatch", "massFill"],
  ["massKept", "shareRejected"],
];
export const shareRejected: Known = [["test", "nominal", "tolerableError", "massFill", "spread"], []];
export const spreadOfFill: Known = [["gross", "tare"], []];
export const targetByRules: Known = [
  ["nominal", "tolerableError", "spread", "shareBeyondOneMax", "shareBeyondTwoMax"],
  [],
];
export const targetFill: Known = [["test", "nominal", "tolerableError", "spread", "shareRejectedMax"], []];
export const tolerableError: Known = [["table", "nominal", "by"], []];
export const topUp: Known = [["massFill", "volumeMark", "density", "temperatureFill", "temperatureTopUp"], []];
export const volumeExpansion: Known = [["density", "temperatureStart", "temperatureEnd"], []];
