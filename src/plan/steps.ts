import { aboveZero, type Draft, type Findings, join } from "../formula/document.js";
import { type ColdStep, isColdStep, needsHeat, readColdStep } from "./cold/step.js";
import type { ColdStepDocument } from "./cold/types.js";
import type { Process, Step } from "./job.js";
import type { StepDocument } from "./types.js";

type HotStepDocument = Exclude<StepDocument, ColdStepDocument>;

/**
 * Second pass over the steps: quantities, and what no kettle can do (hold without heat, charge what is not there,
 * go on after filling). Whether an order is wise is not judged here but in the checks of the plan.
 */
export function readSteps(
  drafts: readonly (Draft<StepDocument> | undefined)[],
  {
    route,
    temperatureRoom,
    phases,
    hasJacket,
  }: {
    readonly route: Process["route"];
    readonly temperatureRoom: number;
    readonly phases: readonly string[];
    readonly hasJacket: boolean;
  },
  findings: Findings,
): readonly (Step | ColdStep)[] {
  const places = drafts.map((_, i) => join("process.steps", i));
  const steps = drafts.flatMap((draft, i) => {
    const place = places[i] ?? "";
    if (!draft || !fitsRoute(draft, route, place, findings)) return [];
    const step = isColdStep(draft)
      ? readColdStep(draft, place, findings)
      : readStep(draft, place, temperatureRoom, findings);
    return step ? [{ step, path: place }] : [];
  });
  const charged = new Set<string>();
  let onHeat = false;
  let filled = false;
  for (const { step, path } of steps) {
    const needs = (condition: boolean, expected: string): void => {
      if (!condition) findings.note(path, `"${step.do}"`, expected);
    };
    if (step.do === "add") needs(charged.size > 0, "a gel former charged before it");
    if (step.do === "charge" || step.do === "add") {
      if (!phases.includes(step.phase))
        findings.note(join(path, "phase"), step.phase, "the name of a phase of the formula");
      if (charged.has(step.phase))
        findings.note(join(path, "phase"), step.phase, "a phase that was not charged before");
      charged.add(step.phase);
    } else needs(charged.size > 0, "a charge before it: the vessel is empty");
    if (step.do === "rest" && route === "cold") continue;
    if (step.do === "rest")
      needs(filled, 'a "fill" before it: what is in the vessel is stirred or cooled, the packs rest');
    else needs(!filled, 'only "rest" after "fill"');
    if (step.do === "hold" || step.do === "take off the heat") needs(onHeat, 'a "heat" before it');
    if (step.do === "cool" && step.jacket) needs(hasJacket, "a jacket described with the vessel");
    if (step.do === "cool" || step.do === "fill") needs(!onHeat, 'a "take off the heat" before it');
    if (step.do === "heat") onHeat = true;
    if (step.do === "take off the heat") onHeat = false;
    if (step.do === "fill") filled = true;
  }
  // Told only where every step could be read, so that one fault does not breed another.
  if (steps.length === drafts.length && steps.length > 0) {
    const forgotten = phases.filter((phase) => !charged.has(phase));
    if (forgotten.length > 0)
      findings.note("process.steps", `no charge of ${forgotten.join(", ")}`, "every phase of the formula charged once");
    if (!filled) findings.note("process.steps", 'no "fill"', 'a "fill" at the end');
  }
  return steps.map(({ step }) => step);
}

/** A step that its route does not have is told, and not read any further. */
function fitsRoute(draft: Draft<StepDocument>, route: Process["route"], path: string, findings: Findings): boolean {
  if (route === "hot" && isColdStep(draft)) {
    findings.note(path, `"${draft.do}"`, 'a step of the hot route, or "route": "cold" with the process');
    return false;
  }
  if (route === "cold" && needsHeat(draft)) {
    findings.note(path, `"${draft.do}"`, "a step of the cold route, which has no heat");
    return false;
  }
  if (route === "cold" && draft.do === "charge" && draft.at !== undefined)
    findings.note(join(path, "at"), draft.at, "no temperature: on the cold route everything is at the room's");
  return true;
}

function readStep(
  draft: Draft<HotStepDocument>,
  path: string,
  temperatureRoom: number,
  findings: Findings,
): Step | undefined {
  const temperature = (text: string | undefined, key: string): number =>
    findings.quantity(text, "temperature", join(path, key));
  const duration = (text: string | undefined): number => findings.quantity(text, "time", join(path, "for"), aboveZero);
  const within = (text: string | undefined): number | undefined =>
    findings.optional(text, "time", join(path, "within"), aboveZero);
  const { note } = draft;
  switch (draft.do) {
    case "charge":
      return {
        do: "charge",
        note,
        phase: draft.phase ?? "",
        temperature: draft.at === undefined ? temperatureRoom : temperature(draft.at, "at"),
        duration: draft.for === undefined ? 0 : duration(draft.for),
        speed: findings.optional(draft.speed, "rotationalSpeed", join(path, "speed"), aboveZero),
      };
    case "heat":
      return { do: "heat", note, temperature: temperature(draft.to, "to"), within: within(draft.within) };
    case "hold":
      return { do: "hold", note, duration: duration(draft.for) };
    case "take off the heat":
      return { do: "take off the heat", note };
    case "cool":
      if ("toViscosity" in draft)
        return {
          do: "cool",
          note,
          viscosity: findings.quantity(draft.toViscosity, "dynamicViscosity", join(path, "toViscosity"), aboveZero),
          jacket: false,
        };
      return {
        do: "cool",
        note,
        temperature: temperature("to" in draft ? draft.to : undefined, "to"),
        jacket: "with" in draft && draft.with === "jacket",
        within: within("within" in draft ? draft.within : undefined),
      };
    case "stir":
      return {
        do: "stir",
        note,
        duration: duration(draft.for),
        speed: findings.optional(draft.speed, "rotationalSpeed", join(path, "speed"), aboveZero),
      };
    case "fill":
      return { do: "fill", note, duration: draft.for === undefined ? 0 : duration(draft.for) };
    case "rest":
      return { do: "rest", note, duration: duration(draft.for) };
    case undefined:
      return undefined;
  }
}
