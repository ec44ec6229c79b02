import { mayHave } from "../change.js";
import { type Basis, between, type Figure } from "../figure.js";
import { placeOf, stirring, turnsOf } from "../parts/turning.js";
import type { Run, Turn } from "../state.js";
import { stirredIn } from "../stirred.js";
import { betweenEnds } from "../stirred-ends.js";
import { motorPower, stirrerOf } from "../stirrer.js";
import { otherwise, stated } from "../unknown.js";
import { asks, type Lever, type Place, type Question } from "./question.js";

/** What a motor keeps in hand, as a share of its power or torque: a quarter above what is needed; common practice, no source. */
const inHand = 1 - 1 / 1.25;

/** Torque that the motor has at a speed [N·m]: below its usual speed by its drive, between the two where that is not stated. */
function motorTorque(run: Run, turn: Turn): Figure {
  const speed = turn.speed();
  const { motor, speed: usual, kind } = stirrerOf(run.job);
  const { min, max } = motorPower(run.job);
  const perWatt = (turns: number): number => 1 / (2 * Math.PI * turns);
  const own = perWatt(Math.max(stated(usual, "stirrer-speed", { of: kind }), speed));
  const geared = perWatt(speed);
  if (motor?.drive === "constant torque") return between(min * own, max * own);
  return between(min * (motor?.drive === "gear" ? geared : own), max * geared);
}

/** Slower stirring in the step that asks most of the motor. */
function slower(run: Run, _run: Run, { step = 0 }: Place): readonly Lever[] {
  const turn = run.turns.find((one) => one.step === step);
  const moment = run.moments.find(({ number }) => number === step);
  // A step that heats or cools is stirred at the usual speed, and has none of its own.
  if (!turn || !moment || !mayHave(moment.step as Parameters<typeof mayHave>[0], "speed")) return [];
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

const basis: readonly Basis[] = [{ kind: "law", key: "power-number" }];

/** Whether the motor turns the stirrer: by its power, and by its torque. */
export const motorQuestions: readonly Question[] = [
  asks<Run, Turn>({
    id: "motor-power",
    quantity: "power",
    quantifier: "every",
    subjects: stirring,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    figure: (turn) => ({ ...betweenEnds(turn, ({ power }) => power), basis }),
    limit: (_turn, run) => {
      const { min, max } = motorPower(run.job);
      return { max: between(min, max) };
    },
    margin: (run) => ({
      max: otherwise(
        () => inHand * motorPower(run.job).max,
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
    figure: (turn) => ({ ...betweenEnds(turn, ({ torque }) => torque), basis }),
    limit: (turn, run) => {
      const { min, max } = motorTorque(run, turn);
      // In hand by the same share at either end.
      const kept = (end: number | null): number | null => (end === null ? null : end * (1 - inHand));
      return { max: { min: kept(min), max: kept(max) } };
    },
    levers: slower,
    beside: (turn) => ({ speed: turn.speed() }),
  }),
];
