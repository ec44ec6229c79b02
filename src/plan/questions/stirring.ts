import { blendTime, blendTimeByRevolutions, minimumWorkingVolume, vortexDepthMax } from "../../mixing/index.js";
import { mayHave } from "../change.js";
import type { AssumptionCode } from "../codes.js";
import { atLeast, atMost, between, exactly, type Figure, type Limit } from "../figure.js";
import type { Stirrer } from "../job.js";
import { yieldStressFigure } from "../parts/yield-stress.js";
import { shapeOf } from "../setting.js";
import type { Moment, Run, State, Turn } from "../state.js";
import { levelIn, movedBy, shearRateOf, stirredIn, stirredWith, stirrerOf, temperatureOfStirring } from "../stirred.js";
import { by, either, otherwise, stated, unknown } from "../unknown.js";
import { asks, type Lever, type Place, type Question } from "./question.js";

/** What a motor keeps in hand, as a share of its power or torque: a quarter above what is needed; common practice, no source. */
const inHand = 1 - 1 / 1.25;

/** Below this Reynolds number no vortex forms: Ludwig 1995, after Rushton. */
const vortexReynoldsMin = 300;

/** One subject where a stirrer is described and turns in some step. */
function stirring(run: Run): readonly Run[] {
  return run.job.vessel.stirrer && run.turns.length > 0 ? [run] : [];
}

/** What follows the wall may stand out of the charge, unless a cover is asked for; every other stirrer has to be covered. */
function covered(run: Run): readonly Run[] {
  const { kind, cover } = run.job.vessel.stirrer ?? {};
  const followsWall = kind === "anchor" || kind === "helical ribbon";
  return followsWall && cover === undefined ? [] : stirring(run);
}

function turnsOf({ turns }: Run): readonly Turn[] {
  return turns;
}

function placeOf({ step, addition }: Turn): Place {
  return { step, ...(addition !== undefined && { addition }), place: "vessel" };
}

/** Whether a charge that melted has set: off the heat and below its setting temperature. */
function hasSet({ charge, onHeat, temperature }: State): boolean {
  return charge.heated && !onHeat && charge.dose() > 0 && temperature() <= charge.setting().temperature;
}

/** Where it is not known whether it has set, it may have, and may not. */
function maySet({ state }: Turn, whereUnknown: boolean): boolean {
  return otherwise(
    () => hasSet(state),
    () => whereUnknown,
  );
}

/** What a flat bottom that nobody stated is worth. */
function bottomOf({ job }: Run): readonly AssumptionCode[] {
  return job.vessel.bottom ? [] : ["bottom-taken-as-flat"];
}

/** How long a charge has to be stirred until it is blended [s]: by Grenville and Nienow in the range of their measurements, else by the revolutions that were counted. */
function blendedAfter(turn: Turn, { job }: Run): Figure {
  const stirrer = stirrerOf(job);
  const stirred = stirredIn(turn);
  const { yieldStress } = stirred;
  // What stands still at the wall is never blended.
  if (yieldStress && !movedBy(job, stirrer, { ...stirred, yieldStress }).reachesWall)
    unknown("no-method", { law: "cavern" });
  const { density, viscosity, powerNumber, level, speed } = stirred;
  return either(
    () =>
      exactly(
        by("blend-time", () =>
          blendTime({
            density,
            viscosity,
            powerNumber,
            speed,
            impeller: { diameter: stirrer.diameter },
            vessel: { diameter: job.vessel.diameter, level },
          }),
        ).duration,
        [{ kind: "law", key: "blend-time" }],
      ),
    () => {
      const revolutions = stated(stirrer.revolutionsToBlend, "stirrer-revolutions-to-blend", { of: stirrer.kind });
      return exactly(blendTimeByRevolutions({ revolutions, speed }), [{ kind: "law", key: "revolutions-to-blend" }]);
    },
  );
}

