import fc from "fast-check";
import {
  airProperties,
  type HeatLossLaw,
  heatLossAt,
  heatLossFunction,
  type LayersLoss,
  nusseltHorizontalPlate,
  nusseltVerticalCylinder,
  nusseltVerticalPlate,
  outerTemperature,
  rayleighNumber,
  type SurfaceLoss,
} from "gelwright/laws";
import { coolingSegment } from "gelwright/transient";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const area = between(0.01, 5);
const air = { conductivity: 0.0272, kinematicViscosity: 1.75e-5, prandtl: 0.705 };

const surface: fc.Arbitrary<SurfaceLoss> = fc.oneof(
  between(0.1, 50).map((conductance) => ({ law: "newton" as const, conductance })),
  fc.record({ area, emissivity: between(0.05, 1) }).map((of) => ({ law: "radiation" as const, ...of })),
  fc
    .record({ area, height: between(0.05, 2), diameter: between(0.3, 2) })
    .map((of) => ({ law: "natural convection" as const, surface: "vertical" as const, ...of })),
  fc
    .record({
      area,
      perimeter: between(0.5, 6),
      surface: fc.constantFrom("facing up" as const, "facing down" as const),
    })
    .map((of) => ({ law: "natural convection" as const, beyond: "extend" as const, ...of })),
);
const layers: fc.Arbitrary<LayersLoss> = fc
  .record({
    area,
    layers: fc.array(fc.record({ thickness: between(0.001, 0.1), conductivity: between(0.03, 50) }), {
      minLength: 1,
      maxLength: 3,
    }),
    outside: fc.array(surface, { minLength: 1, maxLength: 2 }),
  })
  .map((of) => ({ law: "layers" as const, ...of }));
const anyLoss: fc.Arbitrary<HeatLossLaw> = fc.oneof(
  surface,
  layers,
  fc.array(fc.oneof(surface, layers), { minLength: 1, maxLength: 3 }).map((parts) => ({ law: "sum" as const, parts })),
);

test("every law loses nothing at the room's temperature, more the hotter it is, and gains where the room is warmer", () => {
  fc.assert(
    fc.property(anyLoss, between(0.5, 60), between(0.5, 30), (law, excess, more) => {
      const loss = heatLossFunction(law, 25);
      expect(loss(25)).toBe(0);
      expect(loss(25 + excess)).toBeGreaterThan(0);
      expect(loss(25 + excess + more)).toBeGreaterThan(loss(25 + excess));
      expect(loss(25 - excess / 2)).toBeLessThan(0);
    }),
    { numRuns: 100 },
  );
});

test("what arrives through the layers is what leaves from their surface", () => {
  fc.assert(
    fc.property(layers, between(25, 110), (law, temperature) => {
      const temperatureAmbient = 20;
      const outer = outerTemperature({ law, temperature, temperatureAmbient });
      expect(outer).toBeGreaterThan(temperatureAmbient);
      expect(outer).toBeLessThan(temperature);
      const resistance = law.layers.reduce((sum, layer) => sum + layer.thickness / layer.conductivity, 0) / law.area;
      const loss = heatLossAt({ law, temperature, temperatureAmbient });
      const outside = heatLossAt({ law: { law: "sum", parts: law.outside }, temperature: outer, temperatureAmbient });
      // The surface's temperature is rounded to 1e-14 of itself: what that comes to beside the two differences.
      expect(off(outside, loss)).toBeLessThan(1e-12 * (1 + 100 / (outer - temperatureAmbient)));
      expect(Math.abs(temperature - outer - loss * resistance)).toBeLessThan(1e-12 * temperature);
    }),
  );
});

