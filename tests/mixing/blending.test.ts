import fc from "fast-check";
import {
  blendTime,
  blendTimeByRevolutions,
  cavern,
  circulation,
  impellerFroude,
  speedToMoveGelAtWall,
  stirring,
  tipSpeed,
  vortexDepthMax,
} from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const kettle = { powerNumber: 1.3, impeller: { diameter: 0.2 }, vessel: { diameter: 0.6, level: 0.6 }, density: 910 };

test("the blend time joins at the change of regime, and more speed or less evenness shortens it", () => {
  // Po^(1/3) Re = 183²/5.2 at this speed.
  const meeting = (((183 * 183) / 5.2 / Math.cbrt(1.3)) * 0.05) / (910 * 0.04);
  const at = (speed: number, uniformity = 0.95) => blendTime({ ...kettle, viscosity: 0.05, speed, uniformity });
  const [below, above] = [at(meeting * (1 - 1e-9)), at(meeting * (1 + 1e-9))];
  expect([below.regime, above.regime]).toEqual(["transitional", "turbulent"]);
  expect(off(below.duration, above.duration)).toBeLessThan(1e-8);
  fc.assert(
    fc.property(between(0.3, 50), between(1.01, 3), between(0.5, 0.99), (speed, times, even) => {
      expect(at(speed * times, even).duration).toBeLessThan(at(speed, even).duration);
      expect(at(speed, even).duration).toBeLessThan(at(speed, even + (1 - even) / 2).duration);
      expect(off(at(speed).revolutions, speed * at(speed).duration)).toBeLessThan(1e-14);
    }),
  );
});

test("half as uneven again takes as long again: the time goes with the logarithm of what is left", () => {
  const even = (uniformity: number) => blendTime({ ...kettle, viscosity: 0.05, speed: 3, uniformity }).duration;
  expect(off(even(0.9975), 2 * even(0.95))).toBeLessThan(1e-12);
});

test("in a thick gel no blend time is known, except by revolutions that were counted", () => {
  expect(() => blendTime({ ...kettle, viscosity: 5, speed: 2 })).toThrow("count revolutions");
  expect(blendTimeByRevolutions({ revolutions: 90, speed: 1.5 })).toBe(60);
});

test("wall and ends of the cavern carry the torque of the impeller at the yield stress", () => {
  fc.assert(
    fc.property(between(0.5, 50), between(1, 200), between(0.2, 1), (speed, yieldStress, slender) => {
      const sizes = { impeller: { diameter: 0.05 }, vessel: { diameter: 0.12 } };
      const gel = { ...sizes, powerNumber: 1.8, speed, density: 915, yieldStress };
      const { diameter: d, height, reachesWall } = cavern({ ...gel, heightToDiameter: slender });
      // One that has reached the wall is as wide as the vessel, and grows in height alone.
      const wide = Math.min(d, 0.12);
      const carried = yieldStress * ((Math.PI * wide * wide * height) / 2 + (Math.PI * wide ** 3) / 6);
      const torque = (1.8 * 915 * speed ** 2 * 0.05 ** 5) / (2 * Math.PI);
      expect(off(carried, torque)).toBeLessThan(1e-12);
      expect(reachesWall).toBe(d >= 0.12);
      if (!reachesWall) expect(off(height, slender * d)).toBeLessThan(1e-12);
    }),
  );
});

test("at the speed that moves the wall the cavern is as wide as the vessel, and below it is not", () => {
  fc.assert(
    fc.property(between(1, 300), between(0.3, 0.9), between(0.05, 1), (yieldStress, share, diameter) => {
      const vessel = { diameter };
      const impeller = { kind: "pitched-blade turbine", diameter: share * diameter } as const;
      const curve = { law: "herschel-bulkley", yieldStress, consistency: 12, flowIndex: 0.5 } as const;
      const gel = { impeller, density: 915, curve };
      const speed = speedToMoveGelAtWall({ ...gel, vessel });
      const at = (n: number) => {
        const { powerNumber } = stirring({ ...gel, speed: n });
        return cavern({
          powerNumber,
          speed: n,
          density: 915,
          yieldStress,
          impeller,
          vessel,
        });
      };
      expect(off(at(speed).diameter, diameter)).toBeLessThan(1e-9);
      expect(at(0.99 * speed).reachesWall).toBe(false);
      expect(at(1.01 * speed).reachesWall).toBe(true);
    }),
  );
  const oil = { density: 900, curve: { law: "newton", viscosity: 1 } } as const;
  const impeller = { kind: "propeller", diameter: 0.1 } as const;
  expect(() => speedToMoveGelAtWall({ ...oil, impeller, vessel: { diameter: 0.3 } })).toThrow(
    "a flow curve with a yield stress",
  );
});

