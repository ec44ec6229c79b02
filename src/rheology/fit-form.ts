import { type CurveFit, curveFit } from "../numeric/curve-fit.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { leastSquares } from "../numeric/least-squares.js";
import type { FlowForm } from "./flow-forms.js";
import type { FlowReading } from "./flow-reading.js";

/** Where the search for the parameters of a form began, and the fit where it came to an end. */
export interface FormFit {
  readonly start: readonly number[] | undefined;
  readonly fit: CurveFit | undefined;
}

/** Fits a form to readings, each with its weight: from the best shape of the grid to the minimum in all parameters. */
export function fitForm(form: FlowForm, readings: readonly FlowReading[], weights: readonly number[]): FormFit {
  const rates = readings.map(({ shearRate }) => shearRate);
  const weigh = (of: (rate: number) => number) =>
    Float64Array.from(rates, (rate, i) => of(rate) * (weights[i] as number));
  const target = Float64Array.from(readings, ({ stress }, i) => stress * (weights[i] as number));
  const known = weigh(form.known);
  const right = target.map((value, i) => value - (known[i] as number));
  const atShape = (shape: readonly number[]) => {
    const solved = leastSquares(
      weighted(rates, weights, (rate) => form.columns(shape, rate)),
      right,
    );
    return solved && { sumOfSquares: solved.sumOfSquares, parameters: form.parameters(solved.coefficients, shape) };
  };
  let start: ReturnType<typeof atShape>;
  for (const shape of form.shapes(minOf(rates), maxOf(rates))) {
    const solved = atShape(shape);
    if (solved && !(solved.sumOfSquares >= (start?.sumOfSquares ?? Number.POSITIVE_INFINITY))) start = solved;
  }
  const { shape } = form;
  const fittable = {
    target,
    valuesAt: (parameters: readonly number[]) => weigh((rate) => form.stress(parameters, rate)),
    slopesAt: (parameters: readonly number[]) => weighted(rates, weights, (rate) => form.slopes(parameters, rate)),
    ...(shape && { settled: (parameters: readonly number[]) => atShape(shape(parameters))?.parameters }),
  };
  return { start: start?.parameters, fit: start && curveFit(fittable, start.parameters) };
}

/** The columns of a table that has a row for each rate, the rows weighted. */
function weighted(
  rates: readonly number[],
  weights: readonly number[],
  rowOf: (rate: number) => readonly number[],
): Float64Array[] {
  const columns: Float64Array[] = [];
  for (let i = 0; i < rates.length; i += 1) {
    const row = rowOf(rates[i] as number);
    for (let k = 0; k < row.length; k += 1) {
      columns[k] ??= new Float64Array(rates.length);
      (columns[k] as Float64Array)[i] = (row[k] as number) * (weights[i] as number);
    }
  }
  return columns;
}
