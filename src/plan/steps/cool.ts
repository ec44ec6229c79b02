import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { HeatSource } from "../../heat/index.js";
import { temperatureAtViscosity } from "../../laws/index.js";
import { type Balance, balanceOf, lossTo, noSource } from "../balance.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import type { Basis } from "../figure.js";
import { jacketConducts } from "../jacket.js";
import { lossOf } from "../loss.js";
import type { State } from "../state.js";
import type { CoolDocument } from "../step-documents.js";
import { durationEnds, until, withStirring } from "../stretch.js";
import { asAsked, by, cell, otherwise } from "../unknown.js";
import { type End, jacketOf } from "../walls.js";
import { asUsual, type StepKind } from "./kind.js";

type ToTemperature = Extract<CoolDocument, { readonly to: unknown }>;
type ToViscosity = Extract<CoolDocument, { readonly toViscosity: unknown }>;

/** Cools by its loss to the room, or through the jacket. */
export const cool: StepKind<CoolDocument> = {
  entries: [
    fields<ToTemperature>({
      do: word("cool"),
      to: quantity("temperature"),
      with: maybe("process", word("jacket")),
      within: maybe("wish", quantity("time", { above: 0 })),
      note: maybe("identity", text),
    }) as never,
    fields<ToViscosity>({
      do: word("cool"),
      toViscosity: quantity("dynamicViscosity", { above: 0 }),
      with: maybe("process", word("jacket")),
      within: maybe("wish", quantity("time", { above: 0 })),
      note: maybe("identity", text),
    }) as never,
  ],
  needs: (step) => ["charged", "off-heat", "not-filled", ...(step.with ? (["jacket"] as const) : [])],
  speed: asUsual,
  run: (step, state, { speed }) => {
    const { charge } = state;
    const asked = cell((): number => {
      if ("to" in step) return step.to;
      const { law } = charge.readings("cooling");
      return by("temperature-at-viscosity", () => temperatureAtViscosity({ law, viscosity: step.toViscosity }), {
        field: "bench-viscosities",
      });
    });
    const jacketed = step.with === "jacket";
    const there = cell(() => state.temperature() <= asked());
    const isThere = (): boolean => otherwise(there, () => false);
    const balanceAt = (sure: End): Balance => {
      const given = jacketed ? throughJacket(state, asked(), sure) : leftToItself;
      // A loss to the room that is not known helps a jacket and is left out.
      const unaided = jacketed && !lossOf(charge.job.vessel);
      const loss = unaided
        ? { law: { law: "newton", conductance: 0 } as const, basis: [], assumptions: ["heat-loss-left-out" as const] }
        : lossTo(state);
      const plain = balanceOf(state, given.source, loss);
      const stirred = withStirring(plain, state, speed, [plain.vessel.temperatureStart, asked()]);
      return {
        vessel: { ...stirred.vessel, breakpoints: [...stirred.vessel.breakpoints, ...given.breakpoints] },
        basis: [...given.basis, ...stirred.basis],
        assumptions: [...given.assumptions, ...stirred.assumptions],
      };
    };
    const run = until(
      asked,
      cell(() => balanceAt("value")),
    );
    return {
      duration: cell(() => (isThere() ? 0 : run.duration())),
      ...(jacketed && {
        durationEnds: durationEnds(isThere, asked, { min: () => balanceAt("max"), max: () => balanceAt("min") }),
      }),
      temperature: cell(() => {
        if (isThere()) return state.temperature();
        return asAsked(() => {
          const short = otherwise(
            () => reached() > asked(),
            () => false,
          );
          if (short) run.duration();
          return asked();
        }, asked);
      }),
      segments: cell(() => (isThere() ? [] : run.segments())),
      basis: () => (isThere() ? [] : run.basis()),
      assumptions: () => (isThere() ? [] : run.assumptions()),
      reaches: { direction: "cooling", asked, reached: () => asAsked(reached, asked) },
    };

    /** How cool it gets: as cool as asked for, or as what cools it, if that is warmer. */
    function reached(): number {
      if (isThere()) return state.temperature();
      return otherwise(
        () => {
          run.duration();
          return asked();
        },
        (reason) => {
          if (reason.law !== "heat-balance") return run.duration();
          const { job } = charge;
          return Math.max(asked(), jacketed ? Math.min(jacketOf(job).coolant, job.process.room) : job.process.room);
        },
      );
    }
  },
};

/** What cools the vessel beside its loss to the room. */
interface Cooling {
  readonly source: HeatSource;
  readonly breakpoints: readonly number[];
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

const leftToItself: Cooling = { source: noSource, breakpoints: [], basis: [], assumptions: [] };

/** A jacket is a heat source like a heater, colder than the charge. */
function throughJacket(state: State, temperatureEnd: number, sure: End): Cooling {
  const { coolant: temperature, capacityFlow } = jacketOf(state.charge.job);
  const { conductance, basis, assumptions, breakpoints } = jacketConducts(
    state.charge,
    [state.temperature(), temperatureEnd],
    sure,
  );
  return {
    source: { kind: "medium", temperature, conductance },
    basis: [{ kind: "law", key: "jacket" }, ...basis],
    breakpoints,
    assumptions: capacityFlow === undefined ? [...assumptions, "coolant-as-at-its-inlet"] : assumptions,
  };
}
