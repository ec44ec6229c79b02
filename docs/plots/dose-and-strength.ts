import { areaY, dot, line, rectX, ruleX, text } from "@observablehq/plot";
import { doseForStrength, fitDoseResponse, strengthAtDose } from "gelwright/gel";
import type { Figure } from "./figure.js";

/** Invented batches, which scatter by some 8 %. */
const trials = [
  { dose: 0.035, strength: 1.4 },
  { dose: 0.04, strength: 3.7 },
  { dose: 0.05, strength: 8.7 },
  { dose: 0.06, strength: 19.9 },
  { dose: 0.08, strength: 47.4 },
  { dose: 0.1, strength: 77.6 },
  { dose: 0.12, strength: 142 },
];
const wanted = 50;

/** Gel strength over the dose of gel former, with the threshold and the limits of the curve. */
export function doseAndStrength(): Figure {
  const fit = fitDoseResponse({ trials });
  const curve = Array.from({ length: 86 }, (_, step) => (35 + step) / 1000).map((dose) => ({
    percent: 100 * dose,
    ...strengthAtDose({ fit, dose }),
  }));
  const dose = doseForStrength({ fit, strength: wanted });
  const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
  const { min, value, max } = fit.threshold;
  return {
    name: "dose-and-strength",
    title: "Seven batches of gel, the curve of dose and strength fitted to them, and its 95 % limits",
    description: `No gel below a threshold of ${percent(value)}, which lies between ${percent(min)} and ${percent(max)}. For ${wanted} Pa the dose is ${percent(dose.value)}, between ${percent(dose.min)} and ${percent(dose.max)}. One batch scatters about the curve by ${Math.round(100 * fit.scatter)} % besides.`,
    options: {
      x: { label: "gel former [% by mass] →", domain: [2, 12.5] },
      y: { type: "log", label: "↑ strength [Pa]", domain: [1, 200], tickFormat: String, ticks: [1, 3, 10, 30, 100] },
      marks: [
        rectX([fit.threshold], { x1: () => 100 * min, x2: () => 100 * max, fillOpacity: 0.15 }),
        ruleX([100 * value], { strokeDasharray: "7 4" }),
        text([value], { x: () => 100 * value, y: () => 150, text: () => "threshold", dx: 30, textAnchor: "start" }),
        areaY(curve, { x: "percent", y1: "min", y2: "max", fillOpacity: 0.15 }),
        line(curve, { x: "percent", y: "value", strokeWidth: 2 }),
        dot(trials, {
          x: (trial: { dose: number }) => 100 * trial.dose,
          y: "strength",
          r: 4,
          fill: "var(--plot-background)",
          stroke: "currentColor",
        }),
        dot([dose], { x: () => 100 * dose.value, y: () => wanted, r: 4, fill: "currentColor" }),
        text([dose], {
          x: () => 100 * dose.value,
          y: () => wanted,
          text: () => `${percent(dose.value)} for ${wanted} Pa`,
          dx: 12,
          dy: 14,
          textAnchor: "start",
        }),
      ],
    },
  };
}
