import { type ScaledBatch, scaleFormula } from "../batch/index.js";
import type { Formula } from "../formula/index.js";
import { oilOrderOf } from "./addition-order.js";
import { afterFilling, checkSetThrough } from "./after-filling.js";
import { cautionsOf } from "./cautions.js";
import { commonChecksOf, hotChecksOf } from "./checks/index.js";
import { coldCautionsOf } from "./cold/cautions.js";
import { coldChecksOf, gelOf } from "./cold/checks.js";
import { expectedGel } from "./cold/droplets.js";
import { runCold } from "./cold/run.js";
import { coldTimelineOf } from "./cold/timeline.js";
import { evaporationOf } from "./evaporation.js";
import { exposedIn, exposuresOf } from "./exposure.js";
import type { Job } from "./job.js";
import { checkWorkingDay, lotOrderOf } from "./lot-order.js";
import type { Content } from "./moment.js";
import { naturalOriginOf } from "./natural-origin.js";
import type { NaturalOrigin, Plan, WeighingLine } from "./plan.js";
import { readJob } from "./read.js";
import { runSteps } from "./run/run-steps.js";
import { scaleOf } from "./scale.js";
import { airOf } from "./strength/air.js";
import { checkAir } from "./strength/check-air.js";
import { checkParticles } from "./strength/check-particles.js";
import { checkStrength } from "./strength/check-strength.js";
import { filmsOf } from "./strength/films.js";
import { flowByPoints } from "./strength/flow.js";
import { gelPointsOf } from "./strength/gel-points.js";
import { particlesOf } from "./strength/outlook.js";
import { suspendedIn } from "./strength/suspended.js";
import { strengthByTrials } from "./strength/trials.js";
import { yieldStressOf } from "./strength/yield-stress.js";
import { timelineOf } from "./timeline.js";

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
 *   bench: { source: "bench log", oilPerGelFormer: { least: 8, greatest: 12 } },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", leastWeight: "50 g" }],
 *   },
 *   vessel: {
 *     name: "kettle",
 *     workingVolume: { least: "5 L", greatest: "20 L" },
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
  const route = process.route === "cold" ? coldRoute : hotRoute;
  const ofRoute = route(job, contents, { scaled, naturalOrigin, strength, flow, yieldStress });
  return {
    version: 1,
    formula: formula.name,
    process: process.name,
    vessel: vessel.name,
    pack: pack?.name,
    lots: {
      count: lots,
      deliveredAsked: scaled.wanted / lots,
      delivered: lot.delivered,
      packs: scaled.packs === undefined ? undefined : scaled.packs / lots,
      charge: lot.total,
      volume: density === undefined ? undefined : lot.total / density,
    },
    weighing: {
      lines: weighingOf(formula, scaled),
      total: lot.total,
      totalWanted: charge.total,
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

/** What depends on the route: the run, what comes of it, and what is asked of it. */
type OfRoute = Pick<
  Plan,
  | "timeline"
  | "scale"
  | "afterFilling"
  | "exposures"
  | "oilOrder"
  | "particles"
  | "gelPoints"
  | "strength"
  | "films"
  | "air"
  | "evaporation"
  | "cold"
  | "checks"
  | "cautions"
>;

/** What is known before the first step is run. */
interface Known {
  readonly scaled: ScaledBatch;
  readonly naturalOrigin: NaturalOrigin;
  readonly strength: Plan["strength"];
  readonly flow: Plan["flow"];
  readonly yieldStress: Plan["yieldStress"];
}

function hotRoute(job: Job, charge: readonly Content[], known: Known): OfRoute {
  const { scaled, naturalOrigin, strength, flow, yieldStress } = known;
  const moments = runSteps(job, charge, scaled);
  const exposed = exposedIn(moments);
  const pastFilling = afterFilling(job, moments, scaled);
  const suspended = suspendedIn(moments, job);
  const air = airOf(job, moments, scaled, yieldStress);
  return {
    timeline: timelineOf(job, moments),
    scale: scaleOf(job, moments, scaled),
    afterFilling: pastFilling,
    exposures: exposuresOf(moments, exposed),
    oilOrder: oilOrderOf(job, moments, exposed, charge, scaled),
    particles: particlesOf(suspended, job, moments, scaled, yieldStress),
    gelPoints: gelPointsOf(job, moments),
    strength,
    films: filmsOf(job, scaled, moments, yieldStress),
    air,
    evaporation: evaporationOf(job, moments),
    checks: [
      ...hotChecksOf(job, scaled, moments, naturalOrigin),
      ...checkParticles(suspended, moments, job, scaled, yieldStress),
      ...checkSetThrough(job, moments, pastFilling),
      ...checkStrength(job, { strength, flow, yieldStress, density: scaled.density }),
      ...checkAir(job, air),
    ],
    cautions: cautionsOf(job, moments),
  };
}

function coldRoute(job: Job, charge: readonly Content[], { scaled, naturalOrigin, yieldStress }: Known): OfRoute {
  const moments = runCold(job, charge, scaled);
  const gel = expectedGel(job, gelOf(moments), yieldStress);
  const additions = moments.flatMap(({ added }, i) => {
    if (!added) return [];
    const { duration: _, ...schedule } = added;
    return [{ step: i + 1, ...schedule }];
  });
  const usual = cautionsOf(job, moments);
  return {
    timeline: coldTimelineOf(job, moments),
    scale: scaleOf(job, [], scaled),
    afterFilling: {},
    exposures: [],
    oilOrder: [],
    particles: [],
    gelPoints: [],
    films: filmsOf(job, scaled, moments, yieldStress),
    evaporation: [],
    cold: { additions, gel },
    checks: [...commonChecksOf(job, scaled, moments, naturalOrigin), ...coldChecksOf(job, moments, gel)],
    cautions: [...coldCautionsOf(job), ...usual],
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

/** Where the figures come from, as the documents say it. A material without a source is named as such. */
function sourcesOf({ formula, bench, batch, vessel, process, pack }: Job): Plan["sources"] {
  const used = new Set(formula.lines.map((line) => line.material));
  return [
    ...Object.values(formula.materials)
      .filter((material) => used.has(material.key))
      .flatMap(({ name, sources }) => {
        const stated = Object.entries(sources).map(([field, source]) => ({ of: `${name}, ${field}`, source }));
        return stated.length > 0 ? stated : [{ of: name, source: "no source stated" }];
      }),
    {
      of:
        process.route === "hot"
          ? "setting, dissolving, viscosity and yield stress"
          : "additions, uptake, droplets, air and yield stress",
      source: bench.source,
    },
    ...batch.allowances.map(({ name, source }) => ({ of: `allowance: ${name}`, source: source ?? "no source stated" })),
    ...(process.route === "hot"
      ? [{ of: `${vessel.name}, heat loss`, source: vessel.loss?.from ?? "not stated" }]
      : []),
    ...(pack?.content ? [{ of: `${pack.name}, coefficient at its surface`, source: pack.content.source }] : []),
    ...[
      ["heated wall", vessel.heatedWall?.source],
      ["jacket", vessel.jacket?.source],
    ].flatMap(([wall, source]) => (source === undefined ? [] : [{ of: `${vessel.name}, ${wall}`, source }])),
  ];
}
