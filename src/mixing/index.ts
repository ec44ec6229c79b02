export { type Addition, additionSchedule, type ScheduleForm } from "./addition-schedule.js";
export { type AdditionTime, additionTimes, type Incorporation } from "./addition-times.js";
export {
  type BlendTime,
  blendTime,
  blendTimeBands,
  blendTimeByRevolutions,
  ribbonRevolutions,
  ribbonRevolutionsBand,
} from "./blend-time.js";
export { type Cavern, cavern, cavernBand, cavernHeightToDiameter, speedToMoveGelAtWall } from "./cavern.js";
export { type Circulation, circulation } from "./circulation.js";
export { type FeedMoment, feedAt, feedDuration, type OilFeed } from "./continuous-feed.js";
export { type ExponentialFeed, exponentialFeed } from "./exponential-feed.js";
export { levelOfVolume, minimumWorkingVolume, volumeAtLevel } from "./filling.js";
export { flowCurveAtOil, type GelReadings } from "./flow-curve-at-oil.js";
export { impellerFroude, vortexDepthMax } from "./froude.js";
export { type GelThen, gelAlongAdditions } from "./gel-along-additions.js";
export { heatOfStirring } from "./heat-of-stirring.js";
export type { Impeller, ImpellerConstants, StirredVessel } from "./impeller.js";
export { impellerConstants, type KnownConstants, stirringShearRate } from "./impeller-constants.js";
export { powerCurveOf } from "./impeller-curve.js";
export { type IncorporationTimeScale, incorporationTimeScale } from "./incorporation-time-scale.js";
export { type MotorMargin, motorMargin } from "./motor-margin.js";
export { interpolateAtOilFraction, type OilLaw, type OilPoint } from "./oil-law.js";
export type { OilToAdd, VesselWithOil } from "./oil-to-add.js";
export { bladePowerBand, powerBandOf, wideBladePowerBand } from "./power-band.js";
export type { BladedCurve, PowerCurve, PowerPoint } from "./power-curve.js";
export { powerNumber } from "./power-number.js";
export type { Regime } from "./regime.js";
export { type Restart, restartAfterOvershoot } from "./restart.js";
export { impellerReynolds, type Stirring } from "./reynolds.js";
export { type RibbonSize, ribbonPowerBand, ribbonPowerConstant } from "./ribbon-power-constant.js";
export type { ScaleCriterion } from "./scale-criterion.js";
export type { PlantOfSameShape, PlantOfScaleUp, StirredPlant } from "./scale-plant.js";
export { type ScaledStirring, type ScaleUp, scaleUp } from "./scale-up.js";
export { type BenchSchedule, scheduleAtScale } from "./schedule-at-scale.js";
export type { ImpellerSize, VesselSize } from "./sizes.js";
export { type StirredBatch, type StirredState, stirring } from "./stirring.js";
export type { StirringAtScale } from "./stirring-at-scale.js";
export { stirringPowerFunction } from "./stirring-power-function.js";
export { tipSpeed } from "./tip-speed.js";
export { type BottomGeometry, bottomGeometry, type VesselFilling, vesselFilling } from "./vessel-areas.js";
export type { VesselBottom, VesselShape } from "./vessel-bottom.js";
