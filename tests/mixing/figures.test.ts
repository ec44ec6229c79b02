import {
  additionSchedule,
  additionTimes,
  bladePowerBand,
  blendTime,
  gelAlongAdditions,
  type Impeller,
  incorporationTimeScale,
  motorMargin,
  powerBandOf,
  restartAfterOvershoot,
  scaleUp,
  stirring,
  wideBladePowerBand,
} from "gelwright/mixing";
import { expect, test } from "vitest";
import { regimeAt } from "../../src/mixing/regime.js";

test("a motor gives its power less what the drive loses, and a torque of power over 2π N", () => {
  const stirred = { power: 200, speed: 2, powerMotor: 370, efficiency: 0.8 };
  const { torque, margin } = motorMargin(stirred);
  // 200 W at 2 rev/s: 200/(4π) N·m; 296 W reach the shaft.
  expect(torque).toBeCloseTo(50 / Math.PI, 12);
  expect(margin).toBeCloseTo(1.48, 12);
  expect(motorMargin(stirred)).not.toHaveProperty("marginTorque");
  expect(motorMargin({ ...stirred, torqueMax: 40 }).marginTorque).toBeCloseTo((40 * Math.PI) / 50, 12);
  expect(motorMargin({ ...stirred, efficiency: 1 }).margin).toBeCloseTo(1.85, 12);
});

test("the factor on the bench's times is that of what is kept: half of it a second, twice the time", () => {
  const ofEach = [
    incorporationTimeScale({ keeps: "revolutions", speedBench: 3, speedPlant: 1.5 }),
    incorporationTimeScale({ keeps: "tip travel", tipSpeedBench: 4, tipSpeedPlant: 2 }),
    incorporationTimeScale({ keeps: "energy per volume", powerPerVolumeBench: 500, powerPerVolumePlant: 250 }),
    incorporationTimeScale({ keeps: "strain", shearRateBench: 30, shearRatePlant: 15 }),
  ];
  expect(ofEach).toEqual([2, 2, 2, 2]);
  expect(() => incorporationTimeScale({ keeps: "temper" } as never)).toThrow("keeps");
});

test("an addition goes in at the pump's rate, is waited for, and the next begins where it ends", () => {
  const additions = [
    { mass: 0.2, volumeFractionOil: 0.2 },
    { mass: 0.4, volumeFractionOil: 0.4 },
  ];
  const incorporationTime = { law: "linear", atNoOil: 60, perVolumeFraction: 100 } as const;
  expect(additionTimes({ additions, incorporationTime, incorporationTimeFactor: 0.5, rateMax: 0.02 })).toEqual([
    { timeStart: 0, timeIn: 10, timeEnd: 50 },
    { timeStart: 50, timeIn: 70, timeEnd: 120 },
  ]);
  expect(additionTimes({ additions, incorporationTime }).map(({ timeIn }) => timeIn)).toEqual([0, 80]);
});

const restart = {
  failed: { massGelFormer: 2, massOil: 6 },
  massFresh: 3,
  oilPerGelFormer: 4,
  densityOil: 900,
  densityGelFormer: 1200,
  share: { law: "constant", value: 0.1 },
} as const;

test("a failed mass counts by the density that its oil and its gel former give it", () => {
  const { failed, massOilFurther, massEnd } = restartAfterOvershoot(restart);
  // 8 kg of 6/900 + 2/1200 m³ into 3 kg of 3/1200 m³.
  const volume = 6 / 900 + 2 / 1200;
  expect(failed.at(-1)?.volumeFractionOil).toBeCloseTo(volume / (volume + 3 / 1200), 12);
  expect([massOilFurther, massEnd]).toEqual([expect.closeTo(14, 12), expect.closeTo(25, 12)]);
});

test("with just as much fresh gel former as the failed mass asks for no oil follows, and with less it is refused with how much", () => {
  // 6 kg of oil are two to one of 3 kg of gel former, of which 2 are there.
  const exact = { ...restart, oilPerGelFormer: 2 };
  expect(restartAfterOvershoot({ ...exact, massFresh: 1 })).toMatchObject({ massOilFurther: 0, massEnd: 9 });
  expect(() => restartAfterOvershoot({ ...exact, massFresh: 0.9 })).toThrow("at least 1 kg");
  expect(() => restartAfterOvershoot({ ...exact, massFresh: 1 - 1e-9 })).toThrow("at least 1 kg");
});

test("masses that only together pass what a double holds are refused before anything is added", () => {
  const oil = { massGelFormer: 1, massToAdd: 1, densityOil: 900, densityGelFormer: 1200 } as const;
  const share = { law: "constant", value: 1e300 } as const;
  for (const masses of [
    { massGelFormer: 1e308, massOil: 1e308 },
    { massOil: 1e308, massToAdd: 1e308 },
    { massGelFormer: 1e308, massToAdd: 1e308 },
    { massGelFormer: 1e308, densityGelFormer: 900, massOil: 1 },
  ])
    expect(() => additionSchedule({ ...oil, ...masses, share })).toThrow("mass in the vessel");
});

