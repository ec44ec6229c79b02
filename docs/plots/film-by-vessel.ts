import { line, text } from "@observablehq/plot";
import { filmMass, filmThickness } from "gelwright/batch";
import type { Figure } from "./figure.js";

const density = 890;
const gels = [
  { name: "3 Pa", yieldStress: 3, dashes: "1 4" },
  { name: "8 Pa", yieldStress: 8, dashes: "7 4" },
  { name: "20 Pa", yieldStress: 20, dashes: "none" },
] as const;

/** The share of a batch that stays on the upright wall of a vessel as high as it is wide, by its volume in litres. */
function stays(litres: number, yieldStress: number) {
  const diameter = Math.cbrt((4 * litres) / (1000 * Math.PI));
  const film = filmMass({
    thickness: filmThickness({ yieldStress, density }),
    density,
    area: Math.PI * diameter * diameter,
  });
  return { litres, percent: (100 * film) / (density * (litres / 1000)) };
}

/** What stays on the wall, from the beaker to the kettle. */
export function filmByVessel(): Figure {
  const volumes = Array.from({ length: 36 }, (_, step) => 10 ** (step / 10 - 0.5));
  const curves = gels.map((gel) => ({ ...gel, curve: volumes.map((litres) => stays(litres, gel.yieldStress)) }));
  const said = gels.map(
    ({ name, yieldStress }) =>
      `${name}: ${stays(0.5, yieldStress).percent.toFixed(1)} % in half a litre, ${stays(500, yieldStress).percent.toFixed(1)} % in 500 L`,
  );
  return {
    name: "film-by-vessel",
    title: "The share of a batch that stays on the wall of a vessel as high as it is wide, at three yield stresses",
    description: `${said.join("; ")}. A percentage found in a beaker is not that of a kettle.`,
    options: {
      marginRight: 70,
      x: { type: "log", label: "batch [L] →", tickFormat: String, ticks: [0.3, 1, 3, 10, 30, 100, 300, 1000] },
      y: {
        type: "log",
        label: "↑ on the wall [%]",
        domain: [0.08, 15],
        tickFormat: String,
        ticks: [0.1, 0.3, 1, 3, 10],
      },
      marks: [
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "litres", y: "percent", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        text(
          curves.flatMap(({ name, curve }) => (curve.at(-1) ? [{ name, ...curve.at(-1) }] : [])),
          { x: "litres", y: "percent", text: "name", dx: 8, textAnchor: "start", fontWeight: "bold" },
        ),
      ],
    },
  };
}
