import type { Basis } from "../figure.js";
import { atLeast, atMost, exactly, type Figure } from "../figure.js";
import { takenForGranted } from "../parts/in-vessel.js";
import type { Moment, Run, State } from "../state.js";
import { stated } from "../unknown.js";
import { coldWall } from "../walls.js";
import { asks, type Question } from "./question.js";

/** Distance that the mix keeps above its setting temperature [K], where the process names none: common practice, no source. */
const usualMargin = 2;

function settingMargin({ job }: Run): { readonly min: number } {
  return { min: job.process.settingMargin ?? usualMargin };
}

/** Temperature of a state, with what is taken for granted in it. */
function temperatureOf(state: State, moment: Moment, run: Run): Figure {
  return exactly(state.temperature(), moment.basis?.() ?? [], takenForGranted(run, moment));
}

function settingOf({ charge }: State): { readonly value: number; readonly basis: readonly Basis[] } {
  const { temperature, basis } = charge.setting();
  return { value: temperature, basis: [basis] };
}

/** The step before that sets how warm the charge is. */
function warmedBy(moment: Moment, { moments }: Run): Moment | undefined {
  return moments.filter(({ number, step }) => number < moment.number && "to" in step).at(-1);
}

/** Whether there is gel former in a state that melts into the oil. */
function holdsFormer({ charge }: State): boolean {
  return charge.dose() > 0;
}

/** Questions about dissolving, setting and reaching the temperatures of the steps. */
export const settingQuestions: readonly Question[] = [
  asks<Moment, Moment>({
    id: "step-can-be-done",
    quantity: "temperature",
    quantifier: "every",
    subjects: ({ moments }) => moments.filter(({ reaches }) => reaches !== undefined),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "charge" }),
    figure: ({ reaches, basis }) => exactly(stated(reaches, "vessel-heater").reached(), basis?.()),
    limit: ({ reaches }) => {
      const { asked, direction } = stated(reaches, "vessel-heater");
      return direction === "heating" ? atLeast(asked()) : atMost(asked());
    },
  }),
  asks<Run, Moment>({
    id: "gel-former-dissolves",
    quantity: "temperature",
    quantifier: "some",
    subjects: (run) => (run.moments.some(({ after }) => holdsFormer(after)) ? [run] : []),
    of: () => ({}),
    // The hottest will do, and that is on the heat if there is any; a state whose temperature is not known may be it.
    states: ({ moments }) => {
      const inVessel = moments.filter(({ after }) => !after.inPacks && holdsFormer(after));
      const onHeat = inVessel.filter(({ after }) => after.onHeat);
      return onHeat.length > 0 ? onHeat : inVessel;
    },
    at: ({ number }) => ({ step: number, place: "charge" }),
    figure: (moment, _subject, run) => temperatureOf(moment.after, moment, run),
    limit: ({ after }) => {
      const { temperature, basis } = after.charge.dissolving();
      return atLeast(temperature, [basis]);
    },
    beside: ({ after }) => ({ dose: after.charge.dose(), by: after.charge.dissolving().by }),
  }),
  asks<Moment, Moment>({
    id: "above-setting",
    quantity: "temperature",
    quantifier: "every",
    subjects: ({ moments }) =>
      moments.filter(({ step, before, after }) => step.do === "charge" && holdsFormer(before) && holdsFormer(after)),
    of: ({ number, step }) => ({ step: number, phase: (step as { readonly phase: string } & typeof step).phase }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "charge" }),
    figure: (moment, _subject, run) => temperatureOf(moment.after, moment, run),
    limit: ({ after }) => {
      const { value, basis } = settingOf(after);
      return atLeast(value, basis);
    },
    margin: settingMargin,
    levers: (moment, run) => {
      const { at = run.job.process.room } = moment.step as { readonly at?: number };
      const before = warmedBy(moment, run);
      const { to } = (before?.step ?? {}) as { readonly to?: number };
      const { number: step } = moment;
      return [
        {
          id: "warmer-addition",
          change: (value) => ({ change: "step", step, field: "at", value }),
          bracket: [at, at + 80],
        },
        ...(before && to !== undefined
          ? [
              {
                id: "hotter-melt",
                change: (value: number) => ({ change: "step", step: before.number, field: "to", value }) as const,
                bracket: [to, to + 60],
              } as const,
            ]
          : []),
      ];
    },
    beside: ({ after }) => ({ dose: after.charge.dose(), by: after.charge.setting().by }),
  }),
  asks<Moment, State>({
    id: "filled-before-it-sets",
    quantity: "temperature",
    quantifier: "every",
    subjects: ({ moments }) => moments.filter(({ step, before }) => step.do === "fill" && holdsFormer(before)),
    of: ({ number }) => ({ step: number }),
    states: ({ before, after }) => [before, after],
    at: (state, { number, before }) => ({ step: number, place: state === before ? "first-pack" : "last-pack" }),
    figure: temperatureOf,
    limit: (_state, { before }) => {
      const { value, basis } = settingOf(before);
      return atLeast(value, basis);
    },
    margin: settingMargin,
    levers: ({ number: step, step: filling }) => {
      const { for: duration = 0 } = filling as { readonly for?: number };
      return [
        {
          id: "shorter-filling",
          change: (value) => ({ change: "step", step, field: "for", value }),
          bracket: [duration, 0],
        },
      ];
    },
    beside: (_state, { before }) => ({ dose: before.charge.dose(), by: before.charge.setting().by }),
  }),
  asks<Moment, Moment>({
    id: "skin-on-the-wall",
    quantity: "temperature",
    quantifier: "every",
    subjects: ({ moments }) =>
      moments.filter(
        ({ step, after }) => step.do === "cool" && "with" in step && step.with === "jacket" && holdsFormer(after),
      ),
    of: ({ number }) => ({ step: number }),
    // The wall is coldest where the charge is: at the end of the step, by the coolant's inlet.
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "cooled-wall" }),
    figure: ({ after }) => {
      const { temperature, inside } = coldWall(after.charge, after.temperature());
      return exactly(temperature, inside.basis, inside.assumptions);
    },
    limit: ({ after }) => {
      const { value, basis } = settingOf(after);
      return atLeast(value, basis);
    },
    margin: settingMargin,
    levers: (_moment, { job }) => {
      const { coolant = job.process.room } = job.vessel.jacket ?? {};
      return [
        { id: "warmer-coolant", change: (value) => ({ change: "coolant", value }), bracket: [coolant, coolant + 90] },
      ];
    },
    beside: ({ after }) => ({ dose: after.charge.dose(), by: after.charge.setting().by }),
  }),
];
