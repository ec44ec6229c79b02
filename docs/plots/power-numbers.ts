import { line, text } from "@observablehq/plot";
import { type Impeller, type PowerCurve, powerCurveOf, powerNumber, type StirredVessel } from "gelwright/mixing";
import type { Figure } from "./figure.js";

const bare = { diameter: 0.6, level: 0.6 };
const baffled = { ...bare, baffles: 4, baffleWidth: 0.06 };

/** The curve of an impeller, from Re 1 to a million. */
function curve(impeller: Impeller, vessel?: StirredVessel) {
  const power: PowerCurve = powerCurveOf(vessel ? { impeller, vessel } : { impeller });
  return Array.from({ length: 61 }, (_, step) => {
    const reynolds = 10 ** (step / 10);
    return { reynolds, powerNumber: powerNumber({ power, reynolds }) };
  });
}

/** What impellers draw over the whole range of Reynolds number. */
export function powerNumbers(): Figure {
  const pitched: Impeller = { kind: "pitched-blade turbine", diameter: 0.2 };
  const curves = [
    { words: "pitched blades, with baffles", dashes: "none", points: curve(pitched, baffled) },
    { words: "the same, without", dashes: "7 4", points: curve(pitched, bare) },
    { words: "propeller, sum of both ends", dashes: "2 3", points: curve({ kind: "propeller", diameter: 0.2 }) },
    {
      words: "anchor, as a wide paddle",
      dashes: "1 6",
      points: curve({ kind: "anchor", diameter: 0.54, armHeight: 0.4 }, bare),
    },
  ];
  const at = (reynolds: number) =>
    curves
      .map(({ words, points }) => {
        const near = points.find((point) => Math.abs(point.reynolds / reynolds - 1) < 1e-9);
        return `${words} ${near?.powerNumber.toPrecision(2)}`;
      })
      .join("; ");
  const ends = curves.map(({ words, points }) => ({ words, ...points.at(-1) }));
  return {
    name: "power-numbers",
    title: "The power number of four impellers over the whole range of Reynolds number",
    description: `Where the flow creeps all fall alike, in inverse proportion. Power numbers at Re 1: ${at(1)}. At Re 100,000: ${at(1e5)}.`,
    options: {
      marginRight: 190,
      x: {
        type: "log",
        label: "Reynolds number →",
        ticks: [1, 10, 100, 1000, 1e4, 1e5, 1e6],
        tickFormat: (reynolds: number) => reynolds.toLocaleString("en"),
      },
      y: { type: "log", label: "↑ power number", tickFormat: String, ticks: [0.1, 0.3, 1, 3, 10, 30, 100, 300] },
      marks: [
        ...curves.map(({ points, dashes }) =>
          line(points, { x: "reynolds", y: "powerNumber", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        text(ends, { x: "reynolds", y: "powerNumber", text: "words", dx: 8, textAnchor: "start" }),
      ],
    },
  };
}
