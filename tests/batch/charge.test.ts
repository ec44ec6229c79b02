import fc from "fast-check";
import { type Allowance, chargeFor, deliveredFrom } from "gelwright/batch";
import { expect, test } from "vitest";

const names = ["oil", "gel former", "water", "fragrance"];

const lines = fc
  .array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 2, maxLength: 4 })
  .map((shares) => shares.map((massFraction, i) => ({ name: names[i] ?? "", massFraction })));

const some = fc.option(fc.constantFrom(["oil"], ["gel former"], ["oil", "gel former"]), { nil: undefined });

const allowance: fc.Arbitrary<Allowance> = fc.oneof(
  fc
    .tuple(fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 0.6, noNaN: true })), some)
    .map(([fraction, of]) => ({ kind: "proportional" as const, name: "a share", fraction, ...(of && { lines: of }) })),
  fc
    .tuple(fc.double({ min: 1e-6, max: 5, noNaN: true }), some)
    .map(([mass, of]) => ({ kind: "fixed" as const, name: "a mass", mass, ...(of && { lines: of }) })),
);

const batch = fc.record({
  delivered: fc.double({ min: 0.01, max: 5000, noNaN: true }),
  lines,
  allowances: fc.array(allowance, { maxLength: 6 }),
});

const sum = (masses: readonly { readonly mass: number }[]) => masses.reduce((total, { mass }) => total + mass, 0);

test("what was asked for arrives, at the formula's composition, after every allowance in any order", () => {
  fc.assert(
    fc.property(batch, (input) => {
      const { lines: charge } = chargeFor(input);
      const arrived = deliveredFrom({ charge, allowances: input.allowances });
      expect(Math.abs(arrived.mass / input.delivered - 1)).toBeLessThan(1e-12);
      const whole = input.lines.reduce((total, { massFraction }) => total + massFraction, 0);
      arrived.lines.forEach(({ massFraction }, i) => {
        expect(massFraction).toBeCloseTo((input.lines[i]?.massFraction ?? 0) / whole, 12);
      });
    }),
  );
});

test("no mass is lost or found: the charge is what is delivered and what every allowance takes, both ways", () => {
  fc.assert(
    fc.property(batch, (input) => {
      const charge = chargeFor(input);
      expect(Math.abs((input.delivered + sum(charge.allowances)) / charge.total - 1)).toBeLessThan(1e-12);
      expect(Math.abs(sum(charge.lines) / charge.total - 1)).toBeLessThan(1e-12);
      const arrived = deliveredFrom({ charge: charge.lines, allowances: input.allowances });
      expect(Math.abs((arrived.mass + sum(arrived.allowances)) / charge.total - 1)).toBeLessThan(1e-12);
      arrived.allowances.forEach(({ mass }, i) => {
        expect(Math.abs(mass - (charge.allowances[i]?.mass ?? Number.NaN))).toBeLessThan(1e-12 * charge.total);
      });
    }),
  );
});

test("a doubled batch doubles the lines and the proportional allowances to the last bit, and not the fixed ones", () => {
  fc.assert(
    fc.property(batch, (input) => {
      const once = chargeFor(input);
      const twice = chargeFor({ ...input, delivered: 2 * input.delivered });
      once.lines.forEach((line, i) => {
        expect(twice.lines[i]?.massProportional).toBe(2 * line.massProportional);
      });
      once.allowances.forEach((loss, i) => {
        expect(twice.allowances[i]?.massProportional).toBe(2 * loss.massProportional);
        if (input.allowances[i]?.kind === "fixed") expect(twice.allowances[i]?.mass).toBe(loss.mass);
      });
    }),
  );
});

test("without allowances, the charge is the batch asked for", () => {
  const { lines, total } = chargeFor({
    delivered: 8,
    lines: [
      { name: "oil", massFraction: 0.75 },
      { name: "gel former", massFraction: 0.25 },
    ],
    allowances: [],
  });
  expect(total).toBe(8);
  expect(lines.map(({ mass }) => mass)).toEqual([6, 2]);
});

test("what evaporates is charged above its share of the formula, and the rest is not", () => {
  const { lines } = chargeFor({
    delivered: 50,
    lines: [
      { name: "volatile", massFraction: 0.03 },
      { name: "rest", massFraction: 0.97 },
    ],
    allowances: [{ kind: "proportional", name: "evaporation", fraction: 0.1, lines: ["volatile"] }],
  });
  expect(lines[0]?.massFraction).toBeGreaterThan(0.03);
  expect(lines[1]?.mass).toBe(48.5);
  // 1.5 kg of volatile left over from nine tenths of it.
  expect(lines[0]?.massFraction).toBeCloseTo(1.5 / 0.9 / (1.5 / 0.9 + 48.5), 15);
  expect((lines[0]?.massFraction ?? 0) + (lines[1]?.massFraction ?? 0)).toBeCloseTo(1, 15);
});

test("the order of the process matters: samples drawn before the film cost more than after it", () => {
  const film: Allowance = { kind: "proportional", name: "film", fraction: 0.5 };
  const samples: Allowance = { kind: "fixed", name: "samples", mass: 1 };
  const total = (allowances: readonly Allowance[]) =>
    chargeFor({ delivered: 10, lines: [{ name: "gel", massFraction: 1 }], allowances }).total;
  expect(total([film, samples])).toBe(22);
  expect(total([samples, film])).toBe(21);
});

test("an allowance for a line that the batch does not have is refused by name", () => {
  expect(() =>
    chargeFor({
      delivered: 10,
      lines: [{ name: "oil", massFraction: 1 }],
      allowances: [{ kind: "fixed", name: "samples", mass: 1, lines: ["wax"] }],
    }),
  ).toThrow("allowances[0].lines: found wax, expected the name of a line of the batch");
});

test("a fixed loss that takes all there is, is unreachable", () => {
  const charge = [{ name: "oil", mass: 1 }];
  expect(() => deliveredFrom({ charge, allowances: [{ kind: "fixed", name: "hold-up", mass: 1 }] })).toThrow(
    "a loss of 1 kg from 1 kg",
  );
});
