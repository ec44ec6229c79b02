import type { QuestionId } from "./codes/questions.js";
import type { Weighing } from "./parts/batch.js";
import type { Answer } from "./questions/question.js";
import type { PlanStep } from "./timeline.js";

/** Between which temperatures of the vessel a step charges, or up to which it heats, as far as that is certain. */
export interface StepLimits {
  /** Number of the step, from 1. */
  readonly step: number;
  /** Of a step that charges particles [°C]. */
  readonly temperatureMin?: number;
  /** Of a step that charges or heats [°C]. */
  readonly temperatureMax?: number;
}

/** What the limits are found from. */
interface Judged {
  readonly timeline: readonly PlanStep[];
  readonly weighing: Weighing;
  readonly answers: readonly Answer[];
}

/** The limits of the steps that have any. */
export function stepLimitsOf(judged: Judged): readonly StepLimits[] {
  return judged.timeline.flatMap((step): readonly StepLimits[] => {
    const { min, max } = step.step.do === "heat" ? heating(judged, step) : charging(judged, step);
    const isOpen = min === undefined || max === undefined || min <= max;
    if (!isOpen || (min === undefined && max === undefined)) return [];
    return [
      {
        step: step.number,
        ...(min !== undefined && { temperatureMin: min }),
        ...(max !== undefined && { temperatureMax: max }),
      },
    ];
  });
}

/** Up to which a charge may be kept warm while it is filled [°C]: its materials stand it, and its particles settle no further than allowed. */
export function keptWarmMax(answers: readonly Answer[]): number | undefined {
  return min(about(answers, "maximum-temperature", "particles-go-in").flatMap(warmest));
}

interface Between {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** The windows of the particles, and what the materials stand, of a step that charges into a hot vessel. */
function charging({ answers, timeline, weighing }: Judged, step: PlanStep): Between {
  const isHot = timeline.some(({ number, step: { do: what } }) => number < step.number && what === "heat");
  if (step.massCharged === undefined || step.massCharged === step.mass || !isHot) return {};
  const windows = about(answers, "particles-go-in").filter(({ at }) => at.step === step.number);
  const limits = about(answers, "maximum-temperature").filter(isOf(materialsIn(weighing, [step])));
  const coolest = windows.flatMap(({ limit }) => limit.min?.max ?? []);
  return {
    min: coolest.length > 0 ? Math.max(...coolest) : undefined,
    max: min([...windows, ...limits].flatMap(warmest)),
  };
}

/**
 * Where a material reaches its limit in the charge, or at the heated wall, which is as much warmer than the charge as in
 * this step. Nothing if a limit or the wall is not known.
 */
function heating({ answers, timeline, weighing }: Judged, { number, temperatureEnd }: PlanStep): Between {
  const inVessel = materialsIn(
    weighing,
    timeline.filter((step) => step.number <= number),
  );
  const asked = about(answers, "maximum-temperature", "flash-point").filter(isOf(inVessel));
  if (temperatureEnd === undefined || !asked.some(({ at }) => at.place === "heated-wall")) return {};
  const ends = asked.flatMap((answer) => {
    const { at, figure } = answer;
    if (at.place !== "heated-wall") return warmest(answer);
    const { max } = figure;
    if (max === null || at.step !== number) return [];
    return warmest(answer).map((limit) => limit - Math.max(0, max - temperatureEnd));
  });
  const end = ends.length < asked.length ? undefined : min(ends);
  return end !== undefined && end > temperatureEnd ? { max: end } : {};
}

function about(answers: readonly Answer[], ...ids: readonly QuestionId[]): readonly Answer[] {
  return answers.filter(({ id }) => ids.includes(id));
}

function isOf(keys: readonly string[]): (answer: Answer) => boolean {
  return ({ of: { material = "" } }) => keys.includes(material);
}

/** Up to which temperature an answer is certainly met [°C], with its margin; none if that is open. */
function warmest({ limit, margin }: Answer): readonly number[] {
  return [limit.max?.min ?? []].flat().map((end) => end - (margin?.max ?? 0));
}

/** What some steps charge, by the keys of the materials. */
function materialsIn({ lines }: Weighing, steps: readonly PlanStep[]): readonly string[] {
  const phases = steps.flatMap(({ step, massCharged }) =>
    massCharged !== undefined && "phase" in step ? [step.phase] : [],
  );
  return lines.filter(({ phase }) => phases.includes(phase)).map(({ material }) => material);
}

function min(ends: readonly number[]): number | undefined {
  return ends.length > 0 ? Math.min(...ends) : undefined;
}
