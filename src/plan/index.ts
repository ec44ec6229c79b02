export { answerQuestions } from "./answer-questions.js";
export type { Change, MaterialField, StepField } from "./change.js";
export { type LeverCode, leverCodes, placeCodes, quantityCodes, sideCodes, verdictCodes } from "./codes/answers.js";
export { type AssumptionCode, assumptionCodes } from "./codes/assumptions.js";
export { basisCodes, type LawCode, lawCodes, practiceCodes, type SourceCode, sourceCodes } from "./codes/bases.js";
export { type CautionCode, cautionCodes, type NoteCode, noteCodes } from "./codes/notes.js";
export { type QuestionId, questionIds } from "./codes/questions.js";
export { type FieldCode, fieldCodes, type ReasonCode, reasonCodes } from "./codes/reasons.js";
export {
  correctionCodes,
  directionCodes,
  fillLimitCodes,
  gelPointCodes,
  materialPartCodes,
  scaleCodes,
  transitionCodes,
  type UseCode,
  useCodes,
} from "./codes/words.js";
export { type ComparablePlan, comparePlans, type PlanAtScale, type PlanComparison } from "./compare-plans.js";
export type { Ends } from "./contents.js";
export type {
  ComparedAnswer,
  ComparedParticle,
  DifferingAnswer,
  DifferingField,
  DifferingWindow,
} from "./differences.js";
export type {
  BenchDocument,
  BenchFormulaDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  StrengthTrialsDocument,
  ViscosityDocument,
  ViscosityLawDocument,
} from "./documents/bench.js";
export type { EmulsionDocument, ThicknessDocument } from "./documents/emulsion.js";
export type { InUseDocument } from "./documents/in-use.js";
export type { AssessedDocument, ClaimedIndex, ExposureDocument, LabelDocument } from "./documents/label.js";
export type { AverageQuantityDocument, PackFigures } from "./documents/packing.js";
export type { AirDocument, NozzleDocument, PackDocument, ProcessFigures } from "./documents/process.js";
export type {
  AgeingDocument,
  ConditionDocument,
  CyclesDocument,
  StabilityDocument,
} from "./documents/stability.js";
export type { StirrerDocument, StirrerKind } from "./documents/stirrer.js";
export type {
  BottomDocument,
  CoolingCurveDocument,
  JacketDocument,
  SurfacesDocument,
  VesselDocument,
} from "./documents/vessel.js";
export type { CylinderDocument, TakenDocument } from "./documents/viscometer.js";
export { type AssessedMaterial, exposureFor, type PlanExposure } from "./exposure-for.js";
export type { Basis, Figure, Limit, NotKnown, Side, Verdict } from "./figure.js";
export type { FindingWay } from "./finding-ways.js";
export { fingerprint } from "./fingerprint.js";
export type { Flip } from "./flips.js";
export type { JobFigures, ReadJob } from "./job.js";
export type { Judgement, Margin } from "./judge.js";
export { labelFor, type PlanLabel } from "./label-for.js";
export {
  type MeasureNext,
  type MissingFigure,
  measureNext,
  type OpenAnswer,
  type WaitingAnswer,
} from "./measure-next.js";
export type { PlanAfterFilling } from "./parts/after-filling.js";
export type { PlanAir, PlanAirSegment } from "./parts/air.js";
export type { Cost, Lots, Weighing, WeighingLine, WeighingPart, WeighingPremix } from "./parts/batch.js";
export type { CalendarDay } from "./parts/calendar.js";
export type { Caution } from "./parts/cautions.js";
export type { Droplets } from "./parts/droplets.js";
export type { PlanEmulsion, PlanEmulsionGel, PlanSchedule } from "./parts/emulsion.js";
export type { Evaporation, PredictedLoss } from "./parts/evaporation.js";
export type { FillTarget } from "./parts/fill.js";
export type { PlanFillingLimits } from "./parts/filling-limits.js";
export type { PlanFilms } from "./parts/films.js";
export type { FlowByPoints, PlanFlow, PlanNozzle, PlanUse } from "./parts/flow.js";
export type { PlanGelPoint } from "./parts/gel-points.js";
export type { PlanHandling, PlanWait } from "./parts/handling.js";
export type { ClarityAt, ClarityCorrection, PlanClarity } from "./parts/haze.js";
export type { PlanAllergens } from "./parts/listed.js";
export type { LotOrder } from "./parts/lot-order.js";
export type { MaterialPart, NaturalOrigin } from "./parts/natural-origin.js";
export type { DilutedGel, Note } from "./parts/note.js";
export type { OilInduction, PlanOilLimits } from "./parts/oil-limits.js";
export type { OxidationRank, RankedOil } from "./parts/oxidation-ranking.js";
export type { PlanPacks } from "./parts/packs.js";
export type { PartWeighing } from "./parts/part-weighing.js";
export type { PlanParticle } from "./parts/particles.js";
export type { WeighingPaste } from "./parts/pastes.js";
export type { PlanSamples } from "./parts/samples.js";
export type { ScaleMetrics } from "./parts/scale.js";
export type { Source } from "./parts/sources.js";
export type { PlanSpeed } from "./parts/speeds.js";
export type { PlanPull, PlanStability, PlanStorage } from "./parts/stability.js";
export type { LargestFromStock, PlanStock } from "./parts/stock.js";
export type { LargestSuspended } from "./parts/suspended.js";
export type { Exposed, MaterialExposure } from "./parts/thermal-exposure.js";
export type { PlanStrength, PlanYieldStress } from "./parts/trials.js";
export type { LeftOut, PlanWarming } from "./parts/warming.js";
export type { Plan } from "./plan.js";
export { prepareJob } from "./prepare.js";
export type { PreparedJob, RunInput } from "./prepared-run.js";
export type { Answer, Place, PlaceCode, QuantityCode, Subject } from "./questions/question.js";
export type { JobDocument } from "./read.js";
export { type Remedy, remedies } from "./remedies.js";
export { runPlan, runPrepared } from "./run-plan.js";
export type { SamplesTaken } from "./samples.js";
export { type PlanSeries, planSeries } from "./series.js";
export type { AdditionRow } from "./state.js";
export type {
  AddDocument,
  ChargeDocument,
  CheckDocument,
  CoolDocument,
  DeaerateDocument,
  FillDocument,
  HeatDocument,
  HoldDocument,
  MatchDocument,
  OffDocument,
  ProcessDocument,
  RestDocument,
  SpeedFrom,
  Step,
  StepDocument,
  StirDocument,
} from "./step-documents.js";
export type { StepLimits } from "./step-limits.js";
export {
  type Sweep,
  type SweepColumn,
  type SweepFigures,
  type SweepInput,
  type SweepRow,
  type SweepRowInput,
  sweep,
} from "./sweep.js";
export type { PlanStep } from "./timeline.js";
export type { Reason } from "./unknown.js";
