import fc from "fast-check";
import {
  dissolvedGelFormer,
  dissolvingTemperature,
  doseForGelPoint,
  doseForStrength,
  fitDoseResponse,
  fitGelPoint,
  gelFormerForOil,
  gelPointAtDose,
  glycerinAtHumidity,
  glycerinForIndexMatch,
  massesForTotal,
  massFractionOfOil,
  modulusOfDroplets,
  oilForGelFormer,
  oilFractionForModulus,
  oilFractionForYieldStress,
  ratioOf,
  ratioOfShare,
  refractiveIndexGlycerinWater,
  shareOfRatio,
  smallestDroplet,
  strengthAtDose,
  surfactantForDroplets,
  temperatureForIndexMatch,
  uptakeDuration,
  volumeFractionOfOil,
  waterActivity,
  waterTakenUp,
  waterTakenUpAfter,
  yieldStressOfDroplets,
} from "gelwright/gel";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const ratio = between(0.1, 100);
const mass = between(0.001, 1000);

undoes("gelFormerForOil", "oilForGelFormer", fc.record({ gelFormer: mass, ratio }), ({ gelFormer, ratio }) => [
  gelFormerForOil({ oil: oilForGelFormer({ gelFormer, ratio }), ratio }),
  gelFormer,
]);

undoes("ratioOfShare", "shareOfRatio", ratio, (one) => [
  ratioOfShare({ shareGelFormer: shareOfRatio({ ratio: one }) }),
  one,
]);

undoes("massesForTotal", "ratioOf", fc.record({ gelFormer: mass, oil: mass }), (both) => {
  const again = massesForTotal({ total: both.gelFormer + both.oil, ratio: ratioOf(both) });
  return [
    [again.oil, both.oil],
    [again.gelFormer, both.gelFormer, both.gelFormer + both.oil],
  ];
});

const densities = fc.record({ densityOil: between(700, 1000), densityGelFormer: between(1000, 1300) });

undoes("massFractionOfOil", "volumeFractionOfOil", fc.tuple(between(0.01, 0.99), densities), ([share, of]) => [
  massFractionOfOil({ volumeFractionOil: volumeFractionOfOil({ massFractionOil: share, ...of }), ...of }),
  share,
]);

const interfaces = fc.record({
  volumeOil: between(1e-5, 1),
  adsorption: between(1e-7, 1e-5),
  strength: between(0.05, 1),
});

undoes("smallestDroplet", "surfactantForDroplets", fc.tuple(between(1e-7, 1e-4), interfaces), ([diameter, of]) => {
  const { asSupplied } = surfactantForDroplets({ diameter, ...of });
  return [smallestDroplet({ massSurfactant: asSupplied, ...of }), diameter];
});

const droplets = fc.record({ diameter: between(1e-6, 5e-5), interfacialTension: between(0.001, 0.02) });

undoes("oilFractionForModulus", "modulusOfDroplets", fc.tuple(between(0.75, 0.97), droplets), ([oil, of]) => [
  oilFractionForModulus({ modulus: modulusOfDroplets({ volumeFractionOil: oil, ...of }), ...of }),
  oil,
]);

undoes("oilFractionForYieldStress", "yieldStressOfDroplets", fc.tuple(between(0.84, 0.97), droplets), ([oil, of]) => [
  oilFractionForYieldStress({ yieldStress: yieldStressOfDroplets({ volumeFractionOil: oil, ...of }), ...of }),
  oil,
]);

const norrishConstant = -1.16;
const outerPhases = fc.record({ massFractionGlycerin: between(0.3, 0.95), temperature: between(15, 40) });

undoes("glycerinAtHumidity", "waterActivity", outerPhases, ({ massFractionGlycerin, temperature }) => {
  const { wilson, norrish } = waterActivity({ massFractionGlycerin, temperature, norrishConstant });
  const at = (relativeHumidity: number) => glycerinAtHumidity({ relativeHumidity, temperature, norrishConstant });
  return [
    [at(wilson).wilson, massFractionGlycerin],
    [at(norrish).norrish, massFractionGlycerin],
  ];
});

