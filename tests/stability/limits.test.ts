import {
  colourDifference2000,
  oilBleed,
  shelfLife,
  temperatureCycles,
  testPlan,
  trend,
  viscosityDrift,
} from "gelwright/stability";
import { expect, test } from "vitest";
import { positiveInterval, through } from "../../src/stability/interval.js";

test("an interval is in rising order, a number is one without a width, and what falls turns it round", () => {
  const of = (min: number, value: number, max: number) => () => positiveInterval({ min, value, max }, "factor");
  expect(of(1, 2, 3)()).toEqual({ min: 1, value: 2, max: 3 });
  expect(of(2, 2, 2)()).toEqual(positiveInterval(2, "factor"));
  for (const wrong of [of(2.1, 2, 3), of(1, 3.1, 3), of(3, 2, 1)]) expect(wrong).toThrow("rising order");
  expect(of(0, 1, 2)).toThrow("factor.min");
  expect(through({ min: 1, value: 2, max: 4 }, (x) => 1 / x)).toEqual({ min: 0.25, value: 0.5, max: 1 });
});

test("bleed is found where it is more than twice its uncertainty, of a vessel that holds something", () => {
  const weighed = { massVessel: 0.01, massFilled: 0.06, massCollectorBefore: 0.001, massCollectorAfter: 0.0015 };
  const bleed = oilBleed({ ...weighed, uncertaintyWeighing: 1e-4 });
  expect(bleed.massFraction).toBeCloseTo(0.01, 12);
  expect(bleed.standardUncertainty).toBeCloseTo(Math.SQRT2 * 2e-3 * Math.hypot(1, 0.01), 12);
  expect(bleed.found).toBe(true);
  expect(oilBleed({ ...weighed, uncertaintyWeighing: 2e-4 }).found).toBe(false);
  expect(() => oilBleed({ ...weighed, massFilled: 0.01, uncertaintyWeighing: 0 })).toThrow("massFilled");
});

// Sharma, Wu and Dalal 2005, table 1: pairs about the turn of the hue.
test.each([
  [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
  [[50, -0.001, 2.49], [50, 0.0009, -2.49], 4.8045],
  [[50, -0.001, 2.49], [50, 0.0011, -2.49], 4.7461],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[50, 2.5, 0], [56, -27, -3], 31.903],
  [[50, 2.5, 0], [58, 24, 15], 19.4535],
] as const)("the colours %j and %j are apart by the printed %d, from either side", (one, other, printed) => {
  const lab = ([lightness, a, b]: readonly [number, number, number]) => ({ lightness, a, b });
  expect(colourDifference2000({ first: lab(one), second: lab(other) })).toBeCloseTo(printed, 4);
  expect(colourDifference2000({ first: lab(other), second: lab(one) })).toBeCloseTo(printed, 4);
});

const lot = (name: string, slope: number, noise = 0.001) => ({
  name,
  readings: [0, 1, 2, 3, 4].map((time, i) => ({ time, value: 10 + slope * time + noise * (i % 2 ? 1 : -1) })),
});

test("a lot has a name of its own, readings at two times, and limits the right way round", () => {
  const asked =
    (lots: readonly object[], more: object = {}) =>
    () =>
      shelfLife({ lots: lots as never, limits: { min: 5 }, ...more } as never);
  expect(asked([lot("A", -1), lot("B", -1)])().duration).toBeGreaterThan(4.5);
  expect(asked([lot("A", -1), lot("A", -1)])).toThrow("a name of its own");
  expect(asked([lot("", -1)])).toThrow("a name of its own");
  expect(asked([lot(7 as never, -1)])).toThrow("a name of its own");
  const once = { name: "A", readings: [0, 0, 0].map((time) => ({ time, value: 1 })) };
  expect(asked([once])).toThrow("two times");
  expect(asked([lot("A", -1)], { scatter: "mixed" })).toThrow('"pooled" or "by lot"');
  for (const limits of [
    { min: 5, max: 5 },
    { min: 6, max: 5 },
  ])
    expect(asked([lot("A", -1)], { limits })).toThrow("min below max");
  expect(asked([lot("A", -1)], { limits: {} })).toThrow("min, max or both");
});

