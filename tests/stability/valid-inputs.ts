import type { ValidInputs } from "../support/fuzz.js";

const day = 86400;
const wax = { name: "wax melts", temperatureMin: 38, temperatureMax: 46 };
const q10 = { law: "q10", q10: { min: 1.8, value: 2, max: 2.5 } } as const;
const arrhenius = { law: "arrhenius", activationEnergy: 90000 } as const;
const run = { speed: 50, radiusMin: 0.06, radiusMax: 0.1, duration: 1800 };
const lot = (name: string, values: readonly number[]) => ({
  name,
  readings: values.map((value, i) => ({ time: 90 * i * day, value })),
});

export const validInputs: ValidInputs = {
  equivalentStorage: [
    [{ temperature: 40, duration: 84 * day, temperatureReference: 25, kinetics: q10, transitions: [wax] }],
    [{ temperature: 35, duration: 84 * day, temperatureReference: 25, kinetics: arrhenius }],
  ],
  storageFor: [[{ temperature: 35, durationReference: 365 * day, temperatureReference: 25, kinetics: q10 }]],
  meanKineticTemperature: [
    [{ readings: [{ temperature: 20 }, { temperature: 28 }], activationEnergy: 83144, transitions: [wax] }],
    [
      {
        readings: [
          { temperature: 20, duration: day },
          { temperature: 28, duration: day },
        ],
      },
    ],
  ],
  testPlan: [
    [
      {
        conditions: [
          { name: "25 °C", temperature: 25, pullDays: [0, 28, 84], packsPerPull: 2, packsReserve: 2 },
          { name: "window", pullDays: [28], packsPerPull: 1 },
        ],
        massPack: 0.05,
        temperatureReference: 20,
        kinetics: q10,
        transitions: [wax],
      },
    ],
  ],
  temperatureCycles: [
    [
      {
        stays: [
          { temperature: -10, duration: day },
          { temperature: 45, duration: day },
        ],
        cycles: 3,
        temperatureStart: 25,
        transitions: [wax],
      },
    ],
  ],
  relativeCentrifugalForce: [[{ speed: 50, radius: 0.1 }]],
  centrifugeSpeed: [[{ relativeCentrifugalForce: 1000, radius: 0.1 }]],
  gravityTime: [
    [{ ...run, yieldStress: 0, volumeFractionDispersed: 0.02, newtonian: true }],
    [{ ...run, yieldStress: 12, volumeFractionDispersed: 0.85, newtonian: false }],
  ],
  oilBleed: [
    [
      {
        massVessel: 0.0152,
        massFilled: 0.0352,
        massCollectorBefore: 0.00081,
        massCollectorAfter: 0.00111,
        uncertaintyWeighing: 1e-5,
      },
    ],
  ],
  trend: [
    [{ readings: [0.2, 0.5, 0.9, 1.1].map((value, i) => ({ time: 7 * i * day, value })), confidence: 0.9 }],
    [{ readings: [1, 2, 3].map((value, time) => ({ time, value })) }],
  ],
  welchTest: [[{ first: [1.4, 1.7, 1.5], second: [1.1, 1], confidence: 0.9 }]],
  viscosityDrift: [
    [
      {
        readings: [24.1, 24.9, 25.2].map((viscosity, i) => ({ time: 28 * i * day, viscosity })),
        duration: 365 * day,
        confidence: 0.9,
      },
    ],
  ],
  colourDifference1976: [[{ first: { lightness: 92, a: -1, b: 8 }, second: { lightness: 90, a: 0, b: 10 } }]],
  colourDifference2000: [
    [
      {
        first: { lightness: 92, a: -1, b: 8 },
        second: { lightness: 90, a: 0, b: 10 },
        weights: { lightness: 1, chroma: 1, hue: 1 },
      },
    ],
  ],
  shelfLife: [
    [
      {
        lots: [lot("A", [100.2, 99.1, 98.4, 97.2]), lot("B", [100.6, 99.3, 98.2, 97.5])],
        limits: { min: 90, max: 110 },
        confidence: 0.95,
        significance: 0.25,
        scatter: "by lot",
      },
    ],
    [{ lots: [lot("A", [100.2, 99.1, 98.4, 97.2])], limits: { min: 90 } }],
    [{ lots: [lot("A", [100, 99, 98]), lot("B", [103, 99, 93])], limits: { min: 90 }, scatter: "pooled" }],
  ],
};
