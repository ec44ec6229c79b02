import {
  batchMassForDuration,
  capacityFlowForDuration,
  fewestAdditions,
  fitConductance,
  heatCapacityBreakpoints,
  heatCapacityFunction,
  heatingTime,
  mediumTemperatureForDuration,
  powerForDuration,
  vesselSegment,
} from "gelwright/heat";
import { expect, test } from "vitest";

const code = (is: string) => expect.objectContaining({ code: is });
const closed = { heatLoss: { law: "newton", conductance: 0 }, temperatureAmbient: 20 } as const;
const leaking = { heatLoss: { law: "newton", conductance: 5 }, temperatureAmbient: 20 } as const;

test("a plate gives its most until it is near enough, and then in proportion: a straight line, then an exponential", () => {
  // 10 W/K from 100 °C, at most 300 W: up to 70 °C in 50 000 J / 300 W, from there with a time constant of 100 s.
  const timeTo = (at: number) => (at <= 70 ? (1000 * (at - 20)) / 300 : 50_000 / 300 + 100 * Math.log(30 / (100 - at)));
  for (const conductance of [10, () => 10]) {
    const heatSource = { kind: "medium", temperature: 100, conductance, powerMax: 300 } as const;
    const vessel = { ...closed, temperatureStart: 20, heatCapacity: 1000, heatSource };
    for (const temperatureEnd of [40, 70, 71, 95]) {
      const { duration, totals } = vesselSegment({ ...vessel, temperatureEnd });
      expect(duration / timeTo(temperatureEnd)).toBeCloseTo(1, 8);
      expect(totals.energySupplied / (1000 * (temperatureEnd - 20))).toBeCloseTo(1, 8);
      expect(totals.energyLost).toBe(0);
    }
    // And it takes its most from a charge that is hotter than it.
    const cold = { ...heatSource, temperature: 0 };
    const cooling = vesselSegment({
      ...closed,
      temperatureStart: 80,
      heatCapacity: 1000,
      heatSource: cold,
      temperatureEnd: 10,
    });
    expect(cooling.duration / (50_000 / 300 + 100 * Math.log(3))).toBeCloseTo(1, 8);
  }
});

test("a vessel that may warm by so many kelvins a second does so until its power is no longer enough", () => {
  // 500 W less 5 W/K above 20 °C into 1000 J/K; 0.2 K/s take 200 W, which are there up to 80 °C.
  const vessel = {
    ...leaking,
    temperatureStart: 20,
    heatCapacity: 1000,
    rateMax: 0.2,
    heatSource: { kind: "power", power: 500 },
  } as const;
  const timeTo = (at: number) => (at <= 80 ? (at - 20) / 0.2 : 300 + 200 * Math.log(40 / (120 - at)));
  for (const temperatureEnd of [50, 80, 81, 110]) {
    expect(vesselSegment({ ...vessel, temperatureEnd }).duration / timeTo(temperatureEnd)).toBeCloseTo(1, 12);
    const back = vesselSegment({ ...vessel, duration: timeTo(temperatureEnd) });
    expect(back.temperatureEnd).toBeCloseTo(temperatureEnd, 8);
  }
  // What is supplied is what the rate and the loss take.
  const { totals } = vesselSegment({ ...vessel, temperatureEnd: 80 });
  expect(totals.energyLost / (5 * 30 * 300)).toBeCloseTo(1, 12);
  expect(totals.energySupplied / (60_000 + 5 * 30 * 300)).toBeCloseTo(1, 12);
  // Cooled by a medium, and by no more than 0.2 K/s: 20 W/K from 0 °C without a loss, down to 10 °C at the full rate.
  const chiller = { kind: "medium", temperature: 0, conductance: 20 } as const;
  const cooling = { ...closed, temperatureStart: 80, heatCapacity: 1000, rateMax: 0.2, heatSource: chiller };
  expect(vesselSegment({ ...cooling, temperatureEnd: 10 }).duration).toBeCloseTo(350, 8);
  expect(vesselSegment({ ...cooling, temperatureEnd: 5 }).duration).toBeCloseTo(350 + 50 * Math.log(2), 8);
});

test("a vessel at rest takes no time to stay there, and one that must warm needs a net flow", () => {
  const still = { power: 0, conductance: 5, temperatureAmbient: 20, heatCapacity: 1000, temperatureStart: 20 };
  expect(heatingTime({ ...still, temperatureEnd: 20 })).toMatchObject({
    duration: 0,
    energySupplied: 0,
    energyLost: 0,
  });
  expect(() => heatingTime({ ...still, temperatureEnd: 21 })).toThrow(code("unreachable"));
  expect(() => heatingTime({ ...still, temperatureEnd: 19 })).toThrow("temperatureEnd");
  // 100 W against 5 W/K end at 40 °C, which is never reached.
  expect(() => heatingTime({ ...still, power: 100, temperatureEnd: 40 })).toThrow("less than 40 °C");
  const almost = heatingTime({ ...still, power: 100, temperatureEnd: 39.9 });
  expect(almost.duration / (200 * Math.log(200))).toBeCloseTo(1, 12);
  expect(almost.energySupplied - almost.energyLost).toBeCloseTo(almost.energyStored, 6);
});

