import fc from "fast-check";
import {
  antioxidantDose,
  grunbergNissanTerm,
  hlbOfBlend,
  nearestBlend,
  solubilityOfBlend,
  surfactantShare,
  viscosityByBlendingNumber,
  viscosityByGrunbergNissan,
} from "gelwright/oils";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

undoes(
  "surfactantShare",
  "hlbOfBlend",
  fc.record({ share: between(0.01, 0.99), hlbFirst: between(11, 18), hlbSecond: between(2, 8) }),
  ({ share, hlbFirst, hlbSecond }) => {
    const parts = [
      { mass: share, hlb: hlbFirst },
      { mass: 1 - share, hlb: hlbSecond },
    ];
    return [surfactantShare({ hlb: hlbOfBlend({ parts }), hlbFirst, hlbSecond }), share];
  },
);

const oil = fc.record({ moles: between(0.1, 1), viscosity: between(0.005, 0.2) });

undoes(
  "grunbergNissanTerm",
  "viscosityByGrunbergNissan",
  fc.tuple(oil, oil, between(-2, 2)),
  ([first, second, term]) => {
    const parts = [first, second];
    const viscosityBlend = viscosityByGrunbergNissan({ parts, interactions: [{ between: [0, 1], term }] });
    return [grunbergNissanTerm({ parts, viscosityBlend }), term, 10];
  },
);

undoes("viscosityByBlendingNumber", "viscosityBlendingNumber", between(1e-6, 1e-3), (kinematicViscosity) => [
  viscosityByBlendingNumber({ parts: [{ mass: 1, kinematicViscosity }] }),
  kinematicViscosity,
]);

const solvent = fc.record({ dispersion: between(14, 20), polar: between(0, 12), hydrogenBonding: between(0, 20) });

undoes(
  "nearestBlend",
  "solubilityOfBlend",
  fc
    .tuple(between(0.01, 0.99), solvent, solvent)
    .filter(([, one, other]) => Math.abs(one.dispersion - other.dispersion) > 0.1),
  ([share, first, second]) => {
    const parts = [
      { volume: share, parameters: first },
      { volume: 1 - share, parameters: second },
    ];
    return [nearestBlend({ first, second, target: solubilityOfBlend({ parts }) }).volumeFractionFirst, share, 1];
  },
);

undoes(
  "antioxidantDose",
  "what an oil holds",
  fc.record({ massOil: between(0.1, 100), strength: between(0.1, 1), massFractionTarget: between(1e-4, 0.01) }),
  ({ massOil, strength, massFractionTarget }) => {
    const { mass } = antioxidantDose({ massOil, strength, massFractionTarget, inPlaceOf: "oil" });
    return [(mass * strength) / massOil, massFractionTarget];
  },
);
