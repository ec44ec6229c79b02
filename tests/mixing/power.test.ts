import fc from "fast-check";
import {
  type BladedCurve,
  heatOfStirring,
  type Impeller,
  motorMargin,
  powerCurveOf,
  powerNumber,
  stirring,
  stirringPowerFunction,
} from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const reynoldsNumbers = between(-2, 6).map((exponent) => 10 ** exponent);
const shapes: fc.Arbitrary<BladedCurve> = fc.record({
  law: fc.constant("kamei-hiraoka" as const),
  blades: fc.integer({ min: 2, max: 8 }),
  bladeAngle: between(20, 90),
  widthToDiameter: between(0.1, 0.8),
  diameterToVessel: between(0.3, 0.9),
  levelToVessel: between(0.5, 1.5),
});

test("power goes with the viscosity where the flow creeps, and not at all where it is turbulent", () => {
  const power = powerCurveOf({ impeller: { kind: "propeller", diameter: 0.2 } });
  expect(off(powerNumber({ power, reynolds: 1e-4 }) * 1e-4, 41)).toBeLessThan(1e-6);
  expect(off(powerNumber({ power, reynolds: 1e7 }), 0.32)).toBeLessThan(1e-4);
});

test("blades of any shape draw power in inverse proportion to Re in creeping flow, and the number only falls from there", () => {
  fc.assert(
    fc.property(shapes, reynoldsNumbers, between(1.01, 10), (power, reynolds, times) => {
      const slow = powerNumber({ power, reynolds: 1e-5 });
      expect(off(powerNumber({ power, reynolds: 1e-6 }), 10 * slow)).toBeLessThan(1e-3);
      expect(powerNumber({ power, reynolds: reynolds * times })).toBeLessThan(powerNumber({ power, reynolds }));
    }),
  );
});

test("baffles cost power, the more so the wider they are, and make no difference where the flow creeps", () => {
  fc.assert(
    fc.property(shapes, reynoldsNumbers, between(0.02, 0.09), (free, reynolds, width) => {
      const narrow = { ...free, baffles: 4, baffleToVessel: width };
      const wide = { ...narrow, baffleToVessel: 1.2 * width };
      const at = (power: BladedCurve) => powerNumber({ power, reynolds });
      expect(at(narrow)).toBeGreaterThanOrEqual(at(free));
      expect(at(wide)).toBeGreaterThanOrEqual(at(narrow) * (1 - 1e-14));
      expect(powerNumber({ power: narrow, reynolds: 1e-3 })).toBe(powerNumber({ power: free, reynolds: 1e-3 }));
    }),
  );
});

test("a measured curve goes through its points and straight between them on logarithmic axes", () => {
  const points = [
    { reynolds: 1, powerNumber: 50 },
    { reynolds: 100, powerNumber: 2 },
    { reynolds: 1e4, powerNumber: 1.5 },
  ];
  const power = { law: "points", points } as const;
  for (const point of points)
    expect(off(powerNumber({ power, reynolds: point.reynolds }), point.powerNumber)).toBeLessThan(1e-14);
  expect(off(powerNumber({ power, reynolds: 10 }), 10)).toBeLessThan(1e-14);
  expect(() => powerNumber({ power, reynolds: 2e4 })).toThrow(
    '1 to 10000, as the power curve is known, or beyond: "extend"',
  );
  expect(off(powerNumber({ power, reynolds: 0.01, beyond: "extend" }), 1250)).toBeLessThan(1e-12);
  const back = [...points].reverse();
  expect(() => powerNumber({ power: { law: "points", points: back }, reynolds: 2 })).toThrow(
    "more than at the point before",
  );
});

test("what an impeller draws from its own curve goes before what is known of its kind, and blades follow their vessel", () => {
  const own = { law: "laminar", laminarPowerConstant: 12 } as const;
  const vessel = { diameter: 0.6, level: 0.6, baffles: 4, baffleWidth: 0.06 };
  expect(powerCurveOf({ impeller: { kind: "anchor", diameter: 0.5, power: own }, vessel })).toBe(own);
  expect(powerCurveOf({ impeller: { kind: "propeller", diameter: 0.2 }, vessel })).toMatchObject({ law: "sum" });
  const blades = powerCurveOf({ impeller: { kind: "pitched-blade turbine", diameter: 0.2, blades: 3 }, vessel });
  expect(blades).toMatchObject({ law: "kamei-hiraoka", blades: 3, bladeAngle: 45, baffles: 4, levelToVessel: 1 });
  expect(() => powerCurveOf({ impeller: { kind: "rotor-stator", diameter: 0.1 } })).toThrow(
    "a power curve of your own",
  );
});

test("a disperser disc in thick gel is known to nobody: it is refused until its curve is told", () => {
  const impeller = { kind: "disperser disc", diameter: 0.1, metznerOttoConstant: 11 } as const;
  const thick = { density: 900, curve: { law: "newton", viscosity: 10 }, speed: 20 } as const;
  expect(() => stirring({ ...thick, impeller })).toThrow("10000 or more");
  const { powerNumber: known } = stirring({ ...thick, curve: { law: "newton", viscosity: 1e-3 }, impeller });
  expect(known).toBe(0.45);
});

