import type { HeatedVessel, HeatSource } from "../heat/index.js";
import type { HeatLossLaw } from "../laws/index.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import { lossOf } from "./loss.js";
import type { State } from "./state.js";
import { stated } from "./unknown.js";

/** A source that gives nothing: the vessel is left to itself. */
export const noSource: HeatSource = { kind: "power", power: 0 };

/** A heat balance of the vessel with its charge, ready to be run, and what it rests on. */
export interface Balance {
  readonly vessel: HeatedVessel & { readonly breakpoints: readonly number[] };
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

const noLoss: HeatLossLaw = { law: "newton", conductance: 0 };

/**
 * The loss of the vessel to the room. Of a charge that only stirring warms, a loss that is not stated counts as none:
 * the charge then comes out warmer than it will be. What was heated needs one.
 */
export function lossTo({ charge }: State): Pick<Balance, "basis" | "assumptions"> & { readonly law: HeatLossLaw } {
  const loss = lossOf(charge.job.vessel);
  if (!loss && !charge.heated) return { law: noLoss, basis: [], assumptions: ["heat-loss-left-out"] };
  const { law, basis } = stated(loss, "vessel-heat-loss", { of: charge.job.vessel.name });
  return { law, basis: [basis], assumptions: [] };
}

/** The balance of a state with what heats or cools it. */
export function balanceOf(state: State, source: HeatSource, loss: ReturnType<typeof lossTo> = lossTo(state)): Balance {
  const { charge } = state;
  const { at, breakpoints } = charge.heatCapacity();
  return {
    vessel: {
      temperatureStart: state.temperature(),
      temperatureAmbient: charge.job.process.room,
      heatCapacity: at,
      breakpoints,
      heatLoss: loss.law,
      heatSource: source,
    },
    basis: loss.basis,
    assumptions: charge.job.vessel.wall ? loss.assumptions : [...loss.assumptions, "vessel-wall-left-out"],
  };
}
