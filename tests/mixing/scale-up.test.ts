import fc from "fast-check";
import type { FlowCurve } from "gelwright/laws";
import { type Impeller, type PowerCurve, type ScaleCriterion, scaleUp, speedToMoveGelAtWall } from "gelwright/mixing";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const few = { numRuns: 50 };
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
  const impeller = { kind: "pitched-blade turbine", diameter: 0.05, power, metznerOttoConstant: 13 } as const;
  const curve =
    flowIndex === undefined
      ? ({ law: "newton", viscosity } as const)
      : ({ law: "power-law", consistency: viscosity, flowIndex } as const);
  const bench = { impeller, vessel, density: 915, curve, speed: 5, volume: 0.0026 };
  const { plant } = scaleUp({
    ...bench,
    plant: { impeller: { diameter: 0.05 * s } },
    criteria: [criterion],
    beyond: "extend",
  });
  return plant[0]?.ratios.speed ?? Number.NaN;
}

const creeping: PowerCurve = { law: "laminar", laminarPowerConstant: 44 };
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
    few,
  );
});

test("between the two regimes the exponent lies between the two", () => {
  const both: PowerCurve = { law: "sum", laminarPowerConstant: 44, powerNumber: 1.3 };
  fc.assert(
    fc.property(scales, between(0.01, 10), (s, viscosity) => {
      const exponent = Math.log(kept("power-per-volume", s, { power: both, viscosity })) / Math.log(s);
      expect(exponent).toBeGreaterThan(-2 / 3);
      expect(exponent).toBeLessThan(0);
    }),
    few,
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
    few,
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
    few,
  );
});

test("a row keeps what it says, whatever it does to the rest", () => {
  const impeller = { kind: "pitched-blade turbine", diameter: 0.05 } as const;
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
      const { plant } = scaleUp({ ...bench, plant: { impeller: { diameter: 0.05 * s } } });
      for (const row of plant) {
        // Where the flow creeps at both scales the blend time is not known, only that its revolutions are the same.
        const ratio =
          row.ratios[row.blendTime === undefined && row.criterion === "blend-time" ? "speed" : own[row.criterion]];
        expect(off(ratio ?? Number.NaN, 1)).toBeLessThan(1e-9);
      }
      expect(plant.map((row) => row.criterion)).toContain("reynolds");
    }),
    few,
  );
});

test("a blend time that is known at the bench alone is no ground for a speed in the plant", () => {
  const impeller = { kind: "anchor", diameter: 0.1 } as const;
  const thick = { density: 915, curve: { law: "newton", viscosity: 0.2 }, speed: 1, volume: 0.001 } as const;
  const { plant } = scaleUp({ ...thick, impeller, plant: { impeller: { diameter: 1 } } });
  // At the bench Re is 46; at the same speed in the plant it would be 4600.
  expect(plant.map((row) => row.criterion)).not.toContain("blend-time");
  expect(plant.find((row) => row.criterion === "shear-rate")).not.toHaveProperty("blendTime");
});

