import fc from "fast-check";
import { transientSegment } from "gelwright/transient";
import { expect, test } from "vitest";
import { timesOfPassing } from "../../src/transient/segment.js";
import { between } from "../support/between.js";

// Over ln|T − limit| a vessel that loses heat in proportion has the same pace everywhere: each panel is resolved as soon as
// it has been looked at once, so that the looks tell the panels.
const looksAt = (change: object, limit: number | undefined = 20) => {
  let looks = 0;
  const { duration, temperatureEnd } = transientSegment({
    temperatureStart: 85,
    ...(limit !== undefined && { temperatureLimit: limit }),
    heatCapacity: 9e4,
    heatFlow: (at: number) => {
      looks += 1;
      return -12 * (at - 20);
    },
    ...change,
  } as never);
  return { looks, duration, temperatureEnd };
};

test("a stretch of one law is one panel: of 24 nodes, or of twelve where it is no wider than 7 K", () => {
  expect(looksAt({ temperatureEnd: 45 }).looks).toBe(24);
  expect(looksAt({ temperatureEnd: 77.9 }).looks).toBe(24);
  expect(looksAt({ temperatureEnd: 78.1 }).looks).toBe(12);
  expect(looksAt({ temperatureEnd: 85 }).looks).toBe(0);
});

const passing = (
  temperatures: readonly number[],
  change: object = {},
  flow: (at: number) => number = (at) => -12 * (at - 20),
) => {
  let looks = 0;
  const times = timesOfPassing(
    {
      temperatureStart: 85,
      temperatureLimit: 20,
      heatCapacity: 9e4,
      heatFlow: (at: number) => {
        looks += 1;
        return flow(at);
      },
      ...change,
    },
    temperatures,
  );
  return { times, looks };
};

test("7 K and 1 K belong to the narrower panels, to the last digit", () => {
  const straight = (temperatureEnd: number) => {
    let looks = 0;
    const heatFlow = () => {
      looks += 1;
      return 100;
    };
    transientSegment({ temperatureStart: 20, heatCapacity: 1000, heatFlow, temperatureEnd });
    return looks;
  };
  expect([27, 27.001].map(straight)).toEqual([12, 24]);
  const through = (step: number) =>
    passing([20 + step, 20 + 2 * step], { temperatureStart: 20, temperatureLimit: undefined }, () => 100).looks;
  expect([1, 1.001, 7, 7.001].map(through)).toEqual([12, 24, 24, 48]);
});

test("a breakpoint on the way parts it, one beyond it or at the room does not, and they may come in any order", () => {
  expect(looksAt({ temperatureEnd: 45, breakpoints: [60] }).looks).toBe(48);
  expect(looksAt({ temperatureEnd: 45, breakpoints: [50, 70, 60] }).looks).toBe(96);
  const away = looksAt({ temperatureEnd: 45, breakpoints: [20, 30, 45, 85, 90] });
  expect(away.looks).toBe(24);
  expect(away.duration / (7500 * Math.log(65 / 25))).toBeCloseTo(1, 14);
});

test("a heat capacity that varies is looked at every 7 K, in a hundred panels at most", () => {
  const heatCapacity = () => 9e4;
  expect(looksAt({ temperatureEnd: 51, heatCapacity }).looks).toBe(5 * 12);
  expect(looksAt({ temperatureEnd: 79, heatCapacity }).looks).toBe(12);
  expect(looksAt({ temperatureStart: 2000, temperatureEnd: 25, heatCapacity }).looks).toBe(100 * 12);
});

test("rates are looked at as often as the flow, and not while the end is sought", () => {
  let rated = 0;
  const rates = {
    time: () => {
      rated += 1;
      return 1;
    },
  };
  looksAt({ temperatureEnd: 45, rates });
  expect(rated).toBe(24);
  rated = 0;
  looksAt({ duration: 3600, rates });
  // At the end once more, where what rounding left is spent.
  expect(rated).toBeLessThanOrEqual(25);
  rated = 0;
  looksAt({ duration: 1e6, rates });
  // After weeks what is left is spent close to the room and at it.
  expect(rated).toBeLessThanOrEqual(26);
});

test("the end after a time is found by one step and its correction where the pace is the same, by four where it is not", () => {
  // Each step looks twice at the pace and once over a panel; the end is looked over once more.
  const step = 2 + 24;
  for (const duration of [10, 600, 3600, 36000])
    expect(looksAt({ duration }).looks).toBeLessThanOrEqual(1 + 2 * step + 24);
  const convection = (at: number) => -3 * (at - 20) ** 1.25;
  let looks = 0;
  const heatFlow = (at: number) => {
    looks += 1;
    return convection(at);
  };
  for (const duration of [600, 3600, 36000]) {
    looks = 0;
    looksAt({ duration, heatFlow });
    expect(looks).toBeLessThanOrEqual(1 + 4 * step + 24);
  }
});