/** How wide the stirrer moves a gel with a yield stress [m]. */
function movedIn(turn: Turn, run: Run): Figure {
  const { job } = run;
  const stirrer = stirrerOf(job);
  const wide = job.vessel.diameter;
  const { charge } = turn.state;
  const basis = [{ kind: "law", key: "cavern" } as const];
  if (charge.isEmulsion()) {
    const curve = charge.emulsionCurve();
    const read = (job.bench.emulsion?.thickness?.readings ?? []).some(({ yieldStress }) => yieldStress !== undefined);
    if (!("yieldStress" in curve)) {
      if (!read) return stated<Figure>(undefined, "emulsion-thickness-yield-stress");
      // Below the first yield stress that was read it has none yet: all of it moves.
      return between(wide, null, basis);
    }
    const stirred = stirredIn(turn);
    return exactly(movedBy(job, stirrer, { ...stirred, yieldStress: curve.yieldStress }).diameter, basis);
  }
  // Whether it has set may not be known; then nothing is known of how it moves.
  if (!hasSet(turn.state)) return between(wide, null, basis);
  const stress = yieldStressFigure(run);
  const weak = stress.min ?? unknown("not-stated", { field: "bench-yield-stress" });
  const strong = stress.max ?? unknown("not-stated", { field: "bench-yield-stress" });
  const moved = (yieldStress: number): number => {
    if (yieldStress === 0) return wide;
    const stirred = either(
      () => stirredIn(turn),
      () => atYield(turn, stirrer, yieldStress),
    );
    return movedBy(job, stirrer, { ...stirred, yieldStress }).diameter;
  };
  const alone = otherwise(
    () => stirredIn(turn).speed !== turn.speed(),
    () => true,
  );
  const assumptions = alone ? (["yield-stress-alone"] as const) : [];
  return { min: moved(strong), max: moved(weak), basis: [...basis, ...(stress.basis ?? [])], assumptions };
}

/** A set gel of which nothing but the yield stress is known, at the mean shear rate of the stirrer: with its viscosity it is moved further. */
function atYield(turn: Turn, stirrer: Stirrer, yieldStress: number): ReturnType<typeof stirredIn> {
  const { state } = turn;
  const speed = turn.speed();
  const viscosity = yieldStress / shearRateOf(stirrer, speed);
  return stirredWith(state.charge, temperatureOfStirring(state), { law: "newton", viscosity }, speed);
}

/** Power of the motor at the shaft [W]. */
function motorPower({ job }: Run): number {
  const { motor, kind } = stirrerOf(job);
  const { power, efficiency = 1 } = stated(motor, "stirrer-motor", { of: kind });
  return power * efficiency;
}

/** Torque that the motor has at a speed [N·m]: below its usual speed by its drive, between the two where that is not stated. */
function motorTorque(run: Run, turn: Turn): Figure {
  const speed = turn.speed();
  const { motor, speed: usual, kind } = stirrerOf(run.job);
  const power = motorPower(run);
  const at = (turns: number): number => power / (2 * Math.PI * turns);
  const own = at(Math.max(stated(usual, "stirrer-speed", { of: kind }), speed));
  const geared = at(speed);
  if (motor?.drive === "constant torque") return exactly(own);
  return motor?.drive === "gear" ? exactly(geared) : between(own, geared);
}

/** Slower stirring in the step that asks most of the motor. */
function slower(run: Run, _run: Run, { step }: Place): readonly Lever[] {
  const turn = run.turns.find((one) => one.step === step);
  const moment = run.moments.find(({ number }) => number === step);
  // A step that heats or cools is stirred at the usual speed, and has none of its own.
  if (!turn || !moment || step === undefined || !mayHave(moment.step as Parameters<typeof mayHave>[0], "speed"))
    return [];
  return otherwise(
    () => slowerThan(turn.speed(), step),
    (): readonly Lever[] => [],
  );
}

function slowerThan(speed: number, step: number): readonly Lever[] {
  return [
    {
      id: "slower-stirring",
      change: (value) => ({ change: "step", step, field: "speed", value }),
      bracket: [speed, speed / 20],
    },
  ];
}

