import { earlyTemperature } from "./conduction-early.js";
import { coefficientAt, surfaceRoot } from "./conduction-root.js";
import { wave } from "./conduction-shape.js";

/** Below this Fourier number the series would need more than sixty terms, and the early solution is exact. */
const early = 1e-3;
/** A term that is smaller than the first by exp(−40) no longer counts. */
const negligible = 40;

/** One term of the series: its root, and what it is multiplied with at the centre. */
interface Term {
  readonly found: number;
  readonly coefficient: number;
}

/** Terms of the shapes and Biot numbers that were asked for last: to find their roots is most of what a pack costs. */
const kept: { readonly bend: number; readonly biot: number; readonly terms: Term[] }[] = [];
const keptMax = 16;

/** The terms that were found for a shape and a Biot number, to be added to. */
function termsOf(bend: number, biot: number): Term[] {
  const there = kept.find((one) => one.bend === bend && one.biot === biot);
  if (there) return there.terms;
  const terms: Term[] = [];
  kept.unshift({ bend, biot, terms });
  kept.length = Math.min(kept.length, keptMax);
  return terms;
}

/**
 * The series: what is left at a place, by Fourier number; its roots are found as they are needed, and kept.
 *
 * @internal exported for the test that holds it to the early solution where the two overlap
 */
export function lateTemperature(bend: number, biot: number, place: number | "mean"): (fourier: number) => number {
  const terms = termsOf(bend, biot);
  const heights: number[] = [];
  const termAt = (k: number): Term => {
    if (k === terms.length) {
      const found = surfaceRoot(bend, biot, k + 1);
      terms.push({ found, coefficient: coefficientAt(bend, found) });
    }
    return terms[k] as Term;
  };
  const first = termAt(0).found ** 2;
  return (fourier) => {
    let sum = 0;
    for (let k = 0; ; k += 1) {
      const { found, coefficient } = termAt(k);
      const rate = found * found;
      if ((rate - first) * fourier > negligible) return sum;
      if (k === heights.length) {
        const there = place === "mean" ? ((bend + 1) * wave(bend, found)[1]) / found : wave(bend, found * place)[0];
        heights.push(coefficient * there);
      }
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
