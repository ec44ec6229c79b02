import type { ValidInputs } from "../support/fuzz.js";

const sound = { "16:0": 7, "18:0": 3, "18:1 n-9": 64, "18:2 n-6": 26 };
const oil = {
  name: "seed oil",
  standard: "an invented standard",
  profile: { "16:0": [4, 9], "18:1": [60, 80], "18:2": [15, 30] },
  iodineValue: [85, 109],
  saponificationValue: [183, 207],
  relativeDensity: [{ range: [0.91, 0.93], temperature: 20, temperatureWater: 20 }],
  refractiveIndex: [{ range: [1.46, 1.48] }],
  tocols: [0, 500],
  read: {
    profile: "from memory",
    iodineValue: "from memory",
    saponificationValue: "from memory",
    relativeDensity: "from memory",
    refractiveIndex: "from memory",
    tocols: "from memory",
  },
};

export const validInputs: ValidInputs = {
  fattyAcid: [["C18:1 n-9"], ["oleic acid"], ["24:0"], ["18:1-OH n-9"]],
  readProfile: [[{ percentages: { "oleic acid": 80, "C18:2 (n-6)": 19 } }]],
  profileValues: [[{ profile: sound }], [{ profile: { "18:1": 90 }, sumTolerance: 10 }]],
  profileValueRanges: [[{ ranges: { "16:0": [4, 10], "18:1": [60, 80], "18:2": [15, 30] } }]],
  checkCertificate: [
    [
      {
        oil,
        certificate: {
          profile: sound,
          iodineValue: 100,
          saponificationValue: 190,
          relativeDensity: { value: 0.92, temperature: 20 },
          refractiveIndex: { value: 1.47, temperature: 20 },
          tocols: 100,
        },
      },
    ],
    [{ oil, certificate: {} }],
  ],
};
