import { type Draft, type Findings, join } from "../formula/document.js";
import { type Entry, fields, listOf } from "../formula/entry.js";
import type { Formula } from "../formula/index.js";
import type { Read } from "../formula/read-type.js";
import { processFigures } from "./documents/process.js";
import { checkPortions } from "./portions.js";
import type { ProcessDocument, Step } from "./step-documents.js";
import { kindOf, step } from "./steps/index.js";
import type { Need } from "./steps/kind.js";

/** No batch is made in more steps: common practice, no source. Some figures of a step are found from all steps before it, so that many more would take long. */
const stepsMax = 200;

/** Reads a process. */
export const process: Entry<ProcessDocument> = fields<ProcessDocument>({
  ...processFigures,
  steps: listOf(step, 1, stepsMax),
});

/** Where the names of phases are given. */
const homeOfPhases = "formula.phases";

/** What no kettle can do: hold without heat, charge what is not there, go on after filling. Whether an order is wise is asked of the plan. */
export function checkProcess(
  draft: Draft<Read<ProcessDocument>>,
  { phases }: Formula,
  hasJacket: boolean,
  findings: Findings,
): void {
  const { steps = [], air } = draft;
  if (air?.vacuum?.afterPhase !== undefined && !phases.includes(air.vacuum.afterPhase))
    findings.unknownName(
      "process.air.vacuum.afterPhase",
      air.vacuum.afterPhase,
      phases,
      "the name of a phase of the formula",
      [homeOfPhases],
    );
  const charged = new Set<string>();
  let onHeat = false;
  let filled = false;
  // What a step needs before it is only told where all steps before it could be read.
  let sound = true;
  steps.forEach((one, i) => {
    const path = join("process.steps", i);
    const before = sound;
    sound &&= one?.do !== undefined && !findings.holds(join(path, "phase"));
    if (one?.do === undefined) return;
    const needs = (holds: boolean, expected: string): void => {
      if (!holds) findings.note(path, `"${one.do}"`, expected);
    };
    const kind = kindOf(one as Step);
    const needed = typeof kind.needs === "function" ? kind.needs(one as Step) : kind.needs;
    const need = (name: Need): boolean => needed.includes(name);
    if (need("charged")) needs(charged.size > 0 || !before, "a charge before it: the vessel is empty");
    if (need("on-heat")) needs(onHeat || !before, 'a "heat" before it');
    if (need("off-heat")) needs(!onHeat || !before, 'a "take off the heat" before it');
    if (need("not-filled")) needs(!filled, 'only "rest" after "fill"');
    const isJacketSound = !findings.holds("vessel.jacket") && !findings.took("vessel");
    if (need("jacket") && isJacketSound) needs(hasJacket, "a jacket described with the vessel");
    for (const group of kind.oneOf ?? []) {
      const [, second] = group.filter((field) => field in one);
      if (second !== undefined)
        findings.note(join(path, second), "both", `only one of ${group.join(" and ")}`, "contradiction");
    }
    if (kind.check && !findings.holds(path))
      kind.check(one as Step, (field, found, expected) => findings.note(join(path, field), found, expected));
    if ("phase" in one && one.phase !== undefined) {
      if (!phases.includes(one.phase))
        findings.unknownName(join(path, "phase"), one.phase, phases, "the name of a phase of the formula", [
          homeOfPhases,
        ]);
      charged.add(one.phase);
    }
    onHeat = kind.onHeat ?? onHeat;
    filled ||= one.do === "fill";
  });
  checkPortions(steps, findings);
  // Reported only if every step could be read, so that one fault does not breed another.
  if (!sound || steps.length === 0) return;
  const forgotten = findings.lacks("name", homeOfPhases) ? [] : phases.filter((phase) => !charged.has(phase));
  if (forgotten.length > 0)
    findings.note(
      "process.steps",
      `no charge of ${forgotten.join(", ")}`,
      "every phase of the formula charged",
      "missing",
    );
  if (!filled) findings.note("process.steps", 'no "fill"', 'a "fill" at the end', "missing");
}
