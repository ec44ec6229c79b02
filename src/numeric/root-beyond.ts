import { root } from "./root.js";

/**
 * Where a continuous function that is below zero at `start` first reaches zero on the way to `end`, looked for in strides
 * that double, so that it is not asked far beyond its answer; undefined where it stays below zero.
 */
export function rootBeyond(
  valueAt: (x: number) => number,
  start: number,
  end: number,
  path: string,
  tolerance: number,
): number | undefined {
  const sense = Math.sign(end - start);
  let near = start;
  for (let stride = 1; near !== end; stride *= 2) {
    const far = stride >= Math.abs(end - start) ? end : start + sense * stride;
    if (valueAt(far) >= 0) return root(valueAt, near, far, path, tolerance);
    near = far;
  }
  return undefined;
}
