export { type AdditionTemperature, additionTemperature } from "./addition-temperature.js";
export { type AdditionWindow, additionWindow } from "./addition-window.js";
export { boilingPressure, boilingTemperature, type VolatilePart } from "./boiling.js";
export { brownianDiffusivity, pecletNumber, sedimentationLength } from "./brownian.js";
export { type Bubble, type BubbleSurface, bubbleRise } from "./bubble-rise.js";
export { clearingTime, type Layer, pressureToClear } from "./clearing-time.js";
export { dragCoefficient, sphereDragBand } from "./drag-coefficient.js";
export type { DragLaw, Orientation } from "./drag-law.js";
export { dropVelocity } from "./drop-velocity.js";
export { type FlakeShape, flakeOfVolume, flakeShape } from "./flake-shape.js";
export { type Foam, foamHead, pressureForFoamHead } from "./foam-head.js";
export { hinderedFactor, hinderedFactorBand } from "./hindered-factor.js";
export { coatedSphereDensity, compositeDensity, type ParticlePart } from "./particle-density.js";
export { type BubbleInMelt, type BubbleRise, clearingOverCooling, riseOverCooling } from "./rise-over-cooling.js";
export { type SettlingBySize, type SizeClass, settlingBySize } from "./settling-by-size.js";
export { type Settling, settlingOverCooling } from "./settling-over-cooling.js";
export { type SettlingOverCurve, settlingOverCurve } from "./settling-over-curve.js";
export { stokesVelocity } from "./stokes-velocity.js";
export {
  largestSuspendedDensityDifference,
  largestSuspendedDiameter,
  type SuspendedUpTo,
} from "./suspended-diameter.js";
export { thickestSuspendedFlake, yieldStressToSuspendFlake } from "./suspended-flake.js";
export { type ClearingTarget, temperatureToClear, viscosityToClear } from "./temperature-to-clear.js";
export { terminalVelocity } from "./terminal-velocity.js";
export type { Suspension } from "./velocity-curve.js";
export { type YieldStressToSuspend, yieldStressToSuspend } from "./yield-stress-to-suspend.js";
