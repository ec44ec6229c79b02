// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const conductivityOfMixture: Known = [["parts"], []];
export const densityOfMixture: Known = [["parts"], []];
export const normalise: Known = [["amounts"], []];
export const refractiveIndexOfMixture: Known = [["temperature", "parts"], []];
export const replaceMaterial: Known = [["formula", "material", "by", "at"], []];
export const specificHeatOfMixture: Known = [["parts"], []];
export const suppliedShare: Known = [["active", "strength"], []];
