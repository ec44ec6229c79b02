import { createRequire } from "node:module";

/** dy/dx at x, y. */
type Slope = (x: number, y: readonly number[]) => number[];

interface Solver {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(slope: Slope, x: number, y: number[], xEnd: number): { readonly y: number[] };
}

// The types of odex are its TypeScript source, which our compiler settings refuse: so it is loaded as JavaScript.
const require = createRequire(import.meta.url);
const odex = require("odex") as { readonly Solver: new (size: number) => Solver };

/** The state after x, by odex 2.0.4 (Gragg, Bulirsch and Stoer), which knows nothing of our closed forms and panels. */
export function march(slope: Slope, start: readonly number[], x: number, tolerance = 1e-11): number[] {
  const solver = new odex.Solver(start.length);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  return solver.solve(slope, 0, [...start], x).y;
}
