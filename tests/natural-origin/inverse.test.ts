import fc from "fast-check";
import { largestShare, productContent } from "gelwright/natural-origin";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

undoes(
  "largestShare",
  "productContent",
  fc.record({ gelFormer: between(1, 40), naturalOrigin: between(0.1, 0.9) }),
  ({ gelFormer, naturalOrigin }) => {
    const ingredients = [
      { name: "oil", mass: 100 - gelFormer, naturalOrigin: 1 },
      { name: "gel former", mass: gelFormer, naturalOrigin },
    ];
    const claim = productContent({ ingredients }).naturalOrigin.withFormulationWater.min;
    return [largestShare({ ingredients, ingredient: "gel former", replacing: "oil", claim }).share, gelFormer / 100];
  },
);
