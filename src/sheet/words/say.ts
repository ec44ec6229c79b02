import { refuse, show } from "../../guards.js";
import type { Figure, Plan, QuantityCode } from "../../plan/index.js";
import { convert } from "../../units/index.js";
import { type Digits, isKnown, type NumberFormat, type PreferredUnits, plainNumber, unitWriter } from "./number.js";
import { englishPhrases, type Phrases } from "./phrases.js";
import type { Known, Say } from "./types.js";

/** How numbers are to be written. */
export interface SayOptions {
  /** The plan whose materials are named. Without it a material is named by its key. */
  readonly plan?: { readonly names: Pick<Plan["names"], "materials"> };
  /** Writes a number; default with a decimal point and no separators. */
  readonly format?: NumberFormat;
  /** Units by dimension, such as `{ temperature: "°F", mass: "lb" }`; default those of the sheet. */
  readonly units?: PreferredUnits;
  /** The small words between numbers; default English. */
  readonly phrases?: Phrases;
  /** Time of day at which the first step begins, such as `"07:30"`; default times count from it. */
  readonly start?: string;
}

const minute = 60;
const hour = 3600;
const day = 86_400;
const minutesOfDay = day / minute;
const litre = 1e-3;

const significant = (digits: number): Digits => ({ significant: digits });

/**
 * How numbers, names and places are written on a sheet.
 *
 * Temperatures have one decimal; other numbers three or four significant digits: more would claim a precision that no
 * bench has. What is not known is written as such and never as a number.
 *
 * @param options.plan - The plan whose materials are named; default their keys.
 * @param options.format - Writes a number; default with a decimal point and no separators.
 * @param options.units - Preferred units by dimension; default those of the sheet.
 * @param options.phrases - The small words between numbers; default English.
 * @param options.start - Time of day at which the first step begins, `"07:30"`; default times count from it.
 * @returns The functions that the words of the sheet write numbers with.
 * @source definition
 */
