import { record } from "../guards.js";
import { comparePlans, type Plan, type PlanAtScale, type ScaleMetrics } from "../plan/index.js";
import { celsius, kilograms, percent, span } from "./figures.js";
import { renderAll } from "./render.js";
import { markdownTable } from "./table.js";

/**
 * What changes from the beaker to the vessel, as a table in Markdown with one column a plan.
 *
 * @param input.plans - Plans of one formula as `runPlan` gives them, at least one.
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
export function scalesToMarkdown(input: { readonly plans: readonly Plan[] }): string {
  return renderAll(record(input, "input").plans, (plans) => {
    const scales = comparePlans({ plans });
    const time = (seconds: number | undefined): string => (seconds === undefined ? "not known" : span(seconds));
    const rows = rowsOf(time).flatMap(([what, key, figure]) =>
      // What none of the plans knows is no difference between them.
      scales.some((scale) => scale[key] !== undefined) ? [[what, ...scales.map(figure)]] : [],
    );
    return markdownTable({ columns: ["", ...scales.map(({ vessel }) => vessel)], rows });
  });
}

type Row = readonly [what: string, key: keyof PlanAtScale, figure: (scale: PlanAtScale) => string];

function rowsOf(time: (seconds: number | undefined) => string): readonly Row[] {
  const figure =
    (key: keyof ScaleMetrics, unit: string, digits = 2) =>
    ({ [key]: value }: PlanAtScale): string =>
      value === undefined ? "not known" : `${Number(value.toPrecision(digits))} ${unit}`.trimEnd();
  return [
    ["charge of a lot", "mass", ({ mass }) => kilograms(mass)],
    ["taken by the process", "shareTaken", ({ shareTaken }) => percent(shareTaken)],
    ["surface to volume", "surfaceToVolume", figure("surfaceToVolume", "1/m", 3)],
    ["heating", "durationHeating", ({ durationHeating }) => time(durationHeating)],
    ["cooling", "durationCooling", ({ durationCooling }) => time(durationCooling)],
    [
      "cooling, by the cube-root rule from the first",
      "durationCoolingByRule",
      ({ durationCoolingByRule }) => (durationCoolingByRule === undefined ? "" : span(durationCoolingByRule)),
    ],
    ["from the last charge until it sets", "durationToSet", ({ durationToSet }) => time(durationToSet)],
    [
      "to spare once the packs are full",
      "durationMargin",
      ({ durationMargin }) =>
        durationMargin !== undefined && durationMargin < 0
          ? `none: it sets ${span(-durationMargin)} before`
          : time(durationMargin),
    ],
    [
      "additions of oil",
      "additions",
      (scale) => (scale.additions === 0 ? "none, a stream" : figure("additions", "", 5)(scale)),
    ],
    [
      "first addition",
      "massFirstAddition",
      ({ massFirstAddition: mass, additions }) =>
        mass !== undefined ? kilograms(mass) : additions === 0 ? "" : "not known",
    ],
    [
      "oil by volume in the end",
      "volumeFractionOil",
      ({ volumeFractionOil: oil }) => (oil === undefined ? "not known" : percent(oil)),
    ],
    ["until all of it is taken up", "durationAdding", ({ durationAdding }) => time(durationAdding)],
    ["warmest by stirring", "temperatureMax", ({ temperatureMax }) => celsius(temperatureMax)],
    ["tip speed where the stirrer works hardest", "tipSpeed", figure("tipSpeed", "m/s")],
    ["mean shear rate there", "shearRate", figure("shearRate", "1/s")],
    ["power there", "power", figure("power", "W")],
    ["torque there", "torque", figure("torque", "N·m")],
  ];
}
