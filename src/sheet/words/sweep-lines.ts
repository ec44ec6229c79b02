import type { Change } from "../../plan/index.js";
import type { Say } from "./types.js";

/** A figure of a step, with its unit. */
function figureOfStep({ field, value }: Extract<Change, { readonly change: "step" }>, say: Say): string {
  if (field === "to" || field === "at") return say.celsius(value);
  if (field === "for" || field === "within") return say.duration(value);
  if (field === "speed") return say.rpm(value);
  return field === "pressure" ? say.millibars(value) : say.pascalSeconds(value);
}

/** Words of the table that sets runs of one job side by side. */
export const sweepLines = {
  /** What each row is, beside those of the table of scales. */
  heads: {
    lots: "lots",
    mass: "charge of a lot",
    massDelivered: "delivered by a lot",
    durationUntilFilled: "until the last pack is full",
  },
  impossible: (): string => "no batch to weigh",
  /** An answer in one run: its verdict, and its figure if there is one. */
  cell: ({ verdict, value }: { readonly verdict: string; readonly value: string }): string =>
    value === "" ? verdict : `${verdict}, ${value}`,
  flip: (of: {
    readonly question: string;
    readonly before: string;
    readonly after: string;
    readonly from: string;
    readonly to: string;
    readonly change: string;
  }): string => {
    const { question, before, after, from, to, change } = of;
    const where = change === "" ? "" : `; the verdict changes at ${change}`;
    return `${question} ${before} (${from}), ${after} (${to})${where}.`;
  },
  /** The value of a change, with what it is a value of. */
  change: (change: Change, say: Say): string => {
    switch (change.change) {
      case "room":
        return `${say.celsius(change.value)} in the room`;
      case "coolant":
        return `${say.celsius(change.value)} of the coolant`;
      case "heater":
        return `${say.watts(change.value)} of the heater`;
      case "delivered":
        return `${say.kilograms(change.value)} asked for`;
      case "dose":
        return `${say.percent(change.value)} of ${say.material(change.material)}`;
      case "step":
        return `${figureOfStep(change, say)} in ${say.step(change.step)}`;
      case "material":
        return change.field === "temperatureFlash" || change.field === "temperatureMax"
          ? `${say.celsius(change.value)} for ${say.material(change.material)}`
          : `${say.percent(change.value)} for ${say.material(change.material)}`;
      default:
        return say.number((change as { readonly value: number }).value);
    }
  },
};
