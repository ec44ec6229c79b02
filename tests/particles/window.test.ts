import fc from "fast-check";
import { densityFunction, viscosityAt, viscosityFunction } from "gelwright/laws";
import { additionWindow, settlingBySize, settlingOverCooling, terminalVelocity } from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const capacityAt = (temperature: number) => 80000 + 150 * temperature;

const glitter = {
  diameter: 100e-6,
  densityParticle: 1400,
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
  volumeFraction: 0.01,
  heatCapacity: capacityAt,
  heatLoss: { law: "newton", conductance: 12 },
  temperatureAmbient: 20,
  temperatureStart: 85,
  temperatureEnd: 30,
  settlingAllowed: 0.005,
  stirrableViscosityMax: 10,
} as const;

/** Temperature and way of the particles after a time, by odex, which marches from breakpoint to breakpoint. */
function marched(from: number, duration: number, of: typeof glitter): { temperature: number; distance: number } {
  const viscosity = viscosityFunction(of.viscosity);
  const density = densityFunction(of.densityFluid);
  const velocity = (at: number) =>
    ((9.80665 * of.diameter ** 2 * (of.densityParticle - density(at))) / (18 * viscosity(at))) *
    (1 - of.volumeFraction) ** 4.65;
  const cooling = (at: number) => (-of.heatLoss.conductance * (at - of.temperatureAmbient)) / capacityAt(at);
  // Whole duration as 1, and the way in units of what is allowed.
  const [temperature = Number.NaN, share = Number.NaN] = march(
    (_, [at = Number.NaN]) => [cooling(at) * duration, (velocity(at) * duration) / of.settlingAllowed],
    [from, 0],
    1,
    1e-13,
  );
  return { temperature, distance: share * of.settlingAllowed };
}

test("the window agrees with odex, marching temperature and way in time (1e-8)", () => {
  fc.assert(
    fc.property(between(4e-5, 1.6e-4), between(0.002, 0.02), between(10, 300), between(5, 40), (d, s, mu, k) => {
      const job = {
        ...glitter,
        diameter: d,
        settlingAllowed: s,
        stirrableViscosityMax: mu,
        heatLoss: { law: "newton", conductance: k },
      } as unknown as typeof glitter;
      const window = additionWindow(job);
      fc.pre(window.temperatureMax < 62);
      // Three stretches, so that no step crosses the breakpoint at the setting temperature.
      const untilSets = settlingOverCooling(
        without({ ...job, beyond: "extend", temperatureEnd: 62 }, "settlingAllowed", "stirrableViscosityMax"),
      ).duration;
      const hot = marched(85, untilSets, job);
      const open = marched(hot.temperature, window.durationUntilOpen - untilSets, job);
      const closed = marched(hot.temperature, window.durationUntilClosed - untilSets, job);
      expect(off(hot.temperature, 62)).toBeLessThan(1e-8);
      expect(off(open.temperature, window.temperatureMax)).toBeLessThan(1e-8);
      expect(off(closed.temperature, window.temperatureMin)).toBeLessThan(1e-8);
      expect(off(viscosityAt({ law: job.viscosity, temperature: closed.temperature }), mu)).toBeLessThan(1e-8);
      const whole = settlingOverCooling(
        without({ ...job, beyond: "extend" }, "settlingAllowed", "stirrableViscosityMax"),
      ).duration;
      const settled = marched(open.temperature, whole - window.durationUntilOpen, job);
      expect(off(settled.temperature, 30)).toBeLessThan(1e-8);
      expect(off(settled.distance, s)).toBeLessThan(1e-8);
      expect(window.isOpen).toBe(window.durationUntilOpen < window.durationUntilClosed);
    }),
    { numRuns: 40 },
  );
});

test("a finer particle opens the window sooner, a stronger stirrer closes it later, a plant opens it colder", () => {
  const fine = additionWindow({ ...glitter, diameter: 60e-6 });
  const plain = additionWindow(glitter);
  const strong = additionWindow({ ...glitter, stirrableViscosityMax: 50 });
  const plant = additionWindow({ ...glitter, heatCapacity: 9e6, heatLoss: { law: "newton", conductance: 200 } });
  expect(fine.durationUntilOpen).toBeLessThan(plain.durationUntilOpen);
  expect(strong.durationUntilClosed).toBeGreaterThan(plain.durationUntilClosed);
  expect(plant.temperatureMax).toBeLessThan(plain.temperatureMax);
  expect(plant.temperatureMin).toBe(plain.temperatureMin);
  expect(plant.durationUntilClosed).toBeGreaterThan(plain.durationUntilClosed);
});

