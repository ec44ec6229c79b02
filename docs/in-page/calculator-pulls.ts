import type { Calculator, Call } from "./calculator-data.js";
import { valueAt, withValue } from "./calculator-values.js";
import { at } from "./paths.js";

/** What a number does to the result: each raised a little by itself, those first that move it most. */
export interface Pull {
  readonly path: string;
  /** What was added to it: 1 K to a temperature, 1 % of itself to anything else. */
  readonly step: "1 K" | "1 %";
  /** Of the main result, in its unit. */
  readonly change: number;
}

export function pullsOf(calculator: Calculator, args: readonly unknown[], call: Call): readonly Pull[] {
  const { fields, main, parameters } = calculator;
  const result = at(call(...args), main);
  if (typeof result !== "number") return [];
  const pulls = fields.flatMap(({ path, kind, unit }): Pull[] => {
    const value = valueAt(parameters, args, path);
    if (kind !== "number" || typeof value !== "number" || value === 0) return [];
    const step = unit === "°C" ? "1 K" : "1 %";
    const tried = [1, -1].flatMap((sign) => {
      try {
        const moved = step === "1 K" ? value + sign : value * (1 + sign / 100);
        const now = at(call(...withValue(parameters, args, path, moved)), main);
        return typeof now === "number" ? [sign * (now - result)] : [];
      } catch {
        return [];
      }
    });
    const [change] = tried;
    return change === undefined || change === 0 ? [] : [{ path, step, change }];
  });
  return pulls.sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
}
