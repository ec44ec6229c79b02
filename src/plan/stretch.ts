import { type Segment, vesselSegment } from "../heat/index.js";
import { type Balance, balanceOf, noSource } from "./balance.js";
import type { Warmth } from "./jacket.js";
import { endOf, heldAt, type VesselSegment } from "./segments.js";
import type { Outcome, State } from "./state.js";
import { stirringPower } from "./stirred.js";
import { by, type Cell, cell, otherwise, unknown, withAssumed } from "./unknown.js";

/** What the vessel goes through, with all that it rests on. */
type Stretch = Outcome & Required<Pick<Outcome, "basis" | "assumptions">>;

/** A balance with the heat of the stirrer between two temperatures; where its power is not known it is left out, and said to be. */
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

/** Heats or cools until a temperature: how long that takes, and what the charge goes through. */
export function until(
  temperatureEnd: Cell<number>,
  balance: Cell<Balance>,
): Pick<Stretch, "duration" | "segments" | "basis" | "assumptions"> {
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

/**
 * The vessel stands or is stirred for a while: on the heat it is held, off it it cools, against what stirring gives, and
 * with what a warm jacket passes.
 */
export function wait(state: State, duration: Cell<number>, speed?: Cell<number>, warmed?: Cell<Warmth>): Stretch {
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
      assumptions: () => [],
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
