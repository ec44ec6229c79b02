import { dot, line, ruleX, text } from "@observablehq/plot";
import { additionSchedule } from "gelwright/mixing";
import type { Figure } from "./figure.js";

/** The bench of the page on the cold route. */
const oil = {
  massGelFormer: 0.05,
  massToAdd: 0.22,
  densityOil: 930,
  densityGelFormer: 1230,
  increment: 0.0001,
  share: {
    law: "table",
    points: [
      { volumeFractionOil: 0, value: 0.05 },
      { volumeFractionOil: 0.4, value: 0.1 },
      { volumeFractionOil: 0.9, value: 0.2 },
    ],
  },
} as const;
const volumeFractionOilMax = 0.88;

/** How the additions of oil grow as the gel takes it up, and how near that comes to the maximum. */
export function coldRouteAdditions(): Figure {
  const additions = additionSchedule({ ...oil, volumeFractionOilMax }).map(({ mass, volumeFractionOil }, i) => ({
    number: i + 1,
    grams: 1000 * mass,
    percent: 100 * volumeFractionOil,
  }));
  const ends = [additions[0], additions.at(-1)].flatMap((one) => one ?? []);
  const said = ends.map(
    ({ number, grams, percent }) => `addition ${number}: ${grams.toFixed(1)} g, to ${percent.toFixed(1)} % of oil`,
  );
  return {
    name: "cold-route-additions",
    title: "220 g of oil go into 50 g of gel former: each addition, and the oil fraction after it",
    description: `${additions.length} additions, each at most a share of what is in the vessel that grows from 5 to 20 %. ${said.join("; ")} by volume. Trials inverted at ${100 * volumeFractionOilMax} %.`,
    options: {
      x: { label: "oil fraction after the addition [% by volume] →", domain: [0, 92] },
      y: { label: "↑ addition [g]", domain: [0, 1.15 * Math.max(...additions.map(({ grams }) => grams))] },
      marks: [
        ruleX([100 * volumeFractionOilMax], { strokeDasharray: "7 4" }),
        text([volumeFractionOilMax], {
          x: () => 100 * volumeFractionOilMax,
          y: () => 3,
          text: () => "inverted in trials",
          dx: -6,
          textAnchor: "end",
        }),
        line(additions, { x: "percent", y: "grams", strokeOpacity: 0.5 }),
        dot(additions, { x: "percent", y: "grams", r: 4, fill: "currentColor" }),
        ...ends.map((end, i) =>
          text([end], {
            x: "percent",
            y: "grams",
            text: ({ number, grams }: { number: number; grams: number }) => `${number}: ${grams.toFixed(1)} g`,
            dy: i === 0 ? -14 : 16,
            textAnchor: i === 0 ? "start" : "end",
          }),
        ),
      ],
    },
  };
}
