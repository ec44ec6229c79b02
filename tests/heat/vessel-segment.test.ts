import fc from "fast-check";
import {
  heatingTime,
  holdTemperature,
  jacketConductance,
  jacketTime,
  plateHeatingTime,
  powerForDuration,
  steadyTemperature,
  vesselSegment,
  vesselTimes,
} from "gelwright/heat";
import { heatLossFunction } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const near = (actual: number, expected: number, within = 1e-10) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const newton = (conductance: number) => ({ law: "newton", conductance }) as const;
const unreachable = (message: string) =>
  expect.objectContaining({ code: "unreachable", message: expect.stringContaining(message) });

/** A loss of so little that nothing comes of it is none: the smallest doubles have no digits to be conserved. */
const lossUpTo = (max: number) => fc.oneof(fc.constant(0), between(1e-9, max));

const plate = fc
  .record({
    start: between(-10, 40),
    rise: between(1, 100),
    hotter: between(1, 100),
    conductanceHeater: between(0.5, 50),
    conductance: lossUpTo(0.4),
    share: between(0.3, 3),
    heatCapacity: between(500, 1e6),
  })
  .map(({ start, rise, hotter, conductanceHeater, conductance, share, heatCapacity }) => {
    const temperatureEnd = start + rise;
    const temperatureHeater = temperatureEnd + hotter + 100;
    return {
      temperatureHeater,
      conductanceHeater,
      powerMax: share * conductanceHeater * (temperatureHeater - temperatureEnd) + 0.4 * (rise + 20),
      conductance: conductance * Math.min(1, conductanceHeater),
      temperatureAmbient: start - 5,
      temperatureStart: start,
      temperatureEnd,
      heatCapacity,
    };
  });

test("a plate that is limited in power first and by its temperature then: closed form and quadrature are one", () => {
  fc.assert(
    fc.property(plate, ({ temperatureHeater, conductanceHeater, powerMax, conductance, ...way }) => {
      const closed = plateHeatingTime({ temperatureHeater, conductanceHeater, powerMax, conductance, ...way });
      const heatSource = {
        kind: "medium",
        temperature: temperatureHeater,
        conductance: conductanceHeater,
        powerMax,
      } as const;
      const { duration, totals } = vesselSegment({ ...way, heatSource, heatLoss: newton(conductance) });
      near(duration, closed.duration);
      near(totals.energySupplied - totals.energyLost, way.heatCapacity * (way.temperatureEnd - way.temperatureStart));
      near(
        steadyTemperature({
          heatSource,
          heatLoss: newton(conductance),
          temperatureAmbient: way.temperatureAmbient,
        }),
        closed.temperatureSteady,
        1e-12,
      );
    }),
  );
});

test("a plate without a limit of power and a plate that is never near its temperature are its two ends", () => {
  const way = { temperatureAmbient: 20, temperatureStart: 20, temperatureEnd: 80, heatCapacity: 2000 };
  const always = plateHeatingTime({
    ...way,
    temperatureHeater: 500,
    conductanceHeater: 10,
    powerMax: 300,
    conductance: 1,
  });
  near(always.duration, heatingTime({ ...way, power: 300, conductance: 1 }).duration, 1e-14);
  expect(always.durationFullPower).toBe(always.duration);
  expect(always.temperatureSteady).toBe(320);
  const free = plateHeatingTime({ ...way, temperatureHeater: 120, conductanceHeater: 10, conductance: 0 });
  near(free.duration, 200 * Math.log(100 / 40), 1e-14);
  expect(free.durationFullPower).toBe(0);
  expect(() => plateHeatingTime({ ...way, temperatureHeater: 85, conductanceHeater: 1, conductance: 1 })).toThrow(
    unreachable("less than 52.5 °C, the steady temperature"),
  );
});

test("constant power with Newton's loss is what the closed form says, up to close below the steady temperature", () => {
  fc.assert(
    fc.property(between(0.01, 0.9999), between(0, 30), between(100, 1e6), (share, from, heatCapacity) => {
      const room = { conductance: 2, temperatureAmbient: 15 };
      const steady = steadyTemperature({
        heatSource: 300,
        heatLoss: room.conductance,
        temperatureAmbient: room.temperatureAmbient,
      });
      const way = { temperatureStart: from, temperatureEnd: from + share * (steady - from), heatCapacity };
      const closed = heatingTime({ power: 300, ...room, ...way });
      const input = {
        ...way,
        heatSource: { kind: "power", power: 300 },
        heatLoss: newton(2),
        temperatureAmbient: 15,
      } as const;
      const { duration, totals } = vesselSegment(input);
      near(duration, closed.duration, 1e-9);
      near(totals.energySupplied, closed.energySupplied, 1e-9);
    }),
  );
});

