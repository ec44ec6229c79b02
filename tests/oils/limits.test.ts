import {
  checkCertificate,
  inductionTime,
  oxidationRanking,
  peroxideRise,
  profileValueRanges,
  profileValues,
} from "gelwright/oils";
import { expect, test } from "vitest";
import { acidOf } from "../../src/oils/shorthand.js";

const code = (is: string) => expect.objectContaining({ code: is });

test("an acid has 4 to 30 carbons, up to six double bonds, and room for them from its end to the acid group", () => {
  const known = (...texts: readonly string[]) => texts.map((text) => acidOf(text) !== undefined);
  expect(
    known("4:0", "30:0", "22:6", "7:2", "C18:1", "18:1-OH n-9", "18:2(n-6)", "18:3 omega-3", " 18:1 "),
  ).not.toContain(false);
  expect(known("3:0", "31:0", "24:7", "6:2", "18", "18:1 n-9 oil", "oil 18:1", "18:1 n-", "018:1")).not.toContain(true);
  // The last double bond of an n-3 acid begins at its third carbon; each further one lies three carbons on; carbon 2 is the last.
  expect(known("18:1 n-16", "18:2 n-13", "18:3 n-10", "18:1 n-1")).not.toContain(false);
  expect(known("18:1 n-17", "18:2 n-14", "18:3 n-11", "18:1 n-0", "18:0 n-9")).not.toContain(true);
  // Oleic acid: 282.47 g/mol; ricinoleic has one oxygen more.
  expect(acidOf("18:1 n-9")).toMatchObject({ shorthand: "18:1 n-9", kind: "18:1", family: 9, hydroxyls: 0 });
  expect(acidOf("18:1 n-9")?.molarMass).toBeCloseTo(0.28247, 4);
  expect((acidOf("18:1-OH n-9")?.molarMass ?? 0) - (acidOf("18:1")?.molarMass ?? 0)).toBeCloseTo(0.015999, 9);
});

test("limits are two percentages from 0 to 100 between which the acids can make up the whole", () => {
  const ranges = (a: readonly number[], b: readonly number[]) => () =>
    profileValueRanges({ ranges: { "16:0": a, "18:1": b } as never });
  expect(ranges([0, 100], [0, 100])().iodineValue[0]).toBe(0);
  expect(ranges([0, 100], [0, 100])().iodineValue[1]).toBeCloseTo(
    profileValues({ profile: { "18:1": 100 } }).iodineValue,
    9,
  );
  expect(ranges([40, 40], [60, 60])().iodineValue[0]).toBeCloseTo(
    profileValues({ profile: { "16:0": 40, "18:1": 60 } }).iodineValue,
    9,
  );
  for (const wrong of [[-1, 50], [50, 101], [60, 50], [50], ["0", 50]] as never[])
    expect(ranges(wrong, [0, 100])).toThrow("two percentages");
  expect(ranges([40, 40], [59, 59.9])).toThrow(code("unreachable"));
  expect(ranges([40, 41], [60.1, 80])).toThrow(code("unreachable"));
});

test("a profile makes up the whole within its tolerance, and each acid stands in it once", () => {
  const of = (profile: Readonly<Record<string, number>>, sumTolerance?: number) => () =>
    profileValues({ profile, ...(sumTolerance !== undefined && { sumTolerance }) });
  expect(of({ "18:1": 99 })().iodineValue).toBeGreaterThan(0);
  expect(of({ "18:1": 98.9 })).toThrow("a sum of 98.9 %");
  expect(of({ "18:1": 98.9 }, 1.1)().iodineValue).toBeGreaterThan(0);
  expect(of({ "18:1": 101.1 })).toThrow("percentage");
  expect(of({ "18:1": 50, "C18:1": 50 })).toThrow("18:1 twice");
});

const oil = {
  name: "seed oil",
  standard: "an invented standard",
  profile: { "16:0": [4, 9], "18:1": [60, 80] },
  iodineValue: [85, 109],
  saponificationValue: [183, 207],
  relativeDensity: [
    { range: [0.91, 0.93], temperature: 20, temperatureWater: 20 },
    { range: [0.9, 0.92], temperature: 40, temperatureWater: 20 },
  ],
  refractiveIndex: [{ range: [1.46, 1.48] }],
  read: Object.fromEntries(
    ["profile", "iodineValue", "saponificationValue", "relativeDensity", "refractiveIndex"].map((each) => [
      each,
      "from memory",
    ]),
  ),
} as never;
const answered = (certificate: object) => checkCertificate({ oil, certificate } as never);
const of = (id: string, certificate: object) => answered(certificate).find((answer) => answer.id === id);

test("a figure at either end of its range is within it, and one beyond is told on its side", () => {
  const at = (iodineValue: number) => of("iodine-value", { iodineValue });
  for (const within of [85, 109]) expect(at(within)).toMatchObject({ verdict: "met", side: "none" });
  expect(at(84.9)).toMatchObject({ verdict: "not-met", side: "below", figure: 84.9, limit: { min: 85, max: 109 } });
  expect(at(109.1)).toMatchObject({ verdict: "not-met", side: "above" });
  expect(of("iodine-value", {})).toMatchObject({ verdict: "not-known", reason: "no-figure" });
  expect(of("iodine-value", {})).not.toHaveProperty("figure");
});