/** Every question about the stirrer; none if no stirrer is described. */
export const stirringQuestions: readonly Question[] = [
  asks<Moment, Turn>({
    id: "blended",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) =>
      stirring(run).length === 0
        ? []
        : run.moments.filter(
            ({ step, number }) =>
              step.do === "stir" && run.turns.some((turn) => turn.step === number && !maySet(turn, false)),
          ),
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => blendedAfter(turn, run),
    limit: (_turn, { step }) => atMost((step as { readonly for: number } & typeof step).for),
    levers: ({ number, step }) => {
      const { for: duration } = step as { readonly for: number } & typeof step;
      return [
        {
          id: "longer-stirring",
          change: (value) => ({ change: "step", step: number, field: "for", value }),
          bracket: [duration, 100 * duration],
        },
      ];
    },
    beside: (turn) => ({ reynolds: stirredIn(turn).reynolds }),
  }),
  asks<Moment, Turn>({
    id: "gel-moves-at-wall",
    quantity: "length",
    quantifier: "every",
    // A stirrer that is moved by hand reaches the wall.
    subjects: (run) =>
      run.job.vessel.stirrer?.byHand || stirring(run).length === 0
        ? []
        : run.moments.filter(({ number }) =>
            run.turns.some((turn) => turn.step === number && (turn.state.charge.isEmulsion() || maySet(turn, true))),
          ),
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => movedIn(turn, run),
    limit: (_turn, _moment, { job }) => atLeast(job.vessel.diameter),
  }),
  asks<Run, Turn>({
    id: "motor-power",
    quantity: "power",
    quantifier: "every",
    subjects: stirring,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    figure: (turn) => exactly(stirredIn(turn).power, [{ kind: "law", key: "power-number" }]),
    limit: (_turn, run) => atMost(motorPower(run)),
    margin: (run) => ({
      max: otherwise(
        () => inHand * motorPower(run),
        () => 0,
      ),
    }),
    levers: slower,
    beside: (turn) => ({ torque: stirredIn(turn).torque, speed: turn.speed() }),
  }),
  asks<Run, Turn>({
    id: "motor-torque",
    quantity: "torque",
    quantifier: "every",
    subjects: stirring,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    figure: (turn) => exactly(stirredIn(turn).torque, [{ kind: "law", key: "power-number" }]),
    limit: (turn, run) => {
      const { min, max } = motorTorque(run, turn);
      // In hand by the same share at either end.
      const kept = (end: number | null): number | null => (end === null ? null : end * (1 - inHand));
      return { max: { min: kept(min), max: kept(max) } };
    },
    levers: slower,
    beside: (turn) => ({ speed: turn.speed() }),
  }),
  asks<Run, Turn>({
    id: "stirrer-covered",
    quantity: "length",
    quantifier: "every",
    subjects: covered,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    figure: (turn, run) => exactly(levelIn(turn), [{ kind: "law", key: "level" }], bottomOf(run)),
    limit: (_turn, { job }) => {
      const { topEdge, cover = 0, kind } = stirrerOf(job);
      return atLeast(stated(topEdge, "stirrer-top-edge", { of: kind }) + cover);
    },
  }),
  asks<Run, Run>({
    id: "minimum-volume",
    quantity: "volume",
    quantifier: "every",
    subjects: covered,
    of: () => ({}),
    states: (run) => [run],
    at: () => ({ place: "vessel" }),
    figure: ({ job }) =>
      exactly(job.vessel.workingVolume.min, [{ kind: "stated", key: "vessel-working-volume", of: job.vessel.name }]),
    limit: (_run, run) => {
      const { topEdge, cover = 0, kind } = stirrerOf(run.job);
      const heightTop = stated(topEdge, "stirrer-top-edge", { of: kind });
      const volume = by("level", () => minimumWorkingVolume({ vessel: shapeOf(run.job.vessel), heightTop, cover }));
      return { min: exactly(volume, [{ kind: "law", key: "level" }], bottomOf(run)) };
    },
  }),
  asks<Run, Turn>({
    id: "no-air-down-the-vortex",
    quantity: "length",
    quantifier: "every",
    subjects: stirring,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    // The deepest that there could be is known; the one that there is, is not.
    figure: (turn, { job }) => {
      const creeps = otherwise(
        () => stirredIn(turn).reynolds < vortexReynoldsMin,
        () => false,
      );
      if (creeps) return exactly(0, [{ kind: "law", key: "vortex" }]);
      // With baffles the charge does not turn as one, and for what the surface draws in behind them there is no bound.
      if (job.vessel.baffles) return unknown("no-method", { law: "vortex" });
      const impeller = { diameter: stirrerOf(job).diameter };
      const dip = by("vortex", () =>
        vortexDepthMax({ speed: turn.speed(), impeller, vessel: { diameter: job.vessel.diameter } }),
      );
      return between(0, dip, [{ kind: "law", key: "vortex" }]);
    },
    // Whether it is covered at all is another question: there may be any depth above it, or none.
    limit: (turn, { job }) =>
      otherwise<Limit, Limit>(
        () => {
          const { topEdge, kind } = stirrerOf(job);
          const above = levelIn(turn) - stated(topEdge, "stirrer-top-edge", { of: kind });
          return above > 0 ? atMost(above) : { max: between(0, null) };
        },
        () => ({ max: between(0, null) }),
      ),
    beside: (turn) => ({ reynolds: stirredIn(turn).reynolds }),
  }),
];
