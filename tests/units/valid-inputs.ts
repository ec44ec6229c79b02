import type { ValidInputs } from "../support/fuzz.js";

export const validInputs: ValidInputs = {
  convert: [
    [2, "lb", "kg"],
    [185, "°F", "°C"],
    [1, "Btu/(h*ft2*degF)", "W/(m²·K)"],
  ],
  converter: [["cP", "Pa·s"]],
  convertInPlace: [[new Float64Array([1, 2, 3]), "in", "mm"]],
  parseQuantity: [
    ["85 °C", "temperature"],
    ["9 %", "massFraction", "lines[0].amount"],
  ],
  readQuantity: [
    ["2 lb", "mass"],
    ["1 US gal", "volume", "vessel.volume"],
  ],
  formatQuantity: [
    [12.5, "kg"],
    [12.5, "°C", { significantDigits: 3 }],
  ],
  baseUnit: [["specificHeat"]],
  massOfVolume: [[{ volume: 0.04, density: 915 }]],
  volumeOfMass: [[{ mass: 36.6, density: 915 }]],
};
