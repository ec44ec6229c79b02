import configureMeasurements, { type Unit, type Wrapper } from "convert-units";
import { refuse } from "../guards.js";
import { minus, over, parseRational, plus, type Rational, times } from "./rational.js";
import { type Dimension, factorsOf } from "./unit.js";

/** What convert-units calculates with here: exact fractions, so that it rounds nothing. */
type Operand = number | string | Rational;

const exact = (value: Operand): Rational => (typeof value === "object" ? value : parseRational(String(value)));

// The engine wants all nine operations; it compares only where it looks for the 'best' unit, which it is never asked here.
const unasked = (): never => refuse("input", "unit", "a comparison of units", "a conversion");
const fractions: Wrapper<Rational> = {
  create: exact,
  add: (left, right) => plus(exact(left), exact(right)),
  sub: (left, right) => minus(exact(left), exact(right)),
  mul: (left, right) => times(exact(left), exact(right)),
  div: (left, right) => over(exact(left), exact(right)),
  ...{ lt: unasked, gt: unasked, lte: unasked, gte: unasked },
};

type Engine = ReturnType<typeof configureMeasurements<string, string, string, Rational>>;
const engines = new Map<Dimension, Engine>();

// One instance a dimension: the engine keeps all unit names of an instance in one map, where
// the kelvin of a temperature and that of a difference would overwrite each other.
function engineOf(dimension: Dimension): Engine {
  let engine = engines.get(dimension);
  if (!engine) {
    const units: Record<string, Unit> = {};
    for (const [unit, factor] of Object.entries(factorsOf(dimension))) {
      const [slope = "", zero = "0"] = factor.split(" - ");
      units[unit] = { name: { singular: unit, plural: unit }, to_anchor: slope, anchor_shift: zero };
    }
    engine = configureMeasurements<string, string, string, Rational>(
      { [dimension]: { systems: { exact: units } } },
      fractions,
    );
    engines.set(dimension, engine);
  }
  return engine;
}

/** A conversion as the engine sees it: target = slope · value + offset, both exact. */
export function slopeAndOffset(dimension: Dimension, from: string, to: string): { slope: Rational; offset: Rational } {
  const engine = engineOf(dimension);
  const offset = engine(0).from(from).to(to);
  return { slope: minus(engine(1).from(from).to(to), offset), offset };
}
