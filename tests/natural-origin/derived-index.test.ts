import fc from "fast-check";
import { indexByMolarMass, indexByRenewableCarbon } from "gelwright/natural-origin";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const whole = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const share = between(0, 1);

test("more than half natural is of natural origin by its share, half or less is not at all, by either method", () => {
  fc.assert(
    fc.property(whole, share, (total, part) => {
      const byMass = indexByMolarMass({ molarMassNatural: total * part, molarMass: total });
      const byCarbon = indexByRenewableCarbon({ carbonRenewable: total * part, carbonTotal: total });
      expect(byMass.share).toBeCloseTo(part, 12);
      expect(byMass.naturalOrigin).toBe(byMass.share > 0.5 ? byMass.share : 0);
      expect(byCarbon).toEqual({ ...byMass, method: "renewable carbon" });
      expect(byMass.method).toBe("molar mass");
    }),
  );
});

test("just half is not more than half", () => {
  expect(indexByRenewableCarbon({ carbonRenewable: 6, carbonTotal: 12 })).toMatchObject({
    share: 0.5,
    naturalOrigin: 0,
  });
  expect(indexByRenewableCarbon({ carbonRenewable: 7, carbonTotal: 12 }).naturalOrigin).toBe(7 / 12);
});

test("a part that outweighs its whole is refused", () => {
  expect(() => indexByMolarMass({ molarMassNatural: 0.3, molarMass: 0.2 })).toThrow(
    "molarMassNatural: found 0.3, expected at most the whole, 0.2",
  );
  expect(() => indexByRenewableCarbon({ carbonRenewable: 18, carbonTotal: 17 })).toThrow("carbonRenewable: found 18");
});
