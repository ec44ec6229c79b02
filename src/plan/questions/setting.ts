import type { Material } from "../../formula/index.js";
import { wasOnBench } from "../composition.js";
import type { Basis } from "../figure.js";
import { atLeast, atMost, between, exactly, type Figure, type Limit } from "../figure.js";
import { settingMarginOf } from "../job.js";
import { momentsWith } from "../parts/in-vessel.js";
import { takenForGranted } from "../parts/taken-for-granted.js";
import { coolestIn, temperatureFigure, warmestIn } from "../parts/warmth.js";
import type { Moment, Run, State } from "../state.js";
import type { Step } from "../step-documents.js";
import { otherwise, type Reason, stated, unknown } from "../unknown.js";
import { coldWall } from "../walls.js";
import { moreHeat, nearerEnd, warmerMelt } from "./levers.js";
import { asks, type Lever, type Place, type Question } from "./question.js";

function settingMargin({ job }: Run): { readonly min: number } {
  return { min: settingMarginOf(job) };
}

/** Temperature of a state, with what is taken for granted in it. */
function temperatureOf(state: State, moment: Moment, run: Run): Figure {
  return {
    ...temperatureFigure(run, moment, state.temperature(), moment.basis?.()),
    min: coolestIn(state, moment),
    max: warmestIn(state, run, moment),
  };
}

function settingOf({ charge }: State): { readonly value: number; readonly basis: readonly Basis[] } {
  const { temperature, basis } = charge.setting();
  return { value: temperature, basis: [basis] };
}

/** The gel formers that melt into the oil: each has to dissolve, whenever it is charged. */
function meltingFormers({ job, weighed }: Run): readonly Material[] {
  const outer = job.bench.emulsion?.outerPhase;
  const formers = weighed.filter(({ material, phase }) => material.function === "gel former" && phase !== outer);
  return [...new Set(formers.map(({ material }) => material))];
}

/** Whether there is gel former in a state that melts into the oil. */
function holdsFormer({ charge }: State): boolean {
  return charge.dose() > 0;
}

/** A dose above all measured ones dissolves at no lower temperature than the largest of these: a cooler charge has not dissolved. */
function dissolvesNoSooner({ charge, temperature }: State, { code, ...reason }: Reason): Limit {
  const { doses = [], source } = charge.job.bench;
  const [largest] = [...doses].sort((one, other) => other.gelFormer - one.gelFormer);
  if (
    !largest ||
    charge.dose() < largest.gelFormer ||
    temperature() >= largest.dissolvesAt ||
    !wasOnBench(charge.job, charge.shares())
  )
    return unknown(code, reason);
  return { min: between(largest.dissolvesAt, null, [{ kind: "reading", key: "bench-doses", source }]) };
}

/** The filling of a melt that sets. */
function fillings({ moments }: Run): readonly Moment[] {
  return moments.filter(({ step, before }) => step.do === "fill" && holdsFormer(before));
}

/** The vessel before a filling fills the first pack, after it the last. */
function packOf(state: State, { number, before }: Moment): Place {
  return { step: number, place: state === before ? "first-pack" : "last-pack" };
}

/** Nobody fills so many times as fast: common practice, no source. */
const fasterMax = 100;

function shorterFilling({ number: step, step: filling }: Moment): readonly Lever[] {
  const { for: duration = 0, packsPerMinute } = filling as Extract<Step, { readonly do: "fill" }>;
  if (packsPerMinute !== undefined)
    return [
      {
        id: "faster-filling",
        change: (value) => ({ change: "step", step, field: "packsPerMinute", value }),
        bracket: [packsPerMinute, fasterMax * packsPerMinute],
      },
    ];
  return [
    {
      id: "shorter-filling",
      change: (value) => ({ change: "step", step, field: "for", value }),
      bracket: [duration, duration / fasterMax],
    },
  ];
}

