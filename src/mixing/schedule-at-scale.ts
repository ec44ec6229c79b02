import { list, positive, record, refuse, result } from "../guards.js";
import { type Addition, additionsMax } from "./addition-schedule.js";
import * as known from "./known.js";
import { checkOil } from "./oil-to-add.js";
import { portionsOf } from "./portions.js";

/** How far the oil may pass the bench's, since both were weighed: common practice, no source. */
const tried = 0.01;

/** How a schedule went at the bench. */
export interface BenchSchedule {
  /** Gel former at the bench [kg], above 0. */
  readonly massGelFormer: number;
  /** The additions of oil that were taken up, in order [kg], each above 0. */
  readonly additions: readonly number[];
}

/**
 * The bench's additions in a larger vessel, along the same path of oil fractions.
 *
 * $$m_i \le \frac{m_{i,\mathrm{bench}}}{M_{i-1,\mathrm{bench}}}\,M_{i-1} \qquad \varphi_i \to \varphi_{i,\mathrm{bench}}$$
 *
 * Each addition is at most the same share of the content as at the bench, rounded down on the plant's balance; what
 * rounding leaves behind goes in at the end, at the bench's last share. Times are scaled apart: `incorporationTimeScale`.
 *
 * @param input.bench - Gel former [kg] and additions [kg] of the bench.
 * @param input.massGelFormer - Gel former in the plant [kg], above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.densityGelFormer - Density of the gel former [kg/m³], above 0.
 * @param input.massToAdd - Oil to add [kg], if it was weighed; default the bench's ratio.
 * @param input.increment - Smallest step of the plant's balance [kg], above 0; default none.
 * @param input.volumeFractionOilMax - Maximum volume fraction of oil that trials allow, if there is one.
 * @returns The additions, with the bench's shares as their limits.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where the balance cannot read so small an addition, or the oil is more than the bench's or passes the maximum oil fraction.
 * @source definition
 * @example
 * ```ts
 * import { scheduleAtScale } from "gelwright/mixing";
 * const plant = scheduleAtScale({
 *   bench: { massGelFormer: 0.04, additions: [0.001, 0.002, 0.004] },
 *   massGelFormer: 16,
 *   densityOil: 915,
 *   densityGelFormer: 1250,
 * });
 * plant.map((addition) => addition.mass.toFixed(3)); // => ["0.400", "0.800", "1.600"]
 * ```
 */
export function scheduleAtScale(input: {
  readonly bench: BenchSchedule;
  readonly massGelFormer: number;
  readonly densityOil: number;
  readonly densityGelFormer: number;
  readonly massToAdd?: number;
  readonly increment?: number;
  readonly volumeFractionOilMax?: number;
}): readonly Addition[] {
  const { bench, massGelFormer, massToAdd, increment, ...rest } = record(input, "input", known.scheduleAtScale);
  const steps = readBench(bench);
  const ratio = positive(massGelFormer, "massGelFormer") / bench.massGelFormer;
  const final = steps.at(-1) as (typeof steps)[number];
  const max = result(ratio * final.oil, "oil to add");
  const whole = massToAdd === undefined ? max : positive(massToAdd, "massToAdd");
  if (whole > max * (1 + tried))
    refuse("unreachable", "massToAdd", whole, `at most ${max} kg, as much oil to the gel former as at the bench`);
  const oil = checkOil({ ...rest, massGelFormer, massToAdd: whole, share: { law: "constant", value: 1 } });
  const { total, of, mass, down, step } = portionsOf(oil.massToAdd, increment);
  const additions: Addition[] = [];
  let done = 0;
  const add = (wanted: number, share: number): void => {
    const inVessel = oil.after(mass(done)).massInVessel;
    const allowed = Math.min(wanted, of(share * inVessel));
    const units = total - done <= allowed * (1 + 1e-12) ? total - done : down(allowed);
    if (!(units > 0) || done + units === done) return;
    const added = mass(units);
    done += units;
    additions.push({ mass: added, share: added / inVessel, shareMax: share, ...oil.after(mass(done)) });
  };
  for (const { oil: target, share } of steps) {
    if (of(share * oil.after(mass(done)).massInVessel) < step)
      refuse("unreachable", "increment", `an addition of less than ${mass(step)} kg`, "a balance with smaller steps");
    if (done < total) add(of(ratio * target) - done, share);
  }
  const last = final.share;
  while (done < total) {
    const before = done;
    if (additions.length < additionsMax) add(total - done, last);
    if (done === before)
      refuse(
        "range",
        "bench.additions",
        last,
        "a last addition so large that the rest of the oil goes in by its share",
      );
  }
  return additions;
}

function readBench(bench: BenchSchedule): readonly { readonly oil: number; readonly share: number }[] {
  const { massGelFormer, additions } = record(bench, "bench");
  let content = positive(massGelFormer, "bench.massGelFormer");
  let oil = 0;
  return list(additions, "bench.additions", 1).map((addition, i) => {
    const share = positive(addition, `bench.additions[${i}]`) / content;
    oil += addition;
    content = result(content + addition, "bench.additions");
    return { oil, share: positive(share, `bench.additions[${i}]`) };
  });
}
