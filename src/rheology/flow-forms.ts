import type { FlowCurve } from "../laws/flow-curve.js";

/** A model that flow-curve readings can be fitted with. */
export type FlowModel =
  | "newton"
  | "power-law"
  | "bingham"
  | "casson"
  | "herschel-bulkley"
  | "carreau"
  | "carreau-yasuda";

/**
 * How a model is fitted. For a shape that is held, its stress is a sum of known columns times coefficients, plus what
 * is known beforehand: that gives the start for every shape of a grid, and the best of them goes on to the full fit.
 */
export interface FlowForm {
  /** Names of the parameters, as in the curve. */
  readonly names: readonly string[];
  /** The shapes to start from, for readings between two rates. */
  readonly shapes: (min: number, max: number) => readonly (readonly number[])[];
  readonly columns: (shape: readonly number[], rate: number) => readonly number[];
  readonly known: (rate: number) => number;
  readonly parameters: (coefficients: readonly number[], shape: readonly number[]) => readonly number[];
  /** The shape among the parameters, where the rest of them are the coefficients. */
  readonly shape?: (parameters: readonly number[]) => readonly number[];
  /** The stress, also where a parameter has a sign that no fluid has: a fit may pass there, and may end there. */
  readonly stress: (parameters: readonly number[], rate: number) => number;
  /** Derivatives of the stress by each parameter. */
  readonly slopes: (parameters: readonly number[], rate: number) => readonly number[];
  /** True where the parameters of the fit are the roots of those of the curve. */
  readonly rooted?: boolean;
  readonly curve: (parameters: readonly number[]) => FlowCurve;
}

type Numbers = readonly number[];

/** Shapes that a fit of one shape starts from. */
const starts = 16;

const nothing = (): number => 0;
const noShape = (): readonly Numbers[] => [[]];

/** `count` values from `low` to `high`, in equal ratios. */
function ladder(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)));
}

/** τ = τ_y + K γ̇ⁿ, with and without a yield stress, the index held at 1 or not. */
function sum(names: readonly string[], yields: boolean, index: boolean, curve: FlowForm["curve"]): FlowForm {
  const before = yields ? [1] : [];
  return {
    names,
    shapes: index ? () => ladder(0.05, 4, starts).map((one) => [one]) : noShape,
    columns: ([flowIndex = 1], rate) => [...before, rate ** flowIndex],
    known: nothing,
    parameters: (coefficients, shape) => [...coefficients, ...shape],
    shape: (parameters) => parameters.slice(before.length + 1),
    stress: (parameters, rate) => {
      const [factor = 0, flowIndex = 1] = yields ? parameters.slice(1) : parameters;
      return (yields ? (parameters[0] as number) : 0) + factor * rate ** flowIndex;
    },
    slopes: (parameters, rate) => {
      const [factor = 0, flowIndex = 1] = yields ? parameters.slice(1) : parameters;
      const power = rate ** flowIndex;
      return [...before, power, ...(index ? [factor * power * Math.log(rate)] : [])];
    },
    curve,
  };
}

/** τ = (a + b √γ̇)², a and b being the roots of yield stress and plastic viscosity. */
const casson: FlowForm = {
  names: ["yieldStress", "plasticViscosity"],
  // The shape is b/a.
  shapes: (min, max) => ladder(0.03 / Math.sqrt(max), 30 / Math.sqrt(min), starts).map((one) => [one]),
  columns: ([shape = 0], rate) => [(1 + shape * Math.sqrt(rate)) ** 2],
  known: nothing,
  parameters: ([yieldStress = 0], [shape = 0]) => [Math.sqrt(yieldStress), Math.sqrt(yieldStress) * shape],
  stress: ([a = 0, b = 0], rate) => (a + b * Math.sqrt(rate)) ** 2,
  slopes: ([a = 0, b = 0], rate) => {
    const twice = 2 * (a + b * Math.sqrt(rate));
    return [twice, twice * Math.sqrt(rate)];
  },
  rooted: true,
  curve: ([a = 0, b = 0]) => ({ law: "casson", yieldStress: a * a, plasticViscosity: b * b }),
};

/** How far the viscosity has come down from the plateau at rest, and what that is a power of. */
function bend(time: number, index: number, sharpness: number, rate: number) {
  const power = (time * rate) ** sharpness;
  return { power, share: (1 + power) ** ((index - 1) / sharpness) };
}

