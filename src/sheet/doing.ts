import type { PlanStep } from "../plan/index.js";
import { type Block, form, section, text } from "./blocks.js";
import { additionsOf, fromTheRoom, warmingOf } from "./emulsion.js";
import { timeToWorkIn } from "./heat.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";
import { toDo } from "./tables.js";

/** What to do, step by step, and the tables by which oil is added. */
export function doing(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  const count = sheet.say.isClockTime ? labels.timesOfClock : labels.timesCount;
  return [
    ...section(labels.doTitle, [
      ...fromTheRoom(sheet).map(text),
      form(stepTable(sheet)),
      text(`${count}${timeToWorkIn(sheet)}`),
      ...warmingOf(sheet),
    ]),
    ...additionsOf(sheet),
    { kind: "text", text: labels.grades, isSmall: true },
  ];
}

/** Each step with its instruction, when it is planned, and beside the planned temperature room for the one that is read. */
function stepTable(sheet: Sheet): Table {
  const { plan, words, say } = sheet;
  const { step: number, do: what, time, temperaturePlanned, temperatureMeasured, doneAt, by } = words.labels;
  return {
    columns: [number, what, time, temperaturePlanned, temperatureMeasured, doneAt, by],
    rows: plan.timeline.map((step) => [
      String(step.number),
      instructionOf(sheet, step),
      whenOf(sheet, step),
      { text: say.celsius(step.temperatureEnd), grade: "predicted" },
      ...["", "", ""],
    ]),
  };
}

/** When a step begins and ends; one time if they are the same. */
function whenOf({ words, say }: Sheet, { timeStart, timeEnd }: PlanStep): string {
  const [from, to] = [say.clock(timeStart), say.clock(timeEnd)];
  if (from === to) return from;
  return timeEnd === undefined ? words.lines.kettle.since({ from }) : words.lines.kettle.fromTo({ from, to });
}

/** The whole instruction: with what is charged, whether the stirrer stands, and the note of the document. */
export function instructionOf(sheet: Sheet, step: PlanStep): string {
  const { stirrerOff, charged, noted } = sheet.words.lines.kettle;
  const instruction = toDo(sheet, step);
  const standing = isStanding(sheet, step) ? stirrerOff({ instruction }) : instruction;
  const materials = chargedIn(sheet, step);
  const whole = materials.length === 0 ? standing : charged({ instruction: standing, materials });
  const { note } = step.step;
  return note === undefined ? whole : noted({ instruction: whole, note });
}

/** Whether the stirrer stands in a step of which nobody would guess it. */
function isStanding({ plan: { timeline } }: Sheet, { step, speed }: PlanStep): boolean {
  const isStirred = timeline.some((one) => one.speed !== undefined);
  return (
    isStirred &&
    speed === undefined &&
    (step.do === "hold" || step.do === "fill" || step.do === "heat" || step.do === "cool")
  );
}

/** What a step charges, each material with its mass; of a phase that is charged in parts, what is weighed for this part. */
function chargedIn({ plan, words, say }: Sheet, { number, step, massCharged }: PlanStep): readonly string[] {
  if (massCharged === undefined || !("phase" in step)) return [];
  const weighed = plan.weighing.lines.filter(({ phase }) => phase === step.phase);
  const part = plan.weighing.parts.find((one) => one.step === number);
  return (part?.lines ?? weighed).map(({ material, mass }) => {
    const increment = weighed.find((line) => line.material === material)?.increment ?? 0;
    const { massOf, asPaste } = words.lines.kettle;
    const isPaste = plan.particles.some((one) => one.material === material && one.wettingOil !== undefined);
    return (isPaste ? asPaste : massOf)({
      material: say.material(material),
      mass: increment > 0 ? say.weighed(mass, increment) : say.kilograms(mass),
    });
  });
}
