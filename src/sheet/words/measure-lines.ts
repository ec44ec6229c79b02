import type { FindingWay } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Words of the table that says what to measure next. */
export const measureLines = {
  /** How a figure is come by. */
  ways: { measure: "measure", "look-up": "look up", decide: "decide" } as { readonly [Way in FindingWay]: string },
  /** A figure by the name of its field, with the charge that it has to be measured of. */
  figure: (
    of: {
      readonly name: string;
      readonly phases: readonly string[];
      readonly directions: readonly ("heating" | "cooling")[];
      readonly dose?: { readonly min: number; readonly max: number };
    },
    say: Say,
  ): string => {
    const { name, phases, directions, dose } = of;
    const way = directions.length === 0 ? "" : ` on ${say.list(directions)}`;
    const charge = phases.length === 0 ? "" : ` of ${say.list(phases.map((phase) => `phase ${phase}`))}`;
    const share = say.given(dose, ({ min, max }) => {
      const [from, to] = [say.percent(min, 3), say.percent(max, 3)];
      return ` at ${from === to ? from : `${from} to ${to}`} of gel former`;
    });
    return `${name}${charge}${way}${share}`;
  },
};