test("a jacket with flowing coolant is a medium with the jacket's conductance", () => {
  const batch = { heatCapacity: 1050000, temperatureStart: 85, temperatureEnd: 45 };
  const jacket = { conductance: 360, capacityFlow: 1672 };
  const segment = vesselSegment({
    ...batch,
    heatSource: { kind: "medium", temperature: 15, conductance: jacketConductance(jacket) },
    heatLoss: newton(0),
    temperatureAmbient: 20,
  });
  near(segment.duration, jacketTime({ ...batch, ...jacket, temperatureInlet: 15 }).duration);
  near(segment.totals.energySupplied, -1050000 * 40);
  expect(segment.totals.energyLost).toBe(0);
});

const supplied = fc.record({
  temperatureStart: between(10, 90),
  medium: between(0, 140),
  conductance: between(1, 100),
  powerMax: fc.option(between(100, 5000), { nil: undefined }),
  loss: lossUpTo(20),
  rateMax: fc.option(between(0.001, 0.1), { nil: undefined }),
  rise: between(-3, 8),
  way: between(0.001, 0.9999),
});

test("energy is conserved over every segment, heated or cooled, held back or not, with a heat capacity that varies", () => {
  fc.assert(
    fc.property(supplied, ({ temperatureStart, medium, conductance, powerMax, loss, rateMax, rise, way }) => {
      // C = 20000 + rise T has the integral 20000 T + rise T²/2.
      const heat = (at: number) => (20000 + (rise * at) / 2) * at;
      const balance = {
        heatSource: { kind: "medium", temperature: medium, conductance, powerMax },
        heatLoss: newton(loss),
        temperatureAmbient: 20,
      } as const;
      const steady = steadyTemperature(balance);
      fc.pre(Math.abs(steady - temperatureStart) > 1);
      const segment = vesselSegment({
        ...balance,
        temperatureStart,
        temperatureEnd: temperatureStart + way * (steady - temperatureStart),
        heatCapacity: (at) => 20000 + rise * at,
        rateMax,
      });
      const { energySupplied, energyLost } = segment.totals;
      const scale = Math.abs(energySupplied) + Math.abs(energyLost);
      const stored = heat(segment.temperatureEnd) - heat(temperatureStart);
      expect(Math.abs(energySupplied - energyLost - stored)).toBeLessThanOrEqual(1e-10 * scale);
    }),
  );
});

test("a duration leads to the temperature that takes it", () => {
  for (const temperatureEnd of [25, 47, 66, 84, 110]) {
    const vessel = {
      temperatureStart: 20,
      heatCapacity: 2040,
      heatSource: { kind: "medium", temperature: 150, conductance: 5, powerMax: 300 },
      heatLoss: newton(1.1),
      temperatureAmbient: 20,
    } as const;
    const { duration } = vesselSegment({ ...vessel, temperatureEnd });
    near(vesselSegment({ ...vessel, duration }).temperatureEnd, temperatureEnd, 1e-12);
  }
});

test("a solver that knows nothing of panels comes to the same temperature", () => {
  const heatCapacity = (at: number) => 2000 + 18000 * Math.exp(-(((at - 60) / 6) ** 2));
  const sourceAt = (at: number) => Math.min(300, 5 * (150 - at));
  const slope = (_t: number, y: readonly number[]) => {
    const at = y[0] as number;
    const loss = 1.1 * (at - 20);
    const capacity = heatCapacity(at);
    return [(Math.min(sourceAt(at), loss + 0.3 * capacity) - loss) / capacity];
  };
  const segment = vesselSegment({
    temperatureStart: 20,
    duration: 1500,
    heatCapacity,
    heatSource: { kind: "medium", temperature: 150, conductance: 5, powerMax: 300 },
    heatLoss: newton(1.1),
    temperatureAmbient: 20,
    rateMax: 0.3,
  });
  near(march(slope, [20], 1500, 1e-10)[0] as number, segment.temperatureEnd, 1e-7);
});

