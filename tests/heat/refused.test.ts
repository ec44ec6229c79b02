import { mediumTemperatureForDuration, mixingTemperature, packTemperature, vesselSegment } from "gelwright/heat";
import { expect, test } from "vitest";

const batch = { heatCapacity: 1e6, conductance: 360, temperatureStart: 85 };

test("a batch that keeps its temperature needs no medium", () => {
  const still = { ...batch, temperatureEnd: 85, duration: 60 };
  expect(() => mediumTemperatureForDuration(still)).toThrow("other than temperatureStart");
});

test("a ramp is no segment of a vessel", () => {
  const ramp = {
    ...{ kind: "ramp", temperatureStart: 20, temperatureEnd: 80, temperatureAmbient: 20, heatCapacity: 2000 },
    ...{ heatLoss: { law: "newton", conductance: 1 }, heatSource: { kind: "power", power: 300 } },
  };
  expect(() => vesselSegment(ramp as never)).toThrow('"vessel", or nothing');
});

test("the surface of a pack has the temperature of a stirred bath as soon as it is in it, and its own until then", () => {
  const ball = {
    pack: { shape: "sphere", diameter: 0.02 } as const,
    ...{ conductivity: 0.17, density: 910, specificHeat: 2050, temperatureStart: 60, temperatureAmbient: 20 },
    ...{ heatTransferCoefficient: "infinite" as const, where: { radial: 0.01 } },
  };
  expect(packTemperature({ ...ball, duration: 0 })).toBe(60);
  expect(packTemperature({ ...ball, duration: 1 })).toBe(20);
});

test("charges of one temperature mix to it, whatever their laws", () => {
  const law = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048] } as const;
  const charge = { mass: 1, specificHeat: law, temperature: 60 };
  expect(mixingTemperature({ charges: [charge, { ...charge, mass: 5 }] })).toBe(60);
});