test("a gel that thins has the viscosity of its shear rate, and its Reynolds number is that of the power law", () => {
  fc.assert(
    fc.property(
      between(0.1, 20),
      between(1, 200),
      between(0.2, 1),
      between(0.02, 1),
      (speed, consistency, n, diameter) => {
        const impeller: Impeller = { kind: "anchor", diameter };
        const curve = { law: "power-law", consistency, flowIndex: n } as const;
        const state = stirring({ impeller, density: 915, curve, speed });
        const expected = (915 * speed ** (2 - n) * diameter ** 2) / (consistency * 25 ** (n - 1));
        expect(off(state.reynolds, expected)).toBeLessThan(1e-12);
        expect(off(state.power, 2 * Math.PI * speed * state.torque)).toBeLessThan(1e-14);
        expect(off(state.power, state.powerNumber * 915 * speed ** 3 * diameter ** 5)).toBeLessThan(1e-14);
      },
    ),
  );
});

test("the power as a function of viscosity is what stirring says at each", () => {
  fc.assert(
    fc.property(between(-3, 3), between(0.2, 20), (exponent, speed) => {
      const viscosity = 10 ** exponent;
      const batch = { impeller: { kind: "pitched-blade turbine", diameter: 0.2 }, density: 905, speed } as const;
      const { power } = stirring({ ...batch, curve: { law: "newton", viscosity } });
      expect(off(stirringPowerFunction(batch)(viscosity), power)).toBeLessThan(1e-13);
    }),
  );
});

test("an oil needs no shear constant, and a gel does", () => {
  const impeller = {
    kind: "rotor-stator",
    diameter: 0.1,
    power: { law: "sum", laminarPowerConstant: 80, powerNumber: 2 },
  } as const;
  const oil = { density: 900, curve: { law: "newton", viscosity: 0.05 }, speed: 50 } as const;
  expect(stirring({ ...oil, impeller })).not.toHaveProperty("shearRate");
  const gel = { law: "power-law", consistency: 10, flowIndex: 0.5 } as const;
  expect(() => stirring({ ...oil, curve: gel, impeller })).toThrow("impeller.metznerOttoConstant");
});

test("all power becomes heat, and what the motor can give over what is taken is its margin", () => {
  fc.assert(
    fc.property(between(1, 1e5), between(1, 1e5), between(0.1, 1e4), (power, duration, mass) => {
      const { heat, temperatureRise } = heatOfStirring({ power, duration, mass, specificHeat: 2050 });
      expect(off(heat, power * duration)).toBeLessThan(1e-14);
      expect(off(temperatureRise * mass * 2050, heat)).toBeLessThan(1e-14);
      const { margin, torque, marginTorque } = motorMargin({ power, speed: 2, powerMotor: 3 * power, torqueMax: 40 });
      expect(off(margin, 3)).toBeLessThan(1e-14);
      expect(off((marginTorque ?? 0) * torque, 40)).toBeLessThan(1e-14);
    }),
  );
  expect(() => motorMargin({ power: 1, speed: 1, powerMotor: 1, efficiency: 1.2 })).toThrow("above 0 and up to 1");
});

test("flat blades are pitched ones at a right angle; out of their vessel they have no power that we know", () => {
  const vessel = { diameter: 0.6, level: 0.5, baffles: 4, baffleWidth: 0.05 };
  const flat = { kind: "flat-blade", diameter: 0.3, blades: 2, bladeWidth: 0.06 } as const;
  const pitched = { ...flat, kind: "pitched-blade turbine", bladeAngle: 90 } as const;
  expect(powerCurveOf({ impeller: flat, vessel })).toEqual(powerCurveOf({ impeller: pitched, vessel }));
  expect(() => powerCurveOf({ impeller: flat })).toThrow("for this flat-blade, or the vessel around it");
  expect(() => powerCurveOf({ impeller: { kind: "other", diameter: 0.3 }, vessel })).toThrow("for this impeller");
});

test("an anchor's arms and flat upright blades end at the level: above it they draw what they draw when it covers them just", () => {
  const filled = (level: number) => ({ diameter: 0.6, level });
  const upright = [
    (height: number): Impeller => ({ kind: "anchor", diameter: 0.54, armHeight: height }),
    (height: number): Impeller => ({ kind: "flat-blade", diameter: 0.3, blades: 2, bladeWidth: height }),
  ];
  for (const of of upright) {
    // Just below the edge the arm ends at the level, just above it at its own height.
    for (const level of [0.1, 0.299])
      expect(powerCurveOf({ impeller: of(0.3), vessel: filled(level) })).toEqual(
        powerCurveOf({ impeller: of(level), vessel: filled(level) }),
      );
    for (const level of [0.301, 0.6])
      expect(powerCurveOf({ impeller: of(0.3), vessel: filled(level) })).not.toEqual(
        powerCurveOf({ impeller: of(level), vessel: filled(level) }),
      );
  }
});