test("a heat source that is held back changes the temperature at the rate that was set, until it has no more to hold back", () => {
  const vessel = {
    temperatureStart: 85,
    heatCapacity: 84000,
    heatSource: { kind: "medium", temperature: 10, conductance: 60 },
    heatLoss: newton(5),
    temperatureAmbient: 20,
  } as const;
  const rateMax = 1 / 60;
  near(vesselSegment({ ...vessel, temperatureEnd: 60, rateMax }).duration, 25 * 60);
  // Where 60 (T − 10) + 5 (T − 20) falls to 84000/60 W the chiller gives all it has.
  const change = (1400 + 600 + 100) / 65;
  const rest = { ...vessel, temperatureStart: change, temperatureEnd: 20 };
  near(
    vesselSegment({ ...vessel, temperatureEnd: 20, rateMax }).duration,
    (85 - change) / rateMax + vesselSegment(rest).duration,
  );
  // A loss that is faster than the rate alone leaves the heat source off: it does not turn into a heater.
  const alone = vesselSegment({ ...vessel, temperatureEnd: 60, rateMax: 1e-4 });
  near(alone.duration, (84000 / 5) * Math.log(65 / 40));
  expect(alone.totals.energySupplied).toBe(0);
});

test("no vessel is driven past the temperature at which heat source and loss hold each other, and the refusal names it", () => {
  const vessel = { temperatureStart: 20, heatCapacity: 2000, heatLoss: newton(5), temperatureAmbient: 20 };
  const heater = { kind: "power", power: 300 } as const;
  expect(steadyTemperature(without({ ...vessel, heatSource: heater }, "temperatureStart", "heatCapacity"))).toBeCloseTo(
    80,
    10,
  );
  expect(() => vesselSegment({ ...vessel, heatSource: heater, temperatureEnd: 85 })).toThrow(
    unreachable("less than 80"),
  );
  expect(vesselSegment({ ...vessel, heatSource: heater, duration: 1e7 }).temperatureEnd).toBeCloseTo(80, 9);
  const cold = { kind: "medium", temperature: 10, conductance: 5 } as const;
  expect(() => vesselSegment({ ...vessel, temperatureStart: 85, heatSource: cold, temperatureEnd: 14 })).toThrow(
    unreachable("short of the limit, 15"),
  );
  expect(() =>
    steadyTemperature(
      without({ ...vessel, heatLoss: newton(0), heatSource: heater }, "temperatureStart", "heatCapacity"),
    ),
  ).toThrow(unreachable("a loss that takes all the power"));
});

test("a hold draws what is lost, and is refused where the heat source is too small", () => {
  const held = {
    temperature: 75,
    duration: 600,
    heatLoss: newton(2),
    temperatureAmbient: 20,
    heatSource: { kind: "power", power: 110 },
  } as const;
  expect(holdTemperature(held)).toEqual({ power: 110, dutyCycle: 1, energySupplied: 66000 });
  const cooled = holdTemperature({
    ...held,
    temperature: 5,
    heatSource: { kind: "medium", temperature: -10, conductance: 4 },
  });
  expect(cooled).toEqual({ power: -30, dutyCycle: 0.5, energySupplied: -18000 });
  expect(holdTemperature({ ...held, temperature: 20 }).dutyCycle).toBe(0);
  expect(() => holdTemperature({ ...held, temperature: 76 })).toThrow(unreachable("makes up for the loss (112 W)"));
  expect(() => holdTemperature({ ...held, temperature: 10 })).toThrow(unreachable("temperature: found 10"));
});

test("the power for a time gives that time back, with any loss and whatever melts", () => {
  fc.assert(
    fc.property(between(60, 36000), lossUpTo(20), between(0, 40), between(1, 60), (duration, loss, start, rise) => {
      const vessel = {
        temperatureStart: start,
        temperatureEnd: start + rise,
        heatCapacity: (at: number) => 2e5 + 1e5 * Math.exp(-(((at - 50) / 10) ** 2)),
        heatLoss: newton(loss),
        temperatureAmbient: 15,
      };
      fc.pre(loss * duration < 4e6 && loss * (15 - start) < (2e5 * rise) / duration);
      const power = powerForDuration({ ...vessel, duration });
      near(vesselSegment({ ...vessel, heatSource: { kind: "power", power } }).duration, duration, 1e-9);
    }),
  );
});

test("the power for a time is refused where the heater is too small, or the room is faster", () => {
  const vessel = { temperatureStart: 20, temperatureEnd: 80, heatCapacity: 2000, temperatureAmbient: 20 };
  const small = { ...vessel, heatLoss: newton(1), duration: 300, powerMax: 300 };
  // ln(300/240) · 2000 s
  expect(() => powerForDuration(small)).toThrow(unreachable("446.287"));
  expect(() => powerForDuration({ ...small, powerMax: 60 })).toThrow(unreachable("the loss takes 60 W"));
  near(powerForDuration({ ...small, duration: 2000 * Math.log(300 / 240) + 1e-6 }), 300, 1e-8);
  const warmRoom = { ...vessel, temperatureAmbient: 100, heatLoss: newton(1), duration: 5000 };
  expect(() => powerForDuration(warmRoom)).toThrow(unreachable("the room alone warms"));
  near(powerForDuration({ ...warmRoom, duration: 2000 * Math.log(80 / 20) - 1 }), 0.01, 1);
});

