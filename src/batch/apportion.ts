import { refuse } from "../guards.js";

/** A line in whole numbers: `floor` increments of `unit`, and what was cut off. */
export interface Candidate {
  readonly unit: number;
  readonly floor: number;
  /** Part of an increment that was cut off: 0 where the mass lies on the grid. */
  readonly remainder: number;
  /** The most increments that the line may have. */
  readonly max: number;
  readonly carrier: boolean;
}

/** Lines that go up: by how much they lift the sum, and what the batch then deviates more than with all lines down. */
interface Choice {
  readonly lift: number;
  readonly cost: number;
  readonly ups: readonly Candidate[];
}

/** More sums than this take many increments that share no measure; the search is then given up. */
const sumsMax = 100_000;

/**
 * Number of increments of each line, so that the sum is the smallest that can be reached and not below `wanted`.
 *
 * Among all ways to one sum only the closest to the exact masses is kept; with one increment for all lines that is the
 * largest remainder. Of equal remainders the line written first goes up.
 */
export function apportion(lines: readonly Candidate[], wanted: number): readonly number[] {
  const carrier = lines.find((line) => line.carrier);
  let choices = new Map<number, Choice>([[0, { lift: 0, cost: 0, ups: [] }]]);
  for (const line of lines) {
    if (line === carrier || line.remainder === 0 || line.floor >= line.max) continue;
    const next = new Map<number, Choice>();
    for (const before of choices.values()) {
      const up = {
        lift: before.lift + line.unit,
        cost: before.cost + (1 - 2 * line.remainder) * line.unit,
        ups: [...before.ups, line],
      };
      for (const choice of [up, before]) {
        // Remainders carry the noise of doubles: a gain that small is none, or the order of adding would decide.
        if (choice.cost < (next.get(choice.lift)?.cost ?? Infinity) - 1e-9 * line.unit) next.set(choice.lift, choice);
      }
    }
    if (next.size > sumsMax) refuse("range", "lines", "too many sums to search", "fewer different increments");
    choices = next;
  }
  const missing = lines.reduce((rest, line) => rest - line.floor * line.unit, wanted);
  const [best] = [...choices.values()]
    .map((choice) => closed(choice, missing, carrier))
    .filter(({ lift, steps }) => lift >= missing && (!carrier || (steps > 0 && steps <= carrier.max)))
    .sort((a, b) => a.lift - b.lift || a.far - b.far || a.cost - b.cost);
  if (!best) return refuse("unreachable", "lines", "a total out of reach", "limits that leave room for it");
  return lines.map((line) => (line === carrier ? best.steps : line.floor + Number(best.ups.includes(line))));
}

/** A choice with the increments of the carrier that close the sum; `far` is 1 where they are more than rounding. */
function closed(choice: Choice, missing: number, carrier?: Candidate) {
  const { lift, cost, ups } = choice;
  if (!carrier) return { lift, cost, ups, steps: 0, far: 0 };
  const more = Math.ceil((missing - lift) / carrier.unit);
  const off = Math.abs(more - carrier.remainder);
  return {
    lift: lift + more * carrier.unit,
    cost: cost + off * carrier.unit,
    ups,
    steps: carrier.floor + more,
    far: Number(off >= 1),
  };
}
