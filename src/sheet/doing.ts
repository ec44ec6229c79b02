import type { Plan, PlanStep } from "../plan/index.js";
import { type Block, form, section, text } from "./blocks.js";
import { additionsOf, fromTheRoom, warmingOf } from "./emulsion.js";
import { timeToWorkIn } from "./heat.js";
import { isInPaste, makingOf, pastesIn, takenFrom } from "./pastes.js";
import { besidePremixes, chargedPremixes, isDust, isPremixed } from "./premixes.js";
import type { Sheet } from "./render.js";
import { chargingBetween, fillingMin, neverAbove } from "./step-limits.js";
import type { Table } from "./table.js";
import { predicted, toDo } from "./tables.js";

/** What to do, step by step, and the tables by which oil is added. */
export function doing(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  const count = sheet.say.isClockTime ? labels.timesOfClock : labels.timesCount;
  return [
    ...section(labels.doTitle, [
      ...fromTheRoom(sheet).map(text),
      form(stepTable(sheet)),
      text([`${count}${timeToWorkIn(sheet)}`, ...warmingOf(sheet)].join(" ")),
    ]),
    ...additionsOf(sheet),
  ];
}

/** Each step with its instruction, when it is planned, and beside the planned temperature room for the one that is read. */
function stepTable(sheet: Sheet): Table {
  const { plan, words, say } = sheet;
  // Where all comes from the room, that is said once above the table.
  const isCold = fromTheRoom(sheet).length > 0;
  const { step: number, do: what, time, temperaturePlanned, temperatureMeasured, doneAt, by } = words.labels;
  return {
    columns: [number, what, time, ...(isCold ? [] : [temperaturePlanned]), temperatureMeasured, doneAt, by],
    rows: plan.timeline.flatMap((step) => [
      ...pastesIn(plan, step).map((paste) => [
        "",
        makingOf(sheet, paste),
        words.lines.kettle.before({ time: say.clock(step.timeStart) }),
        ...(isCold ? [] : [""]),
        ...["", "", ""],
      ]),
      [
        String(step.number),
        instructionOf(sheet, step),
        whenOf(sheet, step),
        ...(isCold ? [] : [predicted(say.celsius(step.temperatureEnd))]),
        ...["", "", ""],
      ],
    ]),
  };
}

/** When a step begins and ends; one time if they are the same. */
function whenOf({ words, say }: Sheet, { timeStart, timeEnd }: PlanStep): string {
  const [from, to] = [say.clock(timeStart), say.clock(timeEnd)];
  if (from === to) return from;
  return timeEnd === undefined ? words.lines.kettle.since({ from }) : words.lines.kettle.fromTo({ from, to });
}

/** The whole instruction: with its limits, what is charged, whether the stirrer stands, and the note of the document. */
export function instructionOf(sheet: Sheet, step: PlanStep): string {
  const { stirrerOff, holdUnstirred, charged, noted, sentences } = sheet.words.lines.kettle;
  const instruction = withinLimits(sheet, step);
  const off = step.step.do === "hold" ? holdUnstirred : stirrerOff;
  const standing = isStanding(sheet, step) ? off({ instruction }) : instruction;
  const materials = chargedIn(sheet, step);
  const charging = materials.length === 0 ? standing : charged({ instruction: standing, materials });
  const whole = sentences({ instruction: charging, more: warningsIn(sheet, step) });
  const { note } = step.step;
  return note === undefined ? whole : noted({ instruction: whole, note });
}

/** The instruction with the temperatures between which something may be charged, or above which nothing is heated. */
function withinLimits(sheet: Sheet, step: PlanStep): string {
  const { plan, words, say } = sheet;
  const { onlyBetween, neverAbove: capped } = words.lines.kettle;
  const instruction = toDo(sheet, step);
  const { min, max } = chargingBetween(plan, step);
  const cap = step.step.do === "heat" ? neverAbove(plan, step) : undefined;
  if (cap !== undefined) return capped({ instruction, max: cap }, say);
  return min === undefined && max === undefined ? instruction : onlyBetween({ instruction, min, max }, say);
}

/** Whether a gel former has to dissolve on the heat. */
function isDissolved({ answers }: Plan): boolean {
  return answers.some(({ id }) => id === "gel-former-dissolves");
}

/** What is to be watched in a step: a charge that nothing stirs, a gel former that has to dissolve, dust that goes in dry, a vacuum, a stirrer that stands, and how cool the vessel may get while packs are filled. */
function warningsIn({ plan, words, say }: Sheet, { step, massCharged, inPacks }: PlanStep): readonly string[] {
  const { maskOn, stopBelow, lockOut, airBackIn, stirByHand, onceDissolved } = words.lines.kettle;
  const { phase = "" } = step as { readonly phase?: string };
  const isDusty = plan.weighing.lines.some(
    ({ phase: of, material }) =>
      of === phase && isDust(plan, material) && !isInPaste(plan, phase, material) && !isPremixed(plan, phase, material),
  );
  const min = step.do === "fill" ? fillingMin(plan) : undefined;
  const isUnstirred = plan.timeline.every(({ speed }) => speed === undefined);
  return [
    ...(step.do === "heat" && isUnstirred ? [stirByHand()] : []),
    ...(step.do === "take off the heat" && isDissolved(plan) ? [onceDissolved()] : []),
    ...(massCharged !== undefined && isDusty ? [maskOn()] : []),
    ...(step.do === "de-aerate" && step.pressure !== undefined ? [airBackIn()] : []),
    ...(step.do === "rest" && !inPacks && plan.cautions.some(({ code }) => code === "stirrer") ? [lockOut()] : []),
    ...(min === undefined ? [] : [stopBelow({ min }, say)]),
  ];
}

/** Whether the stirrer stands still in a step in which one would not expect it. */
function isStanding({ plan: { timeline } }: Sheet, { step, speed }: PlanStep): boolean {
  const isStirred = timeline.some((one) => one.speed !== undefined);
  return (
    isStirred &&
    speed === undefined &&
    (step.do === "hold" || step.do === "fill" || step.do === "heat" || step.do === "cool")
  );
}

/** What a step charges, each material and premix with its mass; of a phase that is charged in parts, what is weighed for this part. */
function chargedIn(sheet: Sheet, { number, step, massCharged }: PlanStep): readonly string[] {
  if (massCharged === undefined || !("phase" in step)) return [];
  const { plan, words, say } = sheet;
  const { phase } = step;
  const weighed = plan.weighing.lines.filter(({ phase }) => phase === step.phase);
  const part = plan.weighing.parts.find((one) => one.step === number);
  const own = weighed.filter(({ material }) => !isPremixed(plan, phase, material));
  const materials = (part?.lines ?? own).map(({ material: key, mass: whole }) => {
    const { massOf, asPaste } = words.lines.kettle;
    const line = weighed.find((one) => one.material === key);
    const step = (part ? undefined : line?.left?.increment) ?? line?.increment ?? 0;
    const material = say.material(key);
    const paste = plan.pastes?.find((one) => one.phase === phase && one.material === key);
    if (paste) {
      const { oil, keptBack, total } = paste;
      const mass = say.weighed(total, Math.min(step, keptBack.increment));
      return asPaste({ material, oil: say.material(oil.material), mass });
    }
    const left = part || !line ? whole : besidePremixes(plan, line);
    const mass = takenFrom(plan, phase, key)?.left.mass ?? left;
    return massOf({ material, mass: step > 0 ? say.weighed(mass, step) : say.kilograms(mass) });
  });
  return part ? materials : [...materials, ...chargedPremixes(sheet, phase)];
}
