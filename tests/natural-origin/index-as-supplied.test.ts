import fc from "fast-check";
import { indexAsSupplied, productContent } from "gelwright/natural-origin";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const share = between(0, 1);

test("a material as supplied is the blend of its active part and its carrier", () => {
  fc.assert(
    fc.property(share, share, share, (index, strength, carrierIndex) => {
      const { naturalOrigin } = productContent({
        ingredients: [
          { mass: strength, naturalOrigin: index },
          { mass: 1 - strength, naturalOrigin: carrierIndex },
        ],
      });
      const supplied = indexAsSupplied({ index, strength, carrierIndex });
      expect(supplied).toBeCloseTo(naturalOrigin.withFormulationWater.min, 12);
      expect(supplied).toBeLessThanOrEqual(1);
    }),
  );
});

test("a material without carrier keeps its index", () => {
  expect(indexAsSupplied({ index: 0.7, strength: 1, carrierIndex: 0 })).toBe(0.7);
});
