import type { ValidInputs } from "../support/fuzz.js";

const jar = {
  pack: { shape: "cylinder", diameter: 0.07, height: 0.06 },
  conductivity: 0.17,
  density: 910,
  specificHeat: 2050,
  heatTransferCoefficient: 10,
  temperatureStart: 60,
  temperatureAmbient: 20,
};
const stick = { ...jar, pack: { shape: "cylinder", diameter: 0.02 }, where: "mean" };
const block = { ...jar, pack: { shape: "slab", thickness: 0.05 }, where: { axial: 0.01 } };
const ball = { ...jar, pack: { shape: "sphere", diameter: 0.02 }, heatTransferCoefficient: "infinite" };
const surface = { ...jar, where: { radial: 0.035, axial: 0.03 } };
const packs = [jar, stick, block, ball, surface];

export const conductionInputs: ValidInputs = {
  conductionRoot: [
    [{ shape: "slab", biot: 1 }],
    [{ shape: "cylinder", biot: 0.2, order: 7 }],
    [{ shape: "sphere", biot: "infinite", order: 2 }],
  ],
  relativeTemperature: [
    [{ shape: "slab", biot: 1, fourier: 0.3, position: 0.4 }],
    [{ shape: "cylinder", biot: 1, fourier: 1e-4, position: 0.99 }],
    [{ shape: "sphere", biot: "infinite", fourier: 0.1 }],
  ],
  meanRelativeTemperature: [
    [{ shape: "slab", biot: "infinite", fourier: 1e-5 }],
    [{ shape: "sphere", biot: 3, fourier: 0.2 }],
  ],
  packTemperature: packs.map((pack) => [{ ...pack, duration: 1800 }]),
  packCoolingTime: packs.map((pack) => [{ ...pack, temperatureEnd: 45 }]),
  packCoolingCurve: [
    ...packs.map((pack) => [{ ...pack, temperatureEnd: 45, segments: 4 }]),
    [{ ...jar, duration: 900 }],
  ],
  shrinkage: [
    [
      {
        density: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
        volume: 2e-4,
        areaCrossSection: 0.0038,
        temperatureFill: 70,
        temperatureEnd: 20,
      },
    ],
  ],
};
