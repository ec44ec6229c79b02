import type { HeatSource } from "../heat/index.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import { jacketConducts } from "./jacket.js";
import type { State } from "./state.js";
import { type Cell, stated } from "./unknown.js";
import { jacketOf } from "./walls.js";

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
