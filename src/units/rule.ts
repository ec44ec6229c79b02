import { finite, refuse, result, show } from "../guards.js";
import { type Pair, pairOf } from "./pair.js";
import { dimensionsWith, showUnit, siName, unitsOf } from "./unit.js";

/** A conversion ready for use. */
interface Rule {
  /** The fast way: whatever it cannot answer comes out as no finite number. */
  readonly run: (value: number) => number;
  /** The slow way for that: the answer that an overflow on the way hid, or the refusal. */
  readonly rescue: (value: number, path: string) => number;
}

// Holds at most every pair of spellings, because what is no unit never gets in.
const rules = new Map<string, Map<string, Rule>>();

/** The conversion between two units, looked up once. */
export function ruleFor(from: string, to: string): Rule {
  const known = rules.get(from)?.get(to);
  if (known) return known;
  const rule = ruleOf(from, to);
  rules.set(from, (rules.get(from) ?? new Map<string, Rule>()).set(to, rule));
  return rule;
}

function ruleOf(from: string, to: string): Rule {
  const homes = dimensionsWith(from);
  const dimension = homes.find((home) => siName(home, to) !== undefined);
  if (!dimension) {
    const at = homes.length > 0 ? "to" : "from";
    const [home] = at === "to" ? homes : dimensionsWith(to);
    return refuse("input", at, showUnit(at === "to" ? to : from), home ? unitsOf(home) : "a unit such as kg or Pa·s");
  }
  const [source = "", target = ""] = [siName(dimension, from), siName(dimension, to)];
  if (dimension !== "temperature") return proportional(pairOf(dimension, source, target));
  const kelvin = pairOf(dimension, "K", source);
  return temperature(pairOf(dimension, source, target), Number(kelvin.shift) / Number(kelvin.denominator), source);
}

function proportional({ numerator, denominator }: Pair): Rule {
  const [times, over] = [Number(numerator), Number(denominator)];
  const rescue: Rule["rescue"] = (value, path) => result((finite(value, path) / over) * times, path);
  if (BigInt(times) === numerator && BigInt(over) === denominator)
    return { run: (value) => (value * times) / over, rescue };
  // Whole numbers beyond 2^53: their quotient, rounded once, keeps the result within 2 ulp.
  const factor = Number((numerator << 128n) / denominator) / 2 ** 128;
  return { run: (value) => value * factor, rescue };
}

function temperature(pair: Pair, absoluteZero: number, unit: string): Rule {
  const [times, plus, over] = [Number(pair.numerator), Number(pair.shift), Number(pair.denominator)];
  return {
    run: (value) => (value >= absoluteZero ? (value * times + plus) / over : Number.NaN),
    rescue: (value, path) => {
      if (finite(value, path) >= absoluteZero) return result((value / over) * times + plus / over, path);
      return refuse("input", path, `${show(value)} ${unit}`, `absolute zero (${absoluteZero} ${unit}) or more`);
    },
  };
}
