import fc from "fast-check";
import {
  checkRatio,
  gelFormerForOil,
  massesForTotal,
  massFractionOfOil,
  oilForGelFormer,
  ratioOf,
  ratioOfShare,
  shareOfRatio,
  volumeFractionClosestPacking,
  volumeFractionOfOil,
} from "gelwright/gel";
import { expect, test } from "vitest";

const amount = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const near = (actual: number, expected: number) =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));

test("ratio, share and masses say the same in every direction", () => {
  fc.assert(
    fc.property(amount, amount, (gelFormer, oil) => {
      const ratio = ratioOf({ gelFormer, oil });
      near(oilForGelFormer({ gelFormer, ratio }), oil);
      near(gelFormerForOil({ oil, ratio }), gelFormer);
      near(shareOfRatio({ ratio }), gelFormer / (gelFormer + oil));
      const masses = massesForTotal({ total: gelFormer + oil, ratio });
      near(masses.gelFormer, gelFormer);
      near(masses.oil, oil);
      near(masses.gelFormer + masses.oil, gelFormer + oil);
    }),
  );
});

test("a share becomes a ratio and the share again", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-9, max: 1, noNaN: true }), (shareGelFormer) => {
      near(shareOfRatio({ ratio: ratioOfShare({ shareGelFormer }) }), shareGelFormer);
    }),
  );
  expect(ratioOfShare({ shareGelFormer: 1 })).toBe(0);
  expect(() => ratioOfShare({ shareGelFormer: 0 })).toThrow("shareGelFormer: found 0");
});

test("the ratio does not ask for the unit, nor for what else is in the formula", () => {
  expect(ratioOf({ gelFormer: 8, oil: 88 })).toBe(ratioOf({ gelFormer: 20, oil: 220 }));
});

test("a working range is asked at both ends, and its limits belong to it", () => {
  const verdict = (ratio: number) => checkRatio({ ratio, min: 8, max: 12 }).verdict;
  expect([7.9, 8, 10, 12, 12.1].map(verdict)).toEqual(["not-met", "met", "met", "met", "not-met"]);
  expect(checkRatio({ ratio: 7, min: 8 })).toMatchObject({ verdict: "not-met", side: "below", limit: { min: 8 } });
  expect(checkRatio({ ratio: 13, max: 12 })).toMatchObject({ verdict: "not-met", side: "above", limit: { max: 12 } });
  expect(checkRatio({ ratio: 9, min: 8 })).toMatchObject({ side: "none", figure: { min: 9, max: 9 } });
});

test("the rounding of a percentage decides nothing", () => {
  for (let percent = 1; percent < 100; percent++) {
    const limit = (100 - percent) / percent;
    expect(checkRatio({ ratio: ratioOfShare({ shareGelFormer: percent / 100 }), min: limit, max: limit }).verdict).toBe(
      "met",
    );
  }
});

test("without a range the answer is not known, and there is no limit in it", () => {
  expect(checkRatio({ ratio: 11 })).toEqual({
    id: "gel-former-ratio",
    verdict: "not-known",
    side: "none",
    figure: { min: 11, max: 11 },
  });
  expect(() => checkRatio({ ratio: 11, min: 12, max: 8 })).toThrow("max: found 8");
});

test("volume fraction and mass fraction are inverse, the lighter phase takes more of the volume, and equal densities make them one", () => {
  const density = fc.double({ min: 600, max: 2000, noNaN: true });
  const share = fc.double({ min: 1e-6, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, density, density, (massFractionOil, densityOil, densityGelFormer) => {
      const densities = { densityOil, densityGelFormer };
      const volumeFractionOil = volumeFractionOfOil({ massFractionOil, ...densities });
      near(massFractionOfOil({ volumeFractionOil, ...densities }), massFractionOil);
      const sign = Math.sign(volumeFractionOil - massFractionOil);
      if (massFractionOil < 0.999 && Math.abs(densityOil / densityGelFormer - 1) > 1e-6)
        expect(sign).toBe(Math.sign(densityGelFormer - densityOil));
      near(volumeFractionOfOil({ massFractionOil, densityOil, densityGelFormer: densityOil }), massFractionOil);
    }),
  );
});

// P. Flowers et al., Chemistry 2e, OpenStax 2019, section 10.6: closest-packed spheres occupy 74 % of the volume.
test("spheres at their closest fill the 74 % of the book", () => {
  expect(Math.round(100 * volumeFractionClosestPacking)).toBe(74);
});
