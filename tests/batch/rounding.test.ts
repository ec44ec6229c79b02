import fc from "fast-check";
import { type LineToRound, roundToBalances } from "gelwright/batch";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const increments = [0.0001, 0.001, 0.002, 0.005, 0.01, 0.025, 0.1];

/** A handful of lines has some hundred ways to be rounded, so that a hundred of them say enough. */
const some = { numRuns: 100 };

const line = fc
  .tuple(fc.constantFrom(...increments), fc.double({ min: 1, max: 4000, noNaN: true }))
  .map(([increment, steps]): LineToRound => ({ name: "a line", mass: increment * steps, increment }));
const lines = fc.array(line, { minLength: 1, maxLength: 8 });

/** Counts in units of 0.1 mg, in which all these increments are whole. */
const units = (mass: number) => Math.round(mass * 1e4);
const sum = (masses: readonly number[]) => masses.reduce((total, mass) => total + mass, 0);

/** Every way to round each line down or up: the honest and slow way to find the best total. */
function totalMin(of: readonly LineToRound[], wanted: number): number {
  const ways = of.reduce<readonly number[]>(
    (totals, { mass, increment }) => {
      const steps = Math.floor(mass / increment + 1e-9);
      const rest = mass / increment - steps > 1e-9 ? [0, 1] : [0];
      return [...new Set(totals.flatMap((total) => rest.map((up) => total + units((steps + up) * increment))))];
    },
    [0],
  );
  return Math.min(...ways.filter((total) => total >= wanted * 1e4 - 1e-6));
}

test("every line is a whole number of its increments, less than one off, and the total is their exact sum", () => {
  fc.assert(
    fc.property(lines, (input) => {
      const { lines: rounded, total } = roundToBalances({ lines: input });
      rounded.forEach(({ mass, deviation }, i) => {
        const increment = input[i]?.increment ?? 0;
        expect(Math.abs(deviation)).toBeLessThan(increment);
        expect(mass).toBe(Number((Math.round(mass / increment) * increment).toFixed(4)));
      });
      expect(units(total)).toBe(sum(rounded.map(({ mass }) => units(mass))));
      expect(total).toBe(units(total) / 1e4);
    }),
    some,
  );
});

test("the total is the least that the balances can reach and not below the one wanted, as trying every way finds", () => {
  fc.assert(
    fc.property(lines, between(0, 1), (input, more) => {
      const exact = sum(input.map(({ mass }) => mass));
      const wanted = exact + more * (input[0]?.increment ?? 0);
      fc.pre(Number.isFinite(totalMin(input, wanted)));
      const { total, totalTarget, onGrid } = roundToBalances({ lines: input, totalMin: wanted });
      expect(units(total)).toBe(totalMin(input, wanted));
      expect(onGrid).toBe(Math.abs(total - totalTarget) <= 1e-12 * totalTarget);
    }),
    some,
  );
});

test("the order of the lines changes no total, and no line either where no two remainders are equal", () => {
  fc.assert(
    fc.property(lines, (input) => {
      const there = roundToBalances({ lines: input });
      const back = roundToBalances({ lines: input.slice().reverse() });
      expect(back.total).toBe(there.total);
      const off = (rounded: typeof there) => sum(rounded.lines.map(({ deviation }) => Math.abs(deviation)));
      expect(off(back)).toBeCloseTo(off(there), 9);
    }),
    some,
  );
});

test("a carrier reaches every total on its own grid, and the other lines still stay within one increment", () => {
  fc.assert(
    fc.property(lines, fc.integer({ min: 0, max: 50 }), (input, extra) => {
      const carrier = { name: "oil", mass: 500.00004, increment: 0.0001, carrier: true };
      const wanted = units(sum(input.map(({ mass }) => mass))) / 1e4 + 500 + extra * 0.0001;
      const { lines: rounded, total } = roundToBalances({ lines: [...input, carrier], totalMin: wanted });
      expect(Math.abs(total - wanted)).toBeLessThan(1e-9);
      input.forEach(({ increment }, i) => {
        expect(Math.abs(rounded[i]?.deviation ?? 1)).toBeLessThan(increment);
      });
    }),
    some,
  );
});

