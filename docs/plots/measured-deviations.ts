import { dot, ruleX, text } from "@observablehq/plot";
import { measuredCases } from "../../tests/measured/cases.js";
import { inUncertainties } from "../../tests/measured/measured.js";
import type { Figure } from "./figure.js";

/** Points further off stand at the edge. */
const limit = 6;

const short: Readonly<Record<string, string>> = {
  "oil-density": "density of oils, Choi and Okos",
  "oil-viscosity": "viscosity of oils, Walther",
  "glycerin-water-density": "density, glycerin and water",
  "glycerin-water-index": "refractive index, glycerin and water",
  "glycerin-water-activity": "water activity, glycerin and water",
  "blend-squalane": "blends with squalane",
  "blend-hexadecane": "blends with hexadecane",
  "iodine-value": "iodine value from a profile",
  "cooling-mug": "a mug of water cools",
  "sphere-drag": "drag of spheres",
  "sphere-settling": "a sphere settles",
};

/** How far our figures lie from what others measured, in the uncertainties that are stated for them. */
export function measuredDeviations(): Figure {
  const points = measuredCases().flatMap((one) =>
    one.points.map((point) => ({
      name: short[one.id] ?? one.id,
      off: Math.max(-limit, Math.min(limit, inUncertainties(point, one))),
    })),
  );
  const names = [...new Set(points.map(({ name }) => name))];
  const within = (name: string) => {
    const some = points.filter((point) => point.name === name);
    return `${some.filter(({ off }) => Math.abs(off) <= 2).length} of ${some.length}`;
  };
  return {
    name: "measured-deviations",
    title: "How far our figures lie from measurements of others, in stated uncertainties",
    description: `Within two standard uncertainties lie: ${names.map((name) => `${name} ${within(name)}`).join("; ")}.`,
    options: {
      marginLeft: 230,
      marginRight: 70,
      x: { domain: [-limit, limit], label: "ours less measured, in standard uncertainties →", ticks: 7 },
      y: { type: "point", domain: names, label: null },
      marks: [
        ruleX([-2, 2], { strokeDasharray: "4 3" }),
        ruleX([0]),
        dot(points, { x: "off", y: "name", r: 3, stroke: "currentColor" }),
        text(
          names.map((name) => ({ name, words: within(name) })),
          { x: limit, y: "name", text: "words", dx: 10, textAnchor: "start" },
        ),
      ],
    },
  };
}
