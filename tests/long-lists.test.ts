import { mixingTemperature } from "gelwright/heat";
import { additionSchedule } from "gelwright/mixing";
import { meanKineticTemperature, trend, viscosityDrift } from "gelwright/stability";
import { parseQuantity } from "gelwright/units";
import { expect, test } from "vitest";
import { htmlText, markdownLine, markdownText } from "../src/sheet/escape.js";

// A logger that reads once a minute has as many in three months. Spread into arguments they overflow the stack.
const count = 130_000;
const readings = <T>(make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i));

test("a logger's readings of three months are no different from those of three", () => {
  const warm = [20, 25, 30];
  const reading = (i: number) => ({ temperature: warm[i % 3] as number });
  expect(meanKineticTemperature({ readings: readings(reading) })).toBeCloseTo(
    meanKineticTemperature({ readings: warm.map((_, i) => reading(i)) }),
    4,
  );
});

test("a line through a hundred thousand points is found", () => {
  expect(trend({ readings: readings((time) => ({ time, value: 3 + 2 * time + (time % 2) })) }).slope.value).toBeCloseTo(
    2,
    6,
  );
  const drift = viscosityDrift({ readings: readings((time) => ({ time, viscosity: 10 + (time % 2) })), duration: 1e6 });
  expect(drift.factor.value).toBeCloseTo(1, 3);
});

test("as many charges are mixed", () => {
  const charges = readings((i) => ({ mass: 1, specificHeat: 2000, temperature: i % 2 === 0 ? 20 : 40 }));
  expect(mixingTemperature({ charges })).toBeCloseTo(30, 9);
});

test("text of a hundred thousand letters is read or refused at once, whatever its letters are", () => {
  for (const letter of [" ", ",", "1", ".", "/l", "° ", " 000", "e1", "1,", "\u2009"])
    for (const tail of ["", "x1,2", " kg", "\n"])
      expect(() => parseQuantity(`1${letter.repeat(1e5 / letter.length)}${tail}`, "volume")).toThrow(/^quantity: /);
  for (const letter of [" ", "\n", " \n", "-", "=", "a ", "1", "[", ":", "//", "w", "1 "])
    for (const write of [htmlText, markdownText, markdownLine])
      expect(write(`a${letter.repeat(1e5)}b`).length).toBeGreaterThan(1);
});

test("breaks and what stands around them become one space, other spaces stay", () => {
  expect(htmlText("a \n\t b  c\u2028d")).toBe("a b  c d");
  expect(htmlText(" \r\n a ")).toBe("  a ".replace(/^ {2}/, " "));
});

test("even additions that a narrow dip lets through at no count are given up", () => {
  const points = [
    [0, 0.01],
    [0.1, 1],
    [0.8, 1],
    [0.8001, 1e-9],
    [0.809, 1e-9],
    [0.81, 1],
    [0.99, 1],
  ].map(([volumeFractionOil = 0, value = 0]) => ({ volumeFractionOil, value }));
  const oil = { massGelFormer: 10, massToAdd: 60, densityOil: 915, densityGelFormer: 1250 };
  const schedule = (form: "largest" | "equal" | "geometric") =>
    additionSchedule({ ...oil, form, share: { law: "table", points } });
  expect(schedule("largest")).toHaveLength(5);
  for (const form of ["equal", "geometric"] as const) expect(() => schedule(form)).toThrow(`no ${form} additions`);
}, 20_000);
