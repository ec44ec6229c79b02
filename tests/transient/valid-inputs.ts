import type { ValidInputs } from "../support/fuzz.js";

const cooling = {
  temperatureStart: 85,
  temperatureLimit: 20,
  heatCapacity: 210000,
  heatFlow: (temperature: number) => -15 * (temperature - 20),
  breakpoints: [60, 62],
};
const heating = {
  temperatureStart: 20,
  heatCapacity: (temperature: number) => 2000 + temperature,
  heatFlow: () => 500,
};
const rates = { age: (temperature: number) => Math.exp(temperature / 10), time: () => 1 };
const vessel = {
  temperatureStart: 85,
  temperatureAmbient: 20,
  heatCapacity: 210000,
  heatLoss: { law: "newton", conductance: 15 },
};

export const validInputs: ValidInputs = {
  transientSegment: [
    [{ ...cooling, temperatureEnd: 45, rates }],
    [{ ...cooling, duration: 3600, rates }],
    [{ ...heating, temperatureEnd: 80 }],
    [{ ...heating, duration: 60 }],
  ],
  temperatureAfter: [[{ ...cooling, duration: 3600 }], [{ ...heating, duration: 60 }]],
  coolingSegment: [
    [{ ...vessel, temperatureEnd: 45, rates, breakpoints: [62] }],
    [{ ...vessel, duration: 3600 }],
    [{ ...vessel, temperatureStart: 5, temperatureEnd: 15 }],
  ],
};
