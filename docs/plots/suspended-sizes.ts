import { areaY, line, text } from "@observablehq/plot";
import { largestSuspendedDiameter } from "gelwright/particles";
import type { Figure } from "./figure.js";

const particles = [
  { name: "scrub, 950 kg/m³", density: 950, dashes: "7 4" },
  { name: "glitter, 1400 kg/m³", density: 1400, dashes: "none" },
  { name: "air", density: 1.2, dashes: "1 4" },
] as const;

/** The largest sphere that a set gel of 910 kg/m³ holds [mm]. */
function suspendedIn(yieldStress: number, densityParticle: number) {
  const { min, value, max } = largestSuspendedDiameter({ yieldStress, densityParticle, densityFluid: 910 });
  return {
    yieldStress,
    min: 1000 * min,
    value: 1000 * value,
    max: 1000 * max,
    middle: 1000 * Math.sqrt(min * value),
  };
}

/** Which size is held by which yield stress, and where that is not known. */
export function suspendedSizes(): Figure {
  const stresses = Array.from({ length: 31 }, (_, step) => 10 ** (step / 10 - 1));
  const curves = particles.map((particle) => ({
    ...particle,
    curve: stresses.map((stress) => suspendedIn(stress, particle.density)),
  }));
  const glitter = curves.find(({ density }) => density === 1400)?.curve ?? [];
  const at1 = particles.map(({ name, density }) => `${name}: ${suspendedIn(1, density).min.toPrecision(2)} mm`);
  const ends = [
    ...curves.map(({ name, curve }) => ({ words: name, yieldStress: 100, size: curve.at(-1)?.min })),
    { words: "glitter, as computed", yieldStress: 100, size: glitter.at(-1)?.value },
  ];
  return {
    name: "held-sizes",
    title: "The largest sphere that a set gel of 910 kg/m³ holds, by its yield stress",
    description: `Held for certain at a yield stress of 1 Pa: ${at1.join("; ")}; the size grows in proportion to the stress. For glitter the band goes up to five times that size: there published criteria differ, and above it nothing is held.`,
    options: {
      marginRight: 150,
      x: {
        type: "log",
        label: "yield stress at rest [Pa] →",
        tickFormat: String,
        ticks: [0.1, 0.3, 1, 3, 10, 30, 100],
      },
      y: { type: "log", label: "↑ diameter [mm]", tickFormat: String, ticks: [0.1, 1, 10, 100, 1000] },
      marks: [
        areaY(glitter, { x: "yieldStress", y1: "min", y2: "max", fillOpacity: 0.15 }),
        line(glitter, { x: "yieldStress", y: "value", strokeOpacity: 0.6 }),
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "yieldStress", y: "min", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        text(ends, { x: "yieldStress", y: "size", text: "words", dx: 8, textAnchor: "start" }),
        text([glitter[15]], { x: "yieldStress", y: "middle", text: () => "glitter: not known", rotate: -27 }),
      ],
    },
  };
}
