import type { Plan, PlanStep, PlanWait } from "../plan/index.js";
import { type Block, form, list, section } from "./blocks.js";
import { type Sheet, whyNot } from "./render.js";

/** How the packs are filled, closed and left, with room for what is read. */
export function filling(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const { labels } = words;
  const step = plan.timeline.find((one) => one.step.do === "fill");
  if (!step) return [];
  const { packsFilled, packsRejected, firstPackAt, lastPackAt, lastPackTemperature, cappedAt, movedAt, by } = labels;
  const columns = [firstPackAt, lastPackAt, lastPackTemperature, packsFilled, packsRejected, cappedAt, movedAt, by];
  return section(labels.fillTitle, [
    ...list([
      ...packsOf(sheet),
      ...rateOf(sheet, step),
      ...warmthOf(sheet, step),
      ...setterOf(sheet),
      ...afterwards(sheet),
    ]),
    form({ columns, rows: [columns.map(() => "")] }),
  ]);
}

/** How many packs of one lot there are, and of what mass. */
function packsOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { lots, names, packs } = plan;
  const { fillPacks, fillFewer, fillMass, eachPack, gross, weighWhereFilled } = words.lines.kettle;
  const { pack } = names;
  const packed = packedLot(plan);
  if (!packed) return [fillMass({ mass: lots.delivered, pack }, say)];
  const { count, mass } = packed;
  const { packs: asked = count } = lots;
  return [
    fillPacks({ count, pack, mass }, say),
    ...(count < asked ? [fillFewer({ count, asked }, say)] : []),
    ...(packs?.limits
      ? [
          gross({ single: packs.limits.single, mean: packs.limits.mean, count: packs.limits.sampleSize }, say),
          ...(mayBeTouched(plan) ? [] : [weighWhereFilled()]),
        ]
      : []),
    ...(packs?.topUp ? [eachPack({ first: packs.topUp.massFirst, second: packs.topUp.massTopUp }, say)] : []),
  ];
}

/** Whether a pack may be moved and closed as soon as it is full. */
function mayBeTouched({ afterFilling: { capping, moving } }: Plan): boolean {
  return [capping, moving].every((wait) => wait === undefined || (!("notKnown" in wait) && isAtOnce(wait)));
}

function isAtOnce({ firstPack, lastPack }: PlanWait): boolean {
  return firstPack === 0 && lastPack === 0;
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

/** How fast, so that all packs are full in time. */
function rateOf({ plan, words, say }: Sheet, step: PlanStep): readonly string[] {
  const { timeStart, timeEnd } = step;
  const { rate, rateOfMass } = words.lines.kettle;
  const isTimed = timeStart !== undefined && timeEnd !== undefined && timeEnd > timeStart;
  const duration = isTimed ? timeEnd - timeStart : stated(step);
  if (duration === undefined || duration === 0) return [];
  const perMinute = (amount: number): number => roundedUp((60 * amount) / duration);
  const packed = packedLot(plan);
  return [
    packed
      ? rate({ packsPerMinute: perMinute(packed.count), duration }, say)
      : rateOfMass({ rate: perMinute(plan.lots.delivered) / 60, duration }, say),
  ];
}

/** A rate to three digits that is not below it: at the rate rounded down, the last packs would be late. */
function roundedUp(rate: number): number {
  const step = 10 ** (Math.floor(Math.log10(rate)) - 2);
  return Math.ceil(rate / step - 1e-9) * step;
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

/** The time that the document gives the filling, whose beginning is not known [s]. */
function stated({ step }: PlanStep): number | undefined {
  return "for" in step ? step.for : undefined;
}

/** What a filler by volume is set to at first. */
function setterOf({ plan, words, say }: Sheet): readonly string[] {
  const { filler } = plan.packs ?? {};
  return filler ? [words.lines.packs.filler(filler, say)] : [];
}

/** When packs may be closed and moved. */
function afterwards(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { capping, moving } = plan.afterFilling;
  const { cap, capAtOnce, capNotKnown, move, moveNotKnown, rest } = words.lines.kettle;
  const resting = plan.timeline.find(({ step, inPacks }) => inPacks && step.do === "rest")?.step;
  return [
    "notKnown" in capping
      ? capNotKnown({ reason: whyNot(sheet, capping.notKnown) })
      : (isAtOnce(capping) ? capAtOnce : cap)(capping, say),
    ...(!moving
      ? []
      : ["notKnown" in moving ? moveNotKnown({ reason: whyNot(sheet, moving.notKnown) }) : move(moving, say)]),
    ...(resting && "for" in resting && resting.for !== undefined ? [rest({ duration: resting.for }, say)] : []),
  ];
}
