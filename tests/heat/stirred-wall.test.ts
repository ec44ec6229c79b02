import fc from "fast-check";
import {
  batchTemperatureAtWall,
  heatFlowAtWall,
  insideCoefficient,
  insideCoefficientFunction,
  jacketCoefficient,
  jacketedWall,
  jacketTemperatureAtWall,
  stirredCorrelations,
  stirredWall,
  wallTemperature,
} from "gelwright/heat";
import { viscosityFunction } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const near = (actual: number, expected: number, within: number) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const vessel = {
  correlation: stirredCorrelations.anchor,
  vessel: { diameter: 0.4 },
  impeller: { diameter: 0.36 },
  speed: 1,
  density: 900,
  specificHeat: 2100,
  conductivity: 0.16,
};
const law = { law: "andrade", factor: 1.3e-6, activationEnergy: 32000 } as const;

test("ranges that adjoin meet: no step of more than two in a hundred for anchor and ribbon", () => {
  for (const correlation of [stirredCorrelations.anchor, stirredCorrelations["helical ribbon"]])
    for (const [i, range] of correlation.entries()) {
      const before = correlation[i - 1];
      if (before)
        near(
          range.coefficient * range.reynoldsMin ** range.exponentReynolds,
          before.coefficient * range.reynoldsMin ** before.exponentReynolds,
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
  const ended = { ...vessel, correlation: vessel.correlation.map((range) => ({ ...range, reynoldsMax: 500 })) };
  expect(() => insideCoefficient({ ...ended, viscosity: 0.1, viscosityWall: 0.1 })).toThrow("100 to 500");
  expect(() =>
    insideCoefficient({ ...vessel, impeller: { diameter: 0.41 }, viscosity: 0.1, viscosityWall: 0.1 }),
  ).toThrow("not above vessel.diameter");
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

test("the coefficient as a function is that of both viscosities", () => {
  const viscosity = viscosityFunction(law);
  const inside = insideCoefficientFunction({ ...vessel, viscosity });
  fc.assert(
    fc.property(between(10, 120), between(10, 120), (bulk, wall) => {
      const direct = insideCoefficient({ ...vessel, viscosity: viscosity(bulk), viscosityWall: viscosity(wall) });
      expect(inside(bulk, wall)).toBe(direct.heatTransferCoefficient);
    }),
  );
  expect(() => insideCoefficientFunction({ ...vessel, viscosity: law as never })).toThrow("a function of temperature");
  expect(() => insideCoefficientFunction({ ...vessel, viscosity: () => 1000 })(70, 60)).toThrow("Reynolds number");
});

test("a jacketed wall lies between batch and medium, as far from each as its share of the resistance", () => {
  fc.assert(
    fc.property(between(30, 120), between(-10, 150), between(5, 900), between(5, 900), (bulk, jacket, h, outside) => {
      const input = { temperatureBulk: bulk, temperatureJacket: jacket, heatTransferCoefficientJacket: outside };
      const fixed = jacketedWall({ ...input, heatTransferCoefficient: h });
      const found = jacketedWall({ ...input, heatTransferCoefficient: () => h });
      expect(fixed.temperatureWall).toBeCloseTo(bulk + ((jacket - bulk) * outside) / (h + outside), 9);
      expect(found.temperatureWall).toBeCloseTo(fixed.temperatureWall, 9);
      near(fixed.heatTransferCoefficientOverall, (h * outside) / (h + outside), 1e-12);
      const measured = { conductance: 0.4 * fixed.heatTransferCoefficientOverall, area: 0.4 };
      near(jacketCoefficient({ ...measured, heatTransferCoefficient: h }), outside, 1e-9);
    }),
  );
  expect(() => jacketCoefficient({ conductance: 50, area: 0.5, heatTransferCoefficient: 100 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
});

test("the batch at which a jacket is turned off, and the jacket that is cold enough: each undoes the wall", () => {
  const inside = insideCoefficientFunction({ ...vessel, viscosity: viscosityFunction(law) });
  fc.assert(
    fc.property(between(40, 70), between(0.5, 30), between(20, 400), (temperatureWall, colder, outside) => {
      const temperatureJacket = temperatureWall - colder;
      const bulk = batchTemperatureAtWall({
        temperatureWall,
        temperatureJacket,
        heatTransferCoefficient: (at) => inside(at, temperatureWall),
        heatTransferCoefficientJacket: outside,
      });
      const heatTransferCoefficient = inside(bulk, temperatureWall);
      const limit = { temperatureBulk: bulk, temperatureWall, heatTransferCoefficient };
      expect(jacketTemperatureAtWall({ ...limit, heatTransferCoefficientJacket: outside })).toBeCloseTo(
        temperatureJacket,
        9,
      );
      const wall = jacketedWall({
        temperatureBulk: bulk,
        temperatureJacket,
        heatTransferCoefficient: (at) => inside(bulk, at),
        heatTransferCoefficientJacket: outside,
      });
      expect(wall.temperatureWall).toBeCloseTo(temperatureWall, 6);
    }),
  );
  expect(() =>
    batchTemperatureAtWall({
      temperatureWall: 50,
      temperatureJacket: 60,
      heatTransferCoefficient: 100,
      heatTransferCoefficientJacket: 100,
    }),
  ).toThrow("below temperatureWall");
});

test("a wall of given heat flow passes it, thinner where it is hot", () => {
  const inside = insideCoefficientFunction({ ...vessel, viscosity: viscosityFunction(law) });
  fc.assert(
    fc.property(between(30, 90), between(0, 20_000), (temperatureBulk, heatFlow) => {
      const flow = { temperatureBulk, heatFlow, area: 0.4 };
      const wall = wallTemperature({ ...flow, heatTransferCoefficient: (at) => inside(temperatureBulk, at) });
      const heatTransferCoefficient = inside(temperatureBulk, wall);
      expect(wallTemperature({ ...flow, heatTransferCoefficient })).toBeCloseTo(wall, 7);
      expect(wall).toBeLessThanOrEqual(
        wallTemperature({ ...flow, heatTransferCoefficient: inside(temperatureBulk, temperatureBulk) }) + 1e-9,
      );
    }),
  );
  expect(() =>
    wallTemperature({
      temperatureBulk: 60,
      heatFlow: 4e7,
      area: 0.4,
      heatTransferCoefficient: () => 100,
    }),
  ).toThrow(expect.objectContaining({ code: "unreachable" }));
});
