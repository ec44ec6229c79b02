import { type HeatedVessel, type HeatSource, type Segment, vesselSegment } from "../heat/index.js";
import type { HeatLossLaw } from "../laws/index.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import { lossOf } from "./loss.js";
import type { Outcome, State } from "./state.js";
import { stirringPower } from "./stirred.js";
import { by, type Cell, cell, otherwise, remembered, stated, unknown, withAssumed } from "./unknown.js";
import type { Warmth } from "./warm-jacket.js";

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

/** The same with the heat of the stirrer between two temperatures; where its power is not known it is left out, and said to be. */
export function withStirring(
  balance: Balance,
  state: State,
  speed: Cell<number> | undefined,
  [from, to]: readonly [number, number],
): Balance {
  if (speed === undefined) return balance;
  const [coolest, warmest] = [Math.min(from, to), Math.max(from, to)];
  return otherwise(
    () => {
      const { value: found, assumed } = withAssumed(() => stirringPower(state, [coolest, warmest], speed()));
      // By a curve that may err either way it is not known how much it warms.
      if (assumed.length > 0) unknown("not-read", { field: "bench-viscosities" });
      // The segment looks for its limit beyond its end, where nothing was read.
      const power = (temperature: number): number => found.at(Math.min(warmest, Math.max(coolest, temperature)));
      const { vessel } = balance;
      return {
        vessel: {
          ...vessel,
          heatSource: { kind: "stirrer", power, beside: vessel.heatSource } as const,
          breakpoints: [...vessel.breakpoints, ...found.breakpoints],
        },
        basis: [...balance.basis, { kind: "law", key: "heat-of-stirring" } as const],
        assumptions: balance.assumptions,
      };
    },
    () => ({ ...balance, assumptions: [...balance.assumptions, "heat-of-stirring-left-out" as const] }),
  );
}

/** One segment of a vessel that is heated, cooled or left to itself. */
export type VesselSegment = Extract<Segment, { readonly kind: "vessel" }>;

/** Where a segment ends, and when. */
export const endOf: (segment: VesselSegment) => { readonly temperatureEnd: number; readonly duration: number } =
  remembered((segment: VesselSegment) => by("heat-balance", () => vesselSegment(segment)));

/** Heats or cools until a temperature: how long that takes, and what the charge goes through. */
export function until(
  temperatureEnd: Cell<number>,
  balance: Cell<Balance>,
): Pick<Outcome, "duration" | "segments" | "basis" | "assumptions"> {
  const segment = cell(
    (): VesselSegment => ({ kind: "vessel", ...balance().vessel, temperatureEnd: temperatureEnd() }),
  );
  const duration = (): number => endOf(segment()).duration;
  return {
    duration,
    segments: cell((): readonly Segment[] => {
      // A segment that cannot be run is none.
      duration();
      return [segment()];
    }),
    basis: () => balance().basis,
    assumptions: () => balance().assumptions,
  };
}

/** Between which ends the time lies, with the balance that is fastest and the one that is slowest; open where that never gets there, or is not known. */
export function durationEnds(
  isThere: () => boolean,
  temperatureEnd: Cell<number>,
  balances: { readonly min: Cell<Balance>; readonly max: Cell<Balance> },
): NonNullable<Outcome["durationEnds"]> {
  const durationWith = (balance: Cell<Balance>): number => until(temperatureEnd, cell(balance)).duration();
  return cell(() => {
    if (isThere()) return { min: 0, max: 0 };
    return {
      min: durationWith(balances.min),
      max: otherwise<number, null>(
        () => durationWith(balances.max),
        () => null,
      ),
    };
  });
}

/** A hold at one temperature. */
export function heldAt(temperature: number, duration: number): readonly Segment[] {
  return [{ kind: "ramp", temperatureStart: temperature, temperatureEnd: temperature, duration }];
}

/**
 * The vessel stands or is stirred for a while: on the heat it is held, off it it cools, against what stirring gives, and
 * with what a warm jacket passes.
 */
export function wait(state: State, duration: Cell<number>, speed?: Cell<number>, warmed?: Cell<Warmth>): Outcome {
  const room = state.charge.job.process.room;
  const still = cell((): boolean => {
    // What is at the room's temperature and is not stirred stays so.
    return (state.temperature() === room && speed === undefined && warmed === undefined) || duration() === 0;
  });
  if (state.onHeat)
    return {
      duration,
      temperature: state.temperature,
      segments: cell(() => heldAt(state.temperature(), duration())),
      basis: () => [{ kind: "law", key: "held-by-the-heater" }],
    };
  const run = cell(() => {
    const temperature = state.temperature();
    const given = warmed?.();
    const left = balanceOf(state, given?.source ?? noSource);
    const plain: Balance = given
      ? {
          vessel: { ...left.vessel, breakpoints: [...left.vessel.breakpoints, ...given.breakpoints] },
          basis: [...given.basis, ...left.basis],
          assumptions: [...given.assumptions, ...left.assumptions],
        }
      : left;
    const lasting = { duration: duration() };
    return by("heat-balance", () => {
      const atRoom = temperature === room && given === undefined;
      // Left to itself it would get this cool: no cooler with what stirring gives.
      const end = atRoom ? temperature : vesselSegment({ ...plain.vessel, ...lasting }).temperatureEnd;
      const balance = withStirring(plain, state, speed, [temperature, end]);
      const isStirred = balance.vessel.heatSource !== plain.vessel.heatSource;
      if (atRoom && !isStirred) return { balance, temperature, segments: heldAt(temperature, duration()) };
      const temperatureEnd = isStirred ? vesselSegment({ ...balance.vessel, ...lasting }).temperatureEnd : end;
      // What is stirred or kept warm comes to rest above the room, where no temperature gives the time; nor does one near the room's.
      const byTime = isStirred || given !== undefined || Math.abs(end - room) < 0.1 || end === temperature;
      const segment = {
        kind: "vessel",
        ...balance.vessel,
        ...(byTime ? lasting : { temperatureEnd: end }),
      } as const;
      return { balance, temperature: temperatureEnd, segments: [segment] };
    });
  });
  // At the room's temperature the heat of stirring is the only one: where it cannot be known, the charge stays as it is.
  const atRoom = <T>(find: () => T, instead: () => T): T =>
    state.temperature() === room && !state.charge.heated && !warmed ? otherwise(find, instead) : find();
  return {
    duration,
    temperature: cell(() => (still() ? state.temperature() : atRoom(() => run().temperature, state.temperature))),
    segments: cell(() =>
      still()
        ? heldAt(state.temperature(), duration())
        : atRoom(
            () => run().segments,
            () => heldAt(state.temperature(), duration()),
          ),
    ),
    basis: () => (still() ? [] : run().balance.basis),
    assumptions: () =>
      still()
        ? []
        : otherwise(
            () => run().balance.assumptions,
            () => ["heat-of-stirring-left-out"] as const,
          ),
  };
}
