import { line, ruleY, text } from "@observablehq/plot";
import { heatCapacityFunction } from "gelwright/heat";
import { choiOkosFat, type HeatLossLaw } from "gelwright/laws";
import { coolingSegment, type SegmentEnd } from "gelwright/transient";
import type { Figure } from "./figure.js";
import { spoken, timedPoints, timeScale, timesBetween, timeTicks } from "./time-axis.js";

const scales = [
  { mass: 0.25, name: "250 g", dashes: "1 4" },
  { mass: 40, name: "40 kg", dashes: "7 4" },
  { mass: 400, name: "400 kg", dashes: "none" },
] as const;
const temperatures = { start: 85, addition: 65, setting: 58 } as const;

/** An open vessel of bare steel, filled as high as it is wide, on a base that insulates. */
function lossOf(mass: number): HeatLossLaw {
  const diameter = Math.cbrt((4 * mass) / 880 / Math.PI);
  const side = Math.PI * diameter ** 2;
  const surface = side / 4;
  return {
    law: "sum",
    parts: [
      { law: "natural convection", surface: "vertical", area: side, height: diameter, diameter },
      { law: "radiation", area: side, emissivity: 0.3 },
      { law: "natural convection", surface: "facing up", area: surface, perimeter: Math.PI * diameter },
      { law: "radiation", area: surface, emissivity: 0.9 },
    ],
  };
}

/** Down to where it sets: from there on it is no longer stirred, and the law is another. */
function cooled(mass: number, until: SegmentEnd) {
  const { temperatureEnd, duration } = coolingSegment({
    ...until,
    temperatureStart: temperatures.start,
    temperatureAmbient: 20,
    heatCapacity: heatCapacityFunction({ parts: [{ mass, specificHeat: choiOkosFat.specificHeat }] }),
    heatLoss: lossOf(mass),
  });
  return { mass, temperature: temperatureEnd, time: duration };
}

/** The same melt at three scales, stirred until it sets. */
export function coolingAtScales(): Figure {
  const marks = scales.flatMap(({ mass }) =>
    [temperatures.addition, temperatures.setting].map((temperatureEnd) => cooled(mass, { temperatureEnd })),
  );
  const curves = scales.map((scale) => {
    const last = cooled(scale.mass, { temperatureEnd: temperatures.setting }).time;
    const curve = timesBetween(60, last).map((duration) => cooled(scale.mass, { duration }));
    return { ...scale, curve, ...cooled(scale.mass, { temperatureEnd: 79 }) };
  });
  const said = scales.map(({ mass, name }) => {
    const [addition = 0, setting = 0] = marks.filter((mark) => mark.mass === mass).map(({ time }) => time);
    return `${name}: ${spoken(addition)} to the addition, ${spoken(setting - addition)} more until it sets`;
  });
  return {
    name: "cooling-at-scales",
    title: "An oil melt cools from 85 °C in a room of 20 °C, at three scales",
    description: `Vessels of one shape, open, stirred, with losses by natural convection and radiation. ${said.join("; ")}.`,
    options: {
      x: timeScale,
      y: { label: "↑ °C", domain: [55, 86], ticks: 6 },
      marks: [
        timeTicks,
        ruleY([temperatures.addition, temperatures.setting], { strokeOpacity: 0.4 }),
        text([temperatures.addition, temperatures.setting], {
          x: () => 62,
          y: (at: number) => at,
          text: (at: number) => (at === temperatures.addition ? "the addition goes in" : "it sets"),
          textAnchor: "start",
          dy: -8,
        }),
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "time", y: "temperature", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        timedPoints(marks.slice(0, -2), "left"),
        timedPoints(marks.slice(-2), "right"),
        text(curves, { x: "time", y: "temperature", text: "name", dx: 8, textAnchor: "start", fontWeight: "bold" }),
      ],
    },
  };
}
