import { record } from "../guards.js";
import type { PlanExposure } from "../plan/index.js";
import { type Block, list, section, text } from "./blocks.js";
import { computedFrom } from "./computed.js";
import * as known from "./known.js";
import { renderNamed, type Wording, type Written, whyNot } from "./render.js";
import { markdownOf } from "./to-markdown.js";

/**
 * What a qualified assessor has asked about exposure, in Markdown.
 *
 * @param input.exposure - As `exposureFor` gives it.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown. Text of the documents is escaped.
 * @throws CalculationError `input` for a result with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { exposureFor, prepareJob } from "gelwright/plan";
 * import { exposureToMarkdown } from "gelwright/sheet";
 * const prepared = prepareJob({
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
 *   exposure: { productType: "hand cream" },
 * });
 * exposureToMarkdown({ exposure: exposureFor({ prepared }) }).split("\n")[0]; // => "# Exposure: clear gel"
 * ```
 */
export function exposureToMarkdown(input: { readonly exposure: PlanExposure } & Wording): string {
  const { exposure, ...wording } = record(input, "input", known.exposureToMarkdown);
  return renderNamed(
    exposure,
    wording,
    (sound, sheet) => markdownOf([...assessment(sound, sheet), computedFrom(sound.fingerprint, sheet)]),
    "exposure",
  );
}

/** The exposure that an assessor asks for, without the line on what it was computed from. */
export function assessment({ names, daily, materials, limits }: PlanExposure, sheet: Written): readonly Block[] {
  const { words, say } = sheet;
  const { labels, lines } = words;
  const { notKnown, ...told } = lines.label;
  const perDay =
    "notKnown" in daily
      ? notKnown({ what: labels.dailyExposure, reason: whyNot(sheet, daily.notKnown) })
      : told.daily(
          {
            type: daily.productType,
            grams: daily.exposurePerDay,
            milligrams: daily.exposurePerBodyWeight,
            edition: daily.edition,
            grade: daily.grade,
          },
          say,
        );
  return [
    { kind: "title", text: `${labels.exposure}: ${names.formula}` },
    text(labels.exposureNote),
    ...list([perDay, ...materials.map((one) => assessedLine(one, sheet))]),
    ...(limits ? section(labels.limitsByProduct, list(limitsOf(limits, sheet))) : []),
  ];
}

function assessedLine(one: PlanExposure["materials"][number], sheet: Written): string {
  const { words, say } = sheet;
  const { dose, margin, shareMax, notKnown } = words.lines.label;
  const material = say.material(one.material);
  if ("notKnown" in one) return notKnown({ what: material, reason: whyNot(sheet, one.notKnown) });
  return [
    dose({ material, share: one.massFraction, dose: one.dose }, say),
    say.given(one.margin, (of) => margin({ margin: of }, say)),
    say.given(one.massFractionMax, (share) => shareMax({ share }, say)),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function limitsOf(limits: NonNullable<PlanExposure["limits"]>, sheet: Written): readonly string[] {
  const { words, say } = sheet;
  const { limit, rule, kernelWords, notKnown } = words.lines.label;
  if ("notKnown" in limits)
    return [notKnown({ what: words.labels.limitsByProduct, reason: whyNot(sheet, limits.notKnown) })];
  return [
    rule(limits),
    ...limits.answers.map(({ name, share, max, status }) =>
      limit({ name, share, max, status: kernelWords[status] ?? status }, say),
    ),
  ];
}
