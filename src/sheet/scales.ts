import { record } from "../guards.js";
import { comparePlans } from "../plan/compare-plans.js";
import type { Plan, PlanAtScale } from "../plan/index.js";
import { renderAll, type Sheet, type Wording } from "./render.js";
import { markdownTable } from "./table.js";

/**
 * What changes from the beaker to the vessel, as a table in Markdown with one column a plan.
 *
 * @param input.plans - Plans of one formula as `runPlan` gives them, at least one.
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
export function scalesToMarkdown(input: { readonly plans: readonly Plan[] } & Wording): string {
  const { plans, ...wording } = record(input, "input");
  return renderAll(plans, wording, (sheets) => {
    const [first] = sheets as readonly [Sheet, ...Sheet[]];
    const scales = comparePlans({ plans: sheets.map(({ plan }) => ({ ...plan, vessel: plan.names.vessel })) });
    const figures = figuresOf(first);
    const { heads } = first.words.lines.scales;
    const rows = (Object.keys(figures) as Row[]).flatMap((key) =>
      // What none of the plans knows is no difference between them.
      scales.some((scale) => scale[key] !== undefined) ? [[heads[key], ...scales.map(figures[key])]] : [],
    );
    return markdownTable({ columns: ["", ...scales.map(({ vessel }) => vessel)], rows });
  });
}

type Row = Exclude<keyof PlanAtScale, "vessel" | "stirredNotKnown">;

/** How each figure is written, in the order of the table. */
export function figuresOf({ words, say }: Pick<Sheet, "words" | "say">): {
  readonly [Key in Row]: (scale: PlanAtScale) => string;
} {
  const { setsBefore, stream } = words.lines.scales;
  const perSecond = (value: number, digits: number): string => `${say.number(value, digits)} m/s`;
  return {
    mass: ({ mass }) => say.kilograms(mass),
    shareTaken: ({ shareTaken }) => say.percent(shareTaken),
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
