import type { Constant } from "./constants.js";

/** A changed constant, as a slip of the pen or of the mind would have it. */
export interface Mutant {
  readonly constant: number;
  readonly change: Change;
  readonly value: unknown;
}

export type Change = "+1 %" | "× 2" | "÷ 2" | "× 10" | "ln for log10" | "log10 for ln" | "°C for K";

/** Every change of one constant, the small one first. */
export function mutantsOf(constants: readonly Constant[], index: number): readonly Mutant[] {
  const constant = constants[index];
  if (!constant) return [];
  const change = (name: Change, value: unknown): Mutant => ({ constant: index, change: name, value });
  if (constant.place === "logarithm")
    return constant.text === "Math.log10" ? [change("ln for log10", Math.log)] : [change("log10 for ln", Math.log10)];
  const times = (factor: number) => (isText(constant) ? `${inner(constant)}*${factor}` : constant.value * factor);
  return [
    change("+1 %", times(1.01)),
    // Radius for diameter is one of these two.
    change("× 2", times(2)),
    change("÷ 2", times(0.5)),
    change("× 10", times(10)),
    ...(constant.value === 273.15 ? [change("°C for K", 0)] : []),
  ];
}

/** The value as it ships. */
export function shippedValue(constant: Constant): unknown {
  if (constant.place === "logarithm") return constant.text === "Math.log10" ? Math.log10 : Math.log;
  return isText(constant) ? inner(constant) : constant.value;
}

const isText = ({ text }: Constant) => /^["']/.test(text);
const inner = ({ text }: Constant) => text.slice(1, -1);
