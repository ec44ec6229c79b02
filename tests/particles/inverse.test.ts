import fc from "fast-check";
import { viscosityAt } from "gelwright/laws";
import {
  additionTemperature,
  clearingTime,
  foamHead,
  largestSuspendedDensityDifference,
  largestSuspendedDiameter,
  pressureForFoamHead,
  pressureToClear,
  settlingOverCooling,
  temperatureToClear,
  thickestSuspendedFlake,
  viscosityToClear,
  yieldStressToSuspend,
  yieldStressToSuspendFlake,
} from "gelwright/particles";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const layers = fc.record({
  ...{ diameter: between(2e-5, 5e-4), densityFluid: between(850, 1000), densityGas: between(0.1, 2) },
  ...{ depth: between(0.05, 2), surface: fc.constantFrom("mobile" as const, "immobile" as const) },
});
const thick = between(1, 50);

undoes("viscosityToClear", "clearingTime", fc.tuple(layers, thick), ([layer, viscosity]) => [
  viscosityToClear({ ...layer, duration: clearingTime({ ...layer, viscosity }) }),
  viscosity,
]);

const law = { law: "andrade", factor: 1.3e-6, activationEnergy: 40_000 } as const;

undoes("temperatureToClear", "clearingTime", fc.tuple(layers, between(0, 40)), ([layer, temperature]) => {
  const duration = clearingTime({ ...layer, viscosity: viscosityAt({ law, temperature }) });
  return [temperatureToClear({ ...layer, duration, viscosity: law }), temperature, 100];
});

undoes(
  "pressureToClear",
  "clearingTime",
  fc.tuple(layers, thick, between(1000, 90_000)),
  ([layer, viscosity, pressure]) => {
    const at = { ...layer, viscosity, pressureOfDiameter: 101_325 };
    return [pressureToClear({ ...at, duration: clearingTime({ ...at, pressure }) }), pressure];
  },
  1e-7,
);

undoes(
  "pressureForFoamHead",
  "foamHead",
  fc.record({
    ...{ level: between(0.1, 2), volumeFractionGas: between(0.001, 0.3) },
    ...{ pressureBefore: between(90_000, 110_000), pressure: between(1000, 80_000) },
  }),
  ({ pressure, ...foam }) => [pressureForFoamHead({ ...foam, levelMax: foamHead({ ...foam, pressure }) }), pressure],
  1e-7,
);

const grains = fc.record({
  ...{ diameter: between(1e-5, 2e-3), densityParticle: between(1100, 5000), densityFluid: between(800, 1050) },
});

undoes("largestSuspendedDiameter", "yieldStressToSuspend", grains, ({ diameter, ...of }) => {
  const needed = yieldStressToSuspend({ diameter, ...of });
  return [
    [largestSuspendedDiameter({ yieldStress: needed.value, ...of }).value, diameter],
    // What needs the strongest gel by one rule is the smallest that this gel holds by it.
    [largestSuspendedDiameter({ yieldStress: needed.max, ...of }).min, diameter],
    [largestSuspendedDiameter({ yieldStress: needed.min, ...of }).max, diameter],
  ];
});

undoes("largestSuspendedDensityDifference", "yieldStressToSuspend", grains, (grain) => {
  const { value: yieldStress } = yieldStressToSuspend(grain);
  const { diameter, densityParticle, densityFluid } = grain;
  return [largestSuspendedDensityDifference({ yieldStress, diameter }).value, densityParticle - densityFluid];
});

const flakes = fc.record({
  ...{ thickness: between(1e-7, 1e-4), densityParticle: between(1100, 5000), densityFluid: between(800, 1050) },
});

undoes("thickestSuspendedFlake", "yieldStressToSuspendFlake", flakes, ({ thickness, ...of }) => [
  thickestSuspendedFlake({ yieldStress: yieldStressToSuspendFlake({ thickness, ...of }), ...of }),
  thickness,
]);

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const kettle = {
  ...{ densityParticle: 1400, densityFluid: { law: "constant", density: 905 } as const, volumeFraction: 0.01 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 } as const,
  ...{ heatCapacity: 90_000, heatLoss: { law: "newton", conductance: 12 } as const, temperatureAmbient: 20 },
};

undoes(
  "additionTemperature",
  "settlingOverCooling",
  fc.record({ diameter: between(8e-5, 2e-4), temperature: between(55, 75) }),
  ({ diameter, temperature }) => {
    const batch = { ...kettle, diameter, temperatureEnd: 30 };
    const settlingAllowed = settlingOverCooling({ ...batch, temperatureStart: temperature }).distance;
    return [additionTemperature({ ...batch, temperatureStart: 85, settlingAllowed }).temperature, temperature, 100];
  },
  1e-6,
);