function carreau(sharpness: number | undefined, held: number | undefined): FlowForm {
  const bends = sharpness === undefined ? [0.5, 1, 2, 4] : [sharpness];
  const fitsInfinite = held === undefined;
  const split = (parameters: Numbers) => {
    const [zero = 0, time = 0, index = 0, ...rest] = parameters;
    const infinite = (held ?? rest.shift()) as number;
    return { zero, time, index, infinite, sharp: (sharpness ?? rest[0]) as number };
  };
  return {
    names: [
      "viscosityZero",
      "timeConstant",
      "flowIndex",
      ...(fitsInfinite ? ["viscosityInfinite"] : []),
      ...(sharpness === undefined ? ["transition"] : []),
    ],
    shapes: (min, max) => {
      // A bend takes more than a decade of rates: two times a decade miss none. No rheometer spans twenty decades.
      const times = Math.min(Math.ceil(2 * (Math.log10(max) - Math.log10(min))), 40) + 5;
      // The middles of five equal parts of 0 to 1.
      const indices = Array.from({ length: 5 }, (_, k) => (2 * k + 1) / 10);
      return ladder(0.1 / max, 10 / min, times).flatMap((time) =>
        indices.flatMap((index) => bends.map((one) => [time, index, one])),
      );
    },
    columns: ([time = 0, index = 0, sharp = 0], rate) => {
      const { share } = bend(time, index, sharp, rate);
      return fitsInfinite ? [rate * share, rate] : [rate * share];
    },
    known: (rate) => (held ?? 0) * rate,
    parameters: ([drop = 0, infinite = held as number], [time = 0, index = 0, sharp = 0]) => [
      drop + infinite,
      time,
      index,
      ...(fitsInfinite ? [infinite] : []),
      ...(sharpness === undefined ? [sharp] : []),
    ],
    shape: (parameters) => {
      const { time, index, sharp } = split(parameters);
      return [time, index, sharp];
    },
    stress: (parameters, rate) => {
      const { zero, time, index, infinite, sharp } = split(parameters);
      // A bend at a negative time would look like its mirror image.
      return time > 0 && sharp > 0
        ? rate * (infinite + (zero - infinite) * bend(time, index, sharp, rate).share)
        : Number.NaN;
    },
    slopes: (parameters, rate) => {
      const { zero, time, index, infinite, sharp } = split(parameters);
      const { power, share } = bend(time, index, sharp, rate);
      const log = Math.log1p(power);
      const fall = rate * (zero - infinite) * share;
      const bent = power / (1 + power);
      return [
        rate * share,
        (fall * (index - 1) * bent) / time,
        (fall * log) / sharp,
        ...(fitsInfinite ? [rate * (1 - share)] : []),
        ...(sharpness === undefined
          ? [(fall * (index - 1) * (bent * Math.log(time * rate) - log / sharp)) / sharp]
          : []),
      ];
    },
    curve: (parameters) => {
      const { zero, time, index, infinite, sharp } = split(parameters);
      return {
        law: "carreau-yasuda",
        viscosityZero: zero,
        viscosityInfinite: infinite,
        timeConstant: time,
        flowIndex: index,
        transition: sharp,
      };
    },
  };
}

/** The form of a model; a viscosity that no shear goes below is fitted unless it is held. */
export function flowForm(model: FlowModel, viscosityInfinite: number | undefined): FlowForm | undefined {
  switch (model) {
    case "newton":
      return sum(["viscosity"], false, false, ([viscosity = 0]) => ({ law: "newton", viscosity }));
    case "power-law":
      return sum(["consistency", "flowIndex"], false, true, ([consistency = 0, flowIndex = 0]) => ({
        law: "power-law",
        consistency,
        flowIndex,
      }));
    case "bingham":
      return sum(["yieldStress", "plasticViscosity"], true, false, ([yieldStress = 0, plasticViscosity = 0]) => ({
        law: "bingham",
        yieldStress,
        plasticViscosity,
      }));
    case "casson":
      return casson;
    case "herschel-bulkley":
      return sum(
        ["yieldStress", "consistency", "flowIndex"],
        true,
        true,
        ([yieldStress = 0, consistency = 0, flowIndex = 0]) => ({
          law: "herschel-bulkley",
          yieldStress,
          consistency,
          flowIndex,
        }),
      );
    case "carreau":
      return carreau(2, viscosityInfinite);
    case "carreau-yasuda":
      return carreau(undefined, viscosityInfinite);
    default:
      return undefined;
  }
}
