import { dot, line, ruleX, ruleY, text } from "@observablehq/plot";
import { shelfLife } from "gelwright/stability";
import type { Figure } from "./figure.js";

const ages = [0, 3, 6, 9, 12];
/** Invented content of an active part in three lots [% of the amount put in]. */
const values = {
  A: [101.2, 98.6, 99.4, 96.4, 96.9],
  B: [99.6, 100, 97.4, 97.9, 95.7],
  C: [100.6, 98.9, 98.5, 97.3, 95.9],
};
const lots = Object.entries(values).map(([name, own]) => ({
  name,
  readings: own.map((value, i) => ({ time: ages[i] ?? 0, value })),
}));
const limit = 90;

/** Readings of three lots over their age, the line through all of them, its confidence limit, and the shelf life. */
export function shelfLifeByRegression(): Figure {
  const life = shelfLife({ lots, limits: { min: limit } });
  const months = life.duration ?? 0;
  const { intercept = 0, slope = 0 } = life.lots[0] ?? {};
  // Where the shelf life for a limit lies, there the confidence limit stands at that limit.
  const confidence = Array.from({ length: 101 }, (_, step) => limit - 1.5 + step / 10).flatMap((min) => {
    const age = shelfLife({ lots, limits: { min } }).duration;
    return age === null || age === 0 ? [] : [{ age, value: min }];
  });
  const straight = [0, 36].map((age) => ({ age, value: intercept + slope * age }));
  const crossing = (limit - intercept) / slope;
  return {
    name: "shelf-life",
    title: "Three lots over their age, the line through them, and the 95 % limit that sets the shelf life",
    description: `The lots share one line, which falls by ${(-slope).toFixed(2)} % a month from ${intercept.toFixed(1)} %. The line reaches the specification of ${limit} % at ${crossing.toFixed(1)} months, its one-sided 95 % confidence limit at ${months.toFixed(1)} months. The last reading is at ${life.timeLast} months: what lies beyond was not measured.`,
    options: {
      marginRight: 150,
      x: { label: "age [months] →", domain: [0, 36] },
      y: { label: "↑ content [%]", domain: [87, 102] },
      marks: [
        ruleY([limit], { strokeDasharray: "7 4" }),
        ruleX([months], { strokeDasharray: "1 4" }),
        line(straight, { x: "age", y: "value", strokeOpacity: 0.6 }),
        line(confidence, { x: "age", y: "value", strokeDasharray: "4 2", strokeWidth: 2 }),
        dot(
          lots.flatMap(({ readings }) => readings),
          { x: "time", y: "value", r: 4, fill: "var(--plot-background)", stroke: "currentColor" },
        ),
        text([36], {
          x: () => 36,
          y: () => intercept + slope * 36,
          text: () => "line through all lots",
          dx: 8,
          textAnchor: "start",
        }),
        text([months], {
          x: () => (2 * months) / 3,
          y: () => limit + (intercept - limit) / 3,
          text: () => "95 % limit",
          dx: -30,
          dy: 20,
          textAnchor: "end",
        }),
        text([limit], { x: () => 1, y: () => limit, text: () => "specification", dy: -10, textAnchor: "start" }),
        text([months], {
          x: () => months,
          y: () => 101,
          text: () => `shelf life ${months.toFixed(1)} months`,
          dx: -8,
          textAnchor: "end",
        }),
      ],
    },
  };
}
