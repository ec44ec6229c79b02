import fc from "fast-check";
import {
  heatFlowAtWall,
  insideCoefficient,
  jacketTemperatureAtWall,
  stirredCorrelations,
  stirredWall,
  wallTemperature,
} from "gelwright/heat";
import { viscosityFunction } from "gelwright/laws";
import { expect, test } from "vitest";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (actual: number, expected: number, within: number) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const vessel = {
  correlation: stirredCorrelations.anchor,
  diameterVessel: 0.4,
  diameterImpeller: 0.36,
  speed: 1,
  density: 900,
  specificHeat: 2100,
  conductivity: 0.16,
};
const law = { law: "andrade", factor: 1.3e-6, activationEnergy: 32000 } as const;

test("ranges that adjoin meet: no step of more than two in a hundred for anchor and ribbon", () => {
  for (const correlation of [stirredCorrelations.anchor, stirredCorrelations.helicalRibbon])
    for (const [i, range] of correlation.entries()) {
      const before = correlation[i - 1];
      if (before)
        near(
          range.coefficient * range.reynoldsLeast ** range.exponentReynolds,
          before.coefficient * range.reynoldsLeast ** before.exponentReynolds,
          0.02,
        );
    }
});

test("a range ends where the next begins, and outside all of them it is refused or said to be extended", () => {
  const at = (reynolds: number, beyond?: "extend") =>
    insideCoefficient({
      ...vessel,
      viscosity: (900 * 0.36 ** 2) / reynolds,
      viscosityWall: 1,
      ...(beyond ? { beyond } : {}),
    });
  expect(() => at(11.9)).toThrow(expect.objectContaining({ code: "range" }));
  expect(at(11.9, "extend").nusselt).toBeGreaterThan(0);
  expect(at(12.1).nusselt).toBeGreaterThan(at(11.9, "extend").nusselt * 0.9);
  const ended = { ...vessel, correlation: vessel.correlation.map((range) => ({ ...range, reynoldsMost: 500 })) };
  expect(() => insideCoefficient({ ...ended, viscosity: 0.1, viscosityWall: 0.1 })).toThrow("100 to 500");
  expect(() => insideCoefficient({ ...vessel, diameterImpeller: 0.41, viscosity: 0.1, viscosityWall: 0.1 })).toThrow(
    "not above diameterVessel",
  );
});

test("a faster impeller or a thinner wall layer takes more heat", () => {
  const h = (speed: number, viscosityWall: number) =>
    insideCoefficient({ ...vessel, speed, viscosity: 0.2, viscosityWall }).heatTransferCoefficient;
  near(h(2, 0.2) / h(1, 0.2), 2 ** (2 / 3), 1e-14);
  near(h(1, 0.1) / h(1, 0.2), 2 ** 0.14, 1e-14);
});

test("the wall passes on what it gets, with the viscosity of its own temperature", () => {
  const viscosity = viscosityFunction(law);
  fc.assert(
    fc.property(between(20, 90), between(5, 120), between(10, 2000), (bulk, jacket, outside) => {
      const wall = stirredWall({
        ...vessel,
        viscosity: law,
        temperatureBulk: bulk,
        temperatureJacket: jacket,
        heatTransferCoefficientJacket: outside,
      });
      const { temperatureWall, heatTransferCoefficient } = wall;
      expect((temperatureWall - bulk) * (temperatureWall - jacket)).toBeLessThanOrEqual(0);
      const direct = insideCoefficient({
        ...vessel,
        viscosity: viscosity(bulk),
        viscosityWall: viscosity(temperatureWall),
      });
      near(heatTransferCoefficient, direct.heatTransferCoefficient, 1e-12);
      const scale = 1e-9 * (outside + heatTransferCoefficient) * 100;
      expect(Math.abs(outside * (jacket - temperatureWall) - wall.heatFlux)).toBeLessThanOrEqual(scale);
      expect(Math.abs(heatTransferCoefficient * (temperatureWall - bulk) - wall.heatFlux)).toBeLessThanOrEqual(scale);
    }),
  );
});

test("a skin: the coldest jacket that keeps the wall at the setting temperature, and the heat that this lets through", () => {
  const limit = { temperatureBulk: 70, temperatureWall: 60, heatTransferCoefficient: 120 };
  const heatTransferCoefficientJacket = 400;
  const jacket = jacketTemperatureAtWall({ ...limit, heatTransferCoefficientJacket });
  expect(jacket).toBe(57);
  const heatFlow = heatFlowAtWall({ ...limit, area: 0.5 });
  expect(heatFlow).toBe(-600);
  expect(heatFlow / 0.5).toBe(heatTransferCoefficientJacket * (jacket - 60));
  expect(wallTemperature({ temperatureBulk: 70, heatFlow, area: 0.5, heatTransferCoefficient: 120 })).toBe(60);
  expect(() =>
    jacketTemperatureAtWall({ ...limit, temperatureWall: -100, heatTransferCoefficientJacket: 100 }),
  ).toThrow(expect.objectContaining({ code: "unreachable" }));
});

test("no difference, no flux: the wall is as warm as both", () => {
  const wall = stirredWall({
    ...vessel,
    viscosity: law,
    temperatureBulk: 50,
    temperatureJacket: 50,
    heatTransferCoefficientJacket: 400,
  });
  expect(wall.temperatureWall).toBe(50);
  expect(wall.heatFlux).toBe(0);
});
