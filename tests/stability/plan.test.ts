import fc from "fast-check";
import { temperatureCycles, testPlan } from "gelwright/stability";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const condition = fc.record({
  pullDays: fc.uniqueArray(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 8 }),
  packsPerPull: fc.integer({ min: 1, max: 9 }),
  packsReserve: fc.integer({ min: 0, max: 9 }),
});
const conditions = fc
  .array(condition, { minLength: 1, maxLength: 5 })
  .map((all) => all.map((one, i) => ({ ...one, name: `storage ${i}` })));

test("every pull is listed once, by day, and the packs of pulls and reserves add up to the sample allowance", () => {
  fc.assert(
    fc.property(conditions, between(0.001, 1), (all, massPack) => {
      const plan = testPlan({ conditions: all, massPack });
      expect(plan.pulls).toHaveLength(all.reduce((sum, { pullDays }) => sum + pullDays.length, 0));
      expect(plan.pulls.map(({ day }) => day)).toEqual(plan.pulls.map(({ day }) => day).sort((a, b) => a - b));
      const reserve = all.reduce((sum, { packsReserve }) => sum + packsReserve, 0);
      expect(plan.packs).toBe(plan.pulls.reduce((sum, { packs }) => sum + packs, 0) + reserve);
      expect(plan.mass).toBeCloseTo(plan.packs * massPack, 9);
      expect(plan.dayLast).toBe(plan.pulls.at(-1)?.day);
    }),
  );
});

test("a condition says what it stands for, and that it does not where the product melts in between", () => {
  const kinetics = { law: "q10", q10: 2 } as const;
  const at = (temperature: number) => ({ name: `${temperature} °C`, temperature, pullDays: [0, 90], packsPerPull: 1 });
  const plan = testPlan({
    conditions: [at(35), at(55), { name: "window", pullDays: [90], packsPerPull: 1 }],
    massPack: 0.05,
    temperatureReference: 25,
    kinetics,
    transitions: [{ name: "gel point", temperatureMin: 48, temperatureMax: 52 }],
  });
  const [warm, hot, window] = plan.conditions.map(({ equivalent }) => equivalent);
  expect(warm?.known && warm.duration.value / 86400).toBeCloseTo(180, 9);
  expect(hot?.known).toBe(false);
  expect(window).toBeUndefined();
});

test("a day or a name that stands twice is refused, and so are kinetics without a reference", () => {
  const one = { name: "25 °C", pullDays: [7, 7], packsPerPull: 1 };
  expect(() => testPlan({ conditions: [one], massPack: 0.05 })).toThrow("each day once");
  const twice = { ...one, pullDays: [7] };
  expect(() => testPlan({ conditions: [twice, twice], massPack: 0.05 })).toThrow("a name of its own");
  const kinetics = { law: "q10", q10: 2 } as const;
  expect(() => testPlan({ conditions: [twice], massPack: 0.05, kinetics })).toThrow("together, or neither");
});

test("cycles follow one another without a gap, and cross a transition between their ends twice each", () => {
  const stay = fc.double({ min: 60, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(stay, stay, fc.integer({ min: 1, max: 20 }), between(-5, 30), (cold, warm, cycles, from) => {
      const stays = [
        { temperature: -10, duration: cold },
        { temperature: 45, duration: warm },
      ];
      const transitions = [{ name: "oil sets", temperatureMin: from, temperatureMax: from + 3 }];
      const { steps, duration, crossings, withoutTransition } = temperatureCycles({
        stays,
        cycles,
        temperatureStart: -10,
        transitions,
      });
      expect(steps).toHaveLength(2 * cycles);
      expect(steps.at(-1)?.timeEnd).toBeCloseTo(duration, 3);
      steps.slice(1).forEach((step, i) => {
        expect(step.timeStart).toBeCloseTo(steps[i]?.timeEnd ?? Number.NaN, 3);
      });
      expect(crossings[0]?.count).toBe(2 * cycles - 1);
      expect(withoutTransition).toBe(false);
    }),
  );
});

test("a stay within the melting range does not count as a crossing until the product comes out of it on the other side", () => {
  const at = (temperature: number) => ({ temperature, duration: 3600 });
  const transitions = [{ name: "wax melts", temperatureMin: 35, temperatureMax: 45 }];
  const count = (temperatures: readonly number[]) =>
    temperatureCycles({ stays: temperatures.map(at), cycles: 1, temperatureStart: 20, transitions }).crossings[0]
      ?.count;
  expect(count([40, 20])).toBe(0);
  expect(count([40, 50])).toBe(1);
  expect(count([50, 40, 20])).toBe(2);
});
