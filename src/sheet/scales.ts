import { record } from "../guards.js";
import { comparePlans, type Plan, type PlanAtScale } from "../plan/index.js";
import { kilograms, percent, span } from "./figures.js";
import { renderAll } from "./render.js";
import { markdownTable } from "./table.js";

/**
 * What changes from the beaker to the vessel, as a table in Markdown with one column a plan.
 *
 * @param input.plans - Plans of one formula as `runPlan` gives them, at least one.
 * @returns A Markdown table (GitHub flavour). Text of the documents is escaped; what is not known is said to be.
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
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", leastWeight: "50 g" }],
 *   },
 *   vessel: { name: "beaker", workingVolume: { least: "0.5 L", greatest: "2 L" }, diameter: "100 mm" },
 *   process: { name: "cold", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 * });
 * scalesToMarkdown({ plans: [plan] }).split("\n")[2]; // => "| charge of a lot | 1 kg |"
 * ```
 */
export function scalesToMarkdown(input: { readonly plans: readonly Plan[] }): string {
  return renderAll(record(input, "input").plans, (plans) => {
    const scales = comparePlans({ plans });
    const row = (what: string, figure: (scale: PlanAtScale) => string): readonly string[] => [
      what,
      ...scales.map(figure),
    ];
    const time = (seconds: number | undefined): string => (seconds === undefined ? "not known" : span(seconds));
    return markdownTable({
      columns: row("", ({ vessel }) => vessel),
      rows: [
        row("charge of a lot", ({ mass }) => kilograms(mass)),
        row("taken by the process", ({ shareTaken }) => percent(shareTaken)),
        row("surface to volume", ({ surfaceToVolume }) =>
          surfaceToVolume === undefined ? "not known" : `${Number(surfaceToVolume.toPrecision(3))} 1/m`,
        ),
        row("heating", ({ durationHeating }) => time(durationHeating)),
        row("cooling", ({ durationCooling }) => time(durationCooling)),
        row("cooling, by the cube-root rule from the first", ({ durationCoolingByRule }) =>
          durationCoolingByRule === undefined ? "" : span(durationCoolingByRule),
        ),
        row("from the last charge until it sets", ({ durationToSet }) => time(durationToSet)),
        row("to spare once the packs are full", ({ durationToSpare }) =>
          durationToSpare !== undefined && durationToSpare < 0
            ? `none: it sets ${span(-durationToSpare)} before`
            : time(durationToSpare),
        ),
      ],
    });
  });
}