test("a scaled vessel keeps its baffles in proportion, and its blend time is that of its own power number and size", () => {
  const stirred = {
    impeller: { kind: "pitched-blade turbine", diameter: 0.05, bladeWidth: 0.012 },
    vessel: { diameter: 0.15, level: 0.18, baffles: 4, baffleWidth: 0.015 },
    ...{ density: 900, curve: { law: "newton" as const, viscosity: 0.002 }, speed: 6, volume: 0.003 },
  } as const;
  const s = 4;
  const byDiameter = scaleUp({ ...stirred, plant: { impeller: { diameter: 0.05 * s } } });
  const plant = {
    impeller: { ...stirred.impeller, diameter: 0.05 * s, bladeWidth: 0.012 * s },
    vessel: { diameter: 0.15 * s, level: 0.18 * s, baffles: 4, baffleWidth: 0.015 * s },
    volume: 0.003 * s ** 3,
  };
  const byPlant = scaleUp({ ...stirred, plant });
  expect(byPlant.plant.map(({ criterion }) => criterion)).toEqual(byDiameter.plant.map(({ criterion }) => criterion));
  byDiameter.plant.forEach(({ power, blendTime: time, ratios }, i) => {
    expect(power / (byPlant.plant[i]?.power ?? 0)).toBeCloseTo(1, 9);
    expect((time ?? 1) / (byPlant.plant[i]?.blendTime ?? 1)).toBeCloseTo(1, 9);
    expect(ratios.blendTime).toBeCloseTo((time ?? 0) / (byDiameter.bench.blendTime ?? 1), 12);
  });
  const { powerNumber, blendTime: time } = byDiameter.bench;
  const { impeller, vessel, density, speed } = stirred;
  const alone = blendTime({ impeller, vessel, density, speed, viscosity: 0.002, powerNumber });
  expect((time ?? 0) / alone.duration).toBeCloseTo(1, 12);
});

test("the flow creeps below Re 10, whirls above 10 000, and is between the two at either", () => {
  const regime = (reynolds: number) =>
    stirring({
      impeller: { kind: "propeller", diameter: 0.1 },
      ...{ density: 1000, curve: { law: "newton", viscosity: 1 }, speed: reynolds / 10, beyond: "extend" },
    }).regime;
  expect([9.99, 10.01, 9_999, 10_001].map(regime)).toEqual(["laminar", "transitional", "transitional", "turbulent"]);
  expect([regimeAt(10), regimeAt(10_000)]).toEqual(["transitional", "transitional"]);
});

test("what is not read along the oil is left out of a moment, and is not there as undefined", () => {
  const additions = [{ volumeFractionOil: 0.6 }, { volumeFractionOil: 0.8 }];
  const viscosity = [
    { volumeFractionOil: 0.5, value: 2 },
    { volumeFractionOil: 0.7, value: 8 },
  ];
  const along = gelAlongAdditions({ additions, viscosity, torquePerViscosity: 0.5 });
  expect(along).toStrictEqual([{ viscosity: expect.closeTo(4, 12), torque: expect.closeTo(2, 12) }, {}]);
  expect(gelAlongAdditions({ additions, yieldStress: viscosity })).toStrictEqual([
    { yieldStress: expect.closeTo(4, 12) },
    {},
  ]);
});

test("the band of an impeller goes by what its power is of: the caller's curve, its blades in a vessel, or its kind", () => {
  const vessel = { diameter: 0.5, level: 0.5 };
  const own = { law: "sum", laminarPowerConstant: 50, powerNumber: 1 } as const;
  const of = (impeller: Impeller, around?: typeof vessel) =>
    powerBandOf({ impeller, ...(around && { vessel: around }), reynolds: 50 });
  const pitched = { kind: "pitched-blade turbine", diameter: 0.2 } as const;
  expect(of({ ...pitched, power: own }, vessel)).toEqual({
    by: "factor",
    min: 1,
    max: 1,
    basis: "stated",
    sources: [],
  });
  expect(of(pitched, vessel)).toBe(bladePowerBand);
  expect(of({ ...pitched, diameter: 0.449 }, vessel)).toBe(bladePowerBand);
  expect(of({ kind: "anchor", diameter: 0.45, armHeight: 0.3 }, vessel)).toBe(wideBladePowerBand);
  // Without its vessel, or of a kind whose blades have no such correlation, it is the spread of the tables.
  const propeller = { kind: "propeller", diameter: 0.2 } as const;
  for (const band of [of(pitched), of(propeller), of(propeller, vessel)])
    expect(band).toMatchObject({ basis: "spread", sources: ["stirring-tables"] });
  expect(of(propeller, vessel)).toEqual(of(propeller));
  expect(of({ kind: "helical ribbon", diameter: 0.3, starts: 1, pitch: 0.3 })).toMatchObject({
    sources: ["rieger-1988"],
  });
});

test("of one shape the shear rate goes with the speed, whether its constant is known or not; of two it has to be", () => {
  const power = { law: "sum", laminarPowerConstant: 50, powerNumber: 1 } as const;
  const bench = {
    impeller: { kind: "other", diameter: 0.05, power },
    ...{ density: 900, curve: { law: "newton" as const, viscosity: 0.5 }, speed: 6, volume: 0.003 },
    criteria: ["shear-rate"],
    beyond: "extend",
  } as const;
  const same = scaleUp({ ...bench, plant: { impeller: { diameter: 0.2 } } });
  expect(same.plant.map(({ speed }) => speed)).toEqual([6]);
  expect(same.plant[0]?.ratios).not.toHaveProperty("shearRate");
  const impeller = { kind: "propeller", diameter: 0.2 } as const;
  expect(scaleUp({ ...bench, plant: { impeller, volume: 0.2 } }).plant).toEqual([]);
});
