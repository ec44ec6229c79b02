import fc from "fast-check";
import { type Impeller, type PowerCurve, type ScaleCriterion, scaleUp } from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const scales = between(1.5, 20);
const vessel = { diameter: 0.15, level: 0.15 };

interface Bench {
  readonly power: PowerCurve;
  readonly viscosity?: number;
  readonly flowIndex?: number;
  readonly kind?: Impeller["kind"];
}

/** The ratio of speeds that keeps one thing, in a gel or a melt. */
function kept(criterion: ScaleCriterion, s: number, { power, viscosity = 1, flowIndex }: Bench): number {
  const impeller = { kind: "pitched-blade", diameter: 0.05, power, shearConstant: 13 } as const;
  const curve =
    flowIndex === undefined
      ? ({ law: "newton", viscosity } as const)
      : ({ law: "power-law", consistency: viscosity, flowIndex } as const);
  const bench = { impeller, vessel, density: 915, curve, speed: 5, volume: 0.0026 };
  const { plant } = scaleUp({ ...bench, diameterImpellerPlant: 0.05 * s, criteria: [criterion], beyond: "extend" });
  return plant[0]?.ratios.speed ?? Number.NaN;
}

const creeping: PowerCurve = { law: "laminar", constant: 44 };
const whirling: PowerCurve = { law: "turbulent", powerNumber: 1.3 };

test("constant power per volume: speed goes as s to the −2/3 in turbulent flow, and not at all in creeping flow", () => {
  fc.assert(
    fc.property(scales, (s) => {
      expect(off(kept("power-per-volume", s, { power: whirling, viscosity: 1e-3 }), s ** (-2 / 3))).toBeLessThan(1e-12);
      expect(off(kept("power-per-volume", s, { power: creeping, viscosity: 1e4 }), 1)).toBeLessThan(1e-12);
      // A gel that thins: power per volume is stress times rate, so that the same speed keeps it too.
      expect(off(kept("power-per-volume", s, { power: creeping, viscosity: 1e4, flowIndex: 0.4 }), 1)).toBeLessThan(
        1e-12,
      );
    }),
  );
});

test("between the two regimes the exponent lies between the two", () => {
  const both: PowerCurve = { law: "sum", constant: 44, powerNumber: 1.3 };
  fc.assert(
    fc.property(scales, between(0.01, 10), (s, viscosity) => {
      const exponent = Math.log(kept("power-per-volume", s, { power: both, viscosity })) / Math.log(s);
      expect(exponent).toBeGreaterThan(-2 / 3);
      expect(exponent).toBeLessThan(0);
    }),
  );
});

test("constant Reynolds number: s to the −2, and −2/(2 − n) in a power-law gel", () => {
  fc.assert(
    fc.property(scales, between(0.2, 0.95), (s, n) => {
      expect(off(kept("reynolds", s, { power: creeping }), s ** -2)).toBeLessThan(1e-12);
      expect(
        off(kept("reynolds", s, { power: creeping, viscosity: 20, flowIndex: n }), s ** (-2 / (2 - n))),
      ).toBeLessThan(1e-11);
    }),
  );
});

test("tip speed goes as 1/s, shear rate and blend time stay with the speed, the Froude number as s to the −1/2", () => {
  fc.assert(
    fc.property(scales, (s) => {
      expect(off(kept("tip-speed", s, { power: whirling }), 1 / s)).toBeLessThan(1e-14);
      expect(kept("shear-rate", s, { power: whirling })).toBe(1);
      expect(off(kept("froude", s, { power: whirling }), s ** -0.5)).toBeLessThan(1e-14);
      expect(off(kept("blend-time", s, { power: whirling, viscosity: 1e-3 }), 1)).toBeLessThan(1e-12);
      expect(kept("blend-time", 1.5, { power: creeping, viscosity: 50 })).toBe(1);
    }),
  );
});

test("a row keeps what it says, whatever it does to the rest", () => {
  const impeller = { kind: "pitched-blade", diameter: 0.05 } as const;
  const own = {
    "tip-speed": "tipSpeed",
    "power-per-volume": "powerPerVolume",
    reynolds: "reynolds",
    "blend-time": "blendTime",
    "shear-rate": "shearRate",
    froude: "froude",
  } as const;
  fc.assert(
    fc.property(scales, between(1, 15), between(0.002, 0.05), (s, speed, viscosity) => {
      const bench = {
        impeller,
        vessel,
        density: 915,
        curve: { law: "newton", viscosity },
        speed,
        volume: 0.0026,
      } as const;
      const { plant } = scaleUp({ ...bench, diameterImpellerPlant: 0.05 * s });
      for (const row of plant) {
        // Where the flow creeps at both scales the blend time is not known, only that its revolutions are the same.
        const ratio =
          row.ratios[row.blendTime === undefined && row.criterion === "blend-time" ? "speed" : own[row.criterion]];
        expect(off(ratio ?? Number.NaN, 1)).toBeLessThan(1e-9);
      }
      expect(plant.map((row) => row.criterion)).toContain("reynolds");
    }),
  );
});

test("a blend time that is known at the bench alone is no ground for a speed in the plant", () => {
  const impeller = { kind: "anchor", diameter: 0.1 } as const;
  const thick = { density: 915, curve: { law: "newton", viscosity: 0.2 }, speed: 1, volume: 0.001 } as const;
  const { plant } = scaleUp({ ...thick, impeller, diameterImpellerPlant: 1 });
  // At the bench Re is 46; at the same speed in the plant it would be 4600.
  expect(plant.map((row) => row.criterion)).not.toContain("blend-time");
  expect(plant.find((row) => row.criterion === "shear-rate")).not.toHaveProperty("blendTime");
});