test("the first lot to reach a limit names the shelf life, at the limit that it reaches", () => {
  const life = (lots: readonly object[], limits: object) =>
    shelfLife({ lots: lots as never, limits, significance: 0.25, scatter: "by lot" } as never);
  const both = life([lot("slow", -0.5), lot("fast", -2)], { min: 5 });
  expect(both).toMatchObject({ lot: "fast", limit: "min", model: "separate lines", extrapolated: false });
  expect(both.duration).toBeGreaterThan(2.4);
  expect(both.duration).toBeLessThan(2.5);
  // One lot never comes to the limit, and the other one does, in either order.
  for (const lots of [
    [lot("away", 1), lot("towards", -1)],
    [lot("towards", -1), lot("away", 1)],
  ])
    expect(life(lots, { min: 5 })).toMatchObject({ lot: "towards", limit: "min" });
  expect(life([lot("rises", 1)], { min: 5, max: 12 })).toMatchObject({ limit: "max", extrapolated: false });
  const never = life([lot("rises", 1)], { min: 5 });
  expect(never).toMatchObject({ duration: null, extrapolated: true });
  expect(never).not.toHaveProperty("limit");
  expect(life([lot("slow", -0.5)], { min: 5 })).toMatchObject({ extrapolated: true, timeLast: 4 });
  // What is past its limit at the start has no life.
  expect(life([lot("low", -1)], { min: 11 }).duration).toBe(0);
});

test("a stay at the end of a transition is within it, and one beyond has gone through it", () => {
  const cycles = (low: number, high: number, name = "setting") =>
    temperatureCycles({
      stays: [low, high].map((temperature) => ({ temperature, duration: 3600 })),
      ...{ cycles: 2, temperatureStart: 20, transitions: [{ name, temperatureMin: 30, temperatureMax: 35 }] },
    });
  const seen = (low: number, high: number) => {
    const { crossings, withoutTransition } = cycles(low, high);
    return [crossings[0]?.count, withoutTransition];
  };
  expect(seen(5, 29.9)).toEqual([0, true]);
  expect(seen(5, 30)).toEqual([0, false]);
  expect(seen(5, 35)).toEqual([0, false]);
  expect(seen(5, 35.1)).toEqual([3, false]);
  expect(seen(40, 36)).toEqual([1, false]);
  expect(seen(29.9, 40)).toEqual([3, false]);
  expect(() => cycles(5, 40, "")).toThrow("a name");
});

test("a trend counts from its own first time, and a drift with the confidence that is asked for", () => {
  const readings = [1000, 1010, 1030, 1060].map((time) => ({ time, value: 5 + 0.25 * (time - 1000) }));
  const found = trend({ readings });
  expect(found.slope.value).toBeCloseTo(0.25, 12);
  expect(found.valueStart).toBeCloseTo(5, 12);
  expect(found.direction).toBe("rises");
  expect(() => trend({ readings: readings.map(({ value }) => ({ time: 7, value })) })).toThrow("one time");
  const viscosities = [1, 1.1, 1.15, 1.3].map((viscosity, i) => ({ time: 1e6 * i, viscosity }));
  const width = (confidence?: number) => {
    const { rate } = viscosityDrift({
      readings: viscosities,
      duration: 1e6,
      ...(confidence !== undefined && { confidence }),
    });
    return rate.max - rate.min;
  };
  // Student's t of two degrees of freedom: 2.91998558 at 90 %, 4.30265273 at 95 %.
  expect(width() / width(0.9)).toBeCloseTo(4.30265273 / 2.91998558, 6);
  const drift = (duration: number) => viscosityDrift({ readings: viscosities, duration });
  expect([drift(3e6).extrapolated, drift(3.1e6).extrapolated]).toEqual([false, true]);
  expect(drift(0).factor).toEqual({ min: 1, value: 1, max: 1 });
});

test("a plan has conditions of their own names, each day once, and an age only with both of what it needs", () => {
  const condition = { name: "40 °C", temperature: 40, pullDays: [0, 30], packsPerPull: 2 };
  const asked =
    (conditions: readonly object[], more: object = {}) =>
    () =>
      testPlan({ conditions: conditions as never, massPack: 0.1, ...more } as never);
  expect(asked([condition])()).toMatchObject({ packs: 4, mass: expect.closeTo(0.4, 12), dayLast: 30 });
  expect(asked([{ ...condition, packsReserve: 3 }])()).toMatchObject({ packs: 7 });
  for (const name of ["", 7, undefined]) expect(asked([{ ...condition, name }])).toThrow("a name of its own");
  expect(asked([condition, condition])).toThrow("a name of its own");
  expect(asked([{ ...condition, pullDays: [30, 30] }])).toThrow("each day once");
  const kinetics = { law: "arrhenius", activationEnergy: 8e4 };
  expect(asked([condition], { kinetics })).toThrow("neither");
  expect(asked([condition], { temperatureReference: 20 })).toThrow("neither");
  const [stored] = asked([condition], { kinetics, temperatureReference: 20 })().conditions;
  expect(stored?.equivalent).toBeDefined();
  const [start] = asked([{ ...condition, pullDays: [0] }], { kinetics, temperatureReference: 20 })().conditions;
  expect(start).not.toHaveProperty("equivalent");
  const two = asked([
    { ...condition, name: "B" },
    { ...condition, name: "A", pullDays: [30, 7] },
  ])();
  expect(two.pulls.map(({ day, condition: name }) => [day, name])).toEqual([
    [0, "B"],
    [7, "A"],
    [30, "B"],
    [30, "A"],
  ]);
});
