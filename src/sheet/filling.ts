import type { Plan, PlanStep } from "../plan/index.js";
import { afterwards, isHandledAtOnce } from "./after-filling.js";
import { type Block, form, list, section } from "./blocks.js";
import { contentControl, samplesToTake } from "./fill-control.js";
import type { Sheet } from "./render.js";
import { fillingMin, keptWarmMax } from "./step-limits.js";

/** How the packs are filled, weighed, closed and left, with room for what is read. */
export function filling(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const { labels } = words;
  const step = plan.timeline.find((one) => one.step.do === "fill");
  if (!step) return [];
  const { packsFilled, packsRejected, firstPackAt, lastPackAt, lastPackTemperature, by } = labels;
  const isWarm = !isHandledAtOnce(plan);
  const columns = [firstPackAt, lastPackAt, ...(isWarm ? [lastPackTemperature] : []), packsFilled, packsRejected, by];
  return section(labels.fillTitle, [
    ...list([
      ...packsOf(sheet),
      ...rateOf(sheet, step),
      ...coolingOf(sheet, step),
      ...(isWarm ? warmthOf(sheet, step) : []),
      ...setterOf(sheet),
      ...(isWarm ? skinOf(sheet) : [words.lines.kettle.closeAtOnce()]),
    ]),
    form({ columns, rows: [columns.map(() => "")] }),
    ...contentControl(sheet),
    ...samplesToTake(sheet),
    ...afterwards(sheet),
  ]);
}

/** How many packs of one lot there are, and of what mass. */
function packsOf({ plan, words, say }: Sheet): readonly string[] {
  const { lots, names, packs } = plan;
  const { fillPacks, fillFewer, fillMass, eachPack } = words.lines.kettle;
  const { pack } = names;
  const packed = packedLot(plan);
  if (!packed) return [fillMass({ mass: lots.delivered, pack }, say)];
  const { count, mass } = packed;
  const { packs: asked = count } = lots;
  return [
    fillPacks({ count, pack, mass }, say),
    ...(count < asked ? [fillFewer({ count, asked }, say)] : []),
    ...(packs?.topUp ? [eachPack({ first: packs.topUp.massFirst, second: packs.topUp.massTopUp }, say)] : []),
  ];
}

/** Packs of one lot that are full, what goes into each, and what is left after the last [kg]. */
interface PackedLot {
  readonly count: number;
  readonly mass: number;
  readonly massLeft: number;
}

/** The packs of one lot, as they are aimed at, else as what was asked for gives them: those asked for, or as many as the charge fills. */
export function packedLot({ lots, packs }: Plan): PackedLot | undefined {
  const mass = packs?.massAimed ?? (lots.packs === undefined ? undefined : lots.deliveredTarget / lots.packs);
  if (mass === undefined) return undefined;
  const holds = packs?.packs ? packs.packs.count / lots.count : Math.floor(lots.delivered / mass + 1e-9);
  const count = Math.min(holds, lots.packs ?? holds);
  return { count, mass, massLeft: lots.delivered - count * mass };
}

/** How long the filling is planned to take [s], if that is known. */
function durationOf({ timeStart, timeEnd, step }: PlanStep): number | undefined {
  const isTimed = timeStart !== undefined && timeEnd !== undefined && timeEnd > timeStart;
  if (isTimed) return timeEnd - timeStart;
  // The time that the document gives, of a filling whose beginning is not known.
  return "for" in step && step.for !== undefined && step.for > 0 ? step.for : undefined;
}

/** How fast, so that all packs are full in time. */
function rateOf({ plan, words, say }: Sheet, step: PlanStep): readonly string[] {
  const { rate, rateOfMass } = words.lines.kettle;
  const duration = durationOf(step);
  if (duration === undefined) return [];
  const packed = packedLot(plan);
  return [
    packed
      ? rate({ packsPerMinute: rateFor(packed.count, duration), duration }, say)
      : rateOfMass({ rate: rateFor(plan.lots.delivered, duration) / 60, duration }, say),
  ];
}

/** An amount per minute, rounded up to three digits: at a rate that was rounded down, the last packs would be late. */
function rateFor(amount: number, duration: number): number {
  const rate = (60 * amount) / duration;
  const step = 10 ** (Math.floor(Math.log10(rate)) - 2);
  return Math.ceil(rate / step - 1e-9) * step;
}

/** Whether all packs are full before the vessel is too cool, and what would do where they are not. */
function coolingOf({ plan, words, say }: Sheet, step: PlanStep): readonly string[] {
  const { tooCoolToStart, coolsTooSoon, mayCoolTooSoon, inTime, packsInTime, timeToFill } = words.lines.kettle;
  const { fillingLimits } = plan;
  const min = fillingMin(plan);
  const { temperatureStart: first } = step;
  const { duration, durationMax = duration } = fillingLimits ?? {};
  if (min === undefined || duration === undefined || durationMax === undefined) return [];
  const keep = { min, max: keptWarmMax(plan) };
  if (duration <= 0) return [tooCoolToStart({ first, ...keep }, say)];
  const planned = durationOf(step);
  if (planned === undefined) return [timeToFill({ duration }, say)];
  if (planned <= durationMax) return [];
  const packed = packedLot(plan);
  const told =
    packed && packsInTime({ full: Math.floor((packed.count * duration) / planned), count: packed.count }, say);
  const late =
    planned <= duration
      ? [mayCoolTooSoon({ min }, say)]
      : [coolsTooSoon({ duration, min }, say), ...(told ? [told] : [])];
  const rate = packed && { packsPerMinute: rateFor(packed.count, durationMax) };
  return [[...late, inTime({ ...rate, duration: durationMax, ...keep }, say)].join(" ")];
}

/** How warm it is in the vessel at the first pack and at the last, once if that is the same. */
function warmthOf(
  { words, say }: Sheet,
  { temperatureStart: first, temperatureEnd: last }: PlanStep,
): readonly string[] {
  if (first === undefined || last === undefined) return [];
  const { warmth, warmthWhileFull, warmthThroughout } = words.lines.kettle;
  if (say.celsius(first) === say.celsius(last)) return [warmthThroughout({ temperature: first }, say)];
  return [(last < first ? warmthWhileFull : warmth)({ first, last }, say)];
}

/** What a filler by volume is set to at first. */
function setterOf({ plan, words, say }: Sheet): readonly string[] {
  const { filler } = plan.packs ?? {};
  return filler ? [words.lines.packs.filler(filler, say)] : [];
}

/** From when on nothing more is poured into a pack. */
function skinOf({ plan, words, say }: Sheet): readonly string[] {
  const { skin } = plan.afterFilling;
  return skin && !("notKnown" in skin) ? [words.lines.kettle.noToppingUp(skin, say)] : [];
}
