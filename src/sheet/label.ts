import { record } from "../guards.js";
import type { PlanLabel } from "../plan/index.js";
import { type Block, list, section, text } from "./blocks.js";
import { computedFrom } from "./computed.js";
import * as known from "./known.js";
import { renderNamed, type Wording, type Written, whyNot } from "./render.js";
import { markdownOf } from "./to-markdown.js";

/**
 * The draft of a label, in Markdown: ingredients in their order, allergens to be named, particles, figures to claim, and
 * what a certification standard asks.
 *
 * @param input.label - A draft as `labelFor` gives it.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown. Text of the documents is escaped.
 * @throws CalculationError `input` for a draft with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { labelFor, prepareJob } from "gelwright/plan";
 * import { labelToMarkdown } from "gelwright/sheet";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", listingName: "Gel Former", function: "gel former" },
 *       oil: { name: "oil", listingName: "Sunflower Seed Oil", function: "oil" },
 *     },
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
 *   label: { productType: "body oil", use: "leave-on" },
 * });
 * labelToMarkdown({ label: labelFor({ prepared }) }).split("\n")[6]; // => "Sunflower Seed Oil, Gel Former"
 * ```
 */
export function labelToMarkdown(input: { readonly label: PlanLabel } & Wording): string {
  const { label, ...wording } = record(input, "input", known.labelToMarkdown);
  return renderNamed(
    label,
    wording,
    (sound, sheet) => markdownOf([...labelDraft(sound, sheet), computedFrom(sound.fingerprint, sheet)]),
    "label",
  );
}

/** The draft of a label, without the line on what it was computed from. */
export function labelDraft(label: PlanLabel, sheet: Written): readonly Block[] {
  const { labels, lines } = sheet.words;
  const { names, productType } = label;
  return [
    { kind: "title", text: `${labels.labelDraft}: ${lines.label.for({ formula: names.formula, type: productType })}` },
    text(labels.labelNote),
    ...section(labels.ingredients, listOf(label, sheet)),
    ...section(labels.fragranceAllergens, list(allergensOf(label, sheet))),
    ...section(labels.microplastics, list(particlesOf(label, sheet))),
    ...section(labels.claims, list(claimsOf(label, sheet))),
    ...section(labels.certification, list(certifiedOf(label, sheet))),
  ];
}

function listOf({ list: order, withoutListingName }: PlanLabel, sheet: Written): readonly Block[] {
  const { words, say } = sheet;
  const { names, rule, anyOrder, withoutName, notKnown } = words.lines.label;
  if ("notKnown" in order)
    return [text(notKnown({ what: words.labels.ingredients, reason: whyNot(sheet, order.notKnown) }))];
  const free = order.anyOrder.map(({ name }) => name);
  return [
    text(names({ names: order.names })),
    ...list([
      rule(order),
      ...(free.length > 1 ? [anyOrder({ names: free }, say)] : []),
      ...withoutListingName.map((key) => withoutName({ material: say.material(key) })),
    ]),
  ];
}

function allergensOf({ allergens }: PlanLabel, sheet: Written): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.label;
  if (!allergens) return [];
  if ("notKnown" in allergens)
    return [lines.notKnown({ what: words.labels.fragranceAllergens, reason: whyNot(sheet, allergens.notKnown) })];
  const { toName, notAbove, notStated, notInTable } = allergens;
  return [
    lines.threshold(allergens, say),
    ...toName.map(({ name, share, sources }) =>
      lines.toName({ name, share, sources: sources.map((one) => one.name) }, say),
    ),
    ...notAbove.map((one) => lines.notAbove(one, say)),
    ...(notStated.length > 0 ? [lines.notStated({ names: notStated }, say)] : []),
    ...(notInTable.length > 0 ? [lines.notInTable({ names: notInTable }, say)] : []),
  ];
}

function particlesOf({ particles }: PlanLabel, sheet: Written): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.label;
  if (!particles) return [];
  if ("notKnown" in particles)
    return [lines.notKnown({ what: words.labels.microplastics, reason: whyNot(sheet, particles.notKnown) })];
  const { status, from, share, notStated } = particles;
  return [
    lines.particles({ status: lines.statuses[status], from, min: share.min, max: share.max }, say),
    lines.rule(particles),
    ...(notStated.length > 0 ? [lines.natureNotStated({ names: notStated }, say)] : []),
  ];
}

function claimsOf({ claims }: PlanLabel, sheet: Written): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.label;
  return claims.flatMap((claim): readonly string[] => {
    const what = lines.claimed[claim.of];
    if ("notKnown" in claim) return [lines.notKnown({ what, reason: whyNot(sheet, claim.notKnown) })];
    const { percent, basis, notStated } = claim;
    const names = notStated.map((key) => say.material(key));
    return [
      lines.claim({ percent, what, basis: lines.kernelWords[basis] ?? basis }, say),
      ...(names.length > 0 ? [lines.indexNotStated({ names }, say)] : []),
    ];
  });
}

function certifiedOf({ certified }: PlanLabel, sheet: Written): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.label;
  if (!certified) return [];
  if ("notKnown" in certified)
    return [lines.notKnown({ what: words.labels.certification, reason: whyNot(sheet, certified.notKnown) })];
  const wordOf = (code: string): string => lines.kernelWords[code] ?? code;
  return [
    ...Object.entries(certified.figures).map(([figure, of]) => lines.figure({ what: wordOf(figure), ...of }, say)),
    ...certified.thresholds.map(({ figure, min, max, verdict }) =>
      lines.asked({ what: wordOf(figure), min, max, verdict: wordOf(verdict) }, say),
    ),
    ...certified.shortfalls
      .filter(({ max }) => max > 0)
      .map(({ name, max }) => lines.shortfall({ name: say.material(name), share: max }, say)),
  ];
}
