import { type FormulaDocument, readFormula } from "gelwright/formula";
import type { ValidInputs } from "../support/fuzz.js";

const document: FormulaDocument = {
  version: 1,
  name: "trial",
  materials: {
    former: { name: "gel former", function: "gel former", melting: { at: "70 °C", latentHeat: "150 kJ/kg" } },
    weak: { name: "weak", function: "antioxidant", strength: "20 %", price: "30 EUR/kg" },
    strong: { name: "strong", function: "antioxidant", strength: "80 %" },
    oil: {
      name: "oil",
      function: "oil",
      density: { value: "918 kg/m³", at: "20 °C", fallPerKelvin: "0.65 kg/m³" },
      indices: { of: "material as supplied", natural: 1, naturalOrigin: 1 },
      allergens: [{ name: "limonene", share: "10 ppm" }],
      fattyAcids: { "18:1": "30 %" },
      limits: { temperatureMax: "120 °C", flashPoint: "300 °C", shareMax: "100 %" },
    },
  },
  premixes: {
    blend: {
      name: "blend",
      lines: [
        { material: "weak", amount: "1 part" },
        { material: "oil", amount: "3 parts" },
      ],
    },
  },
  phases: [
    {
      name: "A",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
    {
      name: "B",
      lines: [
        { material: "blend", amount: "2 %" },
        { material: "strong", amount: "0.1 %", as: "active" },
      ],
    },
  ],
  claims: { naturalOrigin: "95 %" },
};

const formula = readFormula({
  ...document,
  premixes: {},
  phases: [
    {
      name: "A",
      lines: [
        { material: "weak", amount: "1 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
  ],
});

export const validInputs: ValidInputs = {
  readFormula: [[document]],
  replaceMaterial: [
    [{ formula, material: "weak", by: "strong", at: "equal share" }],
    [{ formula, material: "weak", by: "strong", at: "equal active" }],
  ],
  normalise: [[{ amounts: [1, 2, 3] }]],
  suppliedShare: [[{ active: 0.002, strength: 0.7 }]],
  densityOfMixture: [
    [
      {
        parts: [
          { mass: 0.6, density: 920 },
          { mass: 0.4, density: 950 },
        ],
      },
    ],
  ],
  conductivityOfMixture: [
    [
      {
        parts: [
          { mass: 90, density: 900, conductivity: 0.17 },
          { mass: 25, density: 1250, conductivity: 0.29 },
        ],
      },
    ],
  ],
  specificHeatOfMixture: [
    [
      {
        parts: [
          { mass: 9, specificHeat: 2000 },
          { mass: 1, specificHeat: 2400 },
        ],
      },
    ],
  ],
  refractiveIndexOfMixture: [
    [
      {
        temperature: 20,
        parts: [
          { mass: 60, density: 915, refractiveIndex: 1.47 },
          { mass: 40, density: 945, refractiveIndex: 1.449 },
        ],
      },
    ],
  ],
};
