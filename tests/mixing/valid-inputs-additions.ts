import type { ValidInputs } from "../support/fuzz.js";

const table = {
  law: "table",
  points: [
    { volumeFractionOil: 0, value: 0.05 },
    { volumeFractionOil: 0.6, value: 0.1 },
    { volumeFractionOil: 0.95, value: 0.2 },
  ],
};
const oil = {
  massGelFormer: 10,
  massOil: 1,
  massToAdd: 30,
  densityOil: 915,
  densityGelFormer: 1250,
  share: { law: "constant", value: 0.1 },
  volumeFractionOilMax: 0.9,
};
const growing = { ...oil, share: { law: "linear", atNoOil: 0.05, perVolumeFraction: 0.2 } };
const times = { incorporationTime: { law: "constant", value: 90 }, incorporationTimeFactor: 2, rateMax: 0.05 };

const readings = (less: number, more: number) => [
  { volumeFractionOil: 0.7, value: less },
  { volumeFractionOil: 0.85, value: more },
];

export const additionInputs: ValidInputs = {
  interpolateAtOilFraction: [
    [{ law: table, volumeFractionOil: 0.7 }],
    [{ law: growing.share, volumeFractionOil: 0.2 }],
  ],
  additionSchedule: [
    [{ ...oil, increment: 0.01 }],
    [{ ...growing, form: "equal" }],
    [{ ...oil, share: table, form: "geometric", increment: 0.005 }],
  ],
  additionTimes: [
    [{ ...times, additions: [{ mass: 1, volumeFractionOil: 0.2 }] }],
    [{ ...times, incorporationTimeFactor: table, additions: [{ mass: 1, volumeFractionOil: 0.2 }] }],
  ],
  exponentialFeed: [[{ massStart: 10, massEnd: 100, duration: 1800, time: 600 }]],
  feedDuration: [[{ ...oil, ...times }], [{ ...growing, incorporationTime: { ...table, law: "table" } }]],
  feedAt: [[{ ...oil, ...times, time: 100 }]],
  incorporationTimeScale: [
    [{ keeps: "time" }],
    [{ keeps: "revolutions", speedBench: 8, speedPlant: 2 }],
    [{ keeps: "tip travel", tipSpeedBench: 2, tipSpeedPlant: 3 }],
    [{ keeps: "energy per volume", powerPerVolumeBench: 900, powerPerVolumePlant: 400 }],
    [{ keeps: "strain", shearRateBench: 90, shearRatePlant: 40 }],
  ],
  scheduleAtScale: [
    [
      {
        bench: { massGelFormer: 0.04, additions: [0.002, 0.003, 0.005] },
        massGelFormer: 16,
        massToAdd: 4,
        densityOil: 915,
        densityGelFormer: 1250,
        increment: 0.01,
        volumeFractionOilMax: 0.9,
      },
    ],
  ],
  restartAfterOvershoot: [
    [
      {
        failed: { massGelFormer: 2, massOil: 3 },
        massFresh: 3,
        oilPerGelFormer: 5,
        densityOil: 915,
        densityGelFormer: 1250,
        share: { law: "constant", value: 0.1 },
        increment: 0.01,
        volumeFractionOilMax: 0.8,
      },
    ],
  ],
  flowCurveAtOil: [
    [
      {
        volumeFractionOil: 0.8,
        readings: {
          shearRate: 20,
          viscosity: readings(2, 5),
          flowIndex: readings(0.6, 0.4),
          yieldStress: readings(1, 9),
        },
      },
    ],
    [{ volumeFractionOil: 0.7, readings: { shearRate: 20, viscosity: readings(2, 5), flowIndex: readings(1, 0.8) } }],
  ],
  gelAlongAdditions: [
    [
      {
        additions: [{ volumeFractionOil: 0.5 }, { volumeFractionOil: 0.7 }],
        viscosity: table.points,
        yieldStress: table.points,
        torquePerViscosity: 0.01,
      },
    ],
  ],
};
