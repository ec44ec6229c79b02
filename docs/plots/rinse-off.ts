import { areaY, line, ruleX, text } from "@observablehq/plot";
import { gelWithWater, transmittance, waterUntilFlowing, waterUntilMilky } from "gelwright/gel";
import type { Figure } from "./figure.js";

/** 100 g of an invented gel whose outer phase is matched to its oil. */
const phases = { massOil: 0.082, densityOil: 915, massGlycerin: 0.0153, massWater: 0.0027, temperature: 20 };
const droplets = { diameter: 4e-6, interfacialTension: 0.005 };
const oil = { refractiveIndex: 1.4509, temperature: 20 };
const gel = { ...phases, ...droplets, oil };
const depth = 200e-6;
const stress = 5;

function withWater(water: number) {
  const { turbidity, yieldStress = { min: 0, max: 0 } } = gelWithWater({ ...gel, massWaterAdded: water / 1000 });
  const light = (per: number) => 100 * transmittance({ turbidity: per, depth });
  return {
    water,
    lightMin: light(turbidity.max),
    lightMax: light(turbidity.min),
    strengthMin: yieldStress.min,
    strengthMax: yieldStress.max,
  };
}

/** How much light a film lets through and how strong it is, by the water that went into it. */
export function rinseOff(): Figure {
  const milky = waterUntilMilky({ ...phases, diameter: droplets.diameter, oil, depth, transmittanceMin: 0.5 });
  const flowing = waterUntilFlowing({ ...phases, ...droplets, stress });
  const grams = (mass: number | null) => 1000 * (mass ?? 1);
  const ends = [flowing.min, flowing.max].map(grams).flatMap((end) => [end * (1 - 1e-9), end * (1 + 1e-9)]);
  const waters = [...Array.from({ length: 116 }, (_, step) => 10 ** (step / 33 - 1.5)), ...ends];
  const rows = waters.sort((one, other) => one - other).map(withWater);
  const whole = rows[0]?.strengthMax ?? 1;
  const shares = rows.map((row) => ({
    ...row,
    strengthMin: (100 * row.strengthMin) / whole,
    strengthMax: (100 * row.strengthMax) / whole,
  }));
  const written = (mass: number | null) => `${grams(mass).toPrecision(2)} g`;
  const labels = [
    { water: 0.045, y: 60, words: "light through 0.2 mm" },
    { water: 1.15, y: 94, words: "yield stress" },
    { water: 4.6, y: 22, words: "yield stress: not known" },
  ];
  return {
    name: "rinse-off",
    title: "100 g of a clear gel of the cold route as water goes into it: light through a film, and strength",
    description: `Half of the light passes a film of 0.2 mm up to somewhere between ${written(milky.min)} and ${written(milky.max)} of water: the two pictures of the droplets and the uncertainty of the index make the band. The yield stress, ${whole.toFixed(0)} Pa without water, is known up to ${written(flowing.min)}; from there to ${written(flowing.max)} it lies somewhere between nothing and what it was there, and beyond that there is none. So the gel is milk long before it flows off.`,
    options: {
      x: {
        type: "log",
        label: "water on 100 g of gel [g] →",
        tickFormat: String,
        ticks: [0.03, 0.1, 0.3, 1, 3, 10, 30, 100],
      },
      y: { label: "↑ light, and yield stress of that without water [%]", domain: [0, 105] },
      marks: [
        areaY(shares, { x: "water", y1: "lightMin", y2: "lightMax", fillOpacity: 0.15 }),
        line(shares, { x: "water", y: "lightMin", strokeWidth: 2 }),
        line(shares, { x: "water", y: "lightMax", strokeWidth: 2 }),
        areaY(shares, { x: "water", y1: "strengthMin", y2: "strengthMax", fillOpacity: 0.15 }),
        line(shares, { x: "water", y: "strengthMax", strokeWidth: 2, strokeDasharray: "7 4" }),
        line(shares, { x: "water", y: "strengthMin", strokeWidth: 2, strokeDasharray: "7 4" }),
        ruleX([grams(flowing.min), grams(flowing.max)], { strokeDasharray: "1 4" }),
        text(labels, { x: "water", y: "y", text: "words", textAnchor: "start" }),
      ],
    },
  };
}
