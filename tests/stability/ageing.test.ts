import fc from "fast-check";
import { equivalentStorage, meanKineticTemperature, storageFor } from "gelwright/stability";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const temperature = between(-20, 60);
const duration = fc.double({ min: 3600, max: 1e8, noNaN: true });
const kinetics = fc.oneof(
  fc.double({ min: 1.2, max: 4, noNaN: true }).map((q10) => ({ law: "q10", q10 }) as const),
  fc
    .double({ min: 20_000, max: 150_000, noNaN: true })
    .map((activationEnergy) => ({ law: "arrhenius", activationEnergy }) as const),
);

test("the test that stands for a time at the shelf stands for that time", () => {
  fc.assert(
    fc.property(
      temperature,
      temperature,
      duration,
      kinetics,
      (warmth, temperatureReference, durationReference, law) => {
        const storage = { temperature: warmth, temperatureReference, kinetics: law };
        const needed = storageFor({ ...storage, durationReference });
        if (!needed.known) throw new Error("nothing is in the way");
        const back = equivalentStorage({ ...storage, duration: needed.duration.value });
        expect(back.known && back.duration.value / durationReference).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("warmer storage stands for more time at the shelf, colder storage for less, and doubt widens both ways", () => {
  fc.assert(
    fc.property(temperature, between(0.1, 30), duration, (temperatureReference, apart, time) => {
      const law = { law: "q10", q10: { min: 1.8, value: 2, max: 3 } } as const;
      const at = (own: number) =>
        equivalentStorage({ temperature: own, temperatureReference, duration: time, kinetics: law });
      const [warm, cold] = [at(temperatureReference + apart), at(temperatureReference - apart)];
      if (!warm.known || !cold.known) throw new Error("nothing is in the way");
      expect(warm.duration.min).toBeGreaterThan(time);
      expect(cold.duration.max).toBeLessThan(time);
      for (const { duration: span } of [warm, cold]) {
        expect(span.min).toBeLessThan(span.value);
        expect(span.value).toBeLessThan(span.max);
      }
    }),
  );
});

test("a gel point or melting range that the way from one temperature to the other touches makes it not known", () => {
  fc.assert(
    fc.property(temperature, temperature, temperature, between(0, 10), (one, other, from, width) => {
      const melting = { name: "wax melts", temperatureMin: from, temperatureMax: from + width };
      const answer = equivalentStorage({
        temperature: one,
        temperatureReference: other,
        duration: 1,
        kinetics: { law: "q10", q10: 2 },
        transitions: [melting],
      });
      const apart = from > Math.max(one, other) || from + width < Math.min(one, other);
      expect(answer.known).toBe(apart);
      if (!answer.known) expect(answer.transitions).toEqual([melting]);
    }),
  );
});

test("it is told that the answer is of chemical change alone", () => {
  const storage = { temperature: 40, temperatureReference: 25, duration: 1 };
  const byFactor = equivalentStorage({ ...storage, kinetics: { law: "q10", q10: 2 } });
  const byEnergy = equivalentStorage({ ...storage, kinetics: { law: "arrhenius", activationEnergy: 9e4 } });
  expect(byFactor.known && byFactor.assumptions).toContain("chemical-change-only");
  expect(byEnergy.known && byEnergy.assumptions).toContain("constant-activation-energy");
});

test("the mean kinetic temperature lies between the mean and the warmest reading, whatever their order", () => {
  const readings = fc.array(fc.record({ temperature, duration }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(readings, (own) => {
      const mean = meanKineticTemperature({ readings: own });
      const total = own.reduce((sum, reading) => sum + reading.duration, 0);
      const arithmetic = own.reduce((sum, reading) => sum + (reading.temperature * reading.duration) / total, 0);
      expect(mean).toBeGreaterThanOrEqual(arithmetic - 1e-6);
      expect(mean).toBeLessThanOrEqual(Math.max(...own.map((reading) => reading.temperature)) + 1e-9);
      expect(meanKineticTemperature({ readings: own.slice().reverse() })).toBeCloseTo(mean, 9);
    }),
  );
});

test("storage that goes up and down ages as storage at its mean kinetic temperature does", () => {
  fc.assert(
    fc.property(temperature, temperature, duration, duration, (one, other, first, second) => {
      const law = { law: "arrhenius", activationEnergy: 83144 } as const;
      const at = (own: number, time: number) => {
        const answer = equivalentStorage({ temperature: own, temperatureReference: 25, duration: time, kinetics: law });
        if (!answer.known) throw new Error("nothing is in the way");
        return answer.duration.value;
      };
      const readings = [
        { temperature: one, duration: first },
        { temperature: other, duration: second },
      ];
      const together = at(meanKineticTemperature({ readings }), first + second);
      expect(together / (at(one, first) + at(other, second))).toBeCloseTo(1, 9);
    }),
  );
});

test("durations are given to all readings or to none, and no transition may lie among them", () => {
  const mixed = [{ temperature: 20, duration: 1 }, { temperature: 25 }];
  expect(() => meanKineticTemperature({ readings: mixed })).toThrow("readings[1].duration: found undefined");
  const transitions = [{ name: "gel point", temperatureMin: 22, temperatureMax: 22 }];
  const readings = [{ temperature: 20 }, { temperature: 25 }];
  expect(() => meanKineticTemperature({ readings, transitions })).toThrow("gel point between 20 and 25 °C");
});
