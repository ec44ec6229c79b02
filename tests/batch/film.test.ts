import fc from "fast-check";
import { type Allowance, chargeFor, deliveredFrom, filmAllowances, filmMass } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { vesselFilling } from "gelwright/mixing";
import { expect, test } from "vitest";

const thickness = fc.double({ min: 1e-5, max: 2e-3, noNaN: true });
const share = (delivered: number, allowances: readonly Allowance[]) =>
  1 - delivered / chargeFor({ delivered, lines: [{ name: "gel", massFraction: 1 }], allowances }).total;

test("the same film takes a larger share of the beaker than of the kettle", () => {
  fc.assert(
    fc.property(thickness, fc.double({ min: 1.1, max: 20, noNaN: true }), (film, wider) => {
      // Beaker and kettle of one shape, filled to one height per width: volume grows with the cube of the width.
      const beaker = filmAllowances({ thickness: film, density: 915, diameter: 0.07, name: "beaker" });
      const kettle = filmAllowances({ thickness: film, density: 915, diameter: 0.07 * wider, name: "kettle" });
      expect(share(0.25, beaker)).toBeGreaterThan(share(0.25 * wider ** 3, kettle));
    }),
  );
});

test("both allowances together leave a film on the bottom and on the wall up to the batch, in any depth", () => {
  fc.assert(
    fc.property(thickness, fc.double({ min: 0.1, max: 2, noNaN: true }), (film, depth) => {
      const [diameter, density] = [0.4, 915];
      const batch = ((density * Math.PI) / 4) * diameter ** 2 * depth;
      const area = (Math.PI / 4) * diameter ** 2 + Math.PI * diameter * depth;
      const allowances = filmAllowances({ thickness: film, density, diameter, name: "kettle" });
      const left = filmMass({ thickness: film, density, area });
      fc.pre(left < batch / 2);
      const { total } = chargeFor({ delivered: batch - left, lines: [{ name: "gel", massFraction: 1 }], allowances });
      expect(Math.abs(total / batch - 1)).toBeLessThan(1e-12);
    }),
  );
});

test("on a rounded bottom they leave a film on all that is wetted, as soon as the batch fills it", () => {
  const bottoms = [
    { shape: "cone", depth: 0.15 },
    { shape: "ellipsoidal", depth: 0.1 },
    { shape: "dished" },
    { shape: "flat" },
  ] as const;
  fc.assert(
    fc.property(
      thickness,
      fc.constantFrom(...bottoms),
      fc.double({ min: 0.02, max: 0.3, noNaN: true }),
      (film, bottom, volume) => {
        const [diameter, density] = [0.4, 915];
        const { areaWetted } = vesselFilling({ vessel: { diameter, bottom }, volume });
        const allowances = filmAllowances({ thickness: film, density, diameter, bottom, name: "kettle" });
        const left = filmMass({ thickness: film, density, area: areaWetted });
        const delivered = density * volume - left;
        const { total } = chargeFor({ delivered, lines: [{ name: "gel", massFraction: 1 }], allowances });
        expect(Math.abs(total / (density * volume) - 1)).toBeLessThan(1e-12);
      },
    ),
  );
});

test("a film that would fill the vessel is unreachable", () => {
  expect(() => filmAllowances({ thickness: 0.02, density: 915, diameter: 0.08, name: "beaker" })).toThrow(
    "thickness: found 0.02, expected a film thinner than a quarter of the diameter",
  );
});

test("they keep the name that the caller gave, and say where each is left, through the charge and back", () => {
  const allowances = filmAllowances({ thickness: 5e-4, density: 915, diameter: 0.4, name: "Film im Kessel" });
  const charge = chargeFor({ delivered: 40, lines: [{ name: "gel", massFraction: 1 }], allowances });
  const arrived = deliveredFrom({ charge: charge.lines, allowances });
  for (const losses of [allowances, charge.allowances, arrived.allowances])
    expect(losses.map(({ name, part }) => [name, part])).toEqual([
      ["Film im Kessel", "wall"],
      ["Film im Kessel", "bottom"],
    ]);
  const odd = [{ kind: "fixed", name: "film", part: "lid", mass: 1 }] as unknown as readonly Allowance[];
  expect(() => chargeFor({ delivered: 40, lines: [{ name: "gel", massFraction: 1 }], allowances: odd })).toThrow(
    CalculationError,
  );
});
