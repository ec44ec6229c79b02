import { impellerConstants, powerBandOf } from "../mixing/index.js";
import type { Charge } from "./charge.js";
import type { Stirrer } from "./documents/vessel.js";
import { levelAt } from "./level.js";
import type { Turn } from "./state.js";
import { type Stirred, stirredAt, stirredIn, temperatureOfStirring, wayOf } from "./stirred.js";
import { impellerOf, stirrerOf, vesselAround } from "./stirrer.js";
import { by, remembered } from "./unknown.js";

/** A stirrer with each end of the shear constants that are published for its kind; with its own, where one is stated. */
const withShearConstants: (stirrer: Stirrer) => readonly Stirrer[] = remembered((stirrer: Stirrer) => {
  const { metznerOttoConstant: published } = impellerConstants[impellerOf(stirrer).kind];
  if (stirrer.metznerOttoConstant !== undefined || !published) return [stirrer];
  return [published.min, published.max].map((metznerOttoConstant) => ({ ...stirrer, metznerOttoConstant }));
});

/** The levels by which the power of a stirrer is found [m]. Power curves were measured over flat and dished bottoms: in a cone the charge counts both as deep as it is and as deep as it would be over a flat bottom. */
function levelsOfPower(charge: Charge, temperature: number): readonly number[] {
  const { bottom, diameter } = charge.job.vessel;
  const level = levelAt(charge, temperature);
  if (bottom?.shape !== "cone") return [level];
  return [level, charge.mass / charge.density(temperature) / ((Math.PI / 4) * diameter ** 2)];
}

/** What stirring comes to at every end of what is published: of the shear constant, of the level in a cone, and of the power with each. */
export function everyEnd(
  charge: Charge,
  temperature: number,
  stir: (stirrer: Stirrer, level: number) => Stirred,
): readonly Stirred[] {
  const { job } = charge;
  const levels = levelsOfPower(charge, temperature);
  const states = withShearConstants(stirrerOf(job)).flatMap((stirrer) =>
    levels.map((level) => ({ stirrer, state: stir(stirrer, level) })),
  );
  return states.flatMap(({ stirrer, state }) => {
    const { level, reynolds, power, powerNumber, torque } = state;
    const vessel = vesselAround(job.vessel, level);
    const { min, max } = by("power-number", () => powerBandOf({ impeller: impellerOf(stirrer), vessel, reynolds }));
    return [min, max].map((factor) => ({
      ...state,
      powerNumber: factor * powerNumber,
      power: factor * power,
      torque: factor * torque,
    }));
  });
}

/** What the stirrer may do in a turn, at every end of what is published of it. */
export const stirredEnds: (turn: Turn) => readonly Stirred[] = remembered(({ state, speed }: Turn) => {
  const { charge } = state;
  const temperature = temperatureOfStirring(state);
  return everyEnd(charge, temperature, (stirrer, level) =>
    stirredAt(charge, temperature, speed(), wayOf(state), stirrer, level),
  );
});

/** The highest Reynolds number that a turn may have, whatever the level: with the shear constant that makes the charge thinnest. */
export const reynoldsMax: (turn: Turn) => number = remembered(({ state, speed }: Turn) => {
  const { charge } = state;
  const at = (stirrer: Stirrer): Stirred =>
    stirredAt(charge, temperatureOfStirring(state), speed(), wayOf(state), stirrer);
  return Math.max(...withShearConstants(stirrerOf(charge.job)).map((stirrer) => at(stirrer).reynolds));
});

/** A figure of stirring between all of those ends. */
export function betweenEnds(
  turn: Turn,
  of: (stirred: Stirred) => number,
): { readonly min: number; readonly value: number; readonly max: number } {
  const value = of(stirredIn(turn));
  const ends = [value, ...stirredEnds(turn).map(of)];
  return { min: Math.min(...ends), value, max: Math.max(...ends) };
}
