import fc from "fast-check";
import { batchTestFor, batchTestsEec1976, fillerVolume, fillMass, shareRejected, targetFill } from "gelwright/packing";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;

undoes("fillerVolume", "fillMass", fc.tuple(between(1e-6, 1e-3), between(10, 90)), ([volume, temperature]) => [
  fillerVolume({ mass: fillMass({ volume, density, temperature }), density, temperatureFill: temperature }),
  volume,
]);

const pack = { nominal: 0.05, tolerableError: 0.0045, test: batchTestFor({ table: batchTestsEec1976, packs: 200 }) };

undoes(
  "targetFill",
  "shareRejected",
  fc.tuple(between(0.0508, 0.0515), between(0.002, 0.003)),
  ([massFill, spread]) => {
    const shareRejectedMax = shareRejected({ ...pack, massFill, spread });
    return [targetFill({ ...pack, spread, shareRejectedMax }).mass, massFill];
  },
  1e-6,
  15,
);
