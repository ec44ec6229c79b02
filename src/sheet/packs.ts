import { record } from "../guards.js";
import type { Plan, PlanPacks } from "../plan/index.js";
import { type Block, form, list, section, text } from "./blocks.js";
import { computedFrom } from "./computed.js";
import * as known from "./known.js";
import { render, type Sheet, type Wording, whyNot } from "./render.js";
import { markdownOf } from "./to-markdown.js";

/** What goes into a pack, if its label states how much. */
export function packSection(sheet: Sheet): readonly Block[] {
  const { packs } = sheet.plan;
  return packs ? section(sheet.words.labels.packs, list(linesOf(sheet, packs))) : [];
}

function linesOf(sheet: Sheet, packs: PlanPacks): readonly string[] {
  const { plan, words, say } = sheet;
  const lines = words.lines.packs;
  const { nominal, massNominal, tolerableError, limits, filler, packs: whole, overfill, topUp } = packs;
  const { cost } = plan;
  return [
    ...told(massNominal, (mass) => lines.states({ nominal, mass }, say)),
    ...told(tolerableError, (error) => lines.mayBeShort(error, say)),
    ...aimOf(sheet, packs),
    ...told(filler, (of) => lines.filler(of, say)),
    ...told(limits, ({ single, mean, sampleSize: count }) => lines.leaveAlone({ single, mean, count }, say)),
    ...headSpaceOf(sheet, packs),
    ...told(topUp, ({ massFirst: first, massTopUp: second }) => lines.twoPours({ first, second }, say)),
    ...told(whole, (of) => lines.packs(of, say)),
    ...(overfill && overfill.massPerPack > 0 ? [lines.overfill(overfill, say)] : []),
    ...(overfill?.cost && !("notKnown" in cost)
      ? [lines.overfillCost({ cost: overfill.cost, currency: cost.currency }, say)]
      : []),
    ...(packs.notKnown ?? []).map((reason) => lines.notKnown({ reason: whyNot(sheet, reason) })),
  ];
}

/** What to aim at: as the documents state it, beside what the rules would ask for, else by the rules. */
function aimOf({ words, say }: Sheet, { target, massAimed: mass }: PlanPacks): readonly string[] {
  const { aim, aimStated, aimByRules, limitedBy } = words.lines.packs;
  const isStated = mass !== undefined && mass !== target?.mass;
  const byRules = target
    ? [
        (isStated ? aimByRules : aim)(
          { mass: target.mass, share: target.shareRejected, limit: limitedBy[target.limitedBy] },
          say,
        ),
      ]
    : [];
  return isStated ? [aimStated({ mass }, say), ...byRules] : byRules;
}

function headSpaceOf({ words, say }: Sheet, { headSpace }: PlanPacks): readonly string[] {
  if (!headSpace) return [];
  const { temperature, volumeFraction: share, overpressure: pressure } = headSpace;
  const { headSpace: left, overpressure } = words.lines.packs;
  return [left({ temperature, share }, say), ...(pressure ? [overpressure({ pressure }, say)] : [])];
}

function told<T>(value: T | undefined, write: (value: T) => string): readonly string[] {
  return value === undefined ? [] : [write(value)];
}

/** Rows of the form, one for each sample. */
const samples = 12;

/**
 * The form for weighing packs while they are filled, in Markdown: limits of single packs and of the mean, and rows to
 * write into.
 *
 * It is the packer's own check, and no inspection. Limits are gross, so no pack has to be emptied.
 *
 * @param input.plan - A plan as `runPlan` gives it, of a pack with `nominal`, `tare` and `fillSpread`.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown with a table (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for a plan with parts missing, a figure that is not finite, or a plan without packs.
 * @source definition
 * @example
 * ```ts
 * import { fillCheckToMarkdown } from "gelwright/sheet";
 * import { runPlan } from "gelwright/plan";
 * const plan = runPlan({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log" },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: { name: "kettle", workingVolume: { min: "5 L", max: "20 L" }, diameter: "300 mm" },
 *   process: { name: "hot route", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 *   pack: { name: "jar", nominal: { mass: "50 g" }, fillTarget: "50.4 g", fillSpread: "0.6 g", tare: { mass: "40 g" } },
 * });
 * fillCheckToMarkdown({ plan }).split("\n")[5]; // => "- The mean of a sample, gross: 89.6 to 91.2 g."
 * ```
 */
export function fillCheckToMarkdown(input: { readonly plan: Plan } & Wording): string {
  const { plan, ...wording } = record(input, "input", known.fillCheckToMarkdown);
  return render(plan, wording, formOf);
}

function formOf(sheet: Sheet): string {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  const { names, packs } = plan;
  const { formFor } = lines.packs;
  const title: Block = {
    kind: "title",
    text: `${labels.fillCheck}: ${formFor({ pack: names.pack ?? "", formula: names.formula })}`,
  };
  if (!packs?.limits) return markdownOf([title, text(lines.packs.notKnown({ reason: reasonOf(sheet, packs) }))]);
  const { single, mean, sampleSize: count } = packs.limits;
  const packColumns = boxesOf(sheet, count);
  return markdownOf([
    title,
    text(lines.packs.takeSample({ count }, say)),
    ...list([lines.packs.singleLimits(single, say), lines.packs.meanLimits(mean, say), ...aimOf(sheet, packs)]),
    form({
      columns: [labels.time, ...packColumns, labels.mean, labels.filler, labels.by],
      rows: Array.from({ length: samples }, () => ["", ...packColumns.map(() => ""), "", "", ""]),
    }),
    text(labels.fillCheckNote),
    computedFrom(plan.fingerprint, sheet),
  ]);
}

/** How many packs of a sample have a box of their own. */
const boxesMax = 10;

/** The heads of the columns in which the weighings of a sample are written. */
export function boxesOf({ words, say }: Sheet, count: number): readonly string[] {
  return Array.from({ length: Math.min(count, boxesMax) }, (_, i) => words.lines.packs.sample({ number: i + 1 }, say));
}

/** Why there are no limits. */
export function reasonOf(sheet: Sheet, packs: PlanPacks | undefined): string {
  const [reason = { code: "not-stated", field: packs ? "pack-tare" : "pack-nominal" } as const] = packs?.notKnown ?? [];
  return whyNot(sheet, reason);
}
