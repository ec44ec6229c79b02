import { dot, line, text } from "@observablehq/plot";
import { relativeOxidation } from "gelwright/oils";
import type { Figure } from "./figure.js";

const base = 1.65;
const added = [
  { name: "oxidisability 7", oxidisability: 7, dashes: "7 4" },
  { name: "oxidisability 14", oxidisability: 14, dashes: "none" },
] as const;

const rate = (share: number, oxidisability: number) =>
  relativeOxidation({
    parts: [
      { mass: 1 - share, oxidisability: base },
      { mass: share, oxidisability },
    ],
    oxidisabilityReference: base,
  }).rate;

/** How much sooner a blend oxidises than its stable oil, by its share of a tender one. */
export function tenderOil(): Figure {
  const shares = Array.from({ length: 31 }, (_, step) => 0.0001 + step / 100);
  const curves = added.map((one) => ({
    ...one,
    curve: shares.map((share) => ({ percent: 100 * share, rate: rate(share, one.oxidisability) })),
  }));
  const tenth = added.map(({ name, oxidisability }) => ({ name, percent: 10, rate: rate(0.1, oxidisability) }));
  return {
    name: "tender-oil",
    title: "How much faster a blend oxidises than its stable oil, by its share of a tender oil",
    description: `The stable oil has an oxidisability of ${base}. A tenth of the tender one: ${tenth.map((one) => `${one.rate.toFixed(2)} times as fast with ${one.name}`).join(", ")}. A ranking, no time.`,
    options: {
      marginRight: 120,
      x: { label: "tender oil [% by mass] →", domain: [0, 30] },
      y: { label: "↑ rate, stable oil = 1", domain: [1, 3.6] },
      marks: [
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "percent", y: "rate", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        dot(tenth, { x: "percent", y: "rate", r: 4, fill: "currentColor" }),
        text(tenth, {
          x: "percent",
          y: "rate",
          text: (one: { rate: number }) => one.rate.toFixed(2),
          dx: 8,
          dy: 12,
          textAnchor: "start",
        }),
        text(
          curves.flatMap(({ name, curve }) => (curve.at(-1) ? [{ name, ...curve.at(-1) }] : [])),
          { x: "percent", y: "rate", text: "name", dx: 8, textAnchor: "start" },
        ),
      ],
    },
  };
}
