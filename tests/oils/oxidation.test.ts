import fc from "fast-check";
import { antioxidantDose, inductionTime, oxidationRanking, peroxideRise, relativeOxidation } from "gelwright/oils";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const part = between(0, 0.01);

test("the dose brings the oil to the content wanted, whichever way it goes in", () => {
  fc.assert(
    fc.property(
      part,
      part,
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.boolean(),
      (one, other, strength, top) => {
        const held = Math.min(one, other);
        const wanted = Math.max(one, other);
        const dose = antioxidantDose({
          massOil: 10,
          massFractionTarget: wanted,
          massFractionPresent: held,
          strength,
          inPlaceOf: top ? "nothing" : "oil",
        });
        const whole = dose.massOil + dose.mass;
        expect(whole).toBeCloseTo(top ? 10 + dose.mass : 10, 12);
        expect((dose.massOil * held + dose.massActive) / whole).toBeCloseTo(wanted, 12);
      },
    ),
  );
});

test("an oil that holds more than is wanted is not thinned out in silence", () => {
  const dose = { massOil: 10, massFractionTarget: 1e-4, massFractionPresent: 5e-4, strength: 0.7 };
  expect(() => antioxidantDose(dose)).toThrow("what the oil holds already");
  expect(() => antioxidantDose({ ...dose, massFractionTarget: 0.8 })).toThrow("more active than is wanted");
});

test("the parts of a blend share its oxidisability among them", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.double({ min: 0.1, max: 9, noNaN: true }), fc.double({ min: 0.1, max: 20, noNaN: true })), {
        minLength: 1,
        maxLength: 5,
      }),
      (all) => {
        const parts = all.map(([mass, oxidisability]) => ({ mass, oxidisability }));
        const { shares, rate, oxidisability } = relativeOxidation({ parts });
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        expect(rate).toBe(oxidisability);
        expect(oxidisability).toBeLessThanOrEqual(Math.max(...parts.map((each) => each.oxidisability)) * (1 + 1e-12));
      },
    ),
  );
  expect(() => relativeOxidation({ parts: [{ mass: 1, oxidisability: 0 }] })).toThrow("at least one oil that oxidises");
});

const gasConstant = 8.31446261815324;

test("times that follow one rule exactly are given back by it at any temperature", () => {
  fc.assert(
    fc.property(fc.double({ min: 4e4, max: 1.5e5, noNaN: true }), between(0, 140), (energy, wanted) => {
      const timeAt = (celsius: number) =>
        36000 * Math.exp((energy / gasConstant) * (1 / (celsius + 273.15) - 1 / 383.15));
      const readings = [100, 110, 125].map((celsius) => ({ temperature: celsius, duration: timeAt(celsius) }));
      const { arrhenius } = inductionTime({ readings, temperature: wanted });
      expect(arrhenius.activationEnergy / energy).toBeCloseTo(1, 9);
      expect(arrhenius.duration / timeAt(wanted)).toBeCloseTo(1, 8);
    }),
  );
});

const readings = [
  { temperature: 100, duration: 148000 },
  { temperature: 110, duration: 72500 },
  { temperature: 120, duration: 33800 },
  { temperature: 130, duration: 17700 },
];

test("both rules agree among the readings and part by several times at room temperature", () => {
  expect(Math.abs(inductionTime({ readings, temperature: 115 }).ratio - 1)).toBeLessThan(0.05);
  const cold = inductionTime({ readings, temperature: 25 });
  expect(cold.ratio).toBeGreaterThan(3);
  expect(cold.beyond).toBe(75);
  expect(inductionTime({ readings, temperature: 115 }).beyond).toBe(0);
});

test("doubt grows away from the readings and with the confidence asked for; two readings leave none to state", () => {
  const width = (temperature: number, confidence: number) => {
    const { interval } = inductionTime({ readings, temperature, confidence }).arrhenius;
    return Math.log((interval?.max ?? 0) / (interval?.min ?? 1));
  };
  expect(width(25, 0.95)).toBeGreaterThan(width(90, 0.95));
  expect(width(25, 0.99)).toBeGreaterThan(width(25, 0.95));
  expect(inductionTime({ readings: readings.slice(0, 2), temperature: 25 }).arrhenius.interval).toBeUndefined();
});

