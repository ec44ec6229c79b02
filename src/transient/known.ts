// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const coolingSegment: Known = [
  ["temperatureStart", "heatCapacity", "heatLoss", "temperatureAmbient"],
  ["rates", "breakpoints", "temperatureEnd", "duration"],
];
export const temperatureAfter: Known = [
  ["temperatureStart", "heatCapacity", "heatFlow", "duration"],
  ["temperatureLimit", "rates", "breakpoints"],
];
export const transientSegment: Known = [
  ["temperatureStart", "heatCapacity", "heatFlow"],
  ["temperatureLimit", "rates", "breakpoints", "temperatureEnd", "duration"],
];
