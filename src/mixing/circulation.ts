import { positive, record, refuse, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import type { Impeller } from "./impeller.js";
import { constantOf } from "./impeller-constants.js";
import * as known from "./known.js";
import { reynoldsTurbulent } from "./regime.js";

/** What an impeller moves. */
export interface Circulation {
  /** [m³/s]. */
  readonly flowRate: number;
  /** In which it moves as much as the batch holds [s]. */
  readonly duration: number;
  /** Of the batch in a minute. */
  readonly turnoversPerMinute: number;
}

/**
 * How much an impeller pumps, and how often it turns the batch over.
 *
 * $$Q = \mathrm{Fl}\,N D^3 \qquad t_c = \frac{V}{Q}$$
 *
 * The flow number holds in turbulent flow; in creeping flow it falls to a fraction of it, which no source gives for all
 * impellers. A batch that was turned over once is not yet uniform: that takes several turnovers, common practice, no
 * source.
 *
 * @param input.impeller - The impeller: its own `flowNumber`, or that of its kind.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.volume - Volume of the batch [m³], above 0.
 * @param input.reynolds - Reynolds number, above 0.
 * @param input.beyond - Below Re 10,000: `"throw"` (default) or `"extend"` the flow number of turbulent flow, which is then too high.
 * @returns Flow [m³/s], time of a turnover [s], turnovers in a minute.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no flow number is known;
 *   `range` below Re 10,000.
 * @source definition; for the constants see `impellerConstants`
 * @example
 * ```ts
 * import { circulation } from "gelwright/mixing";
 * const impeller = { kind: "propeller", diameter: 0.2 } as const;
 * circulation({ impeller, speed: 5, volume: 0.1, reynolds: 20000 }).duration; // => 5
 * ```
 */
export function circulation(input: {
  readonly impeller: Impeller;
  readonly speed: number;
  readonly volume: number;
  readonly reynolds: number;
  readonly beyond?: Beyond;
}): Circulation {
  const { impeller, speed, volume, reynolds, beyond } = record(input, "input", known.circulation);
  const extended = extending(beyond);
  const flowNumber = constantOf(impeller, "flowNumber", "impeller");
  if (positive(reynolds, "reynolds") < reynoldsTurbulent && !extended)
    refuse("range", "reynolds", reynolds, `${reynoldsTurbulent} or more, or beyond: "extend"`);
  const flowRate = result(flowNumber * positive(speed, "speed") * impeller.diameter ** 3, "flowRate");
  const duration = result(positive(volume, "volume") / flowRate, "turnover");
  return { flowRate, duration, turnoversPerMinute: result(60 / duration, "turnovers") };
}
