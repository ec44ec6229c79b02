import { type HeatSource, jacketConductance, jacketedWall } from "../heat/index.js";
import type { Charge } from "./charge.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import type { State } from "./state.js";
import { by, type Cell, stated } from "./unknown.js";
import { atReadingsEnd, beside, type End, insideOf, jacketOf } from "./walls.js";

/** What a jacket conducts over the whole wall [W/K]: one figure, or a function of the charge's temperature [°C]. */
export interface JacketConducts {
  readonly conductance: number | ((temperature: number) => number);
  /** Where the conductance has a breakpoint, or grows steep [°C]. */
  readonly breakpoints: readonly number[];
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

/** What passes is above 0 for the kernels: next to nothing [W/K]. */
const nothing = Number.MIN_VALUE;

/** So many times the way to where the readings end is halved, before which what passes there falls to nothing. */
const halvings = 12;

/**
 * The conductance of the jacket as stated, else from the coefficients on both sides of its wall, at one end of how sure
 * the inner one is. What flows through it is the coolant, or a medium of another temperature [°C].
 *
 * Beyond the readings the charge at the wall is thicker than where they end, and passes less than that lets expect. At
 * least it passes what a wall as cold as they go would take from it: what is colder is at worst a skin that stands still,
 * thin beside the vessel, whose own face is as cold as that. So a colder coolant never takes less.
 */
export function jacketConducts(
  charge: Charge,
  between: readonly [number, number],
  sure: End = "value",
  temperatureJacket: number = jacketOf(charge.job).coolant,
): JacketConducts {
  const jacket = jacketOf(charge.job);
  const { area, outsideCoefficient, insideCoefficient, source, capacityFlow } = jacket;
  const toInlet = (conductance: number): number =>
    capacityFlow === undefined ? conductance : Math.max(nothing, jacketConductance({ conductance, capacityFlow }));
  if (jacket.conductance !== undefined)
    return {
      conductance: toInlet(jacket.conductance),
      breakpoints: [],
      basis: [{ kind: "stated", key: "vessel-jacket-conductance" }],
      assumptions: [],
    };
  const wetted = stated(area, "vessel-jacket-area");
  const outside = stated(outsideCoefficient, "vessel-jacket-conductance");
  const inside = insideOf(charge, { coefficient: insideCoefficient, source }, between, "cooling");
  const { min: coldest } = inside.read;
  const [warmest, coolest] = [Math.max(...between), Math.min(...between)];
  const wallAt = (bulk: number, end: End): ReturnType<typeof jacketedWall> =>
    jacketedWall({
      temperatureBulk: bulk,
      temperatureJacket,
      heatTransferCoefficient: beside(inside, bulk, end),
      heatTransferCoefficientJacket: outside,
    });
  const overallAt = (at: number): number => {
    // The segment looks for its limit beyond its end, where the charge would be too thick for any correlation.
    const bulk = Math.min(warmest, Math.max(coolest, at));
    const { temperatureWall, heatTransferCoefficientOverall: overall } = wallAt(bulk, sure);
    if (sure !== "min" || temperatureWall >= coldest) return wetted * overall;
    const least = (wetted * inside.at(bulk, coldest, sure) * (bulk - coldest)) / (bulk - temperatureJacket);
    return Math.max(nothing, least);
  };
  return by("stirred-wall", () => {
    // The wall is coldest where the charge is.
    const isBeyond = wallAt(coolest, sure).temperatureWall < coldest;
    const isLeast = sure === "min" && isBeyond;
    return {
      conductance: inside.stated === undefined ? (at: number) => toInlet(overallAt(at)) : toInlet(overallAt(warmest)),
      breakpoints: isLeast
        ? Array.from({ length: halvings }, (_, i) => coldest + (warmest - coldest) / 2 ** (i + 1))
        : [],
      basis: inside.basis,
      assumptions: isBeyond ? [atReadingsEnd] : inside.assumptions,
    };
  });
}

/** What keeps a vessel warm, and what that rests on. */
export interface Warmth {
  readonly source: HeatSource;
  /** Where what it conducts has a breakpoint [°C]. */
  readonly breakpoints: readonly number[];
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

/**
 * A jacket that keeps the charge warm with a medium of a temperature [°C]. A correlation counts at its lower end, so that
 * nothing is kept warmer than it will be; without stirring none holds, and a figure has to be stated.
 */
export function warmJacket(state: State, temperature: number, speed: Cell<number> | undefined): Warmth {
  const { charge } = state;
  const { conductance: measured, insideCoefficient } = jacketOf(charge.job);
  if (speed === undefined) stated(measured ?? insideCoefficient, "vessel-jacket-conductance");
  const between = [state.temperature(), temperature] as const;
  const { conductance, basis, ...others } = jacketConducts(charge, between, "min", temperature);
  return {
    source: { kind: "medium", temperature, conductance },
    basis: [{ kind: "law", key: "jacket" }, ...basis],
    ...others,
  };
}
