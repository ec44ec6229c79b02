import { list, record, refuse, show, temperature } from "../guards.js";

/** Something in the product that changes its state at a temperature: a gel point, or a melting range. */
export interface Transition {
  /** What changes, in the caller's words: `"gel point"`, `"wax melts"`. */
  readonly name: string;
  /** Where it begins [°C]; of a point, the point. */
  readonly temperatureMin: number;
  /** Where it ends [°C]; of a point, the same. */
  readonly temperatureMax: number;
}

/** The transitions, checked. */
export function readTransitions(transitions: readonly Transition[] | undefined): readonly Transition[] {
  return list(transitions ?? [], "transitions").map((transition, i) => {
    const at = `transitions[${i}]`;
    const { name, temperatureMin, temperatureMax } = record(transition, at);
    if (typeof name !== "string" || name === "") refuse("input", `${at}.name`, show(name), "a name");
    const from = temperature(temperatureMin, `${at}.temperatureMin`);
    const to = temperature(temperatureMax, `${at}.temperatureMax`);
    if (from > to) refuse("input", at, `${from} to ${to} °C`, "temperatureMin not above temperatureMax");
    return { name, temperatureMin: from, temperatureMax: to };
  });
}

/** Those that touch the range between two temperatures, its ends included: there the material is not one and the same. */
export function between(transitions: readonly Transition[], one: number, other: number): readonly Transition[] {
  const [low, high] = [Math.min(one, other), Math.max(one, other)];
  return transitions.filter(({ temperatureMin, temperatureMax }) => temperatureMin <= high && temperatureMax >= low);
}
