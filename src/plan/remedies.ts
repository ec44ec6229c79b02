import { record, refuse, show } from "../guards.js";
import { type Change, changed } from "./change.js";
import type { LeverCode } from "./codes/answers.js";
import { copied } from "./copied.js";
import type { ReadJob } from "./job.js";
import * as known from "./known.js";
import { possibly } from "./masses.js";
import { nearest, partThatHolds } from "./nearest.js";
import { changedJob, type RunInput, runOf } from "./prepared-run.js";
import { questionOf } from "./questions/index.js";
import { type Answer, answersTo, type Question, type Subject, sameSubject } from "./questions/question.js";

/** A change that makes an answer met, and the answer that it then gets. */
export interface Remedy {
  readonly lever: LeverCode;
  readonly change: Change;
  readonly answer: Answer;
}

/**
 * The changes that make one answer met: for each lever of its question the nearest value, and the answer that it gives.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes on which the answer stands; default none.
 * @param input.answer - An answer of this job that is not met, or its `id` and `of`.
 * @returns A remedy for each lever that makes it met within its bracket; none for an answer that is met.
 * @throws CalculationError `input` for an answer that this job does not have.
 * @source definition
 * @example
 * ```ts
 * import { prepareJob, remedies } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: {
 *         name: "gel former",
 *         function: "gel former",
 *         specificHeat: "2.1 kJ/(kg·K)",
 *         melting: { at: "60 °C", latentHeat: "110 kJ/kg" },
 *       },
 *       oil: { name: "oil", function: "oil", specificHeat: "2 kJ/(kg·K)", density: { value: "945 kg/m³", at: "20 °C" } },
 *     },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 }, doses: [{ gelFormer: "10 %", setsAt: "56 °C", dissolvesAt: "73 °C" }] },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: {
 *     name: "kettle",
 *     workingVolume: { min: "5 L", max: "20 L" },
 *     diameter: "300 mm",
 *     heater: { power: "1 kW" },
 *     heatLoss: "4 W/K",
 *     wall: { mass: "6 kg", specificHeat: "0.5 kJ/(kg·K)" },
 *   },
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [
 *       { do: "charge", phase: "A" },
 *       { do: "heat", to: "70 °C", within: "15 min" },
 *       { do: "take off the heat" },
 *       { do: "fill" },
 *     ],
 *   },
 * });
 * const [remedy] = remedies({ prepared, answer: { id: "done-in-time", of: { step: 2 } } });
 * remedy?.lever; // => "stronger-heater"
 * Math.round(remedy?.change.value ?? 0); // => 1513
 * ```
 */
export function remedies(
  input: RunInput & { readonly answer: { readonly id: string; readonly of: Subject } },
): readonly Remedy[] {
  const { id, of } = record(record(input, "input", known.remedies).answer, "answer");
  return copied(remediesOf(changedJob(input), questionOf(id, "answer.id"), record(of, "answer.of")));
}

/**
 * The remedies of one answer: for each lever of its question the nearest value that makes it met. Where it is not
 * met at the end of the bracket, places of it are looked at from its start on: a limit may have two ends. The part in
 * which the answer becomes met is halved. A lever that does not make it met anywhere in its bracket is no remedy.
 */
function remediesOf(prepared: ReadJob, question: Question, subject: Subject): readonly Remedy[] {
  const run = runOf(prepared);
  const own = question.subjects(run).find((one) => sameSubject(question.of(one), subject));
  const asked = answersTo(question, run).find((answer) => sameSubject(answer.of, subject));
  if (!asked) {
    const found = Object.entries(subject).map(([name, value]) => `${name} ${show(value)}`);
    return refuse("input", "answer.of", found.join(", "), "a subject of this question");
  }
  if (asked.verdict === "met") return [];
  return (question.levers?.(own, run, asked.at) ?? []).flatMap(
    ({ id: lever, change, bracket: [from, to], whole }): readonly Remedy[] => {
      const at = (value: number): Answer | undefined => answerWith(prepared, change(value), question, subject);
      const isMet = (value: number): boolean => at(value)?.verdict === "met";
      const part = partThatHolds({ from, to, whole }, isMet);
      if (!part) return [];
      const value = nearest(part, isMet);
      const answer = at(value);
      return answer ? [{ lever, change: change(value), answer }] : [];
    },
  );
}

/** The answer once a change is made; none where it leaves nothing to weigh. */
function answerWith(prepared: ReadJob, change: Change, question: Question, subject: Subject): Answer | undefined {
  return possibly(() => answersTo(question, runOf(changed(prepared, [change]))))?.find((answer) =>
    sameSubject(answer.of, subject),
  );
}
