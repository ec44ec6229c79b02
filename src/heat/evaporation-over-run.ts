import { fraction, notNegative, positive, record, refuse } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import { compileVapourPressure, type VapourPressureLaw } from "../laws/vapour-pressure.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";
import { alongSegments, type Segment } from "./segments.js";

/** A loss of the volatile part, and what the figure rests on. */
export interface VolatileLoss {
  /** Mass lost [kg]. */
  readonly mass: number;
  /** Share of the volatile part that is lost, 0 to 1. */
  readonly fraction: number;
  /** What the figure rests on, in words. */
  readonly basis: string;
}

/** The loss that was predicted, the most that there could be, and the one that was measured. */
export interface EvaporationOverRun {
  /** Through the film of air. */
  readonly predicted: VolatileLoss;
  /** As into a vacuum. */
  readonly max: VolatileLoss;
  /** As weighed; absent where no measurement was given. */
  readonly measured?: VolatileLoss;
  /** [s]. */
  readonly duration: number;
}

/**
 * What a volatile part loses over a whole run: predicted from its vapour pressure, beside the physical maximum and the share that was measured.
 *
 * $$-\frac{\mathrm dm}{\mathrm dt} = A\,k_c\,\frac{M\,x\,p_\mathrm{pure}(T)}{R\,T} \qquad x = \frac{m/M}{m/M + n_\mathrm{rest}} \qquad m_0 - m + n_\mathrm{rest} M \ln\frac{m_0}{m} = \int A\,k_c\,\frac{M\,p_\mathrm{pure}}{R\,T}\,\mathrm dt$$
 *
 * The solution counts as ideal, the liquid as stirred up to its surface, and the room as free of the vapour. A measured
 * share on your own vessel is worth more than the prediction, which shows whether it is of the right size; where the two are
 * far apart, look for another volatile part, for spilling, or for a lid.
 *
 * @param input.volatile - The volatile part: mass charged [kg], molar mass [kg/mol], vapour pressure of the pure substance.
 * @param input.rest - Everything else: mass [kg], and molar mass on average by moles [kg/mol], near 0.88 for triglycerides.
 * @param input.area - Open surface [m²], above 0.
 * @param input.coefficient - Mass-transfer coefficient [m/s], above 0, as by `evaporationCoefficient`; it is held constant.
 * @param input.segments - Ramps and vessel segments of the run, at least one, one after another.
 * @param input.lossMeasured - Share of the volatile part that was lost by weighing, 0 to 1; left out if unknown.
 * @param input.beyond - Outside the temperatures of the vapour pressure: `"throw"` (default) or `"extend"`.
 * @returns Losses [kg] with their shares and what each rests on; duration [s].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` outside the temperatures of the vapour pressure; what `vesselSegment` throws for a segment.
 * @source bergman-2011 section 6.7 for the film of air, knudsen-1915 for the most; the integral is worked by hand
 * @example
 * ```ts
 * import { evaporationOverRun } from "gelwright/heat";
 * import { vapourPressures } from "gelwright/laws";
 * evaporationOverRun({
 *   volatile: { mass: 0.4, molarMass: 0.136234, vapourPressure: vapourPressures.limonene },
 *   rest: { mass: 39.6, molarMass: 0.88 },
 *   area: 0.2,
 *   coefficient: 0.000985,
 *   segments: [{ kind: "ramp", temperatureStart: 65, temperatureEnd: 65, duration: 1800 }],
 *   lossMeasured: 0.01,
 * }).predicted.fraction; // => 0.005924516395586576
 * ```
 */
export function evaporationOverRun(input: {
  readonly volatile: { readonly mass: number; readonly molarMass: number; readonly vapourPressure: VapourPressureLaw };
  readonly rest: { readonly mass: number; readonly molarMass: number };
  readonly area: number;
  readonly coefficient: number;
  readonly segments: readonly Segment[];
  readonly lossMeasured?: number;
  readonly beyond?: Beyond;
}): EvaporationOverRun {
  const { lossMeasured, beyond } = record(input, "input", known.evaporationOverRun);
  const volatile = record(input.volatile, "volatile");
  const rest = record(input.rest, "rest");
  const mass = positive(volatile.mass, "volatile.mass");
  const molarMass = positive(volatile.molarMass, "volatile.molarMass");
  const pressureAt = compileVapourPressure(volatile.vapourPressure, beyond, "volatile.vapourPressure");
  const restAsVolatile = (positive(rest.mass, "rest.mass") / positive(rest.molarMass, "rest.molarMass")) * molarMass;
  const area = positive(input.area, "area");
  const coefficient = positive(input.coefficient, "coefficient");
  const overThermal = (at: number): number => molarMass / (gasConstant * (at + kelvin));
  const throughAir = (at: number): number => area * coefficient * overThermal(at) * pressureAt(at);
  const intoVacuum = (at: number): number => area * Math.sqrt(overThermal(at) / (2 * Math.PI)) * pressureAt(at);
  const { duration, totals } = alongSegments(input.segments, { throughAir, intoVacuum }, []);
  const lost = (asIfPure: number, basis: string): VolatileLoss => {
    const share = -Math.expm1(-depth(mass, restAsVolatile, asIfPure));
    return { mass: mass * share, fraction: share, basis };
  };
  const predicted = lost(
    totals.throughAir,
    "vapour pressure of the pure substance, mole fraction in an ideal solution, film of air of constant thickness",
  );
  const max = lost(totals.intoVacuum, "vapour pressure of the pure substance, mole fraction, kinetic theory of gases");
  if (lossMeasured === undefined) return { predicted, max, duration };
  const share = fraction(lossMeasured, "lossMeasured");
  const measured = { mass: mass * share, fraction: share, basis: "a weighing before and after" };
  return { predicted, max, measured, duration };
}

/** u = ln(m₀/m) from m₀ (1 − e⁻ᵘ) + k u = Φ, which only rises with u. */
function depth(mass: number, restAsVolatile: number, asIfPure: number): number {
  const total = notNegative(asIfPure, "evaporation");
  const low = total / (mass + restAsVolatile);
  // So little that the mix stays as it is; and no digits are left for a root.
  if (low < 1e-200) return low;
  const high = (total / restAsVolatile) * (1 + 1e-12);
  if (!Number.isFinite(high)) refuse("range", "rest.mass", restAsVolatile, "a rest that dissolves the volatile part");
  return root((u) => restAsVolatile * u - mass * Math.expm1(-u) - total, 0, high, "evaporation");
}
