import type { NotKnown, PlanEmulsionGel, PlanSchedule } from "../plan/index.js";
import { additionTable, speedTable, streamTable } from "./additions.js";
import { type Block, denseForm, list, section, table, text } from "./blocks.js";
import { restsOn, type Sheet, whyNot } from "./render.js";
import { type Cell, graded, gradeOf } from "./table.js";

/** So much warmer than the room is not worth a sentence [K]. */
const warmingMin = 0.05;

/** The temperature of the room, if all that goes into an emulsion comes from it [°C]. */
function temperatureOfRoom({ plan: { emulsion, timeline } }: Sheet): number | undefined {
  const isWarmed = timeline.some(({ step }) => step.do === "heat" || (step.do === "charge" && step.at !== undefined));
  return emulsion && !isWarmed ? timeline[0]?.temperatureEnd : undefined;
}

/** What has to stand in the room before the start. */
export function fromTheRoom(sheet: Sheet): readonly string[] {
  const { words, say } = sheet;
  const temperature = temperatureOfRoom(sheet);
  return temperature === undefined ? [] : [words.lines.heat.fromTheRoom({ temperature }, say)];
}

/** How warm stirring makes it. */
export function warmingOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  if (!plan.emulsion) return [];
  const { temperatureMax: temperature, leftOut } = plan.emulsion.warming;
  const { warmed, warmedNotKnown, heatLeftOut } = words.lines.heat;
  const room = temperatureOfRoom(sheet);
  const warm = (): readonly string[] => {
    if (typeof temperature !== "number") return [warmedNotKnown({ reason: whyNot(sheet, temperature.notKnown) })];
    if (room !== undefined && temperature - room < warmingMin) return [];
    return [warmed({ temperature }, say)];
  };
  const reasons = [...new Set(leftOut.map(({ reason }) => whyNot(sheet, reason)))];
  const left = reasons.map((reason) => {
    const steps = leftOut.filter((one) => whyNot(sheet, one.reason) === reason).map(({ step }) => step);
    return heatLeftOut({ steps: [...new Set(steps)], reason }, say);
  });
  return [...warm(), ...left];
}

/** The additions of oil, each schedule with how to follow it; what several have in common is said once, at the first. */
export function additionsOf(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { additionsOf: title, additionsOfStep, asFor, scaleAtStart } = words.lines.emulsion;
  const said = new Map<string, string>();
  return (plan.emulsion?.schedules ?? []).flatMap((of) => {
    if ("notKnown" in of)
      return section(additionsOfStep({ step: of.step }, say), [
        text(words.lines.batch.notKnown({ reason: whyNot(sheet, of.notKnown) })),
      ]);
    const all = howTo(sheet, of);
    const fresh = all.filter((line) => !said.has(line));
    const [before] = all.flatMap((line) => said.get(line) ?? []);
    for (const line of fresh) said.set(line, of.phase);
    const rows = of.form === "stream" ? streamTable(sheet, of) : additionTable(sheet, of);
    return section(title(of, say), [
      ...list(
        before === undefined ? fresh : [[asFor({ phase: before }), ...fresh.slice(0, 1)].join(" "), ...fresh.slice(1)],
      ),
      ...(of.rows.length > 0 ? [text(scaleAtStart(of)), denseForm(rows)] : []),
    ]);
  });
}

function howTo(sheet: Sheet, of: PlanSchedule): readonly string[] {
  const { words, say } = sheet;
  const { labels, lines } = words;
  const { form, rateMax: rate, proceedWhen: when = labels.isTakenUpWhen, rows, speed } = of;
  const { pour, pourNoFaster, lookIn, tick, torque } = lines.emulsion;
  return [
    ...(form === "stream"
      ? [labels.setPump, lookIn({ when })]
      : [rate === undefined ? pour() : pourNoFaster({ rate }, say), tick({ when }), labels.smallerAddition]),
    labels.ifItTurns,
    ...(rows.some((row) => row.torque !== undefined) ? [torque({ speed }, say)] : []),
    timesOf(sheet, of),
  ];
}

/** What the times are worth. */
function timesOf(sheet: Sheet, { keeps, factor }: PlanSchedule): string {
  const { words, say } = sheet;
  const { times, timesBy, timesAlong, timesNotKnown, keeps: kinds } = words.lines.emulsion;
  if ("notKnown" in factor) return timesNotKnown({ reason: whyNot(sheet, factor.notKnown) });
  const kept = kinds[keeps];
  const { first, last } = factor;
  const [one, other] = [say.number(first), say.number(last)];
  if (one !== other) return timesAlong({ first, last, kept }, say);
  return one === say.number(1) ? times({ kept }) : timesBy({ factor: first, kept }, say);
}

/** What the bench's figures make of the gel. */
export function gelByDroplets(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  if (!plan.emulsion) return [];
  const lines = [...oilOf(sheet, plan.emulsion.gel), ...graded("predicted", theoryOf(sheet, plan.emulsion.gel))];
  return section(words.labels.gelByDroplets, list(lines));
}

function oilOf(sheet: Sheet, { volumeFractionOil, droplets }: PlanEmulsionGel): readonly Cell[] {
  const { words, say } = sheet;
  const lines = words.lines.emulsion;
  const reason = ({ notKnown }: NotKnown): string => whyNot(sheet, notKnown);
  return [
    typeof volumeFractionOil === "number"
      ? lines.oil({ fraction: volumeFractionOil }, say)
      : lines.oilNotKnown({ reason: reason(volumeFractionOil) }),
    "notKnown" in droplets
      ? lines.dropletsNotKnown({ reason: reason(droplets) })
      : {
          text: lines.droplets(
            { diameter: droplets.diameter, basis: restsOn(sheet, droplets.basis, droplets.assumptions) },
            say,
          ),
          grade: gradeOf(droplets.basis),
        },
  ];
}

/** Both by theory; what is missing for one is missing for the other, and is said once. */
function theoryOf(sheet: Sheet, { modulusByTheory, yieldStressByTheory }: PlanEmulsionGel): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.emulsion;
  const reasons = [yieldStressByTheory, modulusByTheory].flatMap((figure) =>
    typeof figure === "number" ? [] : [lines.theoryNotKnown({ reason: whyNot(sheet, figure.notKnown) })],
  );
  return [
    ...(typeof yieldStressByTheory === "number"
      ? [lines.yieldStressByTheory({ yieldStress: yieldStressByTheory }, say)]
      : []),
    ...(typeof modulusByTheory === "number" ? [lines.modulusByTheory({ modulus: modulusByTheory }, say)] : []),
    ...new Set(reasons),
  ];
}

/** The bench's stirrer beside this one. */
export function speedsOf(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const speeds = plan.emulsion?.speeds;
  if (!speeds) return [];
  const title = words.labels.stirrerBesideBench;
  if ("notKnown" in speeds)
    return section(title, [text(words.lines.batch.notKnown({ reason: whyNot(sheet, speeds.notKnown) }))]);
  return section(title, [text(words.labels.speedsNote), table(speedTable(sheet, speeds))]);
}
