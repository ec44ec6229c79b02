import { record } from "../guards.js";
import { comparePlans } from "../plan/compare-plans.js";
import type { Plan } from "../plan/index.js";
import { type Block, section, table, text } from "./blocks.js";
import { instructionOf } from "./doing.js";
import * as known from "./known.js";
import { renderAll, type Sheet, type Wording } from "./render.js";
import { differingRows, figureRows } from "./scales.js";
import { markdownOf } from "./to-markdown.js";
import { version } from "./version.js";

/**
 * The difference of two plans as a sheet for change control, in Markdown: the fingerprints of both, what is not the same in
 * their documents, what is weighed and done otherwise, and which figures and verdicts that changes.
 *
 * @param input.before - The plan that was approved, as `runPlan` gives it.
 * @param input.after - The plan that is to replace it.
 * @param input.documents - The job documents of the two, if their fields are to be compared.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown with tables (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for plans with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { changesToMarkdown } from "gelwright/sheet";
 * import { runPlan } from "gelwright/plan";
 * const planAt = (room: "20 °C" | "23 °C") =>
 *   runPlan({
 *     version: 1,
 *     formula: {
 *       version: 1,
 *       name: "clear gel",
 *       materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *       phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *     },
 *     bench: { source: "bench log" },
 *     batch: {
 *       version: 1,
 *       target: { mass: "1 kg" },
 *       density: "900 kg/m³",
 *       balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *     },
 *     vessel: { name: "beaker", workingVolume: { min: "0.5 L", max: "2 L" }, diameter: "100 mm" },
 *     process: { name: "cold", room, steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 *   });
 * const [before, after] = [planAt("20 °C"), planAt("23 °C")];
 * changesToMarkdown({ before, after }).split("\n")[0]; // => "# Change record: clear gel"
 * ```
 */
export function changesToMarkdown(
  input: {
    readonly before: Plan;
    readonly after: Plan;
    readonly documents?: { readonly before: unknown; readonly after: unknown };
  } & Wording,
): string {
  const { before, after, documents, ...wording } = record(input, "input", known.changesToMarkdown);
  const stated = documents && record(documents, "documents");
  return renderAll([before, after], wording, (sheets) =>
    markdownOf(changesOf(sheets as readonly [Sheet, Sheet], stated && [stated.before, stated.after])),
  );
}

function changesOf(sheets: readonly [Sheet, Sheet], documents: readonly unknown[] | undefined): readonly Block[] {
  const [before, after] = sheets;
  const { labels, lines } = before.words;
  const plans = sheets.map(({ plan }) => plan);
  const found = comparePlans({
    plans,
    labels: [labels.before, labels.after],
    ...(documents && { documents }),
  });
  const { fields, ...others } = found;
  // The cooling time by rule is scaled from the first plan, so it is no figure of the second.
  const figures = found.plans.map(({ durationCoolingByRule: _, ...scale }) => scale);
  const columns = ["", labels.before, labels.after];
  const part = (title: string, rows: readonly (readonly string[])[]): readonly Block[] => {
    const differing = rows.filter(([, one, other]) => one !== other);
    return differing.length === 0 ? [] : section(title, [table({ columns, rows: differing })]);
  };
  const parts = [
    ...part(labels.inTheDocuments, differingRows(before, { plans: [], answers: [], windows: [], fields })),
    ...part(labels.weighTitle, weighed(before, after)),
    ...part(labels.doTitle, done(before, after)),
    ...part(labels.figures, figureRows(before, { plans: figures })),
    ...part(labels.answers, differingRows(before, { ...others, fields: [] })),
  ];
  return [
    { kind: "title", text: `${labels.changeRecord}: ${after.plan.names.formula}` },
    table({ columns, rows: [[labels.fingerprint, ...plans.map((plan) => plan.fingerprint)]] }),
    ...(parts.length === 0 ? [text(labels.nothingChanged)] : parts),
    { kind: "text", text: lines.batch.comparedBy({ library: `gelwright ${version}` }), isSmall: true },
  ];
}

/** What is weighed of each material of a phase, in one plan and in the other. */
function weighed(...sheets: readonly [Sheet, Sheet]): readonly (readonly string[])[] {
  const keyed = sheets.map(
    ({ plan, say }) =>
      new Map(
        plan.weighing.lines.map((line) => [
          JSON.stringify([line.phase, line.material]),
          { name: say.material(line.material), phase: line.phase, mass: say.weighed(line.mass, line.increment) },
        ]),
      ),
  );
  const keys = [...new Set(keyed.flatMap((lines) => [...lines.keys()]))];
  const { phase: ofPhase, aboutSubject } = sheets[0].words.lines.batch;
  return keys.map((key) => {
    const lines = keyed.map((one) => one.get(key));
    const { name = "", phase = "" } = lines.find((line) => line !== undefined) ?? {};
    return [aboutSubject({ question: name, subject: ofPhase({ phase }) }), ...lines.map((line) => line?.mass ?? "–")];
  });
}

/** Each step with its instruction, in one plan and in the other. */
function done(...sheets: readonly [Sheet, Sheet]): readonly (readonly string[])[] {
  const count = Math.max(...sheets.map(({ plan }) => plan.timeline.length));
  return Array.from({ length: count }, (_, i) => [
    sheets[0].say.step(i + 1),
    ...sheets.map((sheet) => {
      const step = sheet.plan.timeline[i];
      return step ? instructionOf(sheet, step) : "–";
    }),
  ]);
}
