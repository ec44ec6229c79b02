import type { FindingWay } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Words of the table that says what to measure next. */
export const measureLines = {
  /** What to do about a missing figure. */
  ways: {
    measure: ({ figure }) => `Measure ${figure}`,
    "look-up": ({ figure }) => `Look up ${figure}`,
    decide: ({ figure }) => `Decide ${figure}`,
  } as { readonly [Way in FindingWay]: (of: { readonly figure: string }) => string },
  /** A figure by the name of its field, with the charge that it has to be measured of. */
  figure: (
    of: {
      readonly name: string;
      /** The material that it is a figure of. */
      readonly material?: string;
      /** What else it is a figure of, as the documents name it. */
      readonly owner?: string;
      readonly phases: readonly string[];
      readonly directions: readonly ("heating" | "cooling")[];
      readonly dose?: { readonly min: number; readonly max: number };
    },
    say: Say,
  ): string => {
    const { name, phases, directions, dose } = of;
    const whose =
      say.given(of.material, (material) => ` of ${material}`) + say.given(of.owner, (owner) => ` (${owner})`);
    const way = directions.length === 0 ? "" : ` on ${say.list(directions)}`;
    const charge = phases.length === 0 ? "" : ` of ${say.list(phases.map((phase) => `phase ${phase}`))}`;
    const share = say.given(dose, ({ min, max }) => {
      const [from, to] = [say.percent(min, 3), say.percent(max, 3)];
      return ` at ${from === to ? from : `${from} to ${to}`} of gel former`;
    });
    return `${name}${whose}${charge}${way}${share}`;
  },
  /** Figures that checks lack which stand with another figure already. */
  alsoMissing: (
    { figures }: { readonly figures: readonly { readonly name: string; readonly checks: number }[] },
    say: Say,
  ): string =>
    `Some of these checks need a further figure. ${figures.map(({ name, checks }) => `${name} (checks: ${say.count(checks)})`).join("; ")}.`,
  /** One question with its cases. */
  waiting: ({ question, cases }: { readonly question: string; readonly cases: readonly string[] }): string => {
    const told = cases.filter((one) => one !== "");
    return told.length === 0 ? question : `${question} (${told.join("; ")})`;
  },
  /** What a question is about, with its value so far and its limit. */
  case: (of: { readonly subject: string; readonly value?: string; readonly limit?: string }): string =>
    [of.subject, ...(of.value === undefined ? [] : [`now ${of.value}`]), ...(of.limit === undefined ? [] : [of.limit])]
      .filter((part) => part !== "")
      .join(", "),
};
