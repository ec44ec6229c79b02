import { line, text } from "@observablehq/plot";
import { fragranceAllergens, type ProductUse } from "gelwright/labelling";
import type { Figure } from "./figure.js";

const uses = [
  { use: "rinse-off", dashes: "7 4" },
  { use: "leave-on", dashes: "none" },
] as const;

const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "allergen" }] };

/** The threshold [0 to 1], as the library reports it. */
function thresholdOf(use: ProductUse): number {
  return fragranceAllergens({ lines: [{ name: "oil", amount: "100 %" }], use, table }).threshold;
}

/** How much of a fragrance may go in before an allergen of it has to be named. */
export function fragranceShares(): Figure {
  const contents = Array.from({ length: 31 }, (_, step) => 10 ** (step / 15 - 3));
  const curves = uses.map(({ use, dashes }) => ({
    use,
    dashes,
    curve: contents
      .map((content) => ({ content: 100 * content, share: (100 * thresholdOf(use)) / content }))
      .filter(({ share }) => share <= 10),
  }));
  const at1 = uses.map(({ use }) => `${use} ${((100 * thresholdOf(use)) / 0.01).toPrecision(2)} %`);
  const ends = curves.map(({ use, curve }) => ({ words: use, ...curve.at(-1) }));
  return {
    name: "fragrance-shares",
    title: "The largest share of a fragrance at which an allergen in it need not be named",
    description: `The share falls in inverse proportion to the content of the allergen. For 1 % of it in the fragrance, and none from other materials: ${at1.join("; ")} of the fragrance. Thresholds of the EU.`,
    options: {
      marginRight: 100,
      x: { type: "log", label: "allergen in the fragrance [%] →", tickFormat: String, ticks: [0.1, 0.3, 1, 3, 10] },
      y: { type: "log", label: "↑ fragrance in the product [%]", tickFormat: String, ticks: [0.01, 0.1, 1, 10] },
      marks: [
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "content", y: "share", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        text(ends, { x: "content", y: "share", text: "words", dx: 8, textAnchor: "start" }),
      ],
    },
  };
}
