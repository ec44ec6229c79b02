import fc from "fast-check";
import { convert, massOfVolume, volumeOfMass } from "gelwright/units";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

undoes(
  "volumeOfMass",
  "massOfVolume",
  fc.record({ volume: between(1e-6, 10), density: between(700, 1300) }),
  ({ volume, density }) => [volumeOfMass({ mass: massOfVolume({ volume, density }), density }), volume],
);

const pairs = [
  ["lb", "kg"],
  ["°F", "°C"],
  ["psi", "Pa"],
  ["US gal", "L"],
] as const;

undoes(
  "convert, back",
  "convert",
  fc.tuple(between(-40, 1e6), fc.constantFrom(...pairs)),
  ([value, [from, to]]) => [convert(convert(value, from, to), to, from), value, Math.max(Math.abs(value), 40)],
  1e-14,
);
