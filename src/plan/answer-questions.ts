import { list, record } from "../guards.js";
import { copied } from "./copied.js";
import * as known from "./known.js";
import { preparedRun, type RunInput } from "./prepared-run.js";
import { questionOf, questions } from "./questions/index.js";
import { type Answer, answersTo } from "./questions/question.js";

/**
 * Answers some questions of a prepared job, and computes nothing that they do not need.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @param input.questions - Ids of questions; default all.
 * @returns The answers, in the order of the questions.
 * @throws CalculationError `input` for an id that is none.
 * @source definition
 * @example
 * ```ts
 * import { answerQuestions, prepareJob } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", function: "gel former", specificHeat: "2.1 kJ/(kg·K)" },
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
 * const [dissolved] = answerQuestions({ prepared, questions: ["gel-former-dissolves"] });
 * dissolved?.verdict; // => "not-met"
 * dissolved?.limit.min?.value; // => 73
 * ```
 */
export function answerQuestions(input: RunInput & { readonly questions?: readonly string[] }): readonly Answer[] {
  const { questions: wanted } = record(input, "input", known.answerQuestions);
  const asked =
    wanted === undefined ? questions : list(wanted, "questions").map((id, i) => questionOf(id, `questions[${i}]`));
  const run = preparedRun(input);
  return copied(asked.flatMap((question) => answersTo(question, run)));
}
