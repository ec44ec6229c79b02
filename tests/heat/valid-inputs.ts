import type { ValidInputs } from "../support/fuzz.js";
import { conductionInputs } from "./valid-inputs-conduction.js";
import { processInputs } from "./valid-inputs-process.js";

const wax = { temperature: 63, latentHeat: 185000, specificHeatMelt: 2350 };
const vessel = { heatCapacity: 210000, conductance: 15, temperatureAmbient: 20, temperatureStart: 85 };
const heater = { power: 6000, conductance: 18, temperatureAmbient: 20, temperatureStart: 20, heatCapacity: 189200 };

export const validInputs: ValidInputs = {
  ...conductionInputs,
  ...processInputs,
  heatToWarm: [
    [
      {
        parts: [
          { mass: 80, specificHeat: 2050 },
          { mass: 12, specificHeat: 2100, melting: wax },
        ],
        temperatureStart: 20,
        temperatureEnd: 85,
      },
    ],
  ],
  heatingTime: [
    [{ ...heater, temperatureEnd: 85, melting: { temperature: 63, meltingEnergy: 2.22e6, heatCapacityMelt: 192200 } }],
    [{ ...heater, temperatureEnd: 50, conductance: 0 }],
  ],
  coolingTime: [[{ ...vessel, temperatureEnd: 45 }], [{ ...vessel, temperatureStart: 4, temperatureEnd: 15 }]],
  temperatureAfterCooling: [[{ ...vessel, duration: 1800 }]],
  coolingTimeAtScale: [
    [{ duration: 1320, volume: 0.001, volumeAtScale: 0.2, limitedBy: "surface" }],
    [{ duration: 1320, volume: 0.001, volumeAtScale: 0.2, limitedBy: "conduction" }],
  ],
  wallTemperature: [
    [{ temperatureBulk: 75, heatFlow: 3000, area: 0.5, heatTransferCoefficient: 150 }],
    [{ temperatureBulk: 75, heatFlow: -3000, area: 0.5, heatTransferCoefficient: 150 }],
  ],
  fitConductance: [2, 4].map((count) => [
    {
      readings: [84.8, 79.9, 74.8, 70.3].slice(0, count).map((temperature, i) => ({ time: 1200 * i, temperature })),
      temperatureAmbient: 20,
      heatCapacity: 210000,
      confidence: 0.9,
    },
  ]),
  lossFraction: [[{ massBefore: 0.25, massAfter: 0.245 }]],
  chargeForEvaporation: [[{ delivered: 100, lossFraction: 0.02 }]],
  massAfterEvaporation: [[{ charge: 102, lossFraction: 0.02 }]],
};
