import fc from "fast-check";
import { packCoolingCurve, packTemperature, temperatureAfterCooling } from "gelwright/heat";
import { hinderedFactor, settlingOverCooling, settlingOverCurve, stokesVelocity } from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const glitter = {
  diameter: 60e-6,
  densityParticle: 1400,
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 50, steepness: 0.4 },
  volumeFraction: 0.02,
} as const;
const jar = {
  pack: { shape: "cylinder", diameter: 0.07, height: 0.06 },
  conductivity: 0.17,
  density: 910,
  specificHeat: 2050,
  heatTransferCoefficient: 10,
  temperatureStart: 70,
  temperatureAmbient: 20,
} as const;

test("at a temperature that stays, it is Stokes' velocity times the time", () => {
  fc.assert(
    fc.property(between(51, 90), between(1, 1e5), (temperature, duration) => {
      const { distance, velocityStart, velocityEnd } = settlingOverCurve({
        ...glitter,
        times: [0, duration / 3, duration],
        temperatures: [temperature, temperature, temperature],
      });
      const { velocity } = stokesVelocity({
        diameter: 60e-6,
        densityParticle: 1400,
        densityFluid: 915 - 0.64 * (temperature - 20),
        viscosity: Math.exp(-9.5 + 900 / (temperature + 110)),
      });
      const expected = velocity * hinderedFactor({ volumeFraction: 0.02 }) * duration;
      expect(Math.abs(distance / expected - 1)).toBeLessThan(1e-12);
      expect(velocityStart).toBe(velocityEnd);
    }),
  );
});

test("along the points of an exponential it comes to what the cooling vessel gives, to 1e-6", () => {
  const vessel = { heatCapacity: 90000, temperatureAmbient: 20, temperatureStart: 70 };
  const times = Array.from({ length: 101 }, (_, k) => 60 * k);
  const temperatures = times.map((duration) => temperatureAfterCooling({ ...vessel, conductance: 12, duration }));
  const along = settlingOverCurve({ ...glitter, times, temperatures });
  const heatLoss = { law: "newton", conductance: 12 } as const;
  const over = settlingOverCooling({ ...glitter, ...vessel, heatLoss, duration: 6000 });
  expect(Math.abs(along.distance / over.distance - 1)).toBeLessThan(1e-6);
  expect(along.duration).toBe(6000);
  expect(along.reynoldsStart).toBeCloseTo(over.reynoldsStart, 12);
});

test("the ends of a straight line, over which the viscosity grows a thousandfold, give what its many points give", () => {
  const along = (points: number): number => {
    const times = Array.from({ length: points }, (_, k) => (7200 * k) / (points - 1));
    const temperatures = times.map((time) => 90 - (60 * time) / 7200);
    return settlingOverCurve({ ...glitter, times, temperatures }).distance;
  };
  expect(Math.abs(along(2) / along(1001) - 1)).toBeLessThan(1e-10);
});

test("in a hot-filled jar it agrees with an ODE solver that asks the pack for its temperature, to 1e-6", () => {
  const curve = packCoolingCurve({ ...jar, temperatureEnd: 35 });
  const { distance, duration, temperatureEnd } = settlingOverCurve({ ...glitter, ...curve });
  const hindered = hinderedFactor({ volumeFraction: 0.02 });
  const velocityAt = (time: number) => {
    const temperature = packTemperature({ ...jar, duration: time });
    const set = Math.exp(0.4 * Math.max(0, 50 - temperature));
    const viscosity = set * Math.exp(-9.5 + 900 / (temperature + 110));
    const densityFluid = 915 - 0.64 * (temperature - 20);
    return hindered * stokesVelocity({ diameter: 60e-6, densityParticle: 1400, densityFluid, viscosity }).velocity;
  };
  const [stepped = Number.NaN] = march((time) => [1000 * velocityAt(time)], [0], duration, 1e-9);
  expect(Math.abs((1000 * distance) / stepped - 1)).toBeLessThan(1e-6);
  expect(temperatureEnd).toBe(35);
});

test("the centre of a pack lets particles sink furthest, and a larger pack further still", () => {
  const way = (input: Parameters<typeof packCoolingCurve>[0]) =>
    settlingOverCurve({ ...glitter, ...packCoolingCurve(input) }).distance;
  const centre = way({ ...jar, temperatureEnd: 35 });
  expect(way({ ...jar, temperatureEnd: 35, where: { radial: 0.03, axial: 0.02 } })).toBeLessThan(centre);
  const pail = { ...jar, pack: { shape: "cylinder", diameter: 0.14, height: 0.12 } } as const;
  expect(way({ ...pail, temperatureEnd: 35 })).toBeGreaterThan(2 * centre);
});

test("two halves of a curve that meet at a point where it is level sink as far as the whole", () => {
  const times = [0, 1000, 2000, 3000, 4000];
  const temperatures = [70, 60, 60, 50, 40];
  const part = (from: number, to: number) =>
    settlingOverCurve({ ...glitter, times: times.slice(from, to), temperatures: temperatures.slice(from, to) })
      .distance;
  const { distances, distance } = settlingOverCurve({ ...glitter, times, temperatures });
  expect(distances).toHaveLength(5);
  expect(distances[0]).toBe(0);
  expect(distances[4]).toBe(distance);
  expect(distances[2]).toBeCloseTo(part(0, 3), 12);
  const level = part(1, 3);
  expect(level).toBeCloseTo(1000 * settlingOverCurve({ ...glitter, times, temperatures }).velocityStart * ratio(), 12);
  function ratio(): number {
    const at = (temperature: number) =>
      settlingOverCurve({ ...glitter, times: [0, 1], temperatures: [temperature, temperature] }).velocityStart;
    return at(60) / at(70);
  }
});

test("readings that end where the curve ends are enough", () => {
  const points = [
    { temperature: 70, viscosity: 0.02 },
    { temperature: 50, viscosity: 0.2 },
    { temperature: 35, viscosity: 40 },
  ];
  const viscosity = { law: "readings", points } as const;
  const curve = packCoolingCurve({ ...jar, temperatureEnd: 35 });
  expect(settlingOverCurve({ ...glitter, viscosity, ...curve }).distance).toBeGreaterThan(0);
  expect(() =>
    settlingOverCurve({ ...glitter, viscosity, ...packCoolingCurve({ ...jar, temperatureEnd: 34 }) }),
  ).toThrow(expect.objectContaining({ code: "range" }));
});

test("a curve that turns back, or whose lists do not match, is refused at its place", () => {
  const ask = (times: readonly number[], temperatures: readonly number[]) => () =>
    settlingOverCurve({ ...glitter, times, temperatures });
  expect(ask([0, 60, 120], [70, 71, 60])).toThrow("temperatures[1]: found 71, expected 70 °C or beyond");
  expect(ask([0, 60, 60], [70, 65, 60])).toThrow("times[2]: found 60, expected more than 60 s, the time before");
  expect(ask([0, 60], [70])).toThrow("temperatures");
  expect(ask([0, 60, 90], [70, 60])).toThrow("found 2 temperatures, expected one for each of 3 times");
});
