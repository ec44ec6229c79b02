export { type BlendTime, blendTime, blendTimeByRevolutions, ribbonRevolutions } from "./blend-time.js";
export { type Cavern, cavern, speedToMoveWall } from "./cavern.js";
export { type Circulation, circulation } from "./circulation.js";
export { leastWorkingVolume, levelOfVolume, volumeAtLevel } from "./filling.js";
export { impellerFroude, vortexDepthAtMost } from "./froude.js";
export { heatOfStirring } from "./heat-of-stirring.js";
export {
  type Impeller,
  type ImpellerConstants,
  impellerConstants,
  type KnownConstants,
  powerCurveOf,
  type StirredVessel,
  stirringShearRate,
} from "./impeller.js";
export { type MotorMargin, motorMargin } from "./motor-margin.js";
export type { BladedCurve, PowerCurve, PowerPoint } from "./power-curve.js";
export { powerNumber } from "./power-number.js";
export type { Regime } from "./regime.js";
export { impellerReynolds, type Stirring } from "./reynolds.js";
export { type ScaleCriterion, type ScaledStirring, type ScaleUp, scaleUp } from "./scale-up.js";
export { type StirredBatch, type StirredState, stirring } from "./stirring.js";
export type { StirringAtScale } from "./stirring-at-scale.js";
export { tipSpeed } from "./tip-speed.js";
export type { VesselBottom, VesselShape } from "./vessel-bottom.js";