test("what melts on the way does so at its point, at the start or at the end, or has done so before", () => {
  const heater = { power: 100, conductance: 0, temperatureAmbient: 20, heatCapacity: 1000, temperatureStart: 20 };
  const melting = (temperature: number) => ({ temperature, meltingEnergy: 5000, heatCapacityMelt: 2000 });
  const parts = (temperature: number) => {
    const { durationToMelt, durationMelting, durationAfter } = heatingTime({
      ...heater,
      ...{ temperatureEnd: 60, melting: melting(temperature) },
    });
    return [durationToMelt, durationMelting, durationAfter];
  };
  expect(parts(50)).toEqual([300, 50, 200]);
  expect(parts(60)).toEqual([400, 50, 0]);
  expect(parts(61)).toEqual([400, 0, 0]);
  // At its melting point a charge is taken as molten.
  expect(parts(20)).toEqual([0, 0, 800]);
  expect(parts(10)).toEqual([0, 0, 800]);
});

test("the power for a time is the stored heat over it, with the loss by its exponential", () => {
  const asked = { temperatureStart: 20, temperatureEnd: 60, heatCapacity: 1000, duration: 400 };
  expect(powerForDuration({ ...closed, ...asked })).toBeCloseTo(100, 8);
  // P − 5·40 e-folds: (P/5)(1 − exp(−400/200)) = 40.
  expect(powerForDuration({ ...leaking, ...asked })).toBeCloseTo(200 / -Math.expm1(-2), 7);
  expect(() => powerForDuration({ ...leaking, ...asked, powerMax: 231 })).toThrow("time with all of powerMax");
  expect(powerForDuration({ ...leaking, ...asked, powerMax: 232 })).toBeLessThan(232);
  expect(() => powerForDuration({ ...leaking, ...asked, powerMax: 200 })).toThrow("the loss takes 200 W");
  // A room that is warmer helps, and may be enough.
  const warm = { ...leaking, temperatureAmbient: 100 };
  const alone = 200 * Math.log(2);
  expect(powerForDuration({ ...warm, ...asked, duration: alone * 0.999 })).toBeGreaterThan(0);
  expect(() => powerForDuration({ ...warm, ...asked, duration: alone * 1.001 })).toThrow("the room alone warms");
  expect(() => powerForDuration({ ...closed, ...asked, temperatureEnd: 20 })).toThrow("temperatureEnd");
});

test("a medium, a mass and a flow for a time are refused by the end that they run into", () => {
  const way = { duration: 1000, temperatureStart: 80, temperatureEnd: 40 };
  const vessel = { heatCapacity: 1e5, conductance: 100 };
  // One time constant: 40 = T + (80 − T)/e.
  const medium = mediumTemperatureForDuration({ ...way, ...vessel });
  expect(medium + (80 - medium) / Math.E).toBeCloseTo(40, 10);
  expect(() => mediumTemperatureForDuration({ ...way, ...vessel, temperatureMin: medium + 0.1 })).toThrow(
    code("unreachable"),
  );
  expect(mediumTemperatureForDuration({ ...way, ...vessel, temperatureMin: medium })).toBe(medium);
  const heating = { ...way, temperatureStart: 20, temperatureEnd: 60 };
  const hot = mediumTemperatureForDuration({ ...heating, ...vessel });
  expect(() => mediumTemperatureForDuration({ ...heating, ...vessel, temperatureMax: hot - 1 })).toThrow(
    `a medium of ${hot - 1} °C`,
  );
  expect(mediumTemperatureForDuration({ ...heating, ...vessel, temperatureMax: hot })).toBe(hot);
  expect(() => mediumTemperatureForDuration({ ...heating, ...vessel, temperatureMax: 60 })).toThrow("comes to");
  expect(() => mediumTemperatureForDuration({ ...way, ...vessel, temperatureEnd: 80 })).toThrow("temperatureEnd");
  // Half of the way in ln 2 time constants.
  const mass = { ...way, conductance: 100, temperatureMedium: 0, specificHeat: 2000 };
  const whole = batchMassForDuration(mass);
  expect(whole).toBeCloseTo((100 * (1000 / Math.LN2)) / 2000, 9);
  const empty = whole * 2000;
  expect(() => batchMassForDuration({ ...mass, heatCapacityVessel: empty * 1.0001 })).toThrow(code("unreachable"));
  expect(batchMassForDuration({ ...mass, heatCapacityVessel: empty / 2 })).toBeCloseTo(whole / 2, 9);
  for (const temperatureMedium of [40, 50, 90])
    expect(() => batchMassForDuration({ ...mass, temperatureMedium })).toThrow(code("unreachable"));
  const flow = { ...way, heatCapacity: 1e5, conductance: 200, temperatureInlet: 0 };
  expect(() => capacityFlowForDuration({ ...flow, duration: 500 * Math.LN2 * 0.999 })).toThrow(
    "the time with any flow",
  );
  expect(capacityFlowForDuration({ ...flow, duration: 500 * Math.LN2 * 1.001 })).toBeGreaterThan(1e4);
});

