import * as gelwright from "gelwright";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import { calculators } from "../../docs/calculators/all.js";
import { choicesNow, refit } from "../../docs/in-page/calculator-choices.js";
import { codeOf } from "../../docs/in-page/calculator-code.js";
import type { Calculator, Call } from "../../docs/in-page/calculator-data.js";
import { entriesOfHash, hashOfEntries } from "../../docs/in-page/calculator-link.js";
import { pullsOf } from "../../docs/in-page/calculator-pulls.js";
import { argumentsOf, startOf, valueAt, withValue } from "../../docs/in-page/calculator-values.js";
import { at, numbersIn, put } from "../../docs/in-page/paths.js";
import { nameOf } from "../support/rooms.js";

const all = calculators().map(({ calculator }) => calculator);
const library = gelwright as unknown as Readonly<Record<string, Readonly<Record<string, Call>>>>;

function callOf({ room, name }: Calculator): Call {
  return library[nameOf(room)]?.[name] ?? expect.fail(name);
}

function expectClose(found: unknown, expected: unknown): void {
  const numbers = numbersIn(expected);
  expect(numbersIn(found).map(([path]) => path)).toEqual(numbers.map(([path]) => path));
  for (const [path, value] of numbers)
    expect(at(found, path)).toBeCloseTo(value, 6 - Math.ceil(Math.log10(Math.abs(value) + 1e-9)));
}

test("twenty questions have a calculator, each with an answer from the start", () => {
  expect(all.length).toBeGreaterThanOrEqual(20);
  for (const calculator of all) {
    const result = callOf(calculator)(...calculator.start);
    expect(numbersIn(result).length, calculator.name).toBeGreaterThan(0);
    for (const { text } of calculator.fields) expect(text, calculator.name).not.toBe("");
  }
});

test("the fields hold the figures that they start from, whatever the unit beside them", () => {
  for (const calculator of all) {
    const { args, unread } = argumentsOf(calculator, startOf(calculator));
    expect(unread).toEqual([]);
    expectClose(args, calculator.start);
  }
});

test("a text that is no number, or not one that its unit allows, is reported with its field", () => {
  const one = all.find(({ name }) => name === "coolingTime") ?? expect.fail();
  const read = (text: string, unit: string) =>
    argumentsOf(one, new Map([...startOf(one), ["temperatureEnd", { text, unit }]])).unread;
  expect(read("104", "°F")).toEqual([]);
  expect(read("8,5", "°C")).toEqual([{ path: "temperatureEnd", found: "8,5", expected: "a number" }]);
  expect(read("-500", "°F")).toEqual([
    { path: "temperatureEnd", found: "-500 °F", expected: "absolute zero (-459.67 °F) or more" },
  ]);
});

test("another unit to convert from brings units that it converts into", () => {
  const one = all.find(({ name }) => name === "convert") ?? expect.fail();
  const entries = startOf(one);
  const [from, to] = one.fields.filter(({ kind }) => kind === "choice");
  if (!from || !to) expect.fail();
  expect(choicesNow(to, one, entries)).toContain("mPa·s");
  expect(choicesNow(to, one, entries)).not.toContain("kg");
  expect(choicesNow(from, one, entries)).toContain("kg");
  expect(refit(one, entries)).toBe(false);
  const optional = { ...one, fields: one.fields.map((field) => ({ ...field, optional: true })) };
  expect(refit(optional, new Map([[from.path, { text: "" }]]))).toBe(false);
  entries.set(from.path, { text: "lb" });
  expect(refit(one, entries)).toBe(true);
  expect(choicesNow(to, one, entries)).toContain(entries.get(to.path)?.text);
  expect(choicesNow(to, one, entries)).toContain("kg");
});

test("the code to copy gives what the page shows", () => {
  for (const calculator of all) {
    const call = callOf(calculator);
    const code = codeOf(calculator, calculator.start, call(...calculator.start)).replace(/^import .*\n/, "");
    const run = new Function(calculator.name, `return ${code.trim()}`);
    expect(run(call), calculator.name).toEqual(call(...calculator.start));
  }
});

test("a link holds the figures and their units", () => {
  for (const calculator of all) {
    const entries = startOf(calculator);
    expect(entriesOfHash(hashOfEntries(entries), calculator)).toEqual(entries);
  }
  const one = all.find(({ name }) => name === "coolingTime") ?? expect.fail();
  expect(entriesOfHash("#temperatureEnd=104+%C2%B0F&nothing=1", one)).toEqual(
    new Map([["temperatureEnd", { text: "104", unit: "°F" }]]),
  );
});

test("a range that a docstring states is the range that the function holds to", () => {
  const beyond = all.flatMap((calculator) =>
    calculator.fields.flatMap(({ path, kind, range }) => {
      if (kind !== "number") return [];
      const { min, max, minExcluded, maxExcluded } = range;
      const outside = [
        ...(min === undefined ? [] : [minExcluded ? min : min - 1e-3]),
        ...(max === undefined ? [] : [maxExcluded ? max : max + 1e-3]),
      ];
      return outside.map((value) => ({ calculator, path, value }));
    }),
  );
  expect(beyond.length).toBeGreaterThan(50);
  for (const { calculator, path, value } of beyond) {
    const args = withValue(calculator.parameters, calculator.start, path, value);
    expect(() => callOf(calculator)(...args), `${calculator.name} ${path} ${value}`).toThrow(CalculationError);
  }
});

test("what moves the answer most comes first, by what a small step does", () => {
  const one = all.find(({ name }) => name === "additionTemperatureMin") ?? expect.fail();
  const pulls = pullsOf(one, one.start, callOf(one));
  expect(pulls[0]).toMatchObject({ path: "temperatureMin", step: "1 K" });
  const { start, parameters } = one;
  const moved = withValue(
    parameters,
    start,
    "temperatureMin",
    Number(valueAt(parameters, start, "temperatureMin")) + 1,
  );
  expect(pulls[0]?.change).toBeCloseTo(Number(callOf(one)(...moved)) - Number(callOf(one)(...start)), 9);
});

test("a value is put into a copy, and taken away, at any depth", () => {
  const value = { charges: [{ mass: 1 }, { mass: 2 }] };
  expect(put(value, "charges[1].mass", 5)).toEqual({ charges: [{ mass: 1 }, { mass: 5 }] });
  expect(put(value, "charges[0].mass", undefined)).toEqual({ charges: [{}, { mass: 2 }] });
  expect(value).toEqual({ charges: [{ mass: 1 }, { mass: 2 }] });
});
