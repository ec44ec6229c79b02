import { line, ruleY, text } from "@observablehq/plot";
import { dailyExposure, marginOfSafety, massFractionForMargin, systemicExposure } from "gelwright/exposure";
import type { Figure } from "./figure.js";

const products = [
  { productType: "body lotion", dashes: "none" },
  { productType: "hand cream", dashes: "7 4" },
  { productType: "lipstick, lip salve", dashes: "2 3" },
  { productType: "shower gel", dashes: "9 3 2 3" },
] as const;

const study = { pointOfDeparture: 100, bioavailability: 0.5 };
const dermalAbsorption = 0.5;

/** The margin of safety by the share of an ingredient, in four types of product. */
export function marginsOfSafety(): Figure {
  const shares = Array.from({ length: 31 }, (_, step) => 10 ** (step / 10 - 4));
  const curves = products.map(({ productType, dashes }) => {
    const { exposurePerBodyWeight } = dailyExposure({ productType });
    const margin = (massFraction: number) =>
      marginOfSafety({
        ...study,
        systemicExposure: systemicExposure({ exposurePerBodyWeight, massFraction, dermalAbsorption }).dose,
      }).margin;
    const { massFractionMax } = massFractionForMargin({
      exposurePerBodyWeight,
      dermalAbsorption,
      ...study,
      margin: 100,
    });
    return {
      productType,
      dashes,
      massFractionMax,
      curve: shares.map((share) => ({ percent: 100 * share, margin: margin(share) })),
    };
  });
  const at100 = curves.map(
    ({ productType, massFractionMax }) => `${productType} ${(100 * massFractionMax).toPrecision(2)} %`,
  );
  const ends = curves.map(({ productType, curve }) => ({ words: productType, percent: 10, ...curve.at(-1) }));
  return {
    name: "margins-of-safety",
    title: "The margin of safety of an ingredient by its share, in four types of product",
    description: `For an ingredient whose study starts from 100 mg/(kg·d), half of it taken up, and of which the skin takes up half. The margin falls in inverse proportion to the share. A margin of 100 stands at these shares: ${at100.join("; ")}.`,
    options: {
      marginRight: 150,
      x: { type: "log", label: "share in the product [%] →", tickFormat: String, ticks: [0.01, 0.1, 1, 10] },
      y: {
        type: "log",
        label: "↑ margin of safety",
        tickFormat: String,
        ticks: [10, 100, 1000, 10_000, 100_000, 1_000_000],
      },
      marks: [
        ruleY([100], { strokeOpacity: 0.5 }),
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "percent", y: "margin", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        text(ends, { x: "percent", y: "margin", text: "words", dx: 8, textAnchor: "start" }),
      ],
    },
  };
}
