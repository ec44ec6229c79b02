import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import { type HeatSource, steadyTemperature } from "../../heat/index.js";
import { type Balance, balanceOf } from "../balance.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import type { Basis } from "../figure.js";
import type { State } from "../state.js";
import type { HeatDocument } from "../step-documents.js";
import { durationEnds, until, withStirring } from "../stretch.js";
import { asAsked, by, type Cell, cell, otherwise, stated, unknown } from "../unknown.js";
import { atReadingsEnd, type End, insideOf } from "../walls.js";
import { asUsual, type StepKind } from "./kind.js";

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
    const { temperatureMax } = charge.job.vessel.heater ?? {};
    const state: State = { ...before, charge, onHeat: true };
    // A charge that is already that warm stays as it is.
    const there = cell(() => before.temperature() >= to);
    const balance = cell((): Balance => heating(state, to, speed, "value"));
    const ends = { min: () => heating(state, to, speed, "max"), max: () => heating(state, to, speed, "min") };
    const run = until(() => to, balance);
    const reached = cell(() => reachedBy(to, run.duration, balance));
    return {
      charge,
      onHeat: true,
      duration: cell(() => (isThere(there) ? 0 : run.duration())),
      // The temperature of the heater limits what its wall passes.
      ...(temperatureMax !== undefined && {
        durationEnds: durationEnds(
          () => isThere(there),
          () => to,
          ends,
        ),
      }),
      temperature: cell(() => {
        if (isThere(there)) return before.temperature();
        // What takes a time that is not known gets that warm all the same; what a heater does not reach, does not.
        return asAsked(
          () => {
            const short = otherwise(
              () => reached() < to,
              () => (temperatureMax ?? Number.POSITIVE_INFINITY) <= to,
            );
            if (short) run.duration();
            return to;
          },
          () => to,
        );
      }),
      segments: cell(() => (isThere(there) ? [] : run.segments())),
      basis: () => (isThere(there) ? [] : run.basis()),
      assumptions: () => (isThere(there) ? [] : run.assumptions()),
      reaches: {
        direction: "heating",
        asked: () => to,
        reached: cell(() => (isThere(there) ? before.temperature() : asAsked(reached, () => to))),
      },
    };
  },
};

/** A charge whose temperature is not known may not be that warm yet. */
function isThere(there: () => boolean): boolean {
  return otherwise(there, () => false);
}

const unstatedMelting: AssumptionCode = "heat-of-melting-left-out";

/** The balance with the heater and the stirrer. */
function heating(state: State, to: number, speed: Cell<number> | undefined, sure: End): Balance {
  const { source, basis, assumptions } = heaterOf(state, to, sure);
  const plain = balanceOf(state, source);
  const stirred = withStirring(plain, state, speed, [plain.vessel.temperatureStart, to]);
  return {
    ...stirred,
    basis: [...basis, ...stirred.basis],
    assumptions: [...assumptions, ...stirred.assumptions, ...(state.charge.meltsBy() ? [] : [unstatedMelting])],
  };
}

/**
 * The heater: its power, or if its temperature limits it, what its wall passes and no more than its power; at one end of
 * how sure the wall is. Beyond the readings the charge at a wall is thinner than where they end and takes up more, by an
 * amount that is not known; a charge colder than the readings is thicker, and takes up less.
 */
function heaterOf(
  { charge, temperature }: State,
  temperatureEnd: number,
  sure: End,
): { readonly source: HeatSource; readonly basis: readonly Basis[]; readonly assumptions: readonly AssumptionCode[] } {
  const { vessel } = charge.job;
  const { power, temperatureMax } = stated(vessel.heater, "vessel-heater", { of: vessel.name });
  if (temperatureMax === undefined || !vessel.heatedWall)
    return { source: { kind: "power", power }, basis: [{ kind: "law", key: "heater-power" }], assumptions: [] };
  const inside = insideOf(charge, vessel.heatedWall, [temperature(), temperatureEnd], "heating");
  const { area } = vessel.heatedWall;
  const { min, max } = inside.read;
  const law = { kind: "law", key: "heater-limited-by-its-temperature" } as const;
  const isHotter = temperatureMax > max;
  const isColder = Math.min(temperature(), temperatureEnd) < min;
  if (sure === "min" && isColder) unknown("outside-range", { law: "viscosity", field: "bench-viscosities" });
  return {
    source:
      sure === "max" && isHotter
        ? { kind: "power", power }
        : {
            kind: "medium",
            temperature: temperatureMax,
            conductance:
              inside.stated === undefined ? (at) => area * inside.at(at, temperatureMax, sure) : area * inside.stated,
            powerMax: power,
          },
    basis: [law, ...inside.basis],
    assumptions: isHotter || isColder ? [atReadingsEnd] : [],
  };
}

/** How warm the charge gets: as warm as asked for, or where the loss takes all that the heater gives. */
function reachedBy(to: number, duration: () => number, balance: () => Balance): number {
  const { vessel } = balance();
  // With a balance that is known, only the balance itself can say that it does not get there.
  return otherwise(
    () => {
      duration();
      return to;
    },
    () => {
      const { heatSource, heatLoss, temperatureAmbient } = vessel;
      const most = by("heat-balance", () => steadyTemperature({ heatSource, heatLoss, temperatureAmbient }));
      return Math.min(most, to);
    },
  );
}
