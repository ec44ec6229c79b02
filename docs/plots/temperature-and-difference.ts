import { dot, line, text } from "@observablehq/plot";
import { convert, type Unit } from "gelwright/units";
import type { Figure } from "./figure.js";

const figures = [0, 20, 40, 60, 80, 100];

/** A temperature and a temperature difference of the same figure, in Fahrenheit. */
export function temperatureAndDifference(): Figure {
  const kinds = [
    { name: "temperature, °C to °F", from: "°C", to: "°F", dashes: "none", dy: -12 },
    { name: "difference, K to Δ°F", from: "K", to: "Δ°F", dashes: "7 4", dy: 18 },
  ] as const;
  const curves = kinds.map((kind) => ({
    ...kind,
    points: figures.map((value) => ({ value, other: convert(value, kind.from as Unit, kind.to as never) })),
  }));
  const of = (i: number, value: number) => Math.round(curves[i]?.points.find((one) => one.value === value)?.other ?? 0);
  return {
    name: "temperature-and-difference",
    title: "The same figure as a temperature and as a temperature difference, in Fahrenheit",
    description: `A melt at 80 °C is at ${of(0, 80)} °F; one that is 80 K warmer than the room is ${of(1, 80)} Δ°F warmer. A temperature lies ${of(0, 0)} °F higher than a difference of the same figure.`,
    options: {
      marginRight: 215,
      x: { label: "°C, or K of difference →" },
      y: { label: "↑ °F, or Δ°F of difference" },
      marks: curves.flatMap(({ name, points, dashes, dy }) => [
        line(points, { x: "value", y: "other", strokeDasharray: dashes, strokeWidth: 2 }),
        dot(points, { x: "value", y: "other", r: 4, fill: "currentColor" }),
        text(points.slice(1, -1), {
          x: "value",
          y: "other",
          text: ({ other }: { other: number }) => `${Math.round(other)}`,
          dy,
        }),
        text(points.slice(-1), {
          x: "value",
          y: "other",
          text: ({ other }: { other: number }) => `${Math.round(other)}: ${name}`,
          dx: 10,
          textAnchor: "start",
        }),
      ]),
    },
  };
}