export function sayWith(options: SayOptions = {}): Say {
  const { plan, format = plainNumber, units = {}, phrases = englishPhrases } = options;
  const how = { units, format };
  const begins = options.start === undefined ? undefined : timeOfDay(options.start);
  const { notKnown } = phrases;

  /** A writer that says "not known" of a number that is not. */
  const known =
    <Rest extends readonly unknown[]>(write: (value: number, ...rest: Rest) => string) =>
    (value: Known, ...rest: Rest): string =>
      isKnown(value) ? write(value, ...rest) : notKnown;

  const temperature = unitWriter("temperature", "°C", () => "°C", { ...how, isShort: true });
  const difference = unitWriter("temperatureDifference", "K", () => "K", { ...how, isShort: true });
  const mass = unitWriter("mass", "kg", (value) => (Math.abs(value) < 1 ? "g" : "kg"), how);
  const length = unitWriter("length", "m", () => "mm", how);
  const fineLength = unitWriter("length", "m", () => "µm", { ...how, units: {} });
  const volume = unitWriter("volume", "m³", (value) => (Math.abs(value) < litre ? "mL" : "L"), how);
  const stress = unitWriter("pressure", "Pa", () => "Pa", { ...how, units: {} });
  const pressure = unitWriter("pressure", "Pa", () => "mbar", how);
  const viscosity = unitWriter("dynamicViscosity", "Pa·s", () => "Pa·s", how);
  const power = unitWriter("power", "W", (value) => (Math.abs(value) < 1000 ? "W" : "kW"), how);
  const turning = unitWriter("rotationalSpeed", "rev/s", () => "rpm", how);
  const shearing = unitWriter("shearRate", "1/s", () => "1/s", how);

  const number = known((value, digits: number = 3) => format(value, significant(digits)));
  const percent = known((fraction, digits: number = 4) => `${format(100 * fraction, significant(digits))} %`);
  const celsius = known((value, decimals: number = 1) => temperature(value, { decimals }));
  const kelvins = known((value) => difference(value, { decimals: 1 }));
  const kilograms = known((value, digits: number = 4) => mass(value, significant(digits)));
  const millimetres = known((value, digits: number = 3) => length(value, significant(digits)));
  const pascals = known((value, digits: number = 3) => stress(value, significant(digits)));
  const millibars = known((value, digits: number = 3) => pressure(value, significant(digits)));
  const litres = known((value, digits: number = 3) => volume(value, significant(digits)));
  const watts = known((value, digits: number = 3) => power(value, significant(digits)));
  const newtonMetres = known((value, digits: number = 2) => `${format(value, significant(digits))} N·m`);
  const pascalSeconds = known((value, digits: number = 3) => viscosity(value, significant(digits)));
  const count = known((value) => format(value, significant(Number.isInteger(value) ? 12 : 3)));
  const rpm = known((value) => turning(value, significant(3)));
  const duration = known((seconds) => {
    const written = (unit: number, digits: Digits): string => format(seconds / unit, digits);
    if (seconds > 0 && seconds < minute) return `${written(1, significant(2))} s`;
    if (seconds > 0 && seconds < 10 * minute) return `${written(minute, significant(2))} min`;
    if (seconds < 2 * hour) return `${written(minute, { decimals: 0 })} min`;
    if (seconds < day) return hoursAndMinutes(Math.round(seconds / minute), format);
    return seconds < 3 * day ? `${written(hour, significant(3))} h` : `${written(day, significant(3))} ${phrases.days}`;
  });

  const writers: { readonly [Code in QuantityCode]: (value: Known, digits?: number) => string } = {
    temperature: (value) => celsius(value),
    "temperature-difference": kelvins,
    duration,
    mass: kilograms,
    volume: litres,
    "mass-fraction": percent,
    "volume-fraction": percent,
    ratio: (value, digits = 4) => number(value, digits),
    length: millimetres,
    speed: rpm,
    power: watts,
    torque: newtonMetres,
    pressure: millibars,
    stress: pascals,
    count,
    "index-difference": (value, digits = 3) => number(value, digits),
    activity: number,
    viscosity: pascalSeconds,
  };
  const quantity: Say["quantity"] = (value, code, digits) =>
    digits === undefined ? writers[code](value) : writers[code](value, digits);

  /** The ends of a figure as text, `undefined` where open. */
  const endsOf = (
    figure: Figure | undefined,
    code: QuantityCode,
  ): readonly [string | undefined, string | undefined] => {
    const text = (end: Known): string | undefined => (isKnown(end) ? quantity(end, code) : undefined);
    return [text(figure?.min), text(figure?.max)];
  };
  const interval: Say["interval"] = (figure, code) => {
    const [min, max] = endsOf(figure, code);
    if (min === undefined) return max === undefined ? notKnown : phrases.fromAbove(max);
    if (max === undefined) return phrases.fromBelow(min);
    if (min === max) return min;
    const value = figure?.value;
    return isKnown(value)
      ? phrases.about(quantity(value, code), withoutUnit(min, max), max)
      : phrases.range(withoutUnit(min, max), max);
  };
  const limitMin: Say["limitMin"] = (figure, code) => {
    const [min, max] = endsOf(figure, code);
    if (min === undefined) return max === undefined ? notKnown : phrases.orLess(phrases.fromBelow(max));
    if (max === undefined) return phrases.orMore(phrases.fromBelow(min));
    return phrases.fromBelow(min === max ? min : phrases.range(withoutUnit(min, max), max));
  };
  const limitMax: Say["limitMax"] = (figure, code) => {
    const [min, max] = endsOf(figure, code);
    if (min === undefined) return max === undefined ? notKnown : phrases.orLess(phrases.fromAbove(max));
    if (max === undefined) return phrases.orMore(phrases.fromAbove(min));
    return phrases.fromAbove(min === max ? min : phrases.range(withoutUnit(min, max), max));
  };

  return {
    notKnown,
    quantity,
    interval,
    range: (min, max) => (min === max ? min : phrases.range(withoutUnit(min, max), max)),
    estimate: ({ value, min, max }, code, digits) => {
      const [best, low, high] = [value, min, max].map((one) => quantity(one, code, digits)) as [string, string, string];
      const unit = unitOf(high);
      if (![best, low].every((one) => unitOf(one) === unit)) return phrases.about(best, low, high);
      const bare = (one: string): string => one.slice(0, one.length - unit.length);
      return `${phrases.about(bare(best), bare(low), bare(high))}${unit}`;
    },
    limitMin,
    limitMax,
    limit: ({ min, max }, code) => {
      if (min && max) return phrases.both(limitMin(min, code), limitMax(max, code));
      return min ? limitMin(min, code) : limitMax(max, code);
    },
    number,
    duration,
    clock: known((seconds) => {
      const minutes = Math.round((seconds + (begins ?? 0)) / minute);
      const days = begins === undefined ? 0 : Math.floor(minutes / minutesOfDay);
      const time = hoursWithMinutes(minutes - days * minutesOfDay);
      return days === 0 ? time : phrases.onDay(time, String(days + 1));
    }),
    isClockTime: begins !== undefined,
    percent,
    celsius,
    kelvins,
    kilograms,
    weighed: known((value, increment: number, beside: number = value) => {
      const unit = units.mass ?? (beside < 1 ? "g" : "kg");
      const written = unitWriter("mass", "kg", () => unit, { units: {}, format });
      return written(value, { decimals: decimalsOf(convert(increment, "kg", unit)) });
    }),
    millimetres,
    micrometres: known((value, digits: number = 2) => fineLength(value, significant(digits))),
    pascals,
    millibars,
    pascalSeconds,
    litres,
    rpm,
    watts,
    newtonMetres,
    massRate: known((value, digits: number = 3) => `${mass(minute * value, significant(digits))}/min`),
    shearRate: known((value, digits: number = 2) => shearing(value, significant(digits))),
    count,
    money: known((amount, decimals: number = 2) => format(amount, { decimals })),
    material: (key) => (key === undefined ? phrases.material : (plan?.names.materials[key] ?? key)),
    place: ({ step, addition, place }) => {
      const parts = [
        step === undefined ? undefined : phrases.step(count(step)),
        addition === undefined ? undefined : phrases.addition(count(addition)),
        place && phrases.places[place],
      ].filter((part) => part !== undefined);
      return parts.length === 0 ? phrases.wholeRun : parts.join(", ");
    },
    step: (at) => (at === undefined ? phrases.someStep : phrases.step(count(at))),
    list: (words) => {
      const last = words.at(-1) ?? "";
      return words.length < 2 ? last : phrases.list(words.slice(0, -1), last);
    },
    given: (value, words) => (value === undefined || value === null ? "" : words(value)),
  };
}

