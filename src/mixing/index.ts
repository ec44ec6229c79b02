export { type Addition, additionSchedule, type ScheduleForm } from "./addition-schedule.js";
export { type AdditionTime, additionTimes, type Uptake } from "./addition-times.js";
export { type BlendTime, blendTime, blendTimeByRevolutions, ribbonRevolutions } from "./blend-time.js";
export { type Cavern, cavern, speedToMoveWall } from "./cavern.js";
export { type Circulation, circulation } from "./circulation.js";
export { type FeedMoment, feedAt, feedDuration, type OilFeed } from "./continuous-feed.js";
export { type ExponentialFeed, exponentialFeed } from "./exponential-feed.js";
export { leastWorkingVolume, levelOfVolume, volumeAtLevel } from "./filling.js";
export { flowCurveAtOil, type GelReadings } from "./flow-curve-at-oil.js";
export { impellerFroude, vortexDepthAtMost } from "./froude.js";
export { type GelThen, gelAlongAdditions } from "./gel-along-additions.js";
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
export { type OilLaw, type OilPoint, oilLawAt } from "./oil-law.js";
export type { OilToAdd, VesselWithOil } from "./oil-to-add.js";
export type { BladedCurve, PowerCurve, PowerPoint } from "./power-curve.js";
export { powerNumber } from "./power-number.js";
export type { Regime } from "./regime.js";
export { type Restart, restartAfterOvershoot } from "./restart.js";
export { impellerReynolds, type Stirring } from "./reynolds.js";
export type { ScaleCriterion } from "./scale-criterion.js";
export type { PlantOfScaleUp, StirredPlant } from "./scale-plant.js";
export { type ScaledStirring, type ScaleUp, scaleUp } from "./scale-up.js";
export { type BenchSchedule, scheduleAtScale } from "./schedule-at-scale.js";
export { type StirredBatch, type StirredState, stirring } from "./stirring.js";
export type { StirringAtScale } from "./stirring-at-scale.js";
export { stirringPowerFunction } from "./stirring-power-function.js";
export { tipSpeed } from "./tip-speed.js";
export { type UptakeScale, uptakeScale } from "./uptake-scale.js";
export { type BottomSize, bottomSize, type VesselFilling, vesselFilling } from "./vessel-areas.js";
export type { VesselBottom, VesselShape } from "./vessel-bottom.js";