test("a vessel told by its level too gives blades their power curve, by its width alone the constants of their kind", () => {
  const curve = { law: "herschel-bulkley", yieldStress: 30, consistency: 12, flowIndex: 0.5 } as const;
  const impeller = { kind: "pitched-blade turbine", diameter: 0.2 } as const;
  const gel = { impeller, density: 915, curve };
  const whole = { diameter: 0.6, level: 0.6 };
  for (const vessel of [whole, { diameter: 0.6 }]) {
    const speed = speedToMoveGelAtWall({ ...gel, vessel });
    const { powerNumber } = stirring({ ...gel, speed, ...("level" in vessel ? { vessel: whole } : {}) });
    expect(
      off(cavern(without({ ...gel, powerNumber, speed, yieldStress: 30, vessel }, "curve")).diameter, 0.6),
    ).toBeLessThan(1e-9);
  }
  expect(speedToMoveGelAtWall({ ...gel, vessel: whole })).not.toBe(
    speedToMoveGelAtWall({ ...gel, vessel: { diameter: 0.6 } }),
  );
  const noLevel = { diameter: 0.6, baffles: 4, baffleWidth: 0.06 };
  expect(() => speedToMoveGelAtWall({ ...gel, vessel: noLevel })).toThrow("vessel.level");
});

test("what asks for a size alone takes a whole impeller and a whole vessel, and faults name the size at its place", () => {
  const impeller = { kind: "propeller", diameter: 0.2 } as const;
  const vessel = { diameter: 0.6, level: 0.5, baffles: 4, baffleWidth: 0.06 };
  const by = { impeller: { diameter: 0.2 }, vessel: { diameter: 0.6 } };
  expect(tipSpeed({ speed: 2, impeller })).toBe(tipSpeed(without({ speed: 2, ...by }, "vessel")));
  expect(vortexDepthMax({ speed: 2, impeller, vessel })).toBe(vortexDepthMax({ speed: 2, ...by }));
  expect(() => vortexDepthMax({ speed: 2, impeller, vessel: { diameter: 0.1 } })).toThrow("vessel.diameter");
  expect(() => tipSpeed({ speed: 2, impeller: { diameter: -1 } })).toThrow("impeller.diameter");
  expect(() => tipSpeed({ speed: 2, impeller: 0.2 as never })).toThrow("impeller: found 0.2");
});

test("the vortex is as deep as its two parts are when the slope of the surface is added up along the radius", () => {
  fc.assert(
    fc.property(between(0.2, 10), between(0.05, 0.5), between(1, 4), (speed, d, times) => {
      const [core, rim] = [d / 2, (d * times) / 2];
      const turn = 2 * Math.PI * speed;
      // u²/(g r): u = ω r within the core, ω r_c²/r around it; midpoints of many rings.
      const rings = 20_000;
      let depth = 0;
      for (let ring = 0; ring < rings; ring += 1) {
        const r = ((ring + 0.5) / rings) * rim;
        const u = r < core ? turn * r : (turn * core * core) / r;
        depth += ((u * u) / (9.80665 * r)) * (rim / rings);
      }
      const [impeller, vessel] = [{ diameter: d }, { diameter: d * times }];
      expect(off(vortexDepthMax({ speed, impeller, vessel }), depth)).toBeLessThan(1e-3);
    }),
    { numRuns: 20 },
  );
  expect(() => vortexDepthMax({ speed: 1, impeller: { diameter: 0.5 }, vessel: { diameter: 0.4 } })).toThrow(
    "at least the diameter",
  );
});

test("the Froude number of a larger impeller is kept at the square root of the speed", () => {
  const bench = impellerFroude({ speed: 8, impeller: { diameter: 0.05 } });
  expect(off(impellerFroude({ speed: 2, impeller: { diameter: 0.8 } }), bench)).toBeLessThan(1e-14);
});

test("a flow number holds in turbulent flow, and an anchor has none", () => {
  const impeller = { kind: "pitched-blade turbine", diameter: 0.2 } as const;
  const batch = { speed: 2, volume: 0.1, reynolds: 500 };
  expect(() => circulation({ ...batch, impeller })).toThrow("10000 or more");
  const { flowRate, duration, turnoversPerMinute } = circulation({ ...batch, impeller, beyond: "extend" });
  expect(off(flowRate * duration, 0.1)).toBeLessThan(1e-14);
  expect(off(turnoversPerMinute * duration, 60)).toBeLessThan(1e-14);
  const anchor = { kind: "anchor", diameter: 0.5 } as const;
  expect(() => circulation({ ...batch, impeller: anchor, beyond: "extend" })).toThrow("impeller.flowNumber");
});
