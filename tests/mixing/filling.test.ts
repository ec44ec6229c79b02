import fc from "fast-check";
import {
  bottomGeometry,
  levelOfVolume,
  minimumWorkingVolume,
  type VesselShape,
  vesselFilling,
  volumeAtLevel,
} from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const vessels: fc.Arbitrary<VesselShape> = fc.record({
  diameter: between(0.1, 3),
  bottom: fc.oneof(
    fc.constant({ shape: "flat" } as const),
    fc.record({ shape: fc.constant("cone" as const), depth: between(0.05, 1) }),
    fc.record({ shape: fc.constant("ellipsoidal" as const), depth: between(0.05, 1) }),
    fc.record({
      shape: fc.constant("dished" as const),
      crownToDiameter: between(0.5, 2),
      knuckleToDiameter: between(0.01, 0.45),
    }),
  ),
});

test("the level of a volume holds that volume", () => {
  fc.assert(
    fc.property(vessels, between(1e-4, 2), (vessel, volume) => {
      expect(off(volumeAtLevel({ vessel, level: levelOfVolume({ vessel, volume }) }), volume)).toBeLessThan(1e-9);
    }),
  );
});

test("the volume grows with the level by the area of the surface, which no bottom makes larger than the vessel's", () => {
  fc.assert(
    fc.property(vessels, between(0.01, 2), between(0.001, 0.1), (vessel, level, step) => {
      const [low, high] = [volumeAtLevel({ vessel, level }), volumeAtLevel({ vessel, level: level + step })];
      expect(high).toBeGreaterThan(low);
      expect(high - low).toBeLessThanOrEqual((Math.PI / 4) * vessel.diameter ** 2 * step * (1 + 1e-9));
    }),
  );
});

test("a dish whose sphere is half as wide again as nothing is half a ball, and so is half an ellipsoid as deep as wide", () => {
  const ball = volumeAtLevel({ vessel: { diameter: 1, bottom: { shape: "ellipsoidal", depth: 0.5 } }, level: 0.2 });
  const dish = { shape: "dished", crownToDiameter: 0.5, knuckleToDiameter: 0.1 } as const;
  expect(off(volumeAtLevel({ vessel: { diameter: 1, bottom: dish }, level: 0.2 }), ball)).toBeLessThan(1e-12);
  expect(off(ball, Math.PI * 0.04 * (0.5 - 0.2 / 3))).toBeLessThan(1e-12);
});

test("an empty vessel has no level, and the impeller is covered by what stands above it", () => {
  const vessel = { diameter: 0.5, bottom: { shape: "cone", depth: 0.1 } } as const;
  expect(levelOfVolume({ vessel, volume: 0 })).toBe(0);
  const min = minimumWorkingVolume({ vessel, heightTop: 0.2, cover: 0.1 });
  expect(off(levelOfVolume({ vessel, volume: min }), 0.3)).toBeLessThan(1e-12);
  expect(() =>
    volumeAtLevel({ vessel: { diameter: 1, bottom: { shape: "dished", crownToDiameter: 0.4 } }, level: 0.1 }),
  ).toThrow("0.5 to 2");
});

test("a little more in the vessel raises the level by its volume over the surface", () => {
  fc.assert(
    fc.property(vessels, between(1e-3, 2), (vessel, volume) => {
      const { level, areaSurface } = vesselFilling({ vessel, volume });
      const more = vesselFilling({ vessel, volume: volume * (1 + 1e-6) });
      const risen = (more.areaSurface + areaSurface) / 2;
      expect(off((more.level - level) * risen, volume * 1e-6)).toBeLessThan(1e-4);
    }),
  );
});

test("what is wetted is more than the surface, and above the bottom it grows by the wall alone", () => {
  fc.assert(
    fc.property(vessels, between(1e-3, 2), between(0.01, 1), (vessel, volume, more) => {
      const { areaWetted, areaSurface } = vesselFilling({ vessel, volume });
      expect(areaWetted).toBeGreaterThanOrEqual(areaSurface * (1 - 1e-9));
      const bottom = bottomGeometry({ vessel });
      const higher = vesselFilling({ vessel, volume: bottom.volume + more });
      expect(off(higher.areaWetted - bottom.area, (4 * more) / vessel.diameter)).toBeLessThan(1e-6);
      expect(off(higher.level - bottom.depth, more / ((Math.PI / 4) * vessel.diameter ** 2))).toBeLessThan(1e-6);
    }),
  );
});

test("half a ball has the face of half a ball, and a flat bottom fills as a cylinder", () => {
  const ball = { diameter: 1, bottom: { shape: "ellipsoidal", depth: 0.5 } } as const;
  expect(off(bottomGeometry({ vessel: ball }).area, Math.PI / 2)).toBeLessThan(1e-12);
  expect(bottomGeometry({ vessel: { diameter: 1 } })).toEqual({ depth: 0, volume: 0, area: Math.PI / 4 });
  fc.assert(
    fc.property(between(0.1, 3), between(1e-3, 2), (diameter, volume) => {
      const flat = vesselFilling({ vessel: { diameter }, volume });
      const height = (4 * volume) / (Math.PI * diameter ** 2);
      expect(off(flat.surfaceToVolume, 4 / diameter + 2 / height)).toBeLessThan(1e-12);
    }),
  );
});
