export { type Addition, additionTemperature } from "./addition-temperature.js";
export { hinderedFactor } from "./hindered-factor.js";
export { type Settling, settlingOverCooling } from "./settling-over-cooling.js";
export { type CoolingTrace, settlingOverCurve } from "./settling-over-curve.js";
export { stokesVelocity } from "./stokes-velocity.js";
export type { Suspension } from "./velocity-curve.js";
export { type YieldStressToHold, yieldStressToHold } from "./yield-stress-to-hold.js";
