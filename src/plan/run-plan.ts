import { type ScaledBatch, scaleFormula } from "../batch/index.js";
import type { Formula } from "../formula/index.js";
import { checkWorkingDay, lotOrderOf } from "./lot-order.js";
import type { Content } from "./moment.js";
import { naturalOriginOf } from "./natural-origin.js";
import type { Plan, WeighingLine } from "./plan.js";
import { readJob } from "./read.js";
import { emulsion, hotRoute } from "./routes.js";
import { sourcesOf } from "./sources.js";
import { flowByPoints } from "./strength/flow.js";
import { strengthByTrials } from "./strength/trials.js";
import { yieldStressOf } from "./strength/yield-stress.js";

/**
 * Runs a job on the hot or the cold route: scales the formula, runs the process over the charge, asks every question that the
 * documents can answer, and returns all that stands on a batch sheet.
 *
 * Composes the rooms and computes nothing of its own: masses from `batch`, times and temperatures from `heat`, settling
 * from `particles`, contents from `natural-origin`. What the documents do not say is `not known` and is never guessed.
 *
 * @param document - JSON or a `JobDocument`: formula, bench readings, batch, vessel, process and pack.
 * @returns The plan of one lot, in the units of the kernels.
 * @throws CalculationError `document`, naming every fault with its path at once; `unreachable` where no balance can weigh
 *   a line or no number of equal lots fits the vessel; `input` where a film or a volume needs a density that is missing.
 * @source definition
 * @example
 * ```ts
 * import { runPlan } from "gelwright/plan";
 * const plan = runPlan({
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
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 } },
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
 *     steps: [
 *       { do: "charge", phase: "A" },
 *       { do: "heat", to: "85 °C" },
 *       { do: "take off the heat" },
 *       { do: "fill" },
 *     ],
 *   },
 * });
 * Math.round((plan.timeline[1]?.timeEnd ?? 0) / 60); // => 25
 * plan.checks.find((check) => check.id === "gel-former-ratio")?.verdict; // => "met"
 * ```
 */
export function runPlan(document: unknown): Plan {
  const job = readJob(document);
  const { formula, batch, vessel, process, pack } = job;
  const strength = strengthByTrials(job);
  const flow = flowByPoints(job);
  const yieldStress = yieldStressOf(job, flow, strength);
  const scaled = scaleFormula({ formula, batch, vessel, yieldStress: yieldStress?.value });
  const { lot, lots, charge, density } = scaled;
  const contents = lot.lines.flatMap(({ phase, material: key, mass }): readonly Content[] => {
    const material = formula.materials[key];
    return material ? [{ phase, material, mass }] : [];
  });
  const naturalOrigin = naturalOriginOf(job);
  const route = process.route === "cold" ? emulsion : hotRoute;
  const ofRoute = route(job, contents, { scaled, naturalOrigin, strength, flow, yieldStress });
  return {
    version: 1,
    formula: formula.name,
    process: process.name,
    vessel: vessel.name,
    pack: pack?.name,
    lots: {
      count: lots,
      deliveredTarget: scaled.massTarget / lots,
      delivered: lot.delivered,
      packs: scaled.packs === undefined ? undefined : scaled.packs / lots,
      charge: lot.total,
      volume: density === undefined ? undefined : lot.total / density,
    },
    weighing: {
      lines: weighingOf(formula, scaled),
      total: lot.total,
      totalTarget: charge.total,
      onGrid: lot.onGrid,
    },
    allowances: charge.allowances.map(({ name, mass }) => ({ name, mass })),
    ...ofRoute,
    lotOrder: lotOrderOf(job, lots, ofRoute.timeline),
    checks: [...ofRoute.checks, ...checkWorkingDay(job, ofRoute.timeline)],
    yieldStress,
    flow,
    naturalOrigin,
    cost: costOf(scaled),
    sources: sourcesOf(job),
  };
}

function weighingOf({ materials, lines }: Formula, { lot }: ScaledBatch): readonly WeighingLine[] {
  return lot.lines.map((line) => ({
    phase: line.phase,
    material: materials[line.material]?.name ?? line.material,
    listingName: materials[line.material]?.listingName,
    function: materials[line.material]?.function ?? "other",
    massFraction: lines.find((one) => one.phase === line.phase && one.material === line.material)?.massFraction ?? 0,
    massExact: line.massExact,
    mass: line.mass,
    balance: line.balance,
    increment: line.increment,
    portions: line.portions,
    tolerance: line.tolerance,
  }));
}

function costOf({ cost }: ScaledBatch): Plan["cost"] {
  if ("notKnown" in cost) return { notKnown: cost.notKnown };
  const { currency, batch, perKilogram, perPack } = cost;
  return { currency, batch, perKilogram, perPack };
}
