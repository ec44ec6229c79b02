import type { PlanAir } from "../plan/index.js";
import { type Sheet, whyNot } from "./render.js";

/** Above the pressure of the room no vacuum is needed [Pa]. */
const pressureOfRoom = 101_325;

/** Whether air leaves, and what would make it. */
export function airSection(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { air } = plan;
  if (!air) return [];
  const lines = words.lines.air;
  const { inPack, suspended, staysFromStep, toClear, vacuum } = air;
  return [
    ...air.segments.map((segment) => riseOf(sheet, air, segment)),
    ...(staysFromStep === undefined ? [] : [lines.staysFrom({ step: staysFromStep }, say)]),
    ...(inPack ? [lines.inPack(inPack, say)] : []),
    ...(suspended ? [lines.held(suspended, say)] : []),
    ...(toClear ? [clearingOf(sheet, toClear)] : []),
    ...(vacuum ? vacuumOf(sheet, vacuum) : []),
  ];
}

function riseOf(sheet: Sheet, { diameter }: PlanAir, segment: PlanAir["segments"][number]): string {
  const { words, say } = sheet;
  const { fromStep, toStep, depth, distance, durationToClear: duration, notKnown } = segment;
  const lines = words.lines.air;
  if (notKnown) return lines.riseNotKnown({ diameter, fromStep, reason: whyNot(sheet, notKnown) }, say);
  return duration === undefined
    ? lines.stays({ diameter, fromStep, toStep, depth, distance }, say)
    : lines.leaves({ diameter, fromStep, depth, duration }, say);
}

function clearingOf({ words, say }: Sheet, toClear: NonNullable<PlanAir["toClear"]>): string {
  const { temperature, pressure } = toClear;
  const lines = words.lines.air;
  const isVacuumNeeded = pressure === undefined || pressure < pressureOfRoom;
  if (temperature === undefined && !isVacuumNeeded) return lines.clearsByItself(toClear, say);
  const ways = [
    ...(temperature === undefined ? [] : [lines.keptWarm({ temperature }, say)]),
    ...(pressure === undefined || !isVacuumNeeded ? [] : [lines.underPressure({ pressure }, say)]),
  ];
  return ways.length === 0 ? lines.outOfReach(toClear, say) : lines.toClear({ ...toClear, ways }, say);
}

function vacuumOf(sheet: Sheet, vacuum: NonNullable<PlanAir["vacuum"]>): readonly string[] {
  const { words, say } = sheet;
  const { pressure, foam, duration, boiling, notKnown } = vacuum;
  const lines = words.lines.air;
  return [
    ...(foam === undefined ? [] : [lines.foam({ pressure, foam }, say)]),
    ...(notKnown ? [lines.foamNotKnown({ pressure, reason: whyNot(sheet, notKnown) }, say)] : []),
    ...(duration === undefined ? [] : [lines.clearUnderVacuum({ duration }, say)]),
    ...(boiling ? [lines.boils({ material: say.material(boiling.material), pressure: boiling.pressure }, say)] : []),
  ];
}
