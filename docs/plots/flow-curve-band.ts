import { areaY, dot, line, text } from "@observablehq/plot";
import { chooseFlowCurve, fittedStressAt } from "gelwright/rheology";
import type { Figure } from "./figure.js";

/** An invented gel, read with a scatter of some 4 %. */
const points = [
  { shearRate: 0.1, stress: 14.7 },
  { shearRate: 0.2, stress: 16.9 },
  { shearRate: 0.5, stress: 18.6 },
  { shearRate: 1, stress: 20.2 },
  { shearRate: 2, stress: 25.3 },
  { shearRate: 5, stress: 30.9 },
  { shearRate: 10, stress: 36.3 },
  { shearRate: 20, stress: 48.1 },
  { shearRate: 50, stress: 63 },
  { shearRate: 100, stress: 85.2 },
];

/** A fitted flow curve with what its readings leave open. */
export function flowCurveBand(): Figure {
  const { best } = chooseFlowCurve({ points });
  const curve = Array.from({ length: 61 }, (_, step) => 10 ** (step / 12 - 2)).map((shearRate) => {
    const { stress, min, max, extrapolated } = fittedStressAt({ fit: best, shearRate });
    return { shearRate, stress, min, max: max, extrapolated };
  });
  const percent = (rate: number) => {
    const { stress, max } = fittedStressAt({ fit: best, shearRate: rate });
    return `${Math.round((100 * (max - stress)) / stress)} %`;
  };
  const inside = curve.filter(({ extrapolated }) => !extrapolated);
  return {
    name: "flow-curve-band",
    title: "Ten readings of a gel, the curve fitted to them and its 95 % band",
    description: `The model chosen is ${best.model}. The band is ${percent(3)} of the stress either way at 3 per second, amid the readings; beyond them it widens, to ${percent(0.01)} at 0.01 and ${percent(1000)} at 1000 per second.`,
    options: {
      x: {
        type: "log",
        domain: [0.01, 1000],
        label: "shear rate [1/s] →",
        tickFormat: String,
        ticks: [0.01, 0.1, 1, 10, 100, 1000],
      },
      y: { type: "log", label: "↑ stress [Pa]", tickFormat: String, domain: [9, 300], ticks: [10, 20, 50, 100, 200] },
      marks: [
        areaY(curve, { x: "shearRate", y1: "min", y2: "max", fillOpacity: 0.15 }),
        line(curve, { x: "shearRate", y: "stress", strokeDasharray: "2 5" }),
        line(inside, { x: "shearRate", y: "stress", strokeWidth: 2 }),
        dot(points, { x: "shearRate", y: "stress", r: 4, fill: "var(--plot-background)", stroke: "currentColor" }),
        text(
          [
            { shearRate: 0.04, stress: 18.5, words: "beyond the readings" },
            { shearRate: 500, stress: 90, words: "beyond the readings" },
            { shearRate: 14, stress: 22, words: `fitted: ${best.model}` },
          ],
          { x: "shearRate", y: "stress", text: "words" },
        ),
      ],
    },
  };
}
