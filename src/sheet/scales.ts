import { record } from "../guards.js";
import { comparePlans } from "../plan/compare-plans.js";
import type { Plan, PlanAtScale, PlanComparison } from "../plan/index.js";
import * as known from "./known.js";
import { renderAll, type Sheet, type Wording } from "./render.js";
import { questionOf } from "./tables.js";
import { markdownTable } from "./to-markdown.js";

/**
 * What changes from the beaker to the vessel, as a table in Markdown with one column a plan: figures of the whole run,
 * then windows for adding, verdicts and fields of the documents, as far as they are not the same in all plans.
 *
 * @param input.plans - Plans of one formula as `runPlan` gives them, at least one.
 * @param input.labels - What the caller calls each of them; default the names of the vessels.
 * @param input.documents - The job documents of the plans, if their fields are to be compared.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns A Markdown table (GitHub flavour). Text of the documents is escaped; what one of the plans does not know is said to be, and what none knows is left out.
 * @throws CalculationError `input` for plans with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { scalesToMarkdown } from "gelwright/sheet";
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
 *     target: { mass: "1 kg" },
 *     density: "900 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: { name: "beaker", workingVolume: { min: "0.5 L", max: "2 L" }, diameter: "100 mm" },
 *   process: { name: "cold", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 * });
 * scalesToMarkdown({ plans: [plan] }).split("\n")[2]; // => "| charge of a lot | 1 kg |"
 * ```
 */
export function scalesToMarkdown(
  input: {
    readonly plans: readonly Plan[];
    readonly labels?: readonly string[];
    readonly documents?: readonly unknown[];
  } & Wording,
): string {
  const { plans, labels, documents, ...wording } = record(input, "input", known.scalesToMarkdown);
  return renderAll(plans, wording, (sheets) => {
    const [first] = sheets as readonly [Sheet, ...Sheet[]];
    const found = comparePlans({
      plans: sheets.map(({ plan }) => plan),
      ...(labels && { labels }),
      ...(documents && { documents }),
    });
    return markdownTable({
      columns: ["", ...found.plans.map(({ label }) => label)],
      rows: [...figureRows(first, found), ...differingRows(first, found)],
    });
  });
}

type Row = Exclude<keyof PlanAtScale, "label" | "vessel" | "stirredNotKnown">;

/** The figures of the whole run, one row each. */
export function figureRows(sheet: Sheet, { plans }: Pick<PlanComparison, "plans">): readonly (readonly string[])[] {
  const figures = figuresOf(sheet);
  const { heads } = sheet.words.lines.scales;
  return (Object.keys(figures) as Row[]).flatMap((key) =>
    // What none of the plans knows is no difference between them.
    plans.some((scale) => scale[key] !== undefined) ? [[heads[key], ...plans.map(figures[key])]] : [],
  );
}

/** Verdicts, windows and fields of the documents that are not the same in all plans. */
export function differingRows(sheet: Sheet, found: PlanComparison): readonly (readonly string[])[] {
  const { words, say } = sheet;
  const { window, windowOf, notAsked, field, notStated } = words.lines.scales;
  return [
    ...found.windows.map(({ material, windows }) => [
      windowOf({ material: say.material(material) }),
      ...windows.map((one) => (one ? window(one, say) : say.notKnown)),
    ]),
    ...found.answers.map((answer) => [
      questionOf(sheet, answer),
      ...answer.verdicts.map((verdict) => (verdict ? words.verdicts[verdict] : notAsked())),
    ]),
    ...found.fields.map(({ path, values }) => [
      field({ path }),
      ...values.map((value) => (value === null ? notStated() : String(value))),
    ]),
  ];
}

/** How each figure is written, in the order of the table. */
export function figuresOf({ words, say }: Pick<Sheet, "words" | "say">): {
  readonly [Key in Row]: (scale: PlanAtScale) => string;
} {
  const { setsBefore, stream } = words.lines.scales;
  const perSecond = (value: number, digits: number): string => `${say.number(value, digits)} m/s`;
  return {
    mass: ({ mass }) => say.kilograms(mass),
    shareTaken: ({ shareTaken }) => say.percent(shareTaken),
    dose: ({ dose }) => say.percent(dose),
    costPerKilogram: ({ costPerKilogram }) => say.given(costPerKilogram, (cost) => say.money(cost)) || say.notKnown,
    surfaceToVolume: ({ surfaceToVolume: value }) =>
      say.given(value, (one) => `${say.number(one)} 1/m`) || say.notKnown,
    durationHeating: ({ durationHeating }) => say.duration(durationHeating),
    durationCooling: ({ durationCooling }) => say.duration(durationCooling),
    durationCoolingByRule: ({ durationCoolingByRule }) => say.given(durationCoolingByRule, say.duration),
    durationToSet: ({ durationToSet }) => say.duration(durationToSet),
    durationMargin: ({ durationMargin: margin }) =>
      margin !== undefined && margin < 0 ? setsBefore({ duration: -margin }, say) : say.duration(margin),
    additions: ({ additions }) => (additions === 0 ? stream() : say.count(additions)),
    massFirstAddition: ({ massFirstAddition: mass, additions }) => (additions === 0 ? "" : say.kilograms(mass)),
    volumeFractionOil: ({ volumeFractionOil }) => say.percent(volumeFractionOil),
    durationAdding: ({ durationAdding }) => say.duration(durationAdding),
    temperatureMax: ({ temperatureMax }) => say.celsius(temperatureMax),
    tipSpeed: ({ tipSpeed }) => say.given(tipSpeed, (value) => perSecond(value, 2)) || say.notKnown,
    shearRate: ({ shearRate }) => say.shearRate(shearRate, 2),
    power: ({ power }) => say.watts(power, 2),
    torque: ({ torque }) => say.newtonMetres(torque, 2),
  };
}
