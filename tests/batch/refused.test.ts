import { chargeFor, roundToBalances, splitIntoLots } from "gelwright/batch";
import { expect, test } from "vitest";

const lines = [
  { name: "oil", massFraction: 1 },
  { name: "fragrance", massFraction: 0 },
];
const rounded = { mass: 1, increment: 0.1, carrier: true };

test.each([
  [
    "no batch is what is left of nothing",
    () => chargeFor({ delivered: 1, lines, allowances: [{ kind: "proportional", name: "film", fraction: 1 }] }),
    "a fraction below 1",
  ],
  [
    "nothing is lost from a line that holds nothing",
    () =>
      chargeFor({
        delivered: 1,
        lines,
        allowances: [{ kind: "fixed", name: "samples", mass: 1, lines: ["fragrance"] }],
      }),
    "lines with a share",
  ],
  [
    "one line makes up the total",
    () =>
      roundToBalances({
        lines: [
          { name: "oil", ...rounded },
          { name: "ester", ...rounded },
        ],
      }),
    "one carrier at most",
  ],
  ["a lot needs a volume", () => splitIntoLots({ volume: 0.1, volumeMin: 0.05, volumeMax: 0.04 }), "volumeM"],
] as const)("%s", (_, call, message) => {
  expect(call).toThrow(message);
});