describe("a gel that stands still at the wall has no blend time", () => {
  const impeller = { kind: "pitched-blade turbine", diameter: 0.05 } as const;
  const around = { diameter: 0.1, level: 0.1 };
  const gel = (yieldStress: number, consistency: number) => {
    const curve = { law: "herschel-bulkley", yieldStress, consistency, flowIndex: 0.7 } as const;
    return { impeller, vessel: around, density: 915, curve };
  };
  const scaled = (batch: ReturnType<typeof gel>, speed: number) =>
    scaleUp({ ...batch, speed, volume: 0.00079, plant: { impeller: { diameter: 0.2 } } });

  test.each<[string, number, number]>([
    ["thin enough for a time", 20, 0.5],
    ["that creeps", 30, 200],
  ])("%s, below the speed that moves it, and has one above", (_what, yieldStress, consistency) => {
    const batch = gel(yieldStress, consistency);
    const limit = speedToMoveGelAtWall(batch);
    const [below, above] = [0.99, 1.01].map((times) => scaled(batch, times * limit));
    expect([below?.bench.reachesWall, above?.bench.reachesWall]).toEqual([false, true]);
    expect(below?.bench).not.toHaveProperty("blendTime");
    expect(below?.plant.map(({ criterion }) => criterion)).not.toContain("blend-time");
    expect(above?.plant.map(({ criterion }) => criterion)).toContain("blend-time");
    for (const row of [...(below?.plant ?? []), ...(above?.plant ?? [])])
      if (row.reachesWall === false) expect(row).not.toHaveProperty("blendTime");
  });

  test("nor is one known without the vessel, and a gel without a yield stress is not asked", () => {
    const { vessel: _, ...untold } = gel(60, 12);
    const { bench, plant } = scaled(untold as ReturnType<typeof gel>, 20);
    expect(bench).not.toHaveProperty("reachesWall");
    expect(plant.map(({ criterion }) => criterion)).not.toContain("blend-time");
    const oil = { ...gel(0, 1), curve: { law: "newton", viscosity: 1e-3 } } as const;
    const thin = scaleUp({ ...oil, speed: 5, volume: 0.00079, plant: { impeller: { diameter: 0.2 } } });
    expect(thin.bench).not.toHaveProperty("reachesWall");
    expect(thin.bench.blendTime).toBeGreaterThan(0);
  });
});

/** The two forms of a plant: the bench's shape by its diameter, and the same told as a plant of its own. */
function bothForms(s: number, n: number, consistency: number) {
  const impeller = {
    kind: "pitched-blade turbine",
    diameter: 0.05,
    blades: 6,
    bladeWidth: 0.012,
    bladeAngle: 60,
  } as const;
  const curve = { law: "power-law", consistency, flowIndex: n } as const;
  const bench = { impeller, vessel, density: 915, curve, speed: 8, volume: 0.0026 } as const;
  const plant = {
    impeller: { ...impeller, diameter: 0.05 * s, bladeWidth: 0.012 * s },
    vessel: { diameter: 0.15 * s, level: 0.15 * s },
    volume: 0.0026 * s ** 3,
  };
  return [scaleUp({ ...bench, plant: { impeller: { diameter: 0.05 * s } } }), scaleUp({ ...bench, plant })] as const;
}

test("a plant of the bench's shape is the same plant whichever way it is told", () => {
  fc.assert(
    fc.property(scales, between(0.4, 1), between(-3, 1), (s, n, exponent) => {
      const [byDiameter, byPlant] = bothForms(s, n, 10 ** exponent);
      expect(byPlant.bench).toEqual(byDiameter.bench);
      // That the revolutions to blend are the same is known of one shape, and of a plant of its own it is not asked.
      const rows = byDiameter.plant.filter(({ criterion, blendTime }) => criterion !== "blend-time" || blendTime);
      expect(byPlant.plant.map(({ criterion }) => criterion)).toEqual(rows.map(({ criterion }) => criterion));
      byPlant.plant.forEach((row, i) => {
        for (const [name, ratio] of Object.entries(row.ratios))
          expect(off(ratio, rows[i]?.ratios[name as keyof typeof row.ratios] ?? Number.NaN)).toBeLessThan(1e-9);
      });
    }),
    few,
  );
});

/** An anchor in a kettle for a propeller in a beaker. */
const unlike = (impeller: Impeller, curve: FlowCurve = { law: "newton", viscosity: 3 }) =>
  scaleUp({
    impeller: { kind: "propeller", diameter: 0.05 },
    density: 915,
    curve,
    speed: 10,
    volume: 0.001,
    plant: { impeller, vessel: { diameter: 0.6, level: 0.5 }, volume: 0.14 },
  });

