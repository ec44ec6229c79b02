import fc from "fast-check";
import { chargeFor, deliveredFrom } from "gelwright/batch";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const lines = [
  { name: "oil", massFraction: 0.88 },
  { name: "gel former", massFraction: 0.09 },
  { name: "water", massFraction: 0.03 },
];

undoes(
  "chargeFor",
  "deliveredFrom",
  fc.record({
    delivered: between(1, 1000),
    evaporation: between(0, 0.5),
    film: between(0, 0.2),
    samples: between(0.001, 5),
  }),
  ({ delivered, evaporation, film, samples }) => {
    const allowances = [
      { kind: "proportional", name: "evaporation", fraction: evaporation, lines: ["water"] },
      { kind: "proportional", name: "film", fraction: film },
      { kind: "fixed", name: "samples", mass: samples },
    ] as const;
    const charge = chargeFor({ delivered, lines, allowances });
    const left = deliveredFrom({ charge: charge.lines, allowances });
    return [
      [left.mass, delivered],
      ...left.lines.map(({ massFraction }, i) => [massFraction, lines[i]?.massFraction as number] as const),
    ];
  },
);