undoes("waterActivity", "waterTakenUp", outerPhases, ({ massFractionGlycerin, temperature }) => {
  const relativeHumidity = 0.6;
  const masses = { massGlycerin: massFractionGlycerin, massWater: 1 - massFractionGlycerin };
  const { wilson } = waterTakenUp({ ...masses, relativeHumidity, temperature, norrishConstant });
  const after = masses.massGlycerin / (1 + wilson);
  return [waterActivity({ massFractionGlycerin: after, temperature, norrishConstant }).wilson, relativeHumidity];
});

const open = { massGlycerin: 0.0085, massWater: 0.0015, area: 0.01, coefficient: 0.0018, relativeHumidity: 0.6 };

undoes(
  "uptakeDuration",
  "waterTakenUpAfter",
  fc.tuple(between(60, 86_400), between(15, 35)),
  ([duration, temperature]) => {
    const gel = { ...open, temperature };
    const { wilson } = waterTakenUpAfter({ ...gel, duration });
    const massFractionGlycerinEnd = open.massGlycerin / (open.massGlycerin + open.massWater + wilson);
    return [uptakeDuration({ ...gel, massFractionGlycerinEnd }).wilson, duration];
  },
  1e-7,
);

const oilOfIndex = (refractiveIndex: number, temperature: number) => ({
  refractiveIndex,
  temperature,
  perKelvin: -3.8e-4,
});

undoes(
  "glycerinForIndexMatch",
  "refractiveIndexGlycerinWater",
  fc.record({ massFractionGlycerin: between(0.5, 0.99), temperature: between(20, 30) }),
  ({ massFractionGlycerin, temperature }) => {
    const index = refractiveIndexGlycerinWater({ massFractionGlycerin, temperature });
    const oil = oilOfIndex(index, temperature);
    return [glycerinForIndexMatch({ oil, temperature, mismatch: 0.001 }).massFractionGlycerin, massFractionGlycerin];
  },
);

undoes(
  "temperatureForIndexMatch",
  "glycerinForIndexMatch",
  fc.record({ refractiveIndex: between(1.445, 1.465), temperature: between(21, 29) }),
  ({ refractiveIndex, temperature }) => {
    const oil = oilOfIndex(refractiveIndex, 25);
    const { massFractionGlycerin } = glycerinForIndexMatch({ oil, temperature, mismatch: 0.001 });
    return [temperatureForIndexMatch({ oil, massFractionGlycerin }), temperature];
  },
  1e-7,
);

const crystallising = fc.record({
  temperatureMelting: between(60, 90),
  heatOfFusion: between(20_000, 100_000),
  molarMassGelFormer: between(0.2, 0.9),
  molarMassOil: between(0.2, 0.9),
});

undoes(
  "dissolvingTemperature",
  "dissolvedGelFormer",
  fc.tuple(between(20, 59), crystallising),
  ([temperature, pair]) => [
    dissolvingTemperature({ ...pair, massFractionGelFormer: dissolvedGelFormer({ ...pair, temperature }) }),
    temperature,
  ],
);

const line = fitGelPoint({
  points: [
    { dose: 0.05, temperature: 48 },
    { dose: 0.08, temperature: 55 },
    { dose: 0.16, temperature: 65 },
  ],
});

undoes("doseForGelPoint", "gelPointAtDose", between(0.02, 0.3), (dose) => [
  doseForGelPoint({ line, temperature: gelPointAtDose({ line, dose }).value }).value,
  dose,
]);

const fit = fitDoseResponse({
  trials: [
    { dose: 0.04, strength: 2.1 },
    { dose: 0.06, strength: 15.2 },
    { dose: 0.08, strength: 41 },
    { dose: 0.12, strength: 131 },
  ],
});

undoes("doseForStrength", "strengthAtDose", between(0.0401, 0.1199), (dose) => [
  doseForStrength({ fit, strength: strengthAtDose({ fit, dose }).value }).value,
  dose,
]);