test("in an unlike plant each criterion is solved for the plant's own impeller", () => {
  const gel = { law: "herschel-bulkley", yieldStress: 20, consistency: 12, flowIndex: 0.5 } as const;
  const { bench, plant } = unlike({ kind: "anchor", diameter: 0.54 }, gel);
  const rowOf = (criterion: ScaleCriterion) => plant.find((row) => row.criterion === criterion);
  // The shear constants are 10 and 25, the diameters 50 and 540 mm.
  expect(off(rowOf("shear-rate")?.speed ?? 0, 4)).toBeLessThan(1e-12);
  expect(off(rowOf("tip-speed")?.speed ?? 0, 10 / 10.8)).toBeLessThan(1e-12);
  expect(off(rowOf("froude")?.speed ?? 0, 10 / Math.sqrt(10.8))).toBeLessThan(1e-12);
  const own = {
    "power-per-volume": "powerPerVolume",
    reynolds: "reynolds",
    froude: "froude",
    "tip-speed": "tipSpeed",
  } as const;
  for (const [criterion, name] of Object.entries(own))
    expect(off(rowOf(criterion as ScaleCriterion)?.[name] ?? 0, bench[name])).toBeLessThan(1e-9);
  for (const row of plant) {
    expect(off(row.powerPerVolume, row.power / 0.14)).toBeLessThan(1e-14);
    expect(off(row.ratios.torquePerVolume, row.torque / 0.14 / (bench.torque / 0.001))).toBeLessThan(1e-12);
    expect(off(row.shearRate ?? 0, 25 * row.speed)).toBeLessThan(1e-14);
  }
  // The flow creeps, and the revolutions of a propeller are not those of an anchor.
  expect(rowOf("blend-time")).toBeUndefined();
});

test("what is not known of an unlike plant is left out, and what it needs is asked for at its place", () => {
  const power = { law: "sum", laminarPowerConstant: 500, powerNumber: 2 } as const;
  const { plant } = unlike({ kind: "rotor-stator", diameter: 0.1, power });
  expect(plant.map(({ criterion }) => criterion)).toEqual(["tip-speed", "power-per-volume", "reynolds", "froude"]);
  for (const { ratios } of plant) expect(ratios).not.toHaveProperty("shearRate");
  expect(() => unlike({ kind: "rotor-stator", diameter: 0.1 })).toThrow("plant.impeller.power");
  const thinning = { law: "power-law", consistency: 12, flowIndex: 0.5 } as const;
  expect(() => unlike({ kind: "rotor-stator", diameter: 0.1, power }, thinning)).toThrow(
    "plant.impeller.metznerOttoConstant",
  );
  expect(() => unlike({ kind: "pitched-blade turbine", diameter: 0.7 })).toThrow(
    "plant.impeller.power.diameterToVessel",
  );
  const impeller = { kind: "propeller", diameter: 0.05 } as const;
  const bench = { impeller, density: 915, curve: thinning, speed: 10, volume: 0.001 } as const;
  // Told by more than a diameter it is a plant of its own, of which the rest is asked.
  const sized = { diameter: 0.2 };
  expect(() => scaleUp({ ...bench, plant: { impeller: sized, volume: 0.1 } as never })).toThrow("plant.impeller.kind");
  expect(() => scaleUp({ ...bench, plant: { impeller: { ...impeller, ...sized } } as never })).toThrow("plant.volume");
  expect(() => scaleUp({ ...bench, plant: { impeller: { diameter: 0 } } })).toThrow("plant.impeller.diameter");
  expect(() => scaleUp({ ...bench, plant: {} as never })).toThrow("plant.impeller");
  expect(() => scaleUp(bench as never)).toThrow("plant: found undefined");
});

test("where power no longer knows viscosity, power per volume asks the cube root of what two impellers differ by", () => {
  const thin = { density: 1000, curve: { law: "newton", viscosity: 1e-3 } } as const;
  fc.assert(
    fc.property(scales, between(0.2, 6), between(0.5, 2), (s, powerNumber, fuller) => {
      const bench = { kind: "other", diameter: 0.1, power: { law: "turbulent", powerNumber: 1.3 } } as const;
      const impeller = { kind: "other", diameter: 0.1 * s, power: { law: "turbulent", powerNumber } } as const;
      const { plant } = scaleUp({
        ...thin,
        impeller: bench,
        speed: 10,
        volume: 0.02,
        plant: { impeller, volume: 0.02 * s ** 3 * fuller },
        criteria: ["power-per-volume"],
        beyond: "extend",
      });
      const expected = s ** (-2 / 3) * Math.cbrt((1.3 / powerNumber) * fuller);
      expect(off(plant[0]?.ratios.speed ?? Number.NaN, expected)).toBeLessThan(1e-11);
    }),
  );
});
