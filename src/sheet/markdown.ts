import { record } from "../guards.js";
import type { NaturalOrigin, Plan, PlanCost } from "../plan/index.js";
import { additionsOf, expectedOf, speedsOf, warmingOf } from "./cold.js";
import { celsius, kilograms, packCount, percent, percentBetween, span, weighed } from "./figures.js";
import { afterFilling, evaporationOf, orderOfAddition, thermalExposureOf, timeToWorkIn } from "./heat.js";
import { render } from "./render.js";
import { filmOnWall, strengthSections } from "./strength.js";
import { markdownList, markdownTable, markdownText } from "./table.js";
import { allowanceTable, basisTable, checkTable, orderTable, timelineTable, weighingTable } from "./tables.js";
import { version } from "./version.js";

/**
 * A plan as a batch sheet in Markdown, to be printed and taken to the kettle: cautions first, then what fails or is not
 * known, the weighing table with room to write, the steps, and what every figure rests on.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @returns Markdown with tables (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for a plan with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { toMarkdown } from "gelwright/sheet";
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
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [{ do: "charge", phase: "A" }, { do: "heat", to: "85 °C" }, { do: "take off the heat" }, { do: "fill" }],
 *   },
 * });
 * toMarkdown({ plan }).split("\n")[0]; // => "# Batch sheet: clear gel"
 * ```
 */
export function toMarkdown(input: { readonly plan: Plan }): string {
  return render(record(input, "input").plan, sheetOf);
}

function sheetOf(plan: Plan): string {
  const { weighing, checks } = plan;
  const open = checks.filter((check) => check.verdict !== "met");
  const finest = Math.min(...weighing.lines.map((line) => line.increment));
  const total = `**Total to weigh: ${weighed(weighing.total, finest)}**${weighing.onGrid ? "" : ` (${kilograms(weighing.totalTarget, 7)} would do; this is the next above it that the balances reach)`}`;
  return [
    `# Batch sheet: ${markdownText(plan.formula)}`,
    heading(plan),
    "## Cautions",
    markdownList(plan.cautions),
    ...(open.length > 0
      ? [
          "## Before you start",
          "These questions are open. Settle them before the vessel is charged.",
          markdownList(open.map(({ verdict, statement }) => `${verdict.toUpperCase()}: ${statement}`)),
        ]
      : []),
    "## Weigh",
    markdownTable(weighingTable(plan)),
    total,
    "## Do",
    ...(plan.cold
      ? [
          `All of it comes from the room, at ${celsius(plan.timeline[0]?.temperatureStart)}: let oils and gel former stand in it first.`,
        ]
      : []),
    markdownTable(timelineTable(plan)),
    `Times count from the first step, in hours and minutes, and hold no reserve for handling.${timeToWorkIn(plan.scale)}`,
    ...(plan.cold ? warmingOf(plan.cold.warming, plan.timeline[0]?.temperatureStart ?? Number.NaN) : []),
    ...orderOfLots(plan),
    ...(plan.cold
      ? [
          ...additionsOf(plan),
          ...strengthSections(plan),
          "## The gel by its droplets",
          markdownList(expectedOf(plan.cold.gel, plan.yieldStress !== undefined)),
          ...speedsOf(plan.cold.speeds),
        ]
      : [...strengthSections(plan), "## After filling", markdownList(afterFilling(plan.afterFilling))]),
    ...(plan.thermalExposures.length > 0
      ? [
          "## What the spared oils went through",
          markdownList(plan.thermalExposures.map(thermalExposureOf)),
          "In the vessel, from their charge to the last pack. This ranks orders of work; it predicts no shelf life.",
        ]
      : []),
    ...orderOfAddition(plan.oxidationRanking),
    ...(plan.evaporation.length > 0 ? ["## Evaporation", markdownList(plan.evaporation.map(evaporationOf))] : []),
    "## What the process takes",
    markdownTable(allowanceTable(plan)),
    `Asked for: ${kilograms(plan.lots.deliveredTarget)}${packs(plan)}. The charge brings ${kilograms(plan.lots.delivered)}.${filmOnWall(plan)}`,
    "## Natural origin (ISO 16128)",
    naturalOrigin(plan.naturalOrigin),
    "## Cost of materials",
    cost(plan.cost),
    "## Checks",
    markdownTable(checkTable(plan)),
    plan.cold ? "## What the times rest on" : "## What the times and temperatures rest on",
    markdownTable(basisTable(plan)),
    "## Where the figures come from",
    markdownList(plan.sources.map(({ of, source }) => `${of}: ${source}`)),
    `_Computed by gelwright ${version}. Figures are estimates from the readings named above; no verdict here says that a product or a process is safe._`,
    "",
  ].join("\n\n");
}

/** The order of the lots, where there are several or a working day is stated. */
function orderOfLots({ lotOrder: order, lots }: Plan): readonly string[] {
  // Of a single lot the table of steps says it all, and a check whether the day holds it.
  if (!order || lots.count === 1) return [];
  const title = "## Order of the lots";
  if ("notKnown" in order) return [title, `Not known: ${order.notKnown}.`];
  const { workingDay, days } = order;
  return [
    title,
    markdownTable(orderTable(order)),
    workingDay === undefined
      ? "Times count from the first step of the first lot; no working day is stated."
      : `Times count from the beginning of each working day of ${span(workingDay)}; ${days === 1 ? "one day" : `${days} days`} in all. A lot is not interrupted. Handling takes longer than nothing: leave a reserve.`,
  ];
}

function heading(plan: Plan): string {
  const { lots } = plan;
  return markdownTable({
    columns: ["Vessel", "Process", "Lots", "Charge of a lot", "Batch number", "Date", "Operator"],
    rows: [
      [
        plan.vessel,
        plan.process,
        lots.count === 1 ? "1" : `${lots.count} equal lots; this sheet is for one`,
        `${kilograms(lots.charge)}${lots.volume === undefined ? "" : `, ${Number((lots.volume * 1000).toPrecision(3))} L at 20 °C`}`,
        "",
        "",
        "",
      ],
    ],
  });
}

function packs({ lots, pack }: Plan): string {
  return lots.packs === undefined ? "" : ` in ${packCount(lots.packs)} packs${pack ? ` (${markdownText(pack)})` : ""}`;
}

function naturalOrigin(figure: NaturalOrigin): string {
  const { withFormulationWater, withoutFormulationWater, shortfalls, largestGelFormer } = figure;
  const lines = [
    `Natural-origin content: ${percentBetween(withFormulationWater)} with formulation water${withoutFormulationWater ? `, ${percentBetween(withoutFormulationWater)} without` : ""}.`,
  ];
  for (const { material, max } of shortfalls) if (max > 0) lines.push(`${material} takes ${percent(max)} from it.`);
  if (largestGelFormer)
    lines.push(
      `At most ${percent(largestGelFormer.massFraction)} of ${largestGelFormer.material} would keep the claimed figure.`,
    );
  return markdownList(lines);
}

function cost(of: PlanCost): string {
  if ("notKnown" in of) return `Not known: ${markdownText(of.notKnown)}.`;
  const { currency, batch, perKilogram, perPack } = of;
  const money = (amount: number): string => `${amount.toFixed(2)} ${currency}`;
  return `Batch, all lots: ${money(batch)}; delivered kilogram: ${money(perKilogram)}${perPack === undefined ? "" : `; pack: ${perPack.toFixed(3)} ${currency}`}.`;
}
