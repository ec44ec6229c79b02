import fc from "fast-check";
import { shearRateAt, shearStressAt } from "gelwright/laws";
import {
  capillaryReach,
  fitWalther,
  flowThroughNozzle,
  kriegerDoughertyViscosity,
  letDown,
  loadAtViscosity,
  nozzleFlow,
  oilAbsorption,
  thickestFilm,
  waltherViscosityAt,
  wettingOil,
  yieldStressForFilm,
  yieldStressForReach,
} from "gelwright/rheology";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const curve = fc.oneof(
  between(0.01, 100).map((viscosity) => ({ law: "newton", viscosity }) as const),
  fc.record({ law: fc.constant("power-law" as const), consistency: between(0.1, 100), flowIndex: between(0.2, 1) }),
  fc.record({
    ...{ law: fc.constant("herschel-bulkley" as const), yieldStress: between(0.1, 50) },
    ...{ consistency: between(0.1, 100), flowIndex: between(0.3, 1) },
  }),
);

undoes("shearRateAt", "shearStressAt", fc.tuple(curve, between(0.01, 1000)), ([law, shearRate]) => [
  shearRateAt({ curve: law, stress: shearStressAt({ curve: law, shearRate }) }),
  shearRate,
]);

undoes(
  "flowThroughNozzle",
  "nozzleFlow",
  fc.tuple(curve, between(0.0005, 0.01), between(1e-8, 1e-5)),
  ([law, diameter, flowRate]) => {
    const { pressureGradient } = nozzleFlow({ curve: law, diameter, flowRate });
    return [flowThroughNozzle({ curve: law, diameter, pressureGradient }), flowRate];
  },
  1e-6,
);

undoes(
  "yieldStressForFilm",
  "thickestFilm",
  fc.record({ yieldStress: between(0.1, 500), density: between(800, 1100), inclination: between(1, 90) }),
  ({ yieldStress, ...slope }) => [
    yieldStressForFilm({ thickness: thickestFilm({ yieldStress, ...slope }), ...slope }),
    yieldStress,
  ],
);

undoes(
  "yieldStressForReach",
  "capillaryReach",
  fc.record({
    ...{ surfaceTension: between(0.015, 0.05), contactAngle: between(0, 40), yieldStress: between(0.1, 500) },
    groove: fc.option(fc.record({ width: between(1e-5, 1e-3), depth: between(1e-3, 5e-3) }), { nil: undefined }),
  }),
  ({ yieldStress, groove, ...at }) => {
    const pull = groove ? { ...at, groove } : at;
    return [yieldStressForReach({ ...pull, distance: capillaryReach({ ...pull, yieldStress }) }), yieldStress];
  },
);

undoes(
  "loadAtViscosity",
  "kriegerDoughertyViscosity",
  fc.record({
    ...{ filled: between(0.05, 0.95), volumeFractionPacked: between(0.3, 0.74), intrinsicViscosity: between(1.5, 8) },
  }),
  ({ filled, ...pigment }) => {
    const volumeFraction = filled * pigment.volumeFractionPacked;
    const relativeViscosity = kriegerDoughertyViscosity({ ...pigment, volumeFraction });
    return [loadAtViscosity({ ...pigment, relativeViscosity }), volumeFraction];
  },
);

undoes(
  "wettingOil",
  "oilAbsorption",
  fc.record({ volumeOil: between(1e-7, 1e-3), massPigment: between(1e-3, 10), densityOil: between(800, 1000) }),
  ({ volumeOil, massPigment, densityOil }) => [
    // The standard's oil fills the same volume as the oil that is taken in its place.
    wettingOil({ massPigment, oilAbsorption: oilAbsorption({ volumeOil, massPigment }), densityOil }),
    volumeOil * densityOil,
  ],
);

undoes(
  "letDown",
  "mixing of paste and base",
  fc.record({
    paste: between(0.1, 10),
    base: between(0.1, 100),
    pigmentInPaste: between(0.2, 0.7),
    pigmentInBase: between(0, 0.1),
  }),
  ({ paste, base, ...shares }) => {
    const mass = paste + base;
    const pigment = (paste * shares.pigmentInPaste + base * shares.pigmentInBase) / mass;
    const parts = letDown({ mass, pigment, ...shares });
    return [
      [parts.paste, paste, mass],
      [parts.base, base, mass],
    ];
  },
);

undoes(
  "fitWalther",
  "waltherViscosityAt",
  fc.record({ intercept: between(8.5, 9.5), slope: between(3.4, 3.8) }),
  (line) => {
    const at = (temperature: number) => ({
      temperature,
      kinematicViscosity: waltherViscosityAt({ ...line, temperature, beyond: "extend" }),
    });
    const fit = fitWalther({ points: [at(40), at(100)], beyond: "extend" });
    return [
      [fit.intercept, line.intercept],
      [fit.slope, line.slope],
    ];
  },
);