/** Heats at 100 W through a melting range of 4 K that takes fifty times the heat: straight lines in time. */
const melting = (at: number) => {
  // It is known between 20 and 90 °C, and asked for nowhere before its start.
  seen.push(at);
  return at > 60 && at < 64 ? 50_000 : 1000;
};
const seen: number[] = [];
const timeAt = (at: number) => 10 * (at - 20) + 490 * Math.min(4, Math.max(0, at - 60));

test("a melting range is gone through in its time, from any side of it, up and down", () => {
  const heating = { temperatureStart: 20, heatCapacity: melting, heatFlow: () => 100, breakpoints: [60, 64] };
  const cooling = { ...heating, temperatureStart: 90, heatFlow: () => -100 };
  for (const at of [20.1, 40, 59.999, 60.5, 62, 63.999, 64.5, 70, 89]) {
    expect(transientSegment({ ...heating, temperatureEnd: at }).duration).toBeCloseTo(timeAt(at), 7);
    seen.length = 0;
    expect(transientSegment({ ...heating, duration: timeAt(at) }).temperatureEnd).toBeCloseTo(at, 9);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(20);
    seen.length = 0;
    expect(transientSegment({ ...cooling, duration: timeAt(90) - timeAt(at) }).temperatureEnd).toBeCloseTo(at, 9);
    expect(Math.max(...seen)).toBeLessThanOrEqual(90);
    const towards = { temperatureLimit: 200, heatFlow: (of: number) => 200 - of };
    const { duration } = transientSegment({ ...heating, ...towards, temperatureEnd: at });
    expect(transientSegment({ ...heating, ...towards, duration }).temperatureEnd).toBeCloseTo(at, 9);
  }
});

test("a step that turns back stays behind the start: nothing has to be known on the other side", () => {
  const range = 500;
  let coldest = 100;
  const heatCapacity = (at: number) => {
    coldest = Math.min(coldest, at);
    return at > 38 && at < 47 ? 1000 * range : 1000;
  };
  const duration = 10 * (45.4 - 5) + 10 * (range - 1) * (45.4 - 38);
  const heating = { temperatureStart: 5, heatCapacity, heatFlow: () => 100, breakpoints: [38, 47] };
  expect(transientSegment({ ...heating, duration }).temperatureEnd).toBeCloseTo(45.4, 9);
  expect(coldest).toBe(5);
});

/** A melting range on the way from 110 °C to the room's 0 °C, which takes `factor` times the heat. */
const ranges = fc.record({
  from: between(20, 90),
  width: between(0.1, 10),
  factor: between(1.1, 1e4),
  power: between(1.05, 1.8),
  temperatureEnd: between(5, 109),
});

test("whatever heat a melting range takes, its end after a time is found, in some hundred looks", () => {
  let most = 0;
  let hottest = 0;
  fc.assert(
    fc.property(ranges, ({ from, width, factor, power, temperatureEnd }) => {
      // Where the heat flow goes as a power of the excess over the room, so does the time, by one less.
      const spent = (start: number, end: number) =>
        start > end ? (2000 / (power - 1)) * (end ** (1 - power) - start ** (1 - power)) : 0;
      const melted = spent(Math.min(110, from + width), Math.max(from, temperatureEnd));
      const duration = spent(110, temperatureEnd) + (factor - 1) * melted;
      let looks = 0;
      const segment = transientSegment({
        ...{ temperatureStart: 110, temperatureLimit: 0, duration, breakpoints: [from, from + width] },
        heatCapacity: (at) => (at > from && at < from + width ? 1000 * factor : 1000),
        heatFlow: (at) => {
          looks += 1;
          hottest = Math.max(hottest, at);
          return -0.5 * at ** power;
        },
      });
      most = Math.max(most, looks);
      expect(Math.abs(segment.temperatureEnd - temperatureEnd)).toBeLessThan(1e-8);
    }),
    { numRuns: 300 },
  );
  expect(most).toBeLessThan(1500);
  // What lies before the start is nobody's concern: a flow need not be known there.
  expect(hottest).toBeLessThan(110 + 1e-9);
});

test("a step that goes too far by weeks leaves no trace: behind two melting ranges the end is as exact as ahead of them", () => {
  const [power, limit] = [1.6, 150];
  const spent = (from: number, to: number) =>
    (2000 / (power - 1)) * ((limit - to) ** (1 - power) - (limit - from) ** (1 - power));
  for (const [first, second] of [
    [250, 3800],
    [50, 1000],
  ] as const)
    for (const temperatureEnd of [60, 87, 120]) {
      const segment = transientSegment({
        ...{ temperatureStart: 15.01, temperatureLimit: limit, breakpoints: [20, 22] },
        heatCapacity: (at) => 1000 * (at < 20 ? first : at < 22 ? second : 1),
        heatFlow: (at) => 0.5 * (limit - at) ** power,
        duration: first * spent(15.01, 20) + second * spent(20, 22) + spent(22, temperatureEnd),
      });
      expect(segment.temperatureEnd).toBeCloseTo(temperatureEnd, 9);
    }
});