test("isomers count to their acid together, and their sum may stand at the limit whatever the last bit says", () => {
  const acid = (profile: object) => answered({ profile }).filter(({ acid: kind }) => kind === "18:1");
  expect(acid({ "18:1 n-9": 79.9, "18:1 n-7": 0.1 })).toMatchObject([{ verdict: "met" }]);
  expect(acid({ "18:1 n-9": 0.1 + 0.2, "18:1 n-7": 79.7 })).toMatchObject([{ verdict: "met" }]);
  expect(acid({ "18:1 n-9": 79.9, "18:1 n-7": 0.2 })).toMatchObject([{ verdict: "not-met", side: "above" }]);
  expect(answered({ profile: { "20:0": 1 } }).find(({ acid: kind }) => kind === "20:0")).toMatchObject({
    verdict: "not-known",
    reason: "range-not-read",
  });
});

test("a figure is asked at the temperature of its range, and not at another", () => {
  const at = (value: number, temperature: number) =>
    of("relative-density", { relativeDensity: { value, temperature } });
  expect(at(0.925, 20)).toMatchObject({ verdict: "met", temperature: 20 });
  expect(at(0.925, 40)).toMatchObject({ verdict: "not-met", side: "above", temperature: 40 });
  expect(at(0.925, 25)).toMatchObject({ verdict: "not-known", reason: "no-range-at-temperature", figure: 0.925 });
  expect(of("relative-density", {})).toMatchObject({ verdict: "not-known", reason: "no-figure", temperature: 20 });
  // A range without a temperature is for none.
  expect(of("refractive-index", {})).not.toHaveProperty("temperature");
  expect(answered({}).some(({ id }) => id === "tocols")).toBe(false);
  expect(of("tocols", { tocols: 5 })).toMatchObject({ verdict: "not-known", reason: "range-not-read" });
});

const days = (values: readonly number[]) => values.map((peroxideValue, i) => ({ time: 86_400 * i, peroxideValue }));

test("peroxides rise on a straight line of four times at least, which does not fall and does not bend", () => {
  const { rate, peroxideValueStart, interval } = peroxideRise({ readings: days([2, 3, 4, 5]) });
  expect(rate * 86_400).toBeCloseTo(1, 12);
  expect(peroxideValueStart).toBeCloseTo(2, 12);
  expect(interval.max - interval.min).toBeLessThan(1e-15);
  expect(() => peroxideRise({ readings: days([2, 3, 4]) })).toThrow("readings");
  expect(() => peroxideRise({ readings: [...days([2, 3, 4]), { time: 0, peroxideValue: 2 }] })).toThrow("four times");
  expect(() => peroxideRise({ readings: days([5, 4, 3, 2]) })).toThrow("do not rise");
  expect(() => peroxideRise({ readings: days([2, 2, 2, 2]) })).toThrow(code("range"));
  expect(() => peroxideRise({ readings: days([1, 2, 4, 8, 16, 32]) })).toThrow("a bend");
  for (const confidence of [0, 1, 1.5])
    expect(() => peroxideRise({ readings: days([2, 3, 4, 5]), confidence })).toThrow("confidence");
});

test("times that halve every 10 K are carried on by both laws, and by Arrhenius further into the cold", () => {
  const readings = [90, 100, 110, 120].map((temperature) => ({
    temperature,
    duration: 3600 * 2 ** ((120 - temperature) / 10),
  }));
  const found = inductionTime({ readings, temperature: 60 });
  expect(found.logLinear.factorPerTenKelvin).toBeCloseTo(2, 9);
  expect(found.logLinear.duration / (3600 * 64)).toBeCloseTo(1, 9);
  expect(found.arrhenius.duration).toBeGreaterThan(found.logLinear.duration);
  expect(found.ratio).toBeCloseTo(found.arrhenius.duration / found.logLinear.duration, 12);
  expect(found.beyond).toBe(30);
  expect(inductionTime({ readings, temperature: 130 }).beyond).toBe(10);
  expect(inductionTime({ readings, temperature: 105 }).beyond).toBe(0);
  const turned = readings.map(({ temperature, duration }) => ({ temperature: 210 - temperature, duration }));
  expect(() => inductionTime({ readings: turned, temperature: 60 })).toThrow("do not fall");
  const flat = readings.map(({ temperature }) => ({ temperature, duration: 3600 }));
  expect(() => inductionTime({ readings: flat, temperature: 60 })).toThrow("do not fall");
  const one = readings.map(({ duration }) => ({ temperature: 100, duration }));
  expect(() => inductionTime({ readings: one, temperature: 60 })).toThrow("one temperature");
  expect(inductionTime({ readings: readings.slice(0, 2), temperature: 60 }).arrhenius).not.toHaveProperty("interval");
  for (const confidence of [0, 1])
    expect(() => inductionTime({ readings, temperature: 60, confidence })).toThrow("confidence");
});

test("the oil that is spared most stands first, and of those that are spared alike the one with the larger burden", () => {
  const heated = (name: string, equivalentTime: number, equivalentTimeOffHeat: number) => ({
    ...{ name, oxidisability: 1, massFraction: 0.5, equivalentTime, equivalentTimeOffHeat },
  });
  const ranked = oxidationRanking({ oils: [heated("C", 10, 8), heated("A", 20, 10), heated("B", 30, 28)] });
  expect(ranked.map(({ name, spared, share }) => [name, spared, share])).toEqual([
    ["A", 5, 20 / 60],
    ["B", 1, 30 / 60],
    ["C", 1, 10 / 60],
  ]);
  expect(oxidationRanking({ oils: [heated("A", 0, 0)] })[0]?.share).toBe(0);
});
