import { chargeFor, roundToBalances, splitIntoLots } from "gelwright/batch";
import { expect, test } from "vitest";

const lines = [
  { name: "oil", massFraction: 1 },
  { name: "fragrance", massFraction: 0 },
];
const rounded = { mass: 1, increment: 0.1, carrier: true };

test.each([
  [
    "no charge delivers anything if all of it stays on the wall",
    () => chargeFor({ delivered: 1, lines, allowances: [{ kind: "proportional", name: "film", fraction: 1 }] }),
    "a fraction below 1",
  ],
  [
    "nothing can be lost from a line without a share",
    () =>
      chargeFor({
        delivered: 1,
        lines,
        allowances: [{ kind: "fixed", name: "samples", mass: 1, lines: ["fragrance"] }],
      }),
    "lines with a share",
  ],
  [
    "only one line makes up the total",
    () =>
      roundToBalances({
        lines: [
          { name: "oil", ...rounded },
          { name: "ester", ...rounded },
        ],
      }),
    "one carrier at most",
  ],
  [
    "no lot is as large as the min and as small as the max, if the max is below the min",
    () => splitIntoLots({ volume: 0.1, volumeMin: 0.05, volumeMax: 0.04 }),
    "volumeM",
  ],
] as const)("%s", (_, call, message) => {
  expect(call).toThrow(message);
});
