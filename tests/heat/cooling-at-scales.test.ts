import fc from "fast-check";
import { coolingAtScales, coolingTime, coolingTimeAtScale, fewestAdditions, mixingTemperature } from "gelwright/heat";
import { vesselFilling } from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const near = (actual: number, expected: number, within = 1e-12) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const shape = {
  density: 900,
  specificHeat: 2100,
  heightToDiameter: 1.2,
  heatTransferCoefficient: 8,
  temperatureAmbient: 20,
  temperatureStart: 85,
  temperatureAddition: 65,
  temperatureSetting: 58,
};

test("from a beaker to a vessel times go as the cube root of the mass, and surface to volume the other way", () => {
  const [beaker, pilot, plant] = coolingAtScales({ ...shape, masses: [0.25, 40, 400] });
  if (!(beaker && pilot && plant)) throw new Error("three scales");
  for (const { mass, durationWorking, durationToAddition, surfaceToVolume, diameter, height } of [pilot, plant]) {
    const times = Math.cbrt(mass / 0.25);
    near(durationWorking, times * beaker.durationWorking);
    near(durationToAddition, times * beaker.durationToAddition);
    near(surfaceToVolume, beaker.surfaceToVolume / times);
    near(height / diameter, 1.2);
  }
  near(
    plant.durationWorking,
    coolingTimeAtScale({
      duration: beaker.durationWorking,
      volume: beaker.volume,
      volumeAtScale: plant.volume,
      limitedBy: "surface",
    }),
  );
});

test("each scale is a cylinder that cools by Newton's law", () => {
  for (const { mass, volume, diameter, height, area, durationToAddition, durationWorking } of coolingAtScales({
    ...shape,
    masses: [0.25, 40],
  })) {
    near(volume, mass / 900);
    near((Math.PI / 4) * diameter ** 2 * height, volume);
    const cooling = { heatCapacity: mass * 2100, conductance: 8 * area, temperatureAmbient: 20, temperatureStart: 85 };
    near(durationToAddition, coolingTime({ ...cooling, temperatureEnd: 65 }));
    near(durationToAddition + durationWorking, coolingTime({ ...cooling, temperatureEnd: 58 }));
  }
});

test("an order of temperatures that cooling does not take is refused", () => {
  const masses = [1];
  expect(() => coolingAtScales({ ...shape, masses, temperatureAddition: 90 })).toThrow("not above temperatureStart");
  expect(() => coolingAtScales({ ...shape, masses, temperatureSetting: 70 })).toThrow("not above temperatureAddition");
  expect(() => coolingAtScales({ ...shape, masses, temperatureAmbient: 58 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
});

test("equal additions: as many as needed, and one fewer would be too cold", () => {
  fc.assert(
    fc.property(between(62, 95), between(0, 55), between(0.1, 20), between(1500, 3000), (hot, cold, mass, heat) => {
      const melt = { mass: 1, specificHeat: heat, temperature: hot };
      const addition = { mass, specificHeat: 2000, temperature: cold };
      const {
        number,
        mass: part,
        temperatureMin,
      } = fewestAdditions({
        melt: [melt],
        temperatureMelt: hot,
        addition,
        temperatureMin: 60,
      });
      near(number * part, mass);
      expect(temperatureMin).toBeGreaterThanOrEqual(60 - 1e-9);
      const fewer = mass / (number - 1);
      if (number > 1)
        expect(mixingTemperature({ charges: [melt, { ...addition, mass: fewer }] })).toBeLessThan(60 + 1e-9);
      // Brought back to its temperature the melt takes each further part with less of a fall.
      const second = mixingTemperature({
        charges: [
          { ...melt, mass: 1 },
          { ...addition, mass: part, temperature: hot },
        ],
      });
      expect(second).toBeLessThanOrEqual(hot + 1e-9);
    }),
  );
});

test("a melt at the least temperature takes nothing cold, in however many parts", () => {
  const input = { melt: [{ mass: 1, specificHeat: 2000 }], temperatureMelt: 60 };
  const addition = { mass: 0.2, specificHeat: 2000, temperature: 20 };
  expect(() => fewestAdditions({ ...input, addition, temperatureMin: 60 })).toThrow(
    expect.objectContaining({ code: "unreachable", message: expect.stringContaining("above temperatureMin") }),
  );
  expect(fewestAdditions({ ...input, addition: { ...addition, temperature: 60 }, temperatureMin: 60 }).number).toBe(1);
});

test("a filling of the same shape has the area of the scales", () => {
  const [scale] = coolingAtScales({
    masses: [40],
    density: 900,
    specificHeat: 2100,
    heightToDiameter: 1.2,
    heatTransferCoefficient: 8,
    temperatureAmbient: 20,
    temperatureStart: 85,
    temperatureAddition: 65,
    temperatureSetting: 58,
  });
  if (!scale) throw new Error("no scale");
  const { volume, diameter } = scale;
  const { level, areaWetted, areaSurface, surfaceToVolume } = vesselFilling({ vessel: { diameter }, volume });
  expect(level).toBeCloseTo(scale.height, 12);
  expect(areaWetted + areaSurface).toBeCloseTo(scale.area, 12);
  expect(surfaceToVolume).toBeCloseTo(4 / scale.diameter + 2 / scale.height, 10);
});
