import { createRequire } from "node:module";
import configureMeasurements from "convert-units";
import mass from "convert-units/definitions/mass";
import { convert, converter, convertInPlace } from "gelwright/units";
import { type Contestant, speedTable } from "./speed.js";

interface Quantities {
  (value: number, unit: string): { to(unit: string): { readonly scalar: number } };
  swiftConverter(from: string, to: string): (value: number) => number;
}

// It has no types of its own.
const require = createRequire(import.meta.url);
const quantities = require("js-quantities") as Quantities;

const values: readonly number[] = Array.from({ length: 1000 }, (_, i) => 0.37 + i * 1.01);

function contestant(name: string, one: (value: number) => number, error: string): Contestant {
  return {
    name,
    error,
    answers: values.length,
    run() {
      let sum = 0;
      for (const value of values) sum += one(value);
      return sum;
    },
  };
}

/** How far off one kilogram in pounds is: the pound is 0.45359237 kg by definition. */
function errorOf(one: (value: number) => number): string {
  const relative = Math.abs(one(1) * 0.45359237 - 1);
  return relative < 2 ** -51 ? "none" : relative.toExponential(0);
}

/** Kilograms to pounds, one value at a time and a whole array at once, against two general-purpose libraries. */
export async function unitTables(): Promise<string> {
  const ours = converter("kg", "lb");
  const swift = quantities.swiftConverter("kg", "lbs");
  const engine = configureMeasurements({ mass });
  const ways: Readonly<Record<string, (value: number) => number>> = {
    "gelwright converter": ours,
    "gelwright convert": (value) => convert(value, "kg", "lb"),
    "a bare multiplication": (value) => value * 2.2046226218487757,
    "js-quantities 1.8.0, swift converter": swift,
    "js-quantities 1.8.0, objects": (value) => quantities(value, "kg").to("lbs").scalar,
    "convert-units 3.0.0-beta.8 by itself": (value) => engine(value).from("kg").to("lb"),
  };
  const one = Object.entries(ways).map(([name, way]) => contestant(name, way, errorOf(way)));
  const array = Float64Array.from({ length: 100_000 }, (_, i) => i + 0.5);
  const all: Contestant[] = [
    { name: "gelwright convertInPlace", answers: array.length, run: () => convertInPlace(array.slice(), "kg", "lb") },
    { name: "gelwright converter, mapped", answers: array.length, run: () => array.map(ours) },
    { name: "js-quantities 1.8.0, mapped", answers: array.length, run: () => array.map(swift) },
  ];
  return `${await speedTable("kg to lb", one)}\n\n${await speedTable("kg to lb, an array of 100,000", all)}`;
}
