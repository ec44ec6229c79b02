export { type SweepReading, sweepYieldStresses } from "./amplitude-sweep.js";
export { type CapillaryPull, capillaryReach, type Groove, yieldStressForReach } from "./capillary-reach.js";
export { cassonRegression } from "./casson-regression.js";
export { chooseFlowCurve, type FlowCandidate, type FlowChoice, type RefusedModel } from "./choose-flow-curve.js";
export { type CylinderInCup, type CylinderReading, cylinderReading } from "./cylinder-viscometer.js";
export { type DrainedFilm, drainedFilm } from "./draining-film.js";
export { type FilmFlow, filmFlow } from "./film-flow.js";
export { type AndradeLaw, fitAndrade } from "./fit-andrade.js";
export { type FlowFit, fitFlowCurve, type Weighting } from "./fit-flow-curve.js";
export { fitVogel, type VogelLaw } from "./fit-vogel.js";
export { type FittedStress, fittedStressAt } from "./fitted-stress.js";
export { type FittedViscosity, fittedViscosityAt } from "./fitted-viscosity.js";
export type { FlowModel } from "./flow-forms.js";
export type { FlowReading } from "./flow-reading.js";
export { levellingTime, type Ripple, residualBrushMark } from "./levelling.js";
export { flowThroughNozzle, type NozzleFlow, nozzleFlow } from "./nozzle.js";
export { ohnesorgeNumber } from "./ohnesorge.js";
export { letDown, oilAbsorption, packedFraction, wettingOil } from "./pigment.js";
export { type ShearInUse, shearRatesInUse, type ViscosityInUse, viscositiesInUse } from "./shear-rates-in-use.js";
export { relativeReading, type SpindleReading } from "./spindle-reading.js";
export {
  batchelorViscosity,
  einsteinViscosity,
  kriegerDoughertyViscosity,
  loadAtViscosity,
  maronPierceViscosity,
} from "./suspension-viscosity.js";
export { thickestFilm, yieldStressForFilm } from "./thickest-film.js";
export { type ViscosityFit, viscosityFitBands } from "./viscosity-fit.js";
export { fitWalther, type KinematicReading, type WaltherLine, waltherViscosityAt } from "./walther.js";
export { type YieldConvention, type YieldStress, yieldStresses } from "./yield-stresses.js";
