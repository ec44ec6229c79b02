import { dot, link, ruleX, text } from "@observablehq/plot";
import { shippedBands } from "../../tests/support/bands.js";
import type { Figure } from "./figure.js";

/** Beyond a half to twice the figure the axis would leave no room for the others. */
const ends = [0.5, 2] as const;

/** How far the truth may lie from a figure: the bands that are factors, the narrowest first. */
export function bandsOfFactors(): Figure {
  const all = shippedBands.flatMap(([name, { by, min, max, basis }]) =>
    by === "factor" ? [{ name, min, max, basis }] : [],
  );
  const shown = all
    .filter(({ min, max }) => min >= ends[0] && max <= ends[1])
    .sort((a, b) => a.max / a.min - b.max / b.min);
  const wider = all.filter((one) => !shown.includes(one)).map(({ name, min, max }) => `${name} × ${min} to ${max}`);
  const [narrowest, widest] = [shown[0], shown.at(-1)].map((one) => `${one?.name} × ${one?.min} to ${one?.max}`);
  return {
    name: "bands",
    title: "The bands that are factors, around a figure of 1, the narrowest first",
    description: `From ${narrowest} to ${widest}. Whole lines come from a source or from the spread between sources or measurements, dashed ones are our judgement. Not drawn: ${wider.join(", ")}.`,
    options: {
      height: 90 + 20 * shown.length,
      marginLeft: 300,
      marginRight: 125,
      x: { type: "log", domain: ends, ticks: [0.5, 0.7, 1, 1.4, 2], tickFormat: String, label: "truth over figure →" },
      y: { type: "point", domain: shown.map(({ name }) => name), label: null },
      marks: [
        ruleX([1], { strokeOpacity: 0.5 }),
        ...[true, false].map((isJudged) =>
          link(
            shown.filter(({ basis }) => (basis === "judgement") === isJudged),
            { x1: "min", x2: "max", y: "name", strokeWidth: 2, strokeDasharray: isJudged ? "5 4" : "none" },
          ),
        ),
        dot(
          shown.flatMap(({ name, min, max }) => [min, max].map((end) => ({ name, end }))),
          {
            x: "end",
            y: "name",
            r: 3,
            fill: "currentColor",
          },
        ),
        text(shown, {
          x: () => ends[1],
          y: "name",
          text: ({ min, max }: { min: number; max: number }) => `${min} to ${max}`,
          dx: 10,
          textAnchor: "start",
        }),
      ],
    },
  };
}