test("a melting range of 2 K that nobody named is found wherever it lies", () => {
  for (let from = 21; from < 86; from += 0.5) {
    const heatCapacity = (at: number) => (at > from && at < from + 2 ? 51_000 : 1000);
    const { duration } = transientSegment({
      ...{ temperatureStart: 20, temperatureEnd: 90, heatCapacity, heatFlow: () => 100 },
    });
    expect(Math.abs(duration / 1700 - 1)).toBeLessThan(1e-3);
  }
});

test("a flow of the wrong sense is refused by what it ought to do", () => {
  const segment = { temperatureStart: 50, heatCapacity: 1000 };
  expect(() => transientSegment({ ...segment, heatFlow: () => 100, temperatureEnd: 40 })).toThrow("cools to the end");
  expect(() => transientSegment({ ...segment, heatFlow: () => -100, temperatureEnd: 60 })).toThrow("warms to the end");
  // At its limit a vessel stays.
  const still = { ...segment, temperatureLimit: 50, heatFlow: () => 100 };
  expect(() => transientSegment({ ...still, temperatureEnd: 60 })).toThrow("short of the limit, 50 °C");
});

test("temperatures are passed when the exponential passes them, one asked for twice at one time", () => {
  const temperatures = [85, 80, 60, 60, 45];
  const { times, looks } = passing(temperatures, { breakpoints: [70] });
  expect(times).toEqual(temperatures.map((at) => expect.closeTo(7500 * Math.log(65 / (at - 20)), 7)));
  // From 80 to 60 °C in two panels, and one to each of the others.
  expect(looks).toBe(4 * 24);
  const warming = { temperatureStart: 5, heatFlow: (at: number) => -12 * (at - 20) };
  const { times: warm } = passing([5, 10, 15], warming);
  expect(warm).toEqual([5, 10, 15].map((at) => expect.closeTo(7500 * Math.log(15 / (20 - at)), 7)));
});

test("the closer the temperatures, the fewer nodes for each", () => {
  const every = (step: number) => [1, 2, 3].map((k) => 85 - k * step);
  expect(passing(every(0.9)).looks).toBe(3 * 6);
  expect(passing(every(1.1)).looks).toBe(3 * 12);
  expect(passing(every(6.9)).looks).toBe(3 * 12);
  expect(passing(every(7.1)).looks).toBe(3 * 24);
  // The widest of them counts.
  expect(passing([84.5, 84, 74]).looks).toBe(3 * 24);
  expect(passing(every(6), { heatCapacity: () => 9e4 }).looks).toBe(3 * 12);
  expect(passing(every(20), { heatCapacity: () => 9e4 }).looks).toBe(9 * 12);
});

test("temperatures that turn back are refused at their place", () => {
  expect(() => passing([80, 81, 60])).toThrow("temperatures[1]: found 81, expected 80 °C or beyond");
  expect(() => passing([86, 60])).toThrow("temperatures[0]");
  expect(passing([]).times).toEqual([]);
  expect(passing([85]).times).toEqual([0]);
});

test("within a millionth of a kelvin of the room a rate in proportion to the difference counts as the exponential says", () => {
  // Around 0 °C a millionth of a kelvin has all its digits.
  const [tau, start] = [7500, 1.5e-6];
  const rates = { excess: (at: number) => at, time: () => 1 };
  const last = {
    temperatureStart: start,
    temperatureLimit: 0,
    heatCapacity: 12 * tau,
    heatFlow: (at: number) => -12 * at,
  };
  for (const folds of [0.2, 0.5, 1, 3, 10]) {
    const { totals, temperatureEnd } = transientSegment({ ...last, rates, duration: folds * tau });
    expect(totals.excess / (start * tau * -Math.expm1(-folds))).toBeCloseTo(1, 10);
    expect(totals.time / (folds * tau)).toBeCloseTo(1, 12);
    expect(temperatureEnd / (start * Math.exp(-folds))).toBeCloseTo(1, 10);
  }
});

test("a charge that leaves its limit, or cools far below 0 °C without one, is not held by it", () => {
  const growing = {
    temperatureStart: 30,
    temperatureLimit: 20,
    heatCapacity: 1000,
    heatFlow: (at: number) => 10 * (at - 20),
  };
  // 10 K grow by e in 100 s.
  for (const duration of [50, 250, 400]) {
    const { temperatureEnd } = transientSegment({ ...growing, duration });
    expect(temperatureEnd).toBeCloseTo(20 + 10 * Math.exp(duration / 100), 8);
    expect(transientSegment({ ...growing, temperatureEnd }).duration).toBeCloseTo(duration, 8);
  }
  // Nor is one that leaves it from a thousandth of a kelvin.
  const { temperatureEnd: away } = transientSegment({ ...growing, temperatureStart: 20.001, duration: 1000 });
  expect((away - 20) / (0.001 * Math.exp(10))).toBeCloseTo(1, 9);
  const freezing = { temperatureStart: 10, heatCapacity: 1000, heatFlow: () => -100 };
  expect(transientSegment({ ...freezing, duration: 700 }).temperatureEnd).toBeCloseTo(-60, 9);
});