test("coarse grains find the window closed, and so does a stirrer that is too weak from the start", () => {
  expect(additionWindow({ ...glitter, diameter: 400e-6, stirrableViscosityMax: 1 }).isOpen).toBe(false);
  const weak = additionWindow({ ...glitter, stirrableViscosityMax: 1e-3 });
  expect(weak).toMatchObject({ isOpen: false, temperatureMin: 85, durationUntilClosed: 0 });
  const strong = additionWindow({ ...glitter, stirrableViscosityMax: 1e9 });
  expect(strong).toMatchObject({ isOpen: true, temperatureMin: 30 });
});

test("coarse grains settle over a segment by Schiller and Naumann as odex finds (1e-8), slower than by Stokes", () => {
  fc.assert(
    fc.property(between(5e-4, 2e-3), between(64, 75), (diameter, temperatureEnd) => {
      const grain = { ...glitter, diameter, temperatureEnd, volumeFraction: 0, beyond: "extend" } as const;
      const drag = { law: "schiller-naumann" } as const;
      const { distance, duration, reynoldsStart } = settlingOverCooling(
        without({ ...grain, drag }, "settlingAllowed", "stirrableViscosityMax"),
      );
      const viscosity = viscosityFunction(grain.viscosity);
      const density = densityFunction(grain.densityFluid);
      const velocity = (at: number) =>
        terminalVelocity(
          without(
            { ...grain, densityFluid: density(at), viscosity: viscosity(at), drag },
            "temperatureEnd",
            "volumeFraction",
            "heatCapacity",
            "heatLoss",
            "temperatureAmbient",
            "temperatureStart",
            "settlingAllowed",
            "stirrableViscosityMax",
          ),
        ).velocity;
      const [, share = Number.NaN] = march(
        (_, [at = Number.NaN]) => [(-12 * (at - 20) * duration) / capacityAt(at), (velocity(at) * duration) / distance],
        [85, 0],
        1,
        1e-13,
      );
      expect(off(share, 1)).toBeLessThan(1e-8);
      expect(reynoldsStart).toBeGreaterThan(0.1);
      expect(distance).toBeLessThan(
        settlingOverCooling(without(grain, "settlingAllowed", "stirrableViscosityMax")).distance,
      );
    }),
    { numRuns: 15 },
  );
});

test("the steps of the hindrance, which nobody names to the quadrature, cost less than 1e-5", () => {
  const grain = { ...glitter, diameter: 1e-3, volumeFraction: 0.05, drag: { law: "cheng" } } as const;
  const whole = settlingOverCooling(
    without({ ...grain, temperatureEnd: 63 }, "settlingAllowed", "stirrableViscosityMax"),
  );
  let pieces = 0;
  for (let from = 85; from > 63; from -= 0.125)
    pieces += settlingOverCooling(
      without(
        { ...grain, temperatureStart: from, temperatureEnd: from - 0.125 },
        "settlingAllowed",
        "stirrableViscosityMax",
      ),
    ).distance;
  expect(off(whole.distance, pieces)).toBeLessThan(1e-5);
});

const sizes = [40e-6, 80e-6, 120e-6, 160e-6].map((diameter) => ({ diameter, massFraction: 0.25 }));

test("each class settles as it would alone, and the share counts those beyond what is allowed", () => {
  fc.assert(
    fc.property(between(0.001, 0.5), between(45, 85), (settlingAllowed, temperatureStart) => {
      const job = { ...glitter, temperatureStart, settlingAllowed };
      const { distances, massFractionBeyond, duration } = settlingBySize(
        without({ ...job, sizes }, "diameter", "stirrableViscosityMax"),
      );
      const alone = sizes.map(({ diameter }) =>
        settlingOverCooling(without({ ...job, diameter }, "settlingAllowed", "stirrableViscosityMax")),
      );
      alone.forEach((one, i) => {
        expect(off(distances[i] ?? Number.NaN, one.distance)).toBeLessThan(1e-11);
        expect(off(duration, one.duration)).toBeLessThan(1e-12);
      });
      const count = alone.filter(({ distance }) => distance > settlingAllowed).length;
      expect(off(massFractionBeyond + 1, count / 4 + 1)).toBeLessThan(1e-15);
    }),
    { numRuns: 40 },
  );
});

test("shares that do not make a whole are refused", () => {
  expect(() =>
    settlingBySize(without({ ...glitter, sizes: sizes.slice(1) }, "diameter", "stirrableViscosityMax")),
  ).toThrow("mass fractions that sum to 0.75");
});
