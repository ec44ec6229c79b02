import type { ValidInputs } from "../support/fuzz.js";

const lines = [
  { name: "Almond Oil", amount: "q.s.", allergens: [] },
  { name: "Parfum", amount: "0.5 %", allergens: [{ name: "Linalool", amount: "0.8 %" }] },
  {
    name: "base",
    amount: "10 %",
    parts: [
      { name: "Gel Former", amount: "0.7 kg" },
      { name: "Squalane", amount: "300 g" },
    ],
  },
  { name: "Mica", amount: "1 %", colourant: true },
];
const allergens = {
  jurisdiction: "EU",
  date: "2026-11-28",
  substances: [{ name: "Linalool", members: ["l-Linalool"] }],
  thresholds: { "leave-on": "0.001 %", "rinse-off": "0.01 %" },
};
const rule = { jurisdiction: "EU", date: "2026-11-28", orderedAbove: "1 %", exactly: "ordered" };
const certified = [
  { name: "Almond Oil", amount: "q.s.", class: "physically processed agro-ingredient", organic: "95 %" },
  {
    name: "Gel Former",
    amount: "10 %",
    class: "chemically processed agro-ingredient",
    organic: "0 %",
    petrochemical: "20 %",
  },
  { name: "Mica", amount: "1 %", class: "mineral" },
];

export const validInputs: ValidInputs = {
  ingredientList: [[{ lines }], [{ lines, rule, allergens: { use: "leave-on", table: allergens } }]],
  fragranceAllergens: [[{ lines, use: "rinse-off", table: allergens }]],
  microplasticFlag: [
    [
      {
        particles: [
          { name: "glitter", amount: "0.3 %", nature: "synthetic polymer" },
          { name: "scrub", amount: "2 %" },
        ],
        productType: "leave-on",
        date: "2026-11-28",
        table: {
          jurisdiction: "EU",
          date: "2026-11-28",
          rows: [{ productType: "leave-on", from: "2029-10-17", amountMin: "0.01 %" }],
        },
      },
    ],
  ],
  claimFigure: [
    [
      {
        lines: [
          { name: "Almond Oil", amount: "90 %", counts: "100 %" },
          { name: "Water", amount: "10 %", kind: "water" },
        ],
        basis: "without water",
        decimals: 1,
      },
    ],
  ],
  certifiedShares: [
    [{ lines: certified }],
    [
      {
        lines: certified,
        productType: "leave-on",
        table: {
          jurisdiction: "a standard",
          date: "2026-11-28",
          rows: [{ productType: "leave-on", figure: "organic of product", min: "20 %", max: "100 %" }],
        },
      },
    ],
  ],
  certificationShortfalls: [[{ lines: certified, figure: "organic of product" }]],
  periodAfterOpening: [
    [
      {
        changes: [
          { cause: "water", initial: 0, max: 2, rate: 1e-7 },
          { cause: "peroxides", initial: 2, min: 1, max: 10 },
        ],
      },
    ],
  ],
};
