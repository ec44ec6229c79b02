import { batchTestFor, batchTestsEec1976, tolerableErrorsEec1976 } from "gelwright/packing";
import type { ValidInputs } from "../support/fuzz.js";

const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
const double = batchTestFor({ table: batchTestsEec1976, packs: 200 });
const single = { sampleSize: 5, defectivesMax: 1, mean: { sampleSize: 3, factor: 0 }, noneBeyondTwo: true };
const pack = { nominal: 0.05, tolerableError: 0.0045 };

export const validInputs: ValidInputs = {
  tolerableError: [
    [{ table: tolerableErrorsEec1976, nominal: 0.15, by: "mass" }],
    [{ table: tolerableErrorsEec1976, nominal: 250e-6, by: "volume" }],
  ],
  batchTestFor: [[{ table: { ...batchTestsEec1976, rows: batchTestsEec1976.rows.slice(0, 1) }, packs: 200 }]],
  allPacksTest: [[{ packs: 60, shareDefectiveMax: 0.05, noneBeyondTwo: true }]],
  correctionFactor: [[{ sampleSize: 50, confidence: 0.995 }]],
  shareRejected: [
    [{ ...pack, test: double, massFill: 0.0502, spread: 0.002 }],
    [{ ...pack, test: single, massFill: 0.0502, spread: 0.003 }],
  ],
  targetFill: [
    [{ ...pack, test: double, spread: 0.0025, shareRejectedMax: 0.01 }],
    [{ ...pack, test: single, spread: 0.003, shareRejectedMax: 0.05 }],
  ],
  targetByRules: [[{ ...pack, spread: 0.003, shareBeyondOneMax: 0.025, shareBeyondTwoMax: 1e-4 }]],
  acceptSample: [
    [{ ...pack, test: single, contents: [0.0501, 0.0502, 0.05, 0.0499, 0.0503] }],
    [
      {
        ...pack,
        test: {
          sampleSize: 3,
          defectivesMax: 0,
          second: { rejectedFrom: 2, sampleSize: 3, defectivesMax: 1 },
          mean: { sampleSize: 3, factor: 2 },
          noneBeyondTwo: true,
        },
        contents: [0.0501, 0.045, 0.0502],
        contentsSecond: [0.05, 0.0501, 0.0502],
      },
    ],
  ],
  fillMass: [[{ volume: 50e-6, density, temperature: 20 }]],
  fillerVolume: [[{ mass: 0.046, density, temperatureFill: 70 }]],
  volumeExpansion: [[{ density, temperatureStart: 20, temperatureEnd: 45 }]],
  spreadOfFill: [[{ gross: [0.0712, 0.0704, 0.0709, 0.0717], tare: [0.0203, 0.0205, 0.0201] }]],
  packsFromBatch: [[{ massBatch: 60, massFill: 0.0504, massKept: 0.9, shareRejected: 0.01 }]],
  overfillCost: [[{ massFill: 0.0504, nominal: 0.05, price: 24, packs: 5000 }]],
  fillLimits: [
    [{ massFill: 0.0504, spread: 0.0006, sampleSize: 5, massTare: 0.02, spreadTare: 0.0002, deviations: 3 }],
  ],
  headSpace: [
    [
      {
        volumePack: 56e-6,
        mass: 0.0468,
        density,
        temperatureClosing: 25,
        temperatureMax: 50,
        pressureClosing: 101325,
        vapourPressureClosing: 1500,
        vapourPressureMax: 6000,
      },
    ],
    [{ volumePack: 52e-6, mass: 0.0468, density, temperatureClosing: 25, temperatureMax: 80 }],
  ],
  topUp: [[{ massFill: 0.046, volumeMark: 52e-6, density, temperatureFill: 75, temperatureTopUp: 30 }]],
};