test("parts of one law are one part of their masses, and breakpoints stand in order", () => {
  const wax = {
    law: "melting",
    solid: { law: "constant", specificHeat: 2000 },
    liquid: { law: "polynomial", coefficients: [1900, 3] },
    ...{ latentHeat: 180_000, temperatureOnset: 58, temperatureEnd: 66 },
  } as const;
  const other = { ...wax, temperatureOnset: 30, temperatureEnd: 62 } as const;
  const at = (parts: readonly object[], temperature: number) =>
    heatCapacityFunction({ parts: parts as never })(temperature);
  for (const temperature of [20, 60, 80]) {
    const [once, twice] = [
      [{ mass: 5, specificHeat: wax }],
      [
        { mass: 2, specificHeat: wax },
        { mass: 3, specificHeat: wax },
      ],
    ];
    expect(at(twice, temperature)).toBeCloseTo(at(once, temperature), 9);
    expect(at([...once, { mass: 4, specificHeat: 2000 }], temperature)).toBeCloseTo(at(once, temperature) + 8000, 9);
  }
  const parts = [
    { mass: 1, specificHeat: wax },
    { mass: 1, specificHeat: other },
    { mass: 1, specificHeat: 2000 },
  ];
  expect(heatCapacityBreakpoints({ parts })).toEqual([30, 58, 62, 66]);
});

test("an addition that just keeps the mix warm enough goes in at once, and a colder one in parts", () => {
  const melt = [{ mass: 10, specificHeat: 2000 }];
  const addition = { mass: 10, specificHeat: 2000, temperature: 20 };
  const asked = (temperatureMin: number | ((mass: number) => number)) =>
    fewestAdditions({ melt, temperatureMelt: 80, addition, temperatureMin });
  expect(asked(50)).toEqual({ number: 1, mass: 10, temperatureMin: 50 });
  // Five at once come to (10·80 + 5·20)/15 = 60.
  expect(asked(60)).toMatchObject({ number: 2, mass: 5, temperatureMin: 60 });
  expect(asked(60.001).number).toBe(3);
  expect(() => asked(80)).toThrow(code("unreachable"));
  // Between the parts the melt is warmed again; a limit that rises with what is in it counts at each part.
  expect(asked(() => 60)).toMatchObject({ number: 2, mass: 5 });
  expect(asked((mass) => (mass > 5 ? 65 : 60)).number).toBe(2);
  expect(asked((mass) => (mass > 9 ? 65.1 : 60)).number).toBeGreaterThan(2);
});

test("readings on an exponential give its conductance back without a doubt, cooling or warming", () => {
  for (const [ambient, start] of [
    [20, 80],
    [40, 5],
  ] as const) {
    const readings = [0, 300, 900, 2000].map((time) => ({
      time,
      temperature: ambient + (start - ambient) * Math.exp((-7 * time) / 9000),
    }));
    const fit = fitConductance({ readings, temperatureAmbient: ambient, heatCapacity: 9000 });
    expect(fit.conductance).toBeCloseTo(7, 9);
    expect(fit.temperatureStart).toBeCloseTo(start, 9);
    expect((fit.interval?.max ?? 0) - (fit.interval?.min ?? 0)).toBeLessThan(1e-6);
    expect(fit.interval?.min).toBeLessThanOrEqual(fit.conductance);
    expect(
      fitConductance({ readings: readings.slice(0, 2), temperatureAmbient: ambient, heatCapacity: 9000 }),
    ).toMatchObject({
      degreesOfFreedom: 0,
      residuals: [expect.closeTo(0, 9), expect.closeTo(0, 9)],
    });
  }
  const flat = [0, 60].map((time) => ({ time, temperature: 20 }));
  expect(() => fitConductance({ readings: flat, temperatureAmbient: 20, heatCapacity: 1 })).toThrow("off the room");
});
