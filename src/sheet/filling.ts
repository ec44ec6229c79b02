import type { Plan, PlanStep, PlanWait } from "../plan/index.js";
import { type Block, form, list, section } from "./blocks.js";
import { type Sheet, whyNot } from "./render.js";

/** How the packs are filled, closed and left, with room for what is read. */
export function filling(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const { labels } = words;
  const step = plan.timeline.find((one) => one.step.do === "fill");
  if (!step) return [];
  const { packsFilled, packsRejected, firstPackAt, lastPackAt, cappedAt, movedAt, by } = labels;
  const columns = [firstPackAt, lastPackAt, packsFilled, packsRejected, cappedAt, movedAt, by];
  return section(labels.fillTitle, [
    ...list([...packsOf(sheet), ...rateOf(sheet, step), ...setterOf(sheet), ...afterwards(sheet)]),
    form({ columns, rows: [columns.map(() => "")] }),
  ]);
}

/** How many packs of one lot there are, and of what mass. */
function packsOf({ plan, words, say }: Sheet): readonly string[] {
  const { lots, names, packs } = plan;
  const { fillPacks, fillPacksOf, fillMass, eachPack, gross } = words.lines.kettle;
  const { pack } = names;
  const mass = massOfPack(plan);
  if (lots.packs === undefined) return [fillMass({ mass: lots.delivered, pack }, say)];
  const count = Math.floor(lots.packs + 1e-9);
  return [
    mass === undefined ? fillPacks({ count, pack }, say) : fillPacksOf({ count, pack, mass }, say),
    ...(packs?.limits
      ? [gross({ single: packs.limits.single, mean: packs.limits.mean, count: packs.limits.sampleSize }, say)]
      : []),
    ...(packs?.topUp ? [eachPack({ first: packs.topUp.massFirst, second: packs.topUp.massTopUp }, say)] : []),
  ];
}

/** What goes into a pack [kg]: as it is aimed at, else what was asked for over the packs. */
function massOfPack({ lots, packs }: Plan): number | undefined {
  return packs?.massAimed ?? (lots.packs === undefined ? undefined : lots.deliveredTarget / lots.packs);
}

/** How fast, and how warm it is at first and at last. */
function rateOf({ plan, words, say }: Sheet, step: PlanStep): readonly string[] {
  const { timeStart, timeEnd, temperatureStart, temperatureEnd } = step;
  const { rate, rateOfMass, warmth } = words.lines.kettle;
  const { packs, delivered } = plan.lots;
  const isTimed = timeStart !== undefined && timeEnd !== undefined && timeEnd > timeStart;
  const duration = isTimed ? timeEnd - timeStart : stated(step);
  const rates =
    duration === undefined || duration === 0
      ? []
      : [
          packs === undefined
            ? rateOfMass({ rate: delivered / duration, duration }, say)
            : rate({ packsPerMinute: (60 * packs) / duration, duration }, say),
        ];
  const isKnown = temperatureStart !== undefined && temperatureEnd !== undefined;
  return [...rates, ...(isKnown ? [warmth({ first: temperatureStart, last: temperatureEnd }, say)] : [])];
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
  const isAtOnce = ({ firstPack, lastPack }: PlanWait): boolean => firstPack === 0 && lastPack === 0;
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
