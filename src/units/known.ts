// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const formatQuantityOptions: Known = [[], ["significantDigits"]];
export const massOfVolume: Known = [["volume", "density"], []];
export const volumeOfMass: Known = [["mass", "density"], []];