/** How thick a melt is that cools: within the readings as they say, cooler than they go as thick as the coolest at least. */
function viscosityFigure(state: State, moment: Moment, run: Run): Figure {
  const { charge, temperature } = state;
  const { at, temperatureMin, temperatureMax } = charge.readings("cooling");
  const now = temperature();
  const coolest = coolestIn(state, moment);
  const warmest = warmestIn(state, run, moment);
  const { assumptions } = takenForGranted(run, moment);
  return {
    min: warmest === null || warmest > temperatureMax ? 0 : at(Math.max(warmest, temperatureMin)),
    max: coolest === null || coolest < temperatureMin ? null : at(Math.min(coolest, temperatureMax)),
    ...(now >= temperatureMin && now <= temperatureMax && { value: at(now) }),
    basis: [{ kind: "reading", key: "bench-viscosities", source: charge.job.bench.source }],
    ...(assumptions.length > 0 && { assumptions }),
  };
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
    // What is held off the heat needs a melt that is as warm as that.
    levers: (moment, run) => (moment.step.do === "hold" ? warmerMelt(run, moment.number) : nearerEnd(run, moment)),
  }),
  asks<Material, Moment>({
    id: "gel-former-dissolves",
    quantity: "temperature",
    quantifier: "some",
    subjects: meltingFormers,
    of: ({ key }) => ({ material: key }),
    // The hottest will do, and that is on the heat if it ever is; a state whose temperature is not known may be it.
    states: ({ key }, run) => {
      const inVessel = momentsWith(run, key).filter(({ after }) => !after.inPacks);
      const onHeat = inVessel.filter(({ after }) => after.onHeat);
      return onHeat.length > 0 ? onHeat : inVessel;
    },
    at: ({ number }) => ({ step: number, place: "charge" }),
    figure: (moment, _subject, run) => temperatureOf(moment.after, moment, run),
    limit: ({ after }) =>
      otherwise<Limit, Limit>(
        () => {
          const { temperature, basis } = after.charge.dissolving();
          return atLeast(temperature, [basis]);
        },
        (reason) => dissolvesNoSooner(after, reason),
      ),
    levers: (_material, run, { step = 0 }) => moreHeat(run, step),
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
    levers: ({ step: charging, number: step }, run) => {
      const { at = run.job.process.room } = charging as { readonly at?: number };
      return [
        {
          id: "warmer-addition",
          change: (value) => ({ change: "step", step, field: "at", value }),
          bracket: [at, at + 80],
        },
        ...warmerMelt(run, step),
      ];
    },
    beside: ({ after }) => ({ dose: after.charge.dose(), by: after.charge.setting().by }),
  }),
  asks<Moment, State>({
    id: "filled-before-it-sets",
    quantity: "temperature",
    quantifier: "every",
    subjects: fillings,
    of: ({ number }) => ({ step: number }),
    states: ({ before, after }) => [before, after],
    at: packOf,
    figure: temperatureOf,
    limit: (_state, { before }) => {
      const { value, basis } = settingOf(before);
      return atLeast(value, basis);
    },
    margin: settingMargin,
    levers: (filling, run) => [...shorterFilling(filling), ...warmerMelt(run, filling.number)],
    beside: (_state, { before }) => ({ dose: before.charge.dose(), by: before.charge.setting().by }),
  }),
  asks<Moment, State>({
    id: "pours-into-the-pack",
    quantity: "viscosity",
    quantifier: "every",
    subjects: fillings,
    of: ({ number }) => ({ step: number }),
    states: ({ before, after }) => [before, after],
    at: packOf,
    figure: viscosityFigure,
    limit: (_state, _moment, { job: { bench } }) =>
      atMost(stated(bench.pourableViscosityMax, "bench-pourable-viscosity-max"), [
        { kind: "reading", key: "bench-pourable-viscosity-max", source: bench.source },
      ]),
    levers: (filling, run) => [...shorterFilling(filling), ...warmerMelt(run, filling.number)],
    beside: ({ temperature }) => ({ temperature: temperature() }),
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
      const { inside, ...ends } = coldWall(after.charge, after.temperature());
      const { basis, assumptions } = inside;
      return { ...ends, basis, ...(assumptions.length > 0 && { assumptions }) };
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
