import { finite, fraction, list, notNegative, positive, record, refuse, result, show } from "../guards.js";
import { coolingTimeAtScale } from "../heat/index.js";
import {
  type ComparedAnswer,
  type ComparedParticle,
  type DifferingAnswer,
  type DifferingField,
  type DifferingWindow,
  differingAnswers,
  differingFields,
  differingWindows,
  readAnswers,
  readParticles,
} from "./differences.js";
import type { NotKnown } from "./figure.js";
import * as known from "./known.js";
import type { Cost, Lots, WeighingLine } from "./parts/batch.js";
import type { ScaleMetrics } from "./parts/scale.js";

/** What of a plan is compared. */
export interface ComparablePlan {
  readonly names: { readonly vessel: string };
  readonly lots: Pick<Lots, "charge" | "volume">;
  readonly scale: ScaleMetrics;
  readonly allowances: readonly {
    /** [kg]. */
    readonly mass: number;
  }[];
  /** For the dose of gel former. */
  readonly weighing?: { readonly lines: readonly Pick<WeighingLine, "function" | "massFraction">[] };
  readonly cost?: Cost | NotKnown;
  readonly answers?: readonly ComparedAnswer[];
  readonly particles?: readonly ComparedParticle[];
}

/** One plan beside others of the same formula at other scales. */
export interface PlanAtScale extends ScaleMetrics {
  /** What the caller calls it; default the name of its vessel. */
  readonly label: string;
  /** Name of the vessel. */
  readonly vessel: string;
  /** Charge of one lot [kg]. */
  readonly mass: number;
  /** Share of the charge that the process takes: films, samples, hold-up, evaporation [0 to 1]. */
  readonly shareTaken: number;
  /** Materials that are gel formers, as a share of the product [0 to 1]. */
  readonly dose?: number;
  /** Cost of the materials of a kilogram delivered [currency]. */
  readonly costPerKilogram?: number;
  /** What cooling would take by the rule for bodies of one shape, from the first of the plans [s]; left out for the first. */
  readonly durationCoolingByRule?: number;
}

/** Plans side by side, and what is not the same in all of them. */
export interface PlanComparison {
  /** One for each plan; what is not known is left out. */
  readonly plans: readonly PlanAtScale[];
  readonly answers: readonly DifferingAnswer[];
  readonly windows: readonly DifferingWindow[];
  /** Of the documents, if they were given. */
  readonly fields: readonly DifferingField[];
}

/**
 * What changes from the beaker to the vessel: surface to volume, times to heat and cool, time to spare before it sets.
 *
 * $$t_2 = t_1 \left(\frac{V_2}{V_1}\right)^{1/3}$$
 *
 * The times are those of the plans, each with its own vessel and steps. Beside them stands what the rule of
 * `coolingTimeAtScale` makes of the first plan's cooling: how far it is off shows how unlike the vessels are. Then
 * follows what is not the same in all plans: verdicts, windows for adding, and the fields of their documents.
 *
 * @param input.plans - Plans as `runPlan` gives them, at least one; the first is what the others are compared with.
 * @param input.labels - What the caller calls each of them; default the names of the vessels.
 * @param input.documents - The job documents of the plans, if their fields are to be compared.
 * @returns The plans side by side, in the units of the kernels, and what differs between them.
 * @throws CalculationError `input` if a plan has parts missing.
 * @source bergman-2011 section 5.1 for the rule
 * @example
 * ```ts
 * import { comparePlans, runPlan } from "gelwright/plan";
 * const planAt = (mass: "1 kg" | "8 kg", diameter: "100 mm" | "200 mm") =>
 *   runPlan({
 *     version: 1,
 *     formula: {
 *       version: 1,
 *       name: "clear gel",
 *       materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *       phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *     },
 *     bench: { source: "bench log" },
 *     batch: {
 *       version: 1,
 *       target: { mass },
 *       density: "900 kg/m³",
 *       balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *     },
 *     vessel: { name: `vessel for ${mass}`, workingVolume: { min: "0.5 L", max: "20 L" }, diameter },
 *     process: { name: "without heat", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 *   });
 * const { plans } = comparePlans({ plans: [planAt("1 kg", "100 mm"), planAt("8 kg", "200 mm")] });
 * // Twice as wide and as high: half the surface for its volume.
 * (plans[0]?.surfaceToVolume ?? 0) / (plans[1]?.surfaceToVolume ?? 1); // => 2
 * ```
 */
