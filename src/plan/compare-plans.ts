import { finite, list, notNegative, positive, record, refuse, result, show } from "../guards.js";
import { coolingTimeAtScale } from "../heat/index.js";
import type { Lots } from "./parts/batch.js";
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
}

/** One plan beside others of the same formula at other scales. */
export interface PlanAtScale extends ScaleMetrics {
  /** Name of the vessel. */
  readonly vessel: string;
  /** Charge of one lot [kg]. */
  readonly mass: number;
  /** Share of the charge that the process takes: films, samples, hold-up, evaporation [0 to 1]. */
  readonly shareTaken: number;
  /** What cooling would take by the rule for bodies of one shape, from the first of the plans [s]; left out for the first. */
  readonly durationCoolingByRule?: number;
}

/**
 * What changes from the beaker to the vessel: surface to volume, times to heat and cool, time to spare before it sets.
 *
 * $$t_2 = t_1 \left(\frac{V_2}{V_1}\right)^{1/3}$$
 *
 * The times are those of the plans, each with its own vessel and steps. Beside them stands what the rule of
 * `coolingTimeAtScale` makes of the first plan's cooling: how far it is off shows how unlike the vessels are.
 *
 * @param input.plans - Plans as `runPlan` gives them, at least one; the first is what the others are compared with.
 * @returns One for each plan, in the units of the kernels; what is not known is left out.
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
 * const [beaker, vessel] = comparePlans({ plans: [planAt("1 kg", "100 mm"), planAt("8 kg", "200 mm")] });
 * // Twice as wide and as high: half the surface for its volume.
 * (beaker?.surfaceToVolume ?? 0) / (vessel?.surfaceToVolume ?? 1); // => 2
 * ```
 */
export function comparePlans(input: { readonly plans: readonly ComparablePlan[] }): readonly PlanAtScale[] {
  const each = list(record(input, "input").plans, "plans", 1).map((plan, i) => readScale(plan, `plans[${i}]`));
  const [first] = each;
  return each.map(({ volume, ...at }, i) => {
    const duration = first?.durationCooling;
    if (i === 0 || !duration || volume === undefined || first?.volume === undefined) return at;
    const between = { duration, volume: first.volume, volumeAtScale: volume };
    return { ...at, durationCoolingByRule: coolingTimeAtScale({ ...between, limitedBy: "surface" }) };
  });
}

/** What is compared of one plan, which may have come back from JSON. */
function readScale(plan: ComparablePlan, path: string): PlanAtScale & { readonly volume?: number } {
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
    ...(Object.fromEntries(figures) as ScaleMetrics),
    ...(volume !== undefined && { volume: positive(volume, `${path}.lots.volume`) }),
  };
}
