import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import { type HeatSource, steadyTemperature } from "../../heat/index.js";
import type { Quantity } from "../../units/index.js";
import { type Balance, balanceOf, until, withStirring } from "../balance.js";
import type { AssumptionCode } from "../codes.js";
import type { Basis } from "../figure.js";
import type { State } from "../state.js";
import { by, type Cell, cell, otherwise, stated } from "../unknown.js";
import { insideOf } from "../walls.js";
import { asUsual, type StepKind } from "./kind.js";

/** Heats the charge. */
export interface HeatDocument {
  readonly do: "heat";
  readonly to: Quantity<"temperature">;
  /** The time that it may take: the plan says whether it does, and what heater would do. */
  readonly within?: Quantity<"time">;
  readonly note?: string;
}

/** Heats with all that the heater gives, against the loss, through whatever melts. */
export const heat: StepKind<HeatDocument> = {
  entries: [
    fields<HeatDocument>({
      do: word("heat"),
      to: quantity("temperature"),
      within: maybe("wish", quantity("time", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "not-filled"],
  onHeat: true,
  speed: asUsual,
  run: ({ to }, before, { speed }) => {
    const charge = before.charge.as(before.charge.molten, true);
    const state: State = { ...before, charge, onHeat: true };
    // A charge that is already that warm stays as it is.
    const there = cell(() => before.temperature() >= to);
    const balance = cell((): Balance => heating(state, to, speed));
    const run = until(() => to, balance);
    const reached = cell(() => reachedBy(to, run.duration, balance));
    return {
      charge,
      onHeat: true,
      duration: cell(() => (isThere(there) ? 0 : run.duration())),
      temperature: cell(() => {
        if (isThere(there)) return before.temperature();
        // What takes a time that is not known gets that warm all the same; what a heater does not reach, does not.
        const { temperatureMax } = before.charge.job.vessel.heater ?? {};
        const short = otherwise(
          () => reached() < to,
          () => temperatureMax !== undefined && temperatureMax <= to,
        );
        if (short) run.duration();
        return to;
      }),
      segments: cell(() => (isThere(there) ? [] : run.segments())),
      basis: () => (isThere(there) ? [] : (run.basis?.() ?? [])),
      assumptions: () => (isThere(there) ? [] : (run.assumptions?.() ?? [])),
      reaches: {
        direction: "heating",
        asked: () => to,
        reached: cell(() => (isThere(there) ? before.temperature() : reached())),
      },
    };
  },
};

/** A charge whose temperature is not known may not be that warm yet. */
function isThere(there: () => boolean): boolean {
  return otherwise(there, () => false);
}

/** The balance with the heater and the stirrer. */
function heating(state: State, to: number, speed: Cell<number> | undefined): Balance {
  const { source, basis, assumptions } = heaterOf(state, to);
  const plain = balanceOf(state, source);
  const stirred = withStirring(plain, state, speed, [plain.vessel.temperatureStart, to]);
  return {
    ...stirred,
    basis: [...basis, ...stirred.basis],
    assumptions: [...assumptions, ...stirred.assumptions],
  };
}

/** The heater: its power, or if its temperature limits it, what its wall passes and no more than its power. */
function heaterOf(
  { charge, temperature }: State,
  temperatureEnd: number,
): { readonly source: HeatSource; readonly basis: readonly Basis[]; readonly assumptions: readonly AssumptionCode[] } {
  const { vessel } = charge.job;
  const { power, temperatureMax } = stated(vessel.heater, "vessel-heater", { of: vessel.name });
  if (temperatureMax === undefined || !vessel.heatedWall)
    return { source: { kind: "power", power }, basis: [{ kind: "law", key: "heater-power" }], assumptions: [] };
  const inside = insideOf(charge, vessel.heatedWall, [temperature(), temperatureEnd], "heating");
  const { area } = vessel.heatedWall;
  return {
    source: {
      kind: "medium",
      temperature: temperatureMax,
      conductance: inside.stated === undefined ? (at) => area * inside.at(at, temperatureMax) : area * inside.stated,
      powerMax: power,
    },
    basis: [{ kind: "law", key: "heater-limited-by-its-temperature" }, ...inside.basis],
    assumptions: inside.assumptions,
  };
}

/** How warm the charge gets: as warm as asked for, or where the loss takes all that the heater gives. */
function reachedBy(to: number, duration: () => number, balance: () => Balance): number {
  const { vessel } = balance();
  return otherwise(
    () => {
      duration();
      return to;
    },
    (reason) => {
      if (reason.law !== "heat-balance") return stated<number>(undefined, reason.field ?? "vessel-heat-loss", reason);
      const { heatSource, heatLoss, temperatureAmbient } = vessel;
      const most = by("heat-balance", () => steadyTemperature({ heatSource, heatLoss, temperatureAmbient }));
      return Math.min(most, to);
    },
  );
}