test("layers before a surface that loses by Newton's law are resistances in series", () => {
  const law = {
    law: "layers",
    area: 2,
    heatTransferCoefficientInside: 50,
    layers: [
      { thickness: 0.004, conductivity: 16 },
      { thickness: 0.04, conductivity: 0.05 },
    ],
    outside: [{ law: "newton", conductance: 20 }],
  } as const;
  const resistance = 1 / (50 * 2) + 0.004 / (16 * 2) + 0.04 / (0.05 * 2) + 1 / 20;
  expect(off(heatLossAt({ law, temperature: 90, temperatureAmbient: 20 }), 70 / resistance)).toBeLessThan(1e-14);
});

test("a thin wall of metal changes next to nothing, and insulation loses less than none", () => {
  const outside = [
    { law: "natural convection", surface: "vertical", area: 1.2, height: 0.6 },
    { law: "radiation", area: 1.2, emissivity: 0.9 },
  ] as const;
  const at = { temperature: 85, temperatureAmbient: 20 };
  const bare = heatLossAt({ law: { law: "sum", parts: outside }, ...at });
  const loss = (thickness: number, conductivity: number) =>
    heatLossAt({ law: { law: "layers", area: 1.2, layers: [{ thickness, conductivity }], outside }, ...at });
  expect(off(loss(0.001, 400), bare)).toBeLessThan(1e-4);
  expect(loss(0.02, 0.04)).toBeLessThan(0.3 * bare);
  expect(loss(0.05, 0.04)).toBeLessThan(loss(0.02, 0.04));
});

test("a segment that cools by convection and radiation is what an ODE solver makes of it", () => {
  fc.assert(
    fc.property(anyLoss, between(1e4, 4e5), (heatLoss, heatCapacity) => {
      const vessel = { temperatureStart: 85, temperatureAmbient: 20, heatCapacity, heatLoss };
      const { duration } = coolingSegment({ ...vessel, temperatureEnd: 40 });
      const loss = heatLossFunction(heatLoss, 20);
      const [end] = march((_, [at]) => [(-duration * loss(at as number)) / heatCapacity], [85], 1, 1e-10);
      expect(Math.abs((end as number) - 40)).toBeLessThan(1e-6);
    }),
    { numRuns: 20 },
  );
});

test("natural convection that goes with a power of the difference has its textbook cooling time", () => {
  // h = C ΔT^n: (ΔT/ΔT₀)^(-n) = 1 + n h₀ A t/(m c), here with Nu = 0.27 Ra^(1/4) and the air's temperature all but fixed.
  const law = { law: "natural convection", surface: "facing down", area: 0.5, perimeter: 1, air } as const;
  const film = (rise: number) =>
    0.27 * rayleighNumber({ temperatureSurface: 20 + rise, temperatureAmbient: 20, length: 0.5, air }) ** 0.25;
  const heatLoss = (rise: number) => heatLossAt({ law, temperature: 20 + rise, temperatureAmbient: 20 });
  for (const rise of [2, 10, 40])
    expect(off(heatLoss(rise), (film(rise) * air.conductivity * 0.5 * rise) / 0.5)).toBeLessThan(1e-14);
  const { duration } = coolingSegment({
    temperatureStart: 24,
    temperatureEnd: 22,
    temperatureAmbient: 20,
    heatCapacity: 1e4,
    heatLoss: law,
  });
  const closed = (1e4 / (0.25 * (heatLoss(4) / 4))) * ((4 / 2) ** 0.25 - 1);
  expect(off(duration, closed)).toBeLessThan(1e-3);
});

test("a cold surface that faces up loses as a warm one that faces down", () => {
  const side = (surface: "facing up" | "facing down") =>
    ({ law: "natural convection", surface, area: 0.5, perimeter: 1, air, beyond: "extend" }) as const;
  const mirrored = heatLossAt({ law: side("facing up"), temperature: 10, temperatureAmbient: 30 });
  const film = { temperature: 30, temperatureAmbient: 10 };
  expect(off(-mirrored, heatLossAt({ law: side("facing down"), ...film }))).toBeLessThan(1e-14);
  expect(-mirrored).toBeLessThan(heatLossAt({ law: side("facing up"), ...film }));
});

