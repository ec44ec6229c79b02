import fc from "fast-check";
import { stillAirCoefficient, uptakeDuration, waterActivity, waterTakenUp, waterTakenUpAfter } from "gelwright/gel";
import { vapourPressureAt, vapourPressures } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const temperature = 25;
const film = {
  massGlycerin: 0.0085,
  massWater: 0.0015,
  area: 0.01,
  coefficient: stillAirCoefficient({ gap: 0.015, temperature }),
  relativeHumidity: 0.6,
  temperature,
};

test.each(["norrish", "wilson"] as const)("odex, marching in time, finds the same uptake by %s (1e-8)", (law) => {
  const saturated = vapourPressureAt({ law: vapourPressures.water, temperature });
  const max = (film.coefficient * film.area * 0.0180153 * saturated) / (8.314462618 * (temperature + 273.15));
  for (const duration of [600, 7200, 86_400]) {
    // The water in grams, the whole duration as 1.
    const [grams = Number.NaN] = march(
      (_, [water = Number.NaN]) => {
        const massFractionGlycerin = film.massGlycerin / (film.massGlycerin + water / 1000);
        const activity = waterActivity({ massFractionGlycerin, temperature })[law];
        return [1000 * duration * max * (film.relativeHumidity - activity)];
      },
      [1000 * film.massWater],
      1,
      1e-13,
    );
    const taken = waterTakenUpAfter({ ...film, duration })[law];
    expect(Math.abs(taken / (grams / 1000 - film.massWater) - 1)).toBeLessThan(1e-8);
  }
});

test("the time to a composition, and the composition after that time, are each other's inverse", () => {
  let moving = 0;
  fc.assert(
    fc.property(between(0.3, 0.9), between(0.1, 0.9), between(0.05, 0.95), (glycerin, relativeHumidity, way) => {
      const gel = { ...film, massGlycerin: 0.01 * glycerin, massWater: 0.01 * (1 - glycerin), relativeHumidity };
      const rest = waterTakenUp(without(gel, "area", "coefficient")).wilson;
      fc.pre(Math.abs(rest) >= 1e-5);
      const water = gel.massWater + way * rest;
      const massFractionGlycerinEnd = gel.massGlycerin / (gel.massGlycerin + water);
      try {
        const duration = uptakeDuration({ ...gel, massFractionGlycerinEnd }).wilson;
        expect(waterTakenUpAfter({ ...gel, duration }).wilson / (way * rest)).toBeCloseTo(1, 9);
        moving += 1;
      } catch (error) {
        // By the other law the gel may be at rest already.
        expect(String(error)).toContain("at rest with the room");
      }
    }),
  );
  expect(moving).toBeGreaterThan(100);
});

test("in the end it is what an open gel takes up, a wet gel dries, and nothing happens in no time", () => {
  const long = waterTakenUpAfter({ ...film, duration: 1e8 });
  expect(long.norrish).toBeCloseTo(waterTakenUp(without(film, "area", "coefficient")).norrish, 12);
  expect(waterTakenUpAfter({ ...film, massWater: 0.02, duration: 3600 }).wilson).toBeLessThan(0);
  expect(waterTakenUpAfter({ ...film, duration: 0 }).wilson).toBe(0);
});

test("twice the surface or half the air over it takes half the time; twice the gel twice", () => {
  const end = { massFractionGlycerinEnd: 0.8 };
  const once = uptakeDuration({ ...film, ...end }).wilson;
  expect(uptakeDuration({ ...film, ...end, area: 2 * film.area }).wilson / once).toBeCloseTo(0.5, 12);
  const coefficient = stillAirCoefficient({ gap: 0.0075, temperature });
  expect(uptakeDuration({ ...film, ...end, coefficient }).wilson / once).toBeCloseTo(0.5, 12);
  const twice = { ...film, ...end, massGlycerin: 2 * film.massGlycerin, massWater: 2 * film.massWater };
  expect(uptakeDuration(twice).wilson / once).toBeCloseTo(2, 12);
});

test("a damper room hazes a gel sooner", () => {
  const after = (relativeHumidity: number) =>
    uptakeDuration({ ...film, relativeHumidity, massFractionGlycerinEnd: 0.82 }).norrish;
  for (const humidity of [0.5, 0.6, 0.7, 0.8]) expect(after(humidity + 0.1)).toBeLessThan(after(humidity));
});

test("by the water activity at the end each law takes its own composition", () => {
  const { norrish, wilson } = uptakeDuration({ ...film, waterActivityEnd: 0.5 });
  const at = (duration: number, law: "norrish" | "wilson") => {
    const water = film.massWater + waterTakenUpAfter({ ...film, duration })[law];
    return waterActivity({ massFractionGlycerin: film.massGlycerin / (film.massGlycerin + water), temperature })[law];
  };
  expect(at(norrish, "norrish")).toBeCloseTo(0.5, 9);
  expect(at(wilson, "wilson")).toBeCloseTo(0.5, 9);
});

test("an end that the room does not bring is refused, and so are two ends or none", () => {
  expect(() => uptakeDuration({ ...film, massFractionGlycerinEnd: 0.5 })).toThrow("at rest with the room");
  expect(() => uptakeDuration({ ...film, massFractionGlycerinEnd: 0.9 })).toThrow("at rest with the room");
  expect(() => uptakeDuration(film)).toThrow("no end");
  expect(() => uptakeDuration({ ...film, massFractionGlycerinEnd: 0.8, waterActivityEnd: 0.5 })).toThrow("two ends");
  expect(() => waterTakenUpAfter({ ...film, relativeHumidity: 1, duration: 1 })).toThrow("saturated air");
});
