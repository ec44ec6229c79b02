import fc from "fast-check";
import { cylinderReading, relativeReading } from "gelwright/rheology";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const radius = 0.0133;
const length = 0.04;

/** A cylinder in a cup so many times as wide. */
function inCup(ratio: number, endEffectFactor = 1.1) {
  return { diameter: 2 * radius, diameterCup: 2 * radius * ratio, length, endEffectFactor };
}

/** Torque on the cylinder in a power-law liquid, exactly: the speed is the integral of shear rate over stress through the gap. */
function torqueIn(ratio: number, consistency: number, flowIndex: number, speed: number, endEffectFactor = 1.1): number {
  const power = 2 / flowIndex;
  const stress = consistency * ((2 * Math.PI * speed * power) / (1 - ratio ** -power)) ** flowIndex;
  return stress * 2 * Math.PI * length * radius ** 2 * endEffectFactor;
}

/** How far the pair is off the flow curve, as a share of the stress. */
function off(ratio: number, consistency: number, flowIndex: number, speed: number): number {
  const torque = torqueIn(ratio, consistency, flowIndex, speed);
  const { shearRate, stress } = cylinderReading({ cylinder: inCup(ratio), speed, torque, beyond: "extend" });
  return stress / (consistency * shearRate ** flowIndex) - 1;
}

const speeds = between(0.01, 10);
const consistencies = between(0.01, 500);

describe("a cylinder in a cup", () => {
  test("reads a Newtonian liquid, and a power law of index 0.5, without error in any cup", () => {
    fc.assert(
      fc.property(between(1.01, 3), consistencies, speeds, fc.constantFrom(1, 0.5), (ratio, k, speed, n) => {
        expect(Math.abs(off(ratio, k, n, speed))).toBeLessThan(1e-9);
      }),
    );
  });

  test("reads what thins within 0.11 % at the standard's ratio, and within 0.51 % in the widest cup that it has", () => {
    fc.assert(
      fc.property(between(0.3, 1), consistencies, speeds, (n, k, speed) => {
        expect(Math.abs(off(1.0847, k, n, speed))).toBeLessThan(0.0011);
        expect(Math.abs(off(1.2, k, n, speed))).toBeLessThan(0.0051);
      }),
    );
    // The bounds are no wider than they have to be.
    expect(Math.abs(off(1.0847, 10, 0.3, 1))).toBeGreaterThan(0.001);
    expect(Math.abs(off(1.2, 10, 0.3, 1))).toBeGreaterThan(0.005);
  });

  test("has 1.291 reciprocal seconds for a revolution a minute at the ratio 1.0847", () => {
    const { shearRate } = cylinderReading({ cylinder: inCup(1.0847), speed: 1 / 60, torque: 1e-4 });
    expect(shearRate).toBeCloseTo(1.2908, 4);
  });

  test("has the mean of the stresses at both walls", () => {
    fc.assert(
      fc.property(between(1.01, 1.2), between(1e-6, 0.1), between(1, 1.5), (ratio, torque, factor) => {
        const { stress } = cylinderReading({ cylinder: inCup(ratio, factor), speed: 1, torque });
        const at = (r: number): number => torque / (2 * Math.PI * length * r * r * factor);
        expect(stress / ((at(radius) + at(radius * ratio)) / 2)).toBeCloseTo(1, 12);
      }),
    );
  });

  test("is refused with a cup that is no wider, or wider than the equations go", () => {
    const reading = (ratio: number, beyond?: "extend") => () =>
      cylinderReading({ cylinder: inCup(ratio), speed: 1, torque: 1e-3, ...(beyond && { beyond }) });
    expect(reading(1)).toThrow("cylinder.diameterCup");
    expect(reading(1.2)().viscosity).toBeGreaterThan(0);
    expect(reading(1.201)).toThrow("up to 1.2 times");
    expect(reading(1.201, "extend")().viscosity).toBeGreaterThan(0);
    expect(reading(1.1, "extnd" as never)).toThrow('beyond: found "extnd"');
    expect(() => cylinderReading({ cylinder: inCup(1.1, 0.99), speed: 1, torque: 1e-3 })).toThrow("endEffectFactor");
    for (const wrong of [{ speed: 0 }, { torque: 0 }, { torque: Number.NaN }])
      expect(() => cylinderReading({ cylinder: inCup(1.1), speed: 1, torque: 1e-3, ...wrong })).toThrow();
  });
});

describe("readings of a spindle without a shear rate", () => {
  const kept = { spindle: "disc 4, 600 mL beaker", speed: 1 / 3, reading: 48.5 };

  test("are held against one another if spindle and speed are the same, whatever their unit", () => {
    fc.assert(
      fc.property(between(0.1, 100), between(0.1, 100), between(0.001, 1000), (one, other, unit) => {
        const ratio = (scale: number): number =>
          relativeReading({
            reading: { ...kept, reading: one * scale },
            reference: { ...kept, reading: other * scale },
          });
        expect(ratio(unit)).toBeCloseTo(ratio(1), 9);
        expect(ratio(1)).toBeCloseTo(one / other, 12);
      }),
    );
  });

  test("are refused with another spindle or speed, or without a reading", () => {
    const held = (wrong: object) => () => relativeReading({ reading: { ...kept, ...wrong }, reference: kept });
    expect(held({ spindle: "disc 5" })).toThrow("reading.spindle");
    expect(held({ speed: 0.5 })).toThrow("reading.speed");
    expect(held({ reading: 0 })).toThrow("reading.reading");
    expect(held({ spindle: "" })).toThrow("a name");
  });
});
