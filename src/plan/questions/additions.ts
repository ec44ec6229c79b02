import type { Charge } from "../charge.js";
import { ofEmulsion } from "../composition.js";
import { massOf, portionOf } from "../contents.js";
import { atMost, exactly, type Limit } from "../figure.js";
import { isBeyondShares, shareMaxAt } from "../parts/bench-additions.js";
import { gelOf, withOil } from "../parts/droplets.js";
import type { Moment, Run } from "../state.js";
import { otherwise, type Reason, stated, unknown } from "../unknown.js";
import { asks, type Lever, type Place, type Question } from "./question.js";

/** Masses and shares carry the noise of doubles. */
const slack = 1e-12;

/** One addition of oil, or the whole of a phase that goes in by no schedule. */
interface AtOnce {
  readonly step: number;
  readonly addition?: number;
  /** Its mass [kg]. */
  readonly mass: () => number;
  /** As a share of what was in the vessel. */
  readonly share: () => number;
  /** The largest share that was taken up there. */
  readonly shareMax: () => number;
}

/** The phases of oil in the finished gel, by whatever step they came. */
function oilPhases(run: Run): readonly string[] {
  return withOil(run).flatMap(() => [
    ...new Set(
      gelOf(run)
        .charge.oil()
        .map(({ phase }) => phase),
    ),
  ]);
}

/** What of a phase of oil goes in at once. */
function additionsOf(phase: string, run: Run): readonly AtOnce[] {
  const massIn = (charge: Charge): number => massOf(charge.oil().filter((content) => content.phase === phase));
  return run.moments
    .filter(({ before, after }) => massIn(after.charge) > massIn(before.charge))
    .flatMap((moment) => (moment.schedule ? scheduled(moment, run) : unscheduled(moment, run)));
}

function scheduled({ number: step, schedule, before }: Moment, { job }: Run): readonly AtOnce[] {
  return otherwise(
    () => {
      const { form, rows, phase } = stated(schedule, "emulsion-additions")();
      // Whether the gel takes a stream as it took the additions of the bench, the bench has to show.
      if (form === "stream" || rows.length === 0) unknown("no-method", { of: phase });
      return rows.map(
        ({ mass, share, shareMax }, i): AtOnce => ({
          step,
          addition: i + 1,
          mass: () => mass,
          share: () => stated(share, "emulsion-share-max"),
          shareMax: () => {
            const oil = rows[i - 1]?.volumeFractionOil ?? before.charge.oilFraction();
            // It is the bench's own addition, and the bench states that so much is too much.
            if (form === "as at the bench" && isBeyondShares(job, oil, share ?? 0))
              unknown("contradiction", { field: "emulsion-share-max" });
            return stated(shareMax, "emulsion-share-max");
          },
        }),
      );
    },
    (reason) => [unseen(reason, step)],
  );
}

/** In what portions it goes in is not known. */
function unseen({ code, ...reason }: Reason, step: number): AtOnce {
  const never = (): never => unknown(code, { ...reason, step });
  return { step, mass: never, share: never, shareMax: never };
}

/** In how many equal additions a step charges what it charges. */
function countOf({ step }: Moment): number {
  return (step as { readonly equalAdditions?: number }).equalAdditions ?? 1;
}

/** By no schedule: in equal additions into the gel that is there, or all of it at once; met at once by an outer phase that comes after it. */
function unscheduled(moment: Moment, { job, moments }: Run): readonly AtOnce[] {
  const { number: step, before, after } = moment;
  const { charge } = before;
  if (!charge.isEmulsion()) {
    const later = moments.find((one) => one.after.charge.isEmulsion())?.after.charge ?? after.charge;
    const [mass, into] = [massOf(later.oil()), massOf(later.outer())];
    return [{ step, mass: () => mass, share: () => mass / into, shareMax: () => shareMaxAt(job, 0) }];
  }
  const oil = after.charge.oil().filter((content) => !charge.contents.includes(content));
  const there = massOf(charge.outer()) + massOf(charge.oil());
  const count = countOf(moment);
  const mass = massOf(oil) / count;
  return Array.from({ length: count }, (_, i): AtOnce => {
    const met = i === 0 ? charge : charge.with(portionOf(oil, i * mass));
    return {
      step,
      ...(count > 1 && { addition: i + 1 }),
      mass: () => mass,
      share: () => mass / (there + i * mass),
      shareMax: () => shareMaxAt(job, met.oilFraction()),
    };
  });
}

/** Nobody makes more equal additions than this by hand: common practice, no source. */
const additionsMax = 1000;

/** What is poured into a gel, in more additions. */
function moreAdditions({ moments }: Run, { step }: Place): readonly Lever[] {
  const moment = moments.find(({ number }) => number === step);
  if (!moment || moment.schedule || !moment.before.charge.isEmulsion()) return [];
  const { number } = moment;
  return [
    {
      id: "more-additions",
      whole: true,
      change: (value) => ({ change: "step", step: number, field: "equalAdditions", value }),
      bracket: [countOf(moment), additionsMax],
    },
  ];
}

/** Whether the oil goes in in portions that the gel former takes up. */
export const additionQuestions: readonly Question[] = [
  asks<string, AtOnce>({
    id: "additions-within-share",
    quantity: "mass-fraction",
    quantifier: "every",
    subjects: oilPhases,
    of: (phase) => ({ phase }),
    states: additionsOf,
    at: ({ step, addition }) => ({ step, ...(addition !== undefined && { addition }), place: "vessel" }),
    figure: ({ share }) => exactly(share()),
    limit: ({ shareMax }, _phase, { job }): Limit => {
      const { source } = job.bench;
      return atMost(ofEmulsion(job, shareMax(), "emulsion-share-max") * (1 + slack), [
        { kind: "reading", key: "emulsion-share-max", source },
      ]);
    },
    levers: (_phase, run, at) => moreAdditions(run, at),
    beside: (_state, phase, run) => {
      const masses = additionsOf(phase, run).map(({ mass }) => mass());
      return { additions: masses.length, massFirst: masses[0], massMax: Math.max(...masses) };
    },
  }),
];
