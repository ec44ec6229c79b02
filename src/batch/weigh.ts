import { CalculationError } from "../error.js";
import { Findings } from "../formula/document.js";
import type { Formula, FormulaLine } from "../formula/index.js";
import { fraction, refuse } from "../guards.js";
import { share } from "../numeric/decimal.js";
import { minOf } from "../numeric/extremes.js";
import type { Allowance } from "./allowance.js";
import { chooseBalance } from "./balance.js";
import type { BatchCharge } from "./charge.js";
import { type Delivered, deliveredFrom } from "./delivered.js";
import { type RoundedLines, roundToBalances } from "./rounding.js";
import { type WeighingTolerance, weighingTolerance } from "./tolerance.js";
import type { Batch } from "./types.js";

/** One weighing of one lot. */
export interface WeighLine {
  readonly material: string;
  readonly phase: string;
  /** Mass to weigh [kg], as the balance shows it. */
  readonly mass: number;
  /** Exact mass before rounding [kg]. */
  readonly massExact: number;
  readonly balance: string;
  /** Smallest step of that balance [kg]. */
  readonly increment: number;
  /** The mass in portions that the balance can carry [kg]; they add up to it. */
  readonly portions: readonly number[];
  /** Readings that are accepted for the whole mass [kg]. */
  readonly tolerance: WeighingTolerance;
}

/** The weighings of one lot and what comes of them. */
export interface WeighedLot {
  readonly lines: readonly WeighLine[];
  /** Exact sum of the masses to weigh [kg]. */
  readonly total: number;
  /** Whether that is the exact charge, or the next above it that the balances can reach. */
  readonly onGrid: boolean;
  /** Finished product that these masses yield after all allowances [kg]. */
  readonly delivered: number;
  /** What each allowance takes of these masses [kg]; with what is delivered they add up to the total. */
  readonly allowances: Delivered["allowances"];
}

/** So many larger totals are tried until what was asked for arrives; rounding is off by one increment a line at most. */
const triesMax = 100;

/** Chooses balances, rounds, and sets tolerances for one lot. */
export function weigh(
  lines: readonly FormulaLine[],
  charge: BatchCharge,
  allowances: readonly Allowance[],
  massTarget: number,
  { balances, tare, tolerance }: Batch,
  materials: Formula["materials"],
): WeighedLot {
  const findings = new Findings();
  const carriers = lines.filter((line) => line.carrier);
  const carrier = carriers.sort((a, b) => b.massFraction - a.massFraction)[0];
  const planned = charge.lines.flatMap(({ name, mass }, i) => {
    const line = lines[i];
    const choice = findings.attempt(() => chooseBalance({ name, mass, balances, tare }));
    if (!line || !choice) return [];
    const limit = materials[line.material]?.massFractionMax;
    const massMax =
      limit !== undefined && fraction(limit, `limit of ${line.material}`) >= line.massFraction
        ? (mass * limit) / line.massFraction
        : undefined;
    return [{ name, line, mass, ...choice, carrier: line === carrier, ...(massMax && { massMax }) }];
  });
  if (findings.faults.length > 0) throw new CalculationError("unreachable", findings.faults);

  const { rounded, arrived } = reaching(planned, charge.total, allowances, massTarget);
  return {
    lines: planned.map(({ line, mass: massExact, balance, increment, portions, massMax }, i) => {
      const mass = (rounded.lines[i] as { readonly mass: number }).mass;
      return {
        material: line.material,
        phase: line.phase,
        mass,
        massExact,
        balance: balance.name,
        increment,
        portions: share(mass, portions, increment),
        tolerance: weighingTolerance({ mass, increment, relative: tolerance, ...(massMax && { massMax }) }),
      };
    }),
    total: rounded.total,
    onGrid: rounded.onGrid,
    delivered: arrived.mass,
    allowances: arrived.allowances,
  };
}

/** Rounds to the smallest total from which what was asked for arrives. */
function reaching(
  lines: Parameters<typeof roundToBalances>[0]["lines"],
  total: number,
  allowances: readonly Allowance[],
  massTarget: number,
): { rounded: RoundedLines; arrived: Delivered } {
  const finest = minOf(lines.map((line) => line.increment));
  let totalMin = total;
  for (let tries = 0; tries < triesMax; tries++) {
    const rounded = roundToBalances({ lines, totalMin });
    const arrived = deliveredFrom({ charge: rounded.lines, allowances });
    if (arrived.mass >= massTarget * (1 - 1e-12)) return { rounded, arrived };
    // A volatile line was rounded up at the cost of one that stays: the next larger total is tried.
    totalMin = rounded.total + finest / 2;
  }
  return refuse("unreachable", "total", `${massTarget} kg`, "finer balances");
}