/** A time of day [s] from its text. */
function timeOfDay(text: string): number {
  const [, hours, minutes] = /^([01]?\d|2[0-3]):([0-5]\d)$/.exec(text) ?? [];
  if (hours === undefined || minutes === undefined)
    return refuse("input", "formats.start", show(text), 'a time of day, such as "07:30"');
  return Number(hours) * hour + Number(minutes) * minute;
}

/** A number without its unit, if another with the same unit follows. */
function withoutUnit(one: string, other: string): string {
  const unit = unitOf(one);
  return unit !== "" && unitOf(other) === unit ? one.slice(0, -unit.length) : one;
}

/** The unit behind a number, with the space before it. */
function unitOf(written: string): string {
  return / [^ \d]+$/.exec(written)?.[0] ?? "";
}

function hoursWithMinutes(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

function hoursAndMinutes(minutes: number, format: NumberFormat): string {
  const hours = `${format(Math.floor(minutes / 60), { decimals: 0 })} h`;
  return minutes % 60 === 0 ? hours : `${hours} ${format(minutes % 60, { decimals: 0 })} min`;
}

/** How many decimals an increment of a balance needs: those that it is written with, if these are few, else those of its first digit. */
function decimalsOf(increment: number): number {
  const exact = [0, 1, 2, 3, 4, 5, 6, 7].find(
    (decimals) => Math.abs(Number(increment.toFixed(decimals)) / increment - 1) < 1e-9,
  );
  return exact ?? Math.max(0, Math.ceil(-Math.log10(increment)));
}
