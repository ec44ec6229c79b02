import { positive, refuse } from "../guards.js";

/** A decimal number as a whole number of tenths, hundredths, ...: 0.025 is 25 × 10^-3. */
export interface Decimal {
  readonly digits: number;
  readonly exponent: number;
}

/** An increment of a balance, as the decimal that its display shows: 15 digits, so that 0.1 + 0.2 counts as 0.3. */
export function increment(value: number, path: string): Decimal {
  const [mantissa = "", power = "0"] = String(Number(positive(value, path).toPrecision(15))).split("e");
  const places = mantissa.split(".")[1]?.length ?? 0;
  return { digits: Number(mantissa.replace(".", "")), exponent: Number(power) - places };
}

/** The double nearest to so many increments: 3 × 0.1 is 0.3 and not 0.30000000000000004. */
export function multiple(count: number, { digits, exponent }: Decimal, path: string): number {
  const whole = count * digits;
  if (Number.isSafeInteger(whole)) return Number(`${whole}e${exponent}`);
  return refuse("range", path, whole, "fewer than 9e15 steps of the last decimal");
}

/** Sums and quotients of doubles are a few bits off: so near, and a mass lies on a step of the balance. */
export const slack = 1e-12;

/** Whole steps from below, and from above. */
export function stepsDown(steps: number): number {
  return Math.floor(steps * (1 + slack));
}
export function stepsUp(steps: number): number {
  return Math.ceil(steps * (1 - slack));
}

/** A mass on the grid in so many portions on the grid, as equal as it allows. */
export function share(mass: number, portions: number, step: number): readonly number[] {
  const decimal = increment(step, "increment");
  const steps = Math.round(mass / step);
  const upTo = (i: number): number => Math.floor((steps * i) / portions);
  return Array.from({ length: portions }, (_, i) => multiple(upTo(i + 1) - upTo(i), decimal, "portion"));
}