test("a wide cylinder is a wall, and no cylinder loses less than one", () => {
  fc.assert(
    fc.property(between(1e4, 1e12), between(0.01, 100), between(0.05, 5), (rayleigh, prandtl, slenderness) => {
      const wall = nusseltVerticalPlate({ rayleigh, prandtl });
      const cylinder = (height: number) => nusseltVerticalCylinder({ rayleigh, prandtl, height, diameter: 1 });
      expect(cylinder(slenderness)).toBeGreaterThan(wall);
      expect(off(cylinder(1e-9), wall)).toBeLessThan(1e-5);
    }),
  );
});

test("a horizontal surface has no jump between its branches", () => {
  const meets = 3.6 ** 12;
  const nusselt = (rayleigh: number) => nusseltHorizontalPlate({ rayleigh, facing: "up" });
  expect(0.15 / 0.54).toBeCloseTo(1 / 3.6, 12);
  expect(off(nusselt(meets * (1 + 1e-9)), nusselt(meets * (1 - 1e-9)))).toBeLessThan(1e-8);
  expect(off(nusselt(1e5), 0.54 * 1e5 ** 0.25)).toBeLessThan(1e-15);
  expect(off(nusselt(1e9), 150)).toBeLessThan(1e-14);
});

test("a lid hardly warmer than the room loses more than its thin film would, without a jump where that takes over", () => {
  const nusselt = (rayleigh: number) => nusseltHorizontalPlate({ rayleigh, facing: "up" });
  // Near Ra 1 a plate in air loses about 0.96 Ra^(1/6), as measured by mass transfer: from memory.
  for (const rayleigh of [1, 10, 100]) expect(off(nusselt(rayleigh), 0.96 * rayleigh ** (1 / 6))).toBeLessThan(0.07);
  let last = nusselt(1);
  for (let rayleigh = 1; rayleigh < 1e5; rayleigh *= 1.01) {
    const next = nusselt(rayleigh);
    expect(next).toBeGreaterThanOrEqual(last);
    expect(next / last).toBeLessThan(1.004);
    last = next;
  }
});

const refusal = (path: string) =>
  expect.objectContaining({ code: "range", faults: [expect.objectContaining({ path })] });

test("correlations refuse outside their range, and go on where they are told to", () => {
  expect(() => nusseltVerticalPlate({ rayleigh: 1.1e12, prandtl: 0.7 })).toThrow(refusal("rayleigh"));
  expect(() => nusseltHorizontalPlate({ rayleigh: 0.9, facing: "up" })).toThrow(refusal("rayleigh"));
  expect(() => nusseltHorizontalPlate({ rayleigh: 9e4, facing: "down" })).toThrow(refusal("rayleigh"));
  expect(() => nusseltVerticalCylinder({ rayleigh: 1e8, prandtl: 120, height: 1, diameter: 1 })).toThrow(
    refusal("prandtl"),
  );
  expect(nusseltHorizontalPlate({ rayleigh: 0.5, facing: "up", beyond: "extend" })).toBeGreaterThan(0);
  const lid = { law: "natural convection", surface: "facing up", area: 0.005, perimeter: 0.25 } as const;
  expect(() => heatLossAt({ law: lid, temperature: 20.0001, temperatureAmbient: 20 })).toThrow(refusal("rayleigh"));
  const extended = { ...lid, beyond: "extend" } as const;
  expect(heatLossAt({ law: extended, temperature: 30, temperatureAmbient: 20 })).toBeGreaterThan(0);
  expect(() => heatLossAt({ law: extended, temperature: 320, temperatureAmbient: 20 })).toThrow(
    refusal("temperature of the air"),
  );
});

test("thin air is more viscous for its weight, and no worse a conductor", () => {
  const sea = airProperties({ temperature: 40 });
  const mountain = airProperties({ temperature: 40, pressure: 101325 / 2 });
  expect(off(mountain.kinematicViscosity, 2 * sea.kinematicViscosity)).toBeLessThan(1e-15);
  expect(mountain.conductivity).toBe(sea.conductivity);
});
