import { CalculationError } from "../error.js";
import { list, record, refuse, show } from "../guards.js";
import type { Change } from "./change.js";
import { copied } from "./copied.js";
import { type Flip, flipsOf } from "./flips.js";
import { namesOf } from "./job.js";
import * as known from "./known.js";
import { possibly } from "./masses.js";
import { costOfBatch, lotsOf } from "./parts/batch.js";
import { type ScaleMetrics, scaleMetricsOf } from "./parts/scale.js";
import { type PreparedJob, preparedRun } from "./prepared-run.js";
import { questions as allQuestions, questionOf } from "./questions/index.js";
import { type Answer, answersTo, type Question, sameSubject } from "./questions/question.js";
import type { Run } from "./state.js";
import { where } from "./unknown.js";

/** One row of a sweep: what is changed, and what the caller calls it. */
export interface SweepRowInput {
  readonly label: string;
  /** Typed changes, made one after another; none for the job as it is. */
  readonly changes: readonly Change[];
}

/** Figures of a whole run. What is not known is left out. */
export interface SweepFigures extends ScaleMetrics {
  /** Number of equal lots. */
  readonly lots: number;
  /** Charge of one lot [kg]. */
  readonly mass: number;
  /** Finished product of one lot [kg]. */
  readonly massDelivered: number;
  /** From the first step until the last pack is full [s]. */
  readonly durationUntilFilled?: number;
  /** Cost of the materials of a kilogram delivered [currency]. */
  readonly costPerKilogram?: number;
}

/** One row of a sweep as it came out: its figures and answers, or the change that leaves nothing to weigh. */
export type SweepRow = SweepRowInput &
  (
    | { readonly figures: SweepFigures; readonly answers: readonly Answer[] }
    | {
        /** Place of that change among the changes of the row, from 0. */
        readonly impossible: number;
      }
  );

/** One answer along the rows, as columns for a table or a plot; `null` where a row cannot be made or does not raise it. */
export interface SweepColumn extends Pick<Answer, "id" | "of" | "quantity"> {
  readonly verdicts: readonly (Answer["verdict"] | null)[];
  /** The value of the figure, or the one end that is known of it, in the unit of the quantity. */
  readonly values: readonly (number | null)[];
}

/** Several runs of one prepared job side by side. */
export interface Sweep {
  /** Name of each material, by its key. */
  readonly names: { readonly materials: Readonly<Record<string, string>> };
  readonly rows: readonly SweepRow[];
  readonly columns: readonly SweepColumn[];
  readonly flips: readonly Flip[];
}

/** What a sweep takes. */
export interface SweepInput {
  readonly prepared: PreparedJob;
  readonly rows: readonly SweepRowInput[];
  /** Ids of questions; default all. */
  readonly questions?: readonly string[];
}

/**
 * Runs a prepared job once for each row of changes, and sets figures and answers side by side, with every verdict that
 * flips from one row to the next and the value at which it does.
 *
 * The value is found by halving between the two rows, through runs, as `remedies` finds its own; it lies on the side of
 * the later row. A row whose changes leave nothing to weigh is marked, and the others are run.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.rows - At least one: a label, and typed changes in the units of the kernels.
 * @param input.questions - Ids of questions; default all.
 * @returns The rows, the answers as columns, and the flips.
 * @throws CalculationError `input` for a change that this job does not have, with its row.
 * @source definition
 * @example
 * ```ts
 * import { prepareJob, sweep } from "gelwright/plan";
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
 *   bench: { source: "bench log", doses: [{ gelFormer: "10 %", setsAt: "56 °C", dissolvesAt: "73 °C" }] },
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
 *     steps: [{ do: "charge", phase: "A" }, { do: "heat", to: "70 °C" }, { do: "take off the heat" }, { do: "fill" }],
 *   },
 * });
 * const to = (value: number) => ({ label: `to ${value} °C`, changes: [{ change: "step", step: 2, field: "to", value }] as const });
 * const { columns, flips } = sweep({ prepared, rows: [70, 80, 90].map(to), questions: ["gel-former-dissolves"] });
 * columns[0]?.verdicts; // => ["not-met", "met", "met"]
 * Math.round(flips[0]?.change?.value ?? 0); // => 73
 * ```
 */
