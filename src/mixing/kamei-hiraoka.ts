import { positive, refuse, wholeNumber } from "../guards.js";
import type { BladedCurve } from "./power-curve.js";

const steep = 7.8;

/** The lesser of two, rounded off where they are alike. */
const lesser = (a: number, b: number): number => (a ** -steep + b ** -steep) ** (-1 / steep);

function within(value: number, path: string, min: number, max: number): number {
  const given = positive(value, path);
  return given >= min && given <= max ? given : refuse("input", path, given, `${min} to ${max}`);
}

/** The power number as a function of the Reynolds number, by Kamei and Hiraoka; the shape is checked once. */
export function compileBlades(curve: BladedCurve, path: string): (reynolds: number) => number {
  const blades = wholeNumber(curve.blades, `${path}.blades`, 2);
  const angle = (within(curve.bladeAngle, `${path}.bladeAngle`, 1, 90) * Math.PI) / 180;
  const baffles = curve.baffles === undefined ? 0 : wholeNumber(curve.baffles, `${path}.baffles`, 0);
  // All lengths in diameters of the vessel.
  const d = within(curve.diameterToVessel, `${path}.diameterToVessel`, 0.2, 0.95);
  const b = within(curve.widthToDiameter, `${path}.widthToDiameter`, 0.01, 2) * d;
  const level = within(curve.levelToVessel, `${path}.levelToVessel`, 0.1, 10);
  const baffle = baffles === 0 ? 0 : within(curve.baffleToVessel ?? Number.NaN, `${path}.baffleToVessel`, 0.001, 0.5);

  const sine = Math.sin(angle);
  const spread = Math.log(1 / d);
  const gap = 1 - d * d;
  const eta = (0.711 * (0.157 + (blades * spread) ** 0.611)) / (blades ** 0.52 * gap);
  const beta = (2 * spread) / (1 / d - d);
  const gamma = Math.cbrt((eta * spread) / (beta / d) ** 5);
  const solid = blades ** 0.7 * b * sine ** 1.6;
  const x = (gamma * solid) / level;
  const turbulent = lesser(1.96 * x ** 1.19, 0.25);
  const early = 23.8 * d ** -3.24 * (b * sine) ** -1.18 * x ** -0.74;
  const creeping =
    (0.215 * eta * blades * d * gap) / level + ((1.83 * b * sine) / level) * Math.cbrt((blades / 2) * sine);
  const m = lesser(0.71 * x ** 0.373, 0.333);
  const end = (0.0151 * d * turbulent ** 0.308) / turbulent;
  const toGeneral = (Math.PI * eta * spread * beta) / (4 * d);
  const toPowerNumber = (1.2 * Math.PI ** 4 * beta * beta * level) / (8 * d ** 3);
  const max = fullyBaffled(angle, solid / d, (blades ** 0.7 * b) / d);
  return (reynolds) => {
    const general = toGeneral * reynolds;
    const friction = creeping / general + turbulent * (1 / (early / general + general) + end ** (1 / m)) ** m;
    const free = toPowerNumber * friction;
    if (baffles === 0) return free;
    const held = (4.5 * baffle * baffles ** 0.8) / (((2 * angle) / Math.PI) ** 0.72 * max ** 0.2) + free / max;
    // The correlation is that of whirling flow: where the batch creeps past them, baffles take nothing off the power.
    return Math.max(free, max * (1 + held ** -3) ** (-1 / 3));
  };
}

/** The power number with as many baffles as make a difference. */
function fullyBaffled(angle: number, pitched: number, flat: number): number {
  if (angle < Math.PI / 2) return 8.3 * ((2 * angle) / Math.PI) ** 0.9 * pitched;
  if (flat <= 0.54) return 10 * flat ** 1.3;
  return flat <= 1.6 ? 8.3 * flat : 10 * flat ** 0.6;
}
