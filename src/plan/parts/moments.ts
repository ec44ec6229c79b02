import type { Charge } from "../charge.js";
import type { Moment, Run, State } from "../state.js";
import type { Step } from "../step-documents.js";
import { otherwise, unknown } from "../unknown.js";

/** A moment of one kind of step. */
export type MomentOf<Kind extends Step["do"]> = Moment<Extract<Step, { readonly do: Kind }>>;

/** The moments of one kind of step, in order. */
export function momentsOf<Kind extends Step["do"]>({ moments }: Run, kind: Kind): readonly MomentOf<Kind>[] {
  return moments.filter((moment): moment is MomentOf<Kind> => moment.step.do === kind);
}

/** The filling of the packs. */
export function fillingOf(run: Run): MomentOf<"fill"> {
  return momentsOf(run, "fill")[0] ?? unknown("not-done");
}

/** Which pack is looked at: the first is filled hottest, the last has stood in the vessel longest. */
export type WhichPack = "first-pack" | "last-pack";

/** How warm a pack is filled [°C]. */
export function filledAt(run: Run, which: WhichPack): number {
  const { before, after } = fillingOf(run);
  return (which === "first-pack" ? before : after).temperature();
}

/** The moment at whose end a pack is filled: of the first pack, the one before the filling. */
export function filledAfter(run: Run, which: WhichPack): Moment {
  const filling = fillingOf(run);
  return (which === "first-pack" && run.moments[run.moments.indexOf(filling) - 1]) || filling;
}

/** How the run ends. */
export function lastState({ moments }: Run): State {
  return moments.at(-1)?.after ?? unknown("nothing-there");
}

/** Whether a charge is a melt that thickens and sets as it cools; an emulsion is as thick as it is by its oil. */
export function isMelt(charge: Charge): boolean {
  return charge.contents.length > 0 && !charge.isEmulsion();
}

/** Whether the run makes a melt that sets as it cools. */
export function makesMelt({ moments }: Run): boolean {
  const last = moments.at(-1);
  return last !== undefined && isMelt(last.after.charge);
}

/** The vessel as it came off the heat before a moment, by the place of that among all. */
export function heatOff({ moments }: Run, place: number): State {
  const before = moments.slice(0, place);
  const number = moments[place]?.number;
  return (
    before.filter(({ step }) => step.do === "take off the heat").at(-1)?.after ??
    unknown("not-done", { ...(number !== undefined && { step: number }) })
  );
}

/** Whether filling takes time, so that the last pack is cooler than the first. */
export function fillingTakesTime(run: Run): boolean {
  return momentsOf(run, "fill").some(({ duration }) =>
    otherwise(
      () => duration() > 0,
      () => true,
    ),
  );
}