export function sweep(input: SweepInput): Sweep {
  const { prepared, rows: wanted, questions: ids } = record(input, "input", known.sweep);
  const questions =
    ids === undefined ? allQuestions : list(ids, "questions").map((id, i) => questionOf(id, `questions[${i}]`));
  const rows = list(wanted, "rows", 1).map((row, i) => runRow(prepared, row, questions, `rows[${i}]`));
  const columns = columnsOf(rows);
  return {
    names: { materials: namesOf(prepared.job) },
    rows,
    columns,
    flips: columns.flatMap((column) =>
      flipsOf(
        column,
        rows.map(({ changes }) => changes),
        (changes) => verdictOf(prepared, changes, questions, column),
      ),
    ),
  };
}

/** One row, or its mark where there is nothing to weigh. */
function runRow(prepared: PreparedJob, row: SweepRowInput, questions: readonly Question[], path: string): SweepRow {
  const { label, changes } = record(row, path);
  if (typeof label !== "string") refuse("input", `${path}.label`, show(label), "text");
  const named = { label, changes: list(changes, `${path}.changes`) };
  try {
    const run = preparedRun({ prepared, changes });
    return {
      ...named,
      figures: figuresOf(run),
      answers: copied(questions.flatMap((question) => answersTo(question, run))),
    };
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const [fault] = error.faults;
    const at = /^changes\[(\d+)\]/.exec(fault?.path ?? "")?.[1];
    if (error.code === "unreachable" && at !== undefined) return { ...named, impossible: Number(at) };
    const isOfRow = fault?.path.startsWith("changes");
    throw isOfRow
      ? new CalculationError(
          error.code,
          error.faults.map((one) => ({ ...one, path: `${path}.${one.path}` })),
        )
      : error;
  }
}

/** The figures of a run that a sweep sets side by side. */
function figuresOf(run: Run): SweepFigures {
  const { count, charge, delivered } = lotsOf(run);
  const filled = run.moments.find(({ step }) => step.do === "fill");
  return {
    lots: count,
    mass: charge,
    massDelivered: delivered,
    ...(filled && where("durationUntilFilled", filled.after.time)),
    ...where("costPerKilogram", () => costOfBatch(run).perKilogram),
    ...scaleMetricsOf(run),
  };
}

function answersOf(row: SweepRow): readonly Answer[] {
  return "answers" in row ? row.answers : [];
}

function isOf({ id, of }: Pick<Answer, "id" | "of">, answer: Answer): boolean {
  return answer.id === id && sameSubject(answer.of, of);
}

/** Every answer of any row, in their order, along all rows. */
function columnsOf(rows: readonly SweepRow[]): readonly SweepColumn[] {
  const seen: Answer[] = [];
  for (const answer of rows.flatMap(answersOf)) if (!seen.some((one) => isOf(one, answer))) seen.push(answer);
  return seen.map(({ id, of, quantity }) => {
    const along = rows.map((row) => answersOf(row).find((answer) => isOf({ id, of }, answer)));
    return {
      id,
      of,
      quantity,
      verdicts: along.map((answer) => answer?.verdict ?? null),
      values: along.map((answer) => answer?.figure.value ?? answer?.figure.min ?? answer?.figure.max ?? null),
    };
  });
}

/** The verdict of an answer after some changes, if it is raised. */
function verdictOf(
  prepared: PreparedJob,
  changes: readonly Change[],
  questions: readonly Question[],
  { id, of }: SweepColumn,
): Answer["verdict"] | undefined {
  const question = questions.find((one) => one.id === id);
  // Between two rows that can be made there may be one that cannot.
  const answers = question && possibly(() => answersTo(question, preparedRun({ prepared, changes })));
  return answers?.find((answer) => sameSubject(answer.of, of))?.verdict;
}
