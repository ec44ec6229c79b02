import { line, ruleY, text } from "@observablehq/plot";
import { temperatureAfterCooling } from "gelwright/heat";
import { additionWindow } from "gelwright/particles";
import type { Figure } from "./figure.js";
import { spoken, timedPoints, timeScale, timesBetween, timeTicks } from "./time-axis.js";

/** The gel of the guide to particles, with its vessels. */
const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const gel = {
  diameter: 100e-6,
  densityParticle: 1400,
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
  temperatureEnd: 30,
  settlingAllowed: 0.005,
  stirrableViscosityMax: 10,
} as const;
const cooling = { temperatureAmbient: 20, temperatureStart: 85 } as const;
const vessels = [
  { name: "450 g", heatCapacity: 900, conductance: 0.6, dashes: "1 4" },
  { name: "45 kg", heatCapacity: 90_000, conductance: 12, dashes: "7 4" },
  { name: "450 kg", heatCapacity: 900_000, conductance: 55, dashes: "none" },
] as const;

/** When glitter may go in while a gel cools, at three scales. */
export function windowForAdding(): Figure {
  const all = vessels.map(({ name, heatCapacity, conductance, dashes }) => {
    const heatLoss = { law: "newton", conductance } as const;
    const window = additionWindow({ ...gel, ...cooling, heatCapacity, heatLoss });
    const at = (time: number) => ({
      time,
      temperature: temperatureAfterCooling({ ...cooling, heatCapacity, conductance, duration: time }),
    });
    const between = (first: number, last: number) => timesBetween(first, last).map(at);
    const { durationUntilOpen, durationUntilClosed } = window;
    return {
      name,
      dashes,
      window,
      before: between(60, durationUntilOpen),
      open: between(durationUntilOpen, durationUntilClosed),
      after: between(durationUntilClosed, 1.4 * durationUntilClosed),
      ends: [at(durationUntilOpen), at(durationUntilClosed)],
      ...at(0.35 * durationUntilOpen),
    };
  });
  const ends = all.flatMap((vessel) => vessel.ends);
  const coldest = all[0]?.window.temperatureMin ?? Number.NaN;
  const said = all.map(
    ({ name, window }) =>
      `${name}: from ${window.temperatureMax.toFixed(1)} °C after ${spoken(window.durationUntilOpen)} to ${window.temperatureMin.toFixed(1)} °C after ${spoken(window.durationUntilClosed)}`,
  );
  return {
    name: "window-for-adding",
    title: "When glitter of 0.1 mm may go into a gel that cools, at three scales",
    description: `Earlier it would sink by more than 5 mm before the gel sets, later the gel is too thick to stir. ${said.join("; ")}.`,
    options: {
      x: timeScale,
      y: { label: "↑ °C", domain: [35, 87], ticks: 6 },
      marks: [
        timeTicks,
        ruleY([coldest], { strokeOpacity: 0.4 }),
        text([coldest], {
          x: () => 62,
          y: (at: number) => at,
          text: () => "too thick to stir below",
          textAnchor: "start",
          dy: 18,
        }),
        ...all.flatMap(({ before, open, after, dashes }) => [
          ...[before, after].map((part) => line(part, { x: "time", y: "temperature", strokeDasharray: dashes })),
          line(open, { x: "time", y: "temperature", strokeWidth: 8, strokeOpacity: 0.35, strokeLinecap: "butt" }),
          line(open, { x: "time", y: "temperature", strokeWidth: 2 }),
        ]),
        timedPoints(ends.slice(0, -2), "left"),
        timedPoints(ends.slice(-2), "right"),
        text(all, {
          x: "time",
          y: "temperature",
          text: "name",
          dx: 8,
          dy: -8,
          textAnchor: "start",
          fontWeight: "bold",
        }),
      ],
    },
  };
}