test("the carrier moves by more than its increment only where the other lines cannot reach the total", () => {
  const wax = { name: "wax", mass: 1.0004, increment: 0.001 };
  const oil = { name: "oil", mass: 9.0006, increment: 0.001, carrier: true };
  const masses = (totalMin: number) => roundToBalances({ lines: [wax, oil], totalMin }).lines.map(({ mass }) => mass);
  expect(masses(10.001)).toEqual([1, 9.001]);
  expect(masses(10.002)).toEqual([1.001, 9.001]);
  expect(masses(10.005)).toEqual([1.001, 9.004]);
});

test("rounding never lifts a restricted line over its limit: the next line goes up in its place", () => {
  const input = [
    { name: "fragrance", mass: 0.2009, increment: 0.001, massMax: 0.2009 },
    { name: "oil", mass: 9.7991, increment: 0.001 },
  ];
  expect(roundToBalances({ lines: input }).lines.map(({ mass }) => mass)).toEqual([0.2, 9.8]);
  expect(roundToBalances({ lines: input }).total).toBe(10);
});

test("limits that keep the total out of reach are refused; a carrier is the remedy", () => {
  const input = [{ name: "fragrance", mass: 0.2009, increment: 0.001, massMax: 0.2009 }];
  expect(() => roundToBalances({ lines: input })).toThrow("a total out of reach");
  const oil = { name: "oil", mass: 9.799, increment: 0.001, carrier: true };
  expect(roundToBalances({ lines: [...input, oil] }).total).toBe(10);
  expect(() => roundToBalances({ lines: [{ ...oil, massMax: 9.7985 }] })).toThrow("at most its limit, 9.7985 kg");
});

test("no line is rounded away", () => {
  expect(() => roundToBalances({ lines: [{ name: "dye", mass: 0.0004, increment: 0.001 }] })).toThrow(
    "lines[0]: found 0.0004 kg of dye, expected at least one increment, 0.001 kg",
  );
});

test("masses that lie on the grid stay, whatever noise their doubles carry", () => {
  const { lines: rounded, total } = roundToBalances({
    lines: [
      { name: "wax", mass: 0.1 + 0.2, increment: 0.1 },
      { name: "oil", mass: 0.7, increment: 0.1 },
    ],
  });
  expect(rounded.map(({ mass }) => mass)).toEqual([0.3, 0.7]);
  expect(total).toBe(1);
});

test("a scale in tenths of a pound and one in grams add up without a residue of doubles", () => {
  const pound = 0.45359237;
  const { lines: rounded, total } = roundToBalances({
    lines: [
      { name: "oil", mass: 36, increment: pound / 10 },
      { name: "wax", mass: 4, increment: 0.001 },
    ],
  });
  expect(rounded[0]?.mass).toBe(36.015234178);
  expect(total).toBe(40.015234178);
});

test("fifty lines on four balances are rounded exactly", () => {
  const many = Array.from({ length: 50 }, (_, i) => {
    const increment = [0.0001, 0.001, 0.01, 0.02][i % 4] ?? 1;
    return { name: `line ${i}`, mass: increment * (100 + i * Math.SQRT2), increment };
  });
  const { total, totalTarget } = roundToBalances({ lines: many });
  expect(total - totalTarget).toBeGreaterThanOrEqual(0);
  expect(total - totalTarget).toBeLessThan(0.0001);
});

test("increments that share no measure are refused before the search runs away", () => {
  const odd = Array.from({ length: 24 }, (_, i) => ({
    name: `line ${i}`,
    mass: 5.55,
    increment: 0.001 + 2 ** i * 1e-9,
  }));
  expect(() => roundToBalances({ lines: odd })).toThrow("expected fewer different increments");
});