export function comparePlans(input: {
  readonly plans: readonly ComparablePlan[];
  readonly labels?: readonly string[];
  readonly documents?: readonly unknown[];
}): PlanComparison {
  const { plans, labels, documents = [] } = record(input, "input", known.comparePlans);
  const each = list(plans, "plans", 1).map((plan, i) => readScale(plan, `plans[${i}]`));
  list(documents, "documents");
  if (documents.length > 0 && documents.length !== each.length)
    refuse("input", "documents", documents.length, `one for each of the ${each.length} plans`);
  const [first] = each;
  return {
    plans: each.map(({ volume, ...at }, i) => {
      const named = { ...at, label: labelOf(labels, i, each.length) ?? at.vessel };
      const duration = first?.durationCooling;
      if (i === 0 || !duration || volume === undefined || first?.volume === undefined) return named;
      const between = { duration, volume: first.volume, volumeAtScale: volume };
      return { ...named, durationCoolingByRule: coolingTimeAtScale({ ...between, limitedBy: "surface" }) };
    }),
    answers: differingAnswers(plans.map(({ answers = [] }, i) => readAnswers(answers, `plans[${i}].answers`))),
    windows: differingWindows(plans.map(({ particles = [] }, i) => readParticles(particles, `plans[${i}].particles`))),
    fields: differingFields(documents),
  };
}

/** What the caller calls a plan. */
function labelOf(labels: readonly string[] | undefined, i: number, count: number): string | undefined {
  if (labels === undefined) return undefined;
  const label = list(labels, "labels")[i];
  if (typeof label !== "string" || labels.length !== count)
    return refuse("input", "labels", show(labels), `a text for each of the ${count} plans`);
  return label;
}

/** What is compared of one plan, which may have come back from JSON. */
function readScale(plan: ComparablePlan, path: string): Omit<PlanAtScale, "label"> & { readonly volume?: number } {
  const { names, lots, scale, allowances } = record(plan, path);
  const { vessel } = record(names, `${path}.names`);
  const { charge, volume } = record(lots, `${path}.lots`);
  if (typeof vessel !== "string") refuse("input", `${path}.names.vessel`, show(vessel), "a name");
  const mass = positive(charge, `${path}.lots.charge`);
  const taken = list(allowances, `${path}.allowances`).reduce(
    (sum, allowance, i) => sum + notNegative(record(allowance, `${path}.allowances[${i}]`).mass, "mass"),
    0,
  );
  const figures = Object.entries(record(scale, `${path}.scale`)).map(
    ([key, figure]) => [key, finite(figure, `${path}.scale.${key}`)] as const,
  );
  return {
    vessel,
    mass,
    shareTaken: result(taken / mass, "share taken"),
    ...doseOf(plan, path),
    ...costOf(plan, path),
    ...(Object.fromEntries(figures) as ScaleMetrics),
    ...(volume !== undefined && { volume: positive(volume, `${path}.lots.volume`) }),
  };
}

/** What is gel former of the lines that are weighed. */
function doseOf({ weighing }: ComparablePlan, path: string): Pick<PlanAtScale, "dose"> {
  if (weighing === undefined) return {};
  const lines = list(record(weighing, `${path}.weighing`).lines, `${path}.weighing.lines`);
  const shares = lines.map((line, i) => {
    const at = `${path}.weighing.lines[${i}]`;
    const share = fraction(record(line, at).massFraction, `${at}.massFraction`);
    return line.function === "gel former" ? share : 0;
  });
  return { dose: shares.reduce((sum, share) => sum + share, 0) };
}

function costOf({ cost }: ComparablePlan, path: string): Pick<PlanAtScale, "costPerKilogram"> {
  if (cost === undefined || "notKnown" in record(cost, `${path}.cost`)) return {};
  return { costPerKilogram: notNegative((cost as Cost).perKilogram, `${path}.cost.perKilogram`) };
}
