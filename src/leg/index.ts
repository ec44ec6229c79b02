export { type CoolingVessel, coolingLeg } from "./cooling-leg.js";
export { type Leg, type LegEnd, leg } from "./leg.js";
export { temperatureAfter } from "./temperature-after.js";
export type { TemperatureHistory } from "./temperature-history.js";
export type { LegInput } from "./track.js";
