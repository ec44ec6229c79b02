import { earlyTemperature } from "./conduction-early.js";
import { coefficientAt, surfaceRoot } from "./conduction-root.js";
import { wave } from "./conduction-shape.js";

/** Below this Fourier number the series would need more than sixty terms, and the early solution is exact. */
const early = 1e-3;
/** A term that is smaller than the first by exp(−40) no longer counts. */
const negligible = 40;

/**
 * The series: what is left at a place, by Fourier number; its roots are found as they are needed, and kept.
 *
 * @internal exported for the test that holds it to the early solution where the two overlap
 */
export function lateTemperature(bend: number, biot: number, place: number | "mean"): (fourier: number) => number {
  const rates: number[] = [];
  const heights: number[] = [];
  const first = surfaceRoot(bend, biot, 1) ** 2;
  return (fourier) => {
    let sum = 0;
    for (let k = 0; ; k += 1) {
      if (k === rates.length) {
        const found = surfaceRoot(bend, biot, k + 1);
        const there = place === "mean" ? ((bend + 1) * wave(bend, found)[1]) / found : wave(bend, found * place)[0];
        rates.push(found * found);
        heights.push(coefficientAt(bend, found) * there);
      }
      const rate = rates[k] as number;
      if ((rate - first) * fourier > negligible) return sum;
      sum += (heights[k] as number) * Math.exp(-rate * fourier);
    }
  };
}

/**
 * Relative temperature at a place of a body, by Fourier number: 1 at the start, 0 at the ambient temperature.
 *
 * `place` is the distance from the centre over half thickness or radius, or `"mean"` over the volume.
 */
export function history(bend: number, biot: number, place: number | "mean"): (fourier: number) => number {
  if (biot === Number.POSITIVE_INFINITY && place === 1) return (fourier) => (fourier > 0 ? 0 : 1);
  const late = lateTemperature(bend, biot, place);
  return (fourier) => {
    if (fourier === 0) return 1;
    const left = fourier < early ? earlyTemperature(bend, biot, place, fourier) : late(fourier);
    // The truth lies between 0 and 1; a sum that misses them does so by its rounding.
    return Math.min(1, Math.max(0, left));
  };
}
