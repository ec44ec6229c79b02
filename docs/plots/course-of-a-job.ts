import { dot, line, ruleY, text } from "@observablehq/plot";
import { planSeries, prepareJob } from "gelwright/plan";
import { readQuantity } from "gelwright/units";
import { exampleJob } from "../../tests/support/example.js";
import type { Figure } from "./figure.js";

/** The temperature in the vessel over the example's job, step by step. */
export function courseOfAJob(): Figure {
  const job = exampleJob();
  const { times, temperatures, steps } = planSeries({ prepared: prepareJob(job) });
  const points = times.flatMap((time, i) => {
    const temperature = temperatures[i];
    return typeof temperature === "number" ? [{ minutes: time / 60, temperature, step: steps[i] ?? 0 }] : [];
  });
  const room = readQuantity((job.process as { readonly room: string }).room, "temperature");
  const last = points.at(-1);
  const warmest = Math.max(...points.map(({ temperature }) => temperature));
  const ends = points.filter(({ step }, i) => step !== points[i + 1]?.step && [2, 3, 5, 6, 7].includes(step));
  return {
    name: "course-of-a-job",
    title: "The temperature in the kettle over the example's job, with the number of each step where it ends",
    description: `It is heated to ${warmest.toFixed(0)} °C and held, cools, falls as the almond oil goes in (step 6), cools until it carries the glitter (step 7), and stands at ${last?.temperature.toFixed(1)} °C when the last pack is full, after ${last?.minutes.toFixed(0)} min.`,
    options: {
      x: { label: "time [min] →" },
      y: { label: "↑ °C", domain: [15, 95] },
      marks: [
        ruleY([room], { strokeDasharray: "7 4" }),
        text([room], { x: () => 2, y: () => room, text: () => "room", dy: -8, textAnchor: "start" }),
        line(points, { x: "minutes", y: "temperature", strokeWidth: 2 }),
        dot(ends, { x: "minutes", y: "temperature", r: 4, fill: "currentColor" }),
        text(ends, {
          x: "minutes",
          y: "temperature",
          text: ({ step }: { step: number }) => `${step}`,
          dy: -12,
          fontWeight: "bold",
        }),
      ],
    },
  };
}
