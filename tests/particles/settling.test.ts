import fc from "fast-check";
import { densityFunction, viscosityFunction } from "gelwright/laws";
import { additionTemperature, hinderedFactor, settlingOverCooling, stokesVelocity } from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const readings = [90, 75, 60, 45, 30, 20].map((temperature, i) => ({ temperature, viscosity: 0.008 * 3.5 ** i }));
const viscosities = [
  melt,
  { law: "setting", melt, temperatureSetting: 55, steepness: 0.3 },
  { law: "readings", points: readings },
] as const;

const job = fc.record({
  diameter: between(2e-5, 2e-4),
  densityParticle: between(700, 3000).filter((density) => Math.abs(density - 890) > 50),
  densityFluid: fc.constant({ law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const),
  viscosity: fc.constantFrom(...viscosities),
  volumeFraction: between(0, 0.2),
  heatCapacity: between(1e3, 5e5),
  heatLoss: between(0.3, 30).map((conductance) => ({ law: "newton" as const, conductance })),
  temperatureAmbient: between(15, 21.9),
  temperatureStart: between(60, 89),
  beyond: fc.constant("extend" as const),
});
const end = between(22, 50);

test("odex, marching in time, finds the same way (1e-9; run at 1e-12 and at 1e-14 it differs from itself by up to 4e-13)", () => {
  fc.assert(
    fc.property(job, end, (of, temperatureEnd) => {
      const { distance, duration } = settlingOverCooling({ ...of, temperatureEnd });
      const viscosity = viscosityFunction(of.viscosity);
      const density = densityFunction(of.densityFluid);
      const tau = of.heatCapacity / of.heatLoss.conductance;
      const gap = of.temperatureStart - of.temperatureAmbient;
      const velocity = (at: number) =>
        (9.80665 * of.diameter ** 2 * (of.densityParticle - density(at)) * (1 - of.volumeFraction) ** 4.65) /
        (18 * viscosity(at));
      // In units of the whole way and of the whole time, from one breakpoint of the viscosity to the next.
      const breakpoints = of.viscosity.law === "readings" ? readings.map(({ temperature }) => temperature) : [55];
      const stops = breakpoints
        .map((at) => tau * Math.log(gap / (at - of.temperatureAmbient)))
        .filter((time) => time > 0 && time < duration)
        .sort((one, other) => one - other);
      let share = 0;
      [...stops, duration].forEach((time, i, all) => {
        const from = all[i - 1] ?? 0;
        const segment = (part: number) => of.temperatureAmbient + gap * Math.exp(-(from + part * (time - from)) / tau);
        [share = Number.NaN] = march(
          (part) => [(velocity(segment(part)) * (time - from)) / distance],
          [share],
          1,
          1e-12,
        );
      });
      expect(Math.abs(share - 1)).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});

test("at a constant viscosity the way is velocity times time", () => {
  fc.assert(
    fc.property(job, end, (of, temperatureEnd) => {
      const oil = {
        ...of,
        densityFluid: { law: "constant", density: 905 },
        viscosity: { law: "constant", viscosity: 0.4 },
      } as const;
      const settled = settlingOverCooling({ ...oil, temperatureEnd });
      const alone = stokesVelocity(
        without(
          { ...oil, densityFluid: 905, viscosity: 0.4 },
          "volumeFraction",
          "heatCapacity",
          "heatLoss",
          "temperatureAmbient",
          "temperatureStart",
        ),
      );
      const velocity =
        alone.velocity *
        hinderedFactor(
          without(
            of,
            "diameter",
            "densityParticle",
            "densityFluid",
            "viscosity",
            "heatCapacity",
            "heatLoss",
            "temperatureAmbient",
            "temperatureStart",
            "beyond",
          ),
        );
      expect(off(settled.distance, velocity * settled.duration)).toBeLessThan(1e-13);
      expect(off(settled.velocityStart, velocity)).toBeLessThan(1e-14);
      expect(off(settled.reynoldsStart, alone.reynolds)).toBeLessThan(1e-13);
    }),
  );
});

test("twice the size goes four times as far, twice the batch in the same vessel twice as far", () => {
  fc.assert(
    fc.property(job, end, (of, temperatureEnd) => {
      const { distance } = settlingOverCooling({ ...of, temperatureEnd });
      const coarse = settlingOverCooling({ ...of, diameter: 2 * of.diameter, temperatureEnd });
      const heavy = settlingOverCooling({ ...of, heatCapacity: 2 * of.heatCapacity, temperatureEnd });
      expect(off(coarse.distance, 4 * distance)).toBeLessThan(1e-13);
      expect(off(heavy.distance, 2 * distance)).toBeLessThan(1e-13);
    }),
  );
});

test("the way to a temperature and the way in its time are one", () => {
  fc.assert(
    fc.property(job, end, (of, temperatureEnd) => {
      const to = settlingOverCooling({ ...of, temperatureEnd });
      const during = settlingOverCooling({ ...of, duration: to.duration });
      expect(Math.abs(during.temperatureEnd - temperatureEnd)).toBeLessThan(1e-9);
      expect(off(during.distance, to.distance)).toBeLessThan(1e-9);
      expect(off(during.velocityEnd, to.velocityEnd)).toBeLessThan(1e-9);
    }),
  );
});

test("particles that go in at the temperature that was found settle as far as was allowed", () => {
  fc.assert(
    fc.property(job, end, between(0.001, 0.999), (of, temperatureEnd, share) => {
      const whole = settlingOverCooling({ ...of, temperatureEnd });
      const settlingAllowed = share * Math.abs(whole.distance);
      const found = additionTemperature({ ...of, temperatureEnd, settlingAllowed });
      const after = settlingOverCooling({ ...of, temperatureStart: found.temperature, temperatureEnd });
      expect(off(found.distance, settlingAllowed)).toBeLessThan(1e-9);
      expect(off(Math.abs(after.distance), settlingAllowed)).toBeLessThan(1e-9);
      expect(off(found.durationUntil + found.durationAfter, whole.duration)).toBeLessThan(1e-12);
    }),
    { numRuns: 60 },
  );
});

const scrub = {
  diameter: 300e-6,
  densityParticle: 1250,
  densityFluid: { law: "constant", density: 900 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
  heatCapacity: 90000,
  heatLoss: { law: "newton", conductance: 12 },
  temperatureAmbient: 20,
  temperatureStart: 85,
  temperatureEnd: 30,
} as const;

test("a finer particle may go in warmer, and one that hardly settles may go in off the heat", () => {
  const warmest = [500e-6, 300e-6, 100e-6, 30e-6].map(
    (diameter) => additionTemperature({ ...scrub, diameter, settlingAllowed: 0.005 }).temperature,
  );
  expect(warmest).toEqual([...warmest].sort((one, other) => one - other));
  expect(new Set(warmest).size).toBe(4);
  const dust = additionTemperature({ ...scrub, diameter: 1e-6, settlingAllowed: 0.005 });
  expect(dust).toMatchObject({ temperature: 85, durationUntil: 0 });
  expect(dust.distance).toBeLessThan(0.005);
});

test("beads that rise are held back like grains that sink", () => {
  const sinking = additionTemperature({ ...scrub, densityParticle: 1000, settlingAllowed: 0.005 });
  const rising = additionTemperature({ ...scrub, densityParticle: 800, settlingAllowed: 0.005 });
  expect(Math.abs(rising.temperature - sinking.temperature)).toBeLessThan(1e-9);
  expect(rising.distance).toBeGreaterThan(0);
});

test("a melt that is too thin for Stokes' law at the start does not spoil an addition that waits", () => {
  expect(() => settlingOverCooling({ ...scrub, diameter: 600e-6 })).toThrow("less than 0.1 for Stokes' law");
  expect(additionTemperature({ ...scrub, diameter: 600e-6, settlingAllowed: 0.005 }).temperature).toBeLessThan(62);
});

test("readings need only reach from the addition to the set gel", () => {
  const points = [
    { temperature: 58, viscosity: 0.5 },
    { temperature: 45, viscosity: 40 },
    { temperature: 30, viscosity: 4000 },
  ];
  const read = { ...scrub, viscosity: { law: "readings", points } } as const;
  expect(additionTemperature({ ...read, settlingAllowed: 0.005 }).temperature).toBeLessThan(58);
  expect(() => additionTemperature({ ...read, settlingAllowed: 10 })).toThrow("30 to 58 °C as read");
});

test.each([
  ["a gel that sets above the start", { temperatureEnd: 90 }, "less than temperatureStart, 85 °C"],
  ["a room in which the gel never sets", { temperatureAmbient: 31 }, "a temperature short of the limit, 31 °C"],
  ["no settling at all", { settlingAllowed: 0 }, "settlingAllowed"],
  ["a vessel that loses nothing", { heatLoss: { law: "newton", conductance: 0 } }, "a flow that cools to the end"],
])("%s is refused", (_name, change, message) => {
  expect(() => additionTemperature({ ...scrub, settlingAllowed: 0.005, ...change } as never)).toThrow(message);
});
