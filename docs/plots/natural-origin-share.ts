import { dot, line, ruleY, text } from "@observablehq/plot";
import { largestShare, productContent } from "gelwright/natural-origin";
import type { Figure } from "./figure.js";

const indices = [
  { naturalOrigin: 0.5, dashes: "1 4" },
  { naturalOrigin: 0.7, dashes: "7 4" },
  { naturalOrigin: 0.9, dashes: "none" },
] as const;
const claim = 0.95;

const product = (share: number, naturalOrigin: number) => [
  { name: "oil", mass: 1 - share, naturalOrigin: 1 },
  { name: "gel former", mass: share, naturalOrigin },
];

/** The natural origin content of a gel over its share of a gel former that is part synthetic. */
export function naturalOriginShare(): Figure {
  const shares = Array.from({ length: 61 }, (_, step) => 0.001 + step / 200);
  const curves = indices.map((one) => ({
    ...one,
    curve: shares
      .map((share) => ({
        share: 100 * share,
        content:
          100 *
          productContent({ ingredients: product(share, one.naturalOrigin) }).naturalOrigin.withFormulationWater.min,
      }))
      .filter(({ content }) => content >= 84),
  }));
  const limits = indices
    .filter(({ naturalOrigin }) => naturalOrigin < 0.9)
    .map(({ naturalOrigin }) => ({
      naturalOrigin,
      share: 100 * largestShare({ ingredients: product(0.1, naturalOrigin), ingredient: "gel former", claim }).share,
    }));
  const said = limits.map(({ naturalOrigin, share }) => `at an index of ${naturalOrigin} up to ${share.toFixed(1)} %`);
  return {
    name: "natural-origin-share",
    title: "The natural origin content of a gel, by its share of a gel former that is part synthetic",
    description: `All else is of natural origin. A claim of ${100 * claim} % is kept ${said.join(", ")} of gel former; at 0.9 beyond the whole range shown.`,
    options: {
      marginRight: 80,
      x: { label: "gel former [% by mass] →", domain: [0, 30] },
      y: { label: "↑ natural origin content [%]", domain: [84, 100.5] },
      marks: [
        ruleY([100 * claim], { strokeOpacity: 0.5 }),
        text([claim], { x: () => 0.5, y: () => 100 * claim, text: () => "claim", dy: -8, textAnchor: "start" }),
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "share", y: "content", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        dot(limits, { x: "share", y: () => 100 * claim, r: 4, fill: "currentColor" }),
        text(limits, {
          x: "share",
          y: () => 100 * claim,
          text: ({ share }: { share: number }) => `${share.toFixed(1)} %`,
          dx: 8,
          dy: -10,
          textAnchor: "start",
        }),
        text(
          curves.map(({ naturalOrigin, curve }) => ({
            naturalOrigin,
            ...curve.at(-1),
          })),
          {
            x: "share",
            y: "content",
            text: ({ naturalOrigin }: { naturalOrigin: number }) => `index ${naturalOrigin}`,
            dx: 8,
            textAnchor: "start",
          },
        ),
      ],
    },
  };
}
