import fc from "fast-check";
import { viscosityAt } from "gelwright/laws";
import { fitAndrade, fittedViscosityAt, fitVogel, fitWalther, waltherViscosityAt } from "gelwright/rheology";
import { expect, test } from "vitest";
import { between, relative } from "./arbitraries.js";

const temperatures = [15, 25, 40, 60, 80, 95];
const read = (law: Parameters<typeof viscosityAt>[0]["law"], at: readonly number[] = temperatures) =>
  at.map((temperature) => ({ temperature, viscosity: viscosityAt({ law, temperature }) }));

test("Andrade's law comes back from readings of it", () => {
  fc.assert(
    fc.property(between(-18, -10), between(1e4, 6e4), (lnFactor, activationEnergy) => {
      const { law, standardErrors } = fitAndrade({
        points: read({ law: "andrade", factor: Math.exp(lnFactor), activationEnergy }),
      });
      expect(relative(law.activationEnergy, activationEnergy)).toBeLessThan(1e-10);
      expect(Math.abs(Math.log(law.factor) - lnFactor)).toBeLessThan(1e-9);
      expect(standardErrors?.["lnFactor"]).toBeLessThan(1e-9);
    }),
  );
});

test("Vogel's law comes back from readings of it, in either weighting", () => {
  fc.assert(
    fc.property(
      between(-12, -6),
      between(300, 1500),
      between(-170, -60),
      fc.constantFrom<"relative" | "absolute">("relative", "absolute"),
      (lnFactor, coefficient, temperatureVogel, weighting) => {
        const points = read({ law: "vogel-fulcher-tammann", lnFactor, coefficient, temperatureVogel });
        const { law } = fitVogel({ points, weighting });
        expect(relative(law.coefficient, coefficient)).toBeLessThan(1e-5);
        for (const { temperature, viscosity } of points)
          expect(relative(viscosityAt({ law, temperature }), viscosity)).toBeLessThan(1e-8);
      },
    ),
  );
});

test("a fit passes through as many readings as it has constants, and then claims no errors", () => {
  const oil = [
    { temperature: 25, viscosity: 0.055 },
    { temperature: 50, viscosity: 0.0225 },
    { temperature: 90, viscosity: 0.0085 },
  ];
  const vogel = fitVogel({ points: oil });
  const andrade = fitAndrade({ points: oil.slice(1) });
  for (const fit of [vogel, andrade]) {
    expect(Math.max(...fit.residuals.map(Math.abs))).toBeLessThan(1e-12);
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit.standardErrors).toBeUndefined();
    expect(fit.covariance).toBeUndefined();
    expect(fittedViscosityAt({ fit, temperature: 60 }).relativeStandardError).toBeUndefined();
  }
});

test("beyond the readings a fit says so, and its error grows", () => {
  const points = read({ law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 }).map(
    ({ temperature, viscosity }, i) => ({ temperature, viscosity: viscosity * (1 + 0.01 * (-1) ** i) }),
  );
  for (const fit of [fitAndrade({ points }), fitVogel({ points })]) {
    const at = (temperature: number) => fittedViscosityAt({ fit, temperature });
    expect([14.9, 15, 95, 95.1].map((temperature) => at(temperature).extrapolated)).toEqual([true, false, false, true]);
    expect(at(0).relativeStandardError).toBeGreaterThan(at(50).relativeStandardError as number);
    expect(at(140).relativeStandardError).toBeGreaterThan(at(50).relativeStandardError as number);
  }
});

test("ill-posed fits are refused with the readings that are missing", () => {
  const twice = [20, 20, 20].map((temperature, i) => ({ temperature, viscosity: 0.05 + 0.001 * i }));
  expect(() => fitAndrade({ points: twice })).toThrow(
    "found readings at 1 temperatures, expected readings at 2 or more",
  );
  const oil = read({ law: "andrade", factor: 1.3e-6, activationEnergy: 26400 });
  expect(() => fitVogel({ points: oil.slice(0, 2) })).toThrow("readings at 3 or more temperatures");
  const rising = [20, 40, 60].map((temperature) => ({ temperature, viscosity: temperature / 1000 }));
  expect(() => fitAndrade({ points: rising })).toThrow("viscosities that fall as it warms");
  expect(() => fitVogel({ points: rising })).toThrow("viscosities that fall ever less as it warms");
  // Falling ever faster: bent the other way round than any liquid.
  const wrongBend = [20, 40, 60, 80].map((temperature) => ({ temperature, viscosity: 1 - (temperature / 100) ** 2 }));
  expect(() => fitVogel({ points: wrongBend })).toThrow("or fitAndrade");
});

test("Walther's line passes through its two readings, and refuses what is too thin for it", () => {
  fc.assert(
    fc.property(between(10, 500), between(0.1, 0.5), (thick, share) => {
      fc.pre(thick * share > 2.1);
      const points = [
        { temperature: 40, kinematicViscosity: thick * 1e-6 },
        { temperature: 100, kinematicViscosity: thick * share * 1e-6 },
      ];
      const line = fitWalther({ points });
      for (const { temperature, kinematicViscosity } of points)
        expect(relative(waltherViscosityAt({ ...line, temperature }), kinematicViscosity)).toBeLessThan(1e-11);
    }),
  );
  const line = { intercept: 9.48716015, slope: 3.73226475 };
  expect(() => waltherViscosityAt({ ...line, temperature: 180 })).toThrow('or beyond: "extend"');
  expect(waltherViscosityAt({ ...line, temperature: 180, beyond: "extend" })).toBeLessThan(2e-6);
});

test("no law of Vogel's has its pole at absolute zero or below", () => {
  const points = (middle: number) => [
    { temperature: 25, viscosity: 1 },
    { temperature: 50, viscosity: middle },
    { temperature: 90, viscosity: 0.1 },
  ];
  // Between the two the pole passes -273.15 °C.
  expect(fitVogel({ points: points(0.34) }).law.temperatureVogel).toBeGreaterThan(-273.15);
  expect(() => fitVogel({ points: points(0.37) })).toThrow("at or below absolute zero");
});