test("readings that say nothing about temperature are refused", () => {
  const same = readings.map((reading) => ({ ...reading, temperature: 110 }));
  expect(() => inductionTime({ readings: same, temperature: 25 })).toThrow("two temperatures");
  const rising = readings.map((reading) => ({ ...reading, duration: 1e10 / reading.duration }));
  expect(() => inductionTime({ readings: rising, temperature: 25 })).toThrow("shorter times where it is warmer");
});

const rise = (values: readonly number[]) =>
  peroxideRise({ readings: values.map((peroxideValue, i) => ({ time: i * 86400, peroxideValue })) });

test("a peroxide value on a straight line is read from it, whatever the clock", () => {
  const { rate, peroxideValueStart } = rise([2, 3, 4, 5, 6]);
  expect(rate * 86400).toBeCloseTo(1, 12);
  expect(peroxideValueStart).toBeCloseTo(2, 12);
  const later = [2, 3.1, 3.9, 5].map((peroxideValue, i) => ({ time: 1e9 + i * 86400, peroxideValue }));
  expect(peroxideRise({ readings: later }).rate).toBeCloseTo(rise([2, 3.1, 3.9, 5]).rate, 15);
});

test("an induction time, a maximum and a fall are not straight lines", () => {
  expect(() => rise([1, 1, 1.1, 1.4, 2.5, 5.5, 12])).toThrow("a bend");
  expect(() => rise([5, 12, 18, 20, 17, 11])).toThrow("a bend");
  expect(() => rise([20, 16, 11.5, 8])).toThrow("do not rise");
  expect(() => rise([2, 3, 4])).toThrow("at least 4");
});

/** Nothing, or enough of it for doubles to halve. */
const upTo = (max: number) => fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max, noNaN: true }));
const heatedOils = fc.array(
  fc.record({
    oxidisability: upTo(25),
    massFraction: upTo(1),
    equivalentTime: upTo(1e7),
    equivalentTimeOffHeat: upTo(1e7),
  }),
  { minLength: 1, maxLength: 8 },
);

test("the oil that waiting spares most comes first, and the shares are those of one whole", () => {
  fc.assert(
    fc.property(heatedOils, (oils) => {
      const named = oils.map((oil, i) => ({ ...oil, name: `oil ${i}` }));
      const ranked = oxidationRanking({ oils: named });
      expect(ranked).toHaveLength(oils.length);
      ranked.reduce((before, oil) => {
        expect(oil.spared).toBeLessThanOrEqual(before.spared);
        return oil;
      });
      const whole = ranked.reduce((sum, { share }) => sum + share, 0);
      expect(whole === 0 || Math.abs(whole - 1) < 1e-12).toBe(true);
      // Twice the heat for all is twice the burden for each, in the same order.
      const twice = named.map((oil) => ({
        ...oil,
        equivalentTime: 2 * oil.equivalentTime,
        equivalentTimeOffHeat: 2 * oil.equivalentTimeOffHeat,
      }));
      expect(oxidationRanking({ oils: twice })).toEqual(
        ranked.map((oil) => ({
          ...oil,
          burden: 2 * oil.burden,
          burdenOffHeat: 2 * oil.burdenOffHeat,
          spared: 2 * oil.spared,
        })),
      );
    }),
  );
});

test("an oil without a name or with a negative time is no oil to rank", () => {
  const oil = { name: "oil", oxidisability: 3, massFraction: 0.2, equivalentTime: 10, equivalentTimeOffHeat: 5 };
  expect(() => oxidationRanking({ oils: [{ ...oil, name: "" }] })).toThrow("oils[0].name");
  expect(() => oxidationRanking({ oils: [{ ...oil, equivalentTime: -1 }] })).toThrow("oils[0].equivalentTime");
  expect(() => oxidationRanking({ oils: [] })).toThrow("a list of at least 1");
});