test("a vessel that loses heat by convection and radiation: steady temperature, segment, power and hold agree", () => {
  const heatLoss = {
    law: "sum",
    parts: [
      { law: "natural convection", surface: "vertical", area: 1.2, height: 0.6 },
      { law: "radiation", area: 1.2, emissivity: 0.9 },
    ],
  } as const;
  const room = { heatLoss, temperatureAmbient: 20 };
  const vessel = { ...room, temperatureStart: 20, heatCapacity: 189200 };
  const lossAt = heatLossFunction(heatLoss, 20);
  const steady = steadyTemperature({ ...room, heatSource: { kind: "power", power: 900 } });
  near(lossAt(steady), 900);
  expect(() =>
    vesselSegment({ ...vessel, heatSource: { kind: "power", power: 900 }, temperatureEnd: steady + 0.01 }),
  ).toThrow(unreachable("where the loss takes all the power"));
  for (const duration of [1800, 14400, 86400]) {
    const power = powerForDuration({ ...vessel, temperatureEnd: 85, duration });
    const segment = vesselSegment({ ...vessel, heatSource: { kind: "power", power }, temperatureEnd: 85 });
    near(segment.duration, duration, 1e-9);
    near(segment.totals.energySupplied - segment.totals.energyLost, 189200 * 65);
    near(segment.totals.energySupplied, power * duration, 1e-9);
  }
  near(
    holdTemperature({ ...room, temperature: 85, duration: 60, heatSource: { kind: "power", power: 2000 } }).power,
    lossAt(85),
  );
  const slope = (_t: number, y: readonly number[]) => [(900 - lossAt(y[0] as number)) / 189200];
  const { temperatureEnd } = vesselSegment({ ...vessel, heatSource: { kind: "power", power: 900 }, duration: 7200 });
  near(march(slope, [20.001], 7200 - (0.001 * 189200) / 900, 1e-11)[0] as number, temperatureEnd, 1e-8);
});

test("a steady temperature takes a number beside a law, and two numbers in closed form", () => {
  const heatSource = { kind: "power", power: 300 } as const;
  const temperatureAmbient = 20;
  expect(steadyTemperature({ heatSource: 300, heatLoss: 1.25, temperatureAmbient })).toBe(260);
  near(steadyTemperature({ heatSource, heatLoss: 1.25, temperatureAmbient }), 260, 1e-12);
  near(steadyTemperature({ heatSource: 300, heatLoss: newton(1.25), temperatureAmbient }), 260, 1e-12);
  for (const heatLoss of [0, newton(0)])
    expect(() => steadyTemperature({ heatSource, heatLoss, temperatureAmbient })).toThrow();
});

test("the times of several temperatures are those of each by itself", () => {
  fc.assert(
    fc.property(plate, fc.array(between(0.01, 1), { minLength: 1, maxLength: 6 }), (way, shares) => {
      const {
        temperatureHeater: temperature,
        conductanceHeater,
        powerMax,
        conductance,
        temperatureEnd,
        ...start
      } = way;
      const vessel = {
        ...start,
        heatSource: { kind: "medium", temperature, conductance: conductanceHeater, powerMax },
        heatLoss: newton(conductance),
      } as const;
      const temperatures = shares
        .sort((one, other) => one - other)
        .map((share) => start.temperatureStart + share * (temperatureEnd - start.temperatureStart));
      vesselTimes({ ...vessel, temperatures }).forEach((time, i) => {
        near(time, vesselSegment({ ...vessel, temperatureEnd: temperatures[i] as number }).duration, 1e-9);
      });
    }),
  );
});

test("a vessel passes its start at once, and temperatures that turn back are refused", () => {
  const kettle = {
    temperatureStart: 85,
    heatCapacity: 210000,
    heatSource: { kind: "power", power: 0 },
    heatLoss: newton(15),
    temperatureAmbient: 20,
  } as const;
  const exact = (to: number): number => (210000 / 15) * Math.log((85 - 20) / (to - 20));
  const times = vesselTimes({ ...kettle, temperatures: [85, 65, 45] });
  expect(times[0]).toBe(0);
  near(times[1] as number, exact(65));
  near(times[2] as number, exact(45));
  const turned = (temperatures: readonly number[]) => () => vesselTimes({ ...kettle, temperatures });
  expect(turned([65, 70, 45])).toThrow("temperatures[1]");
  expect(turned([90, 45])).toThrow("temperatures[0]");
  expect(turned([])).toThrow("temperatures");
  expect(turned([65, 20])).toThrow("limit");
});
