import { fitAndrade, fittedViscosityAt, fitWalther, waltherViscosityAt } from "gelwright/rheology";
import { expect, test } from "vitest";

const at = (temperature: number, kinematicViscosity: number) => ({ temperature, kinematicViscosity });
const fit = fitAndrade({ points: [20, 60].map((temperature) => ({ temperature, viscosity: 2 / temperature })) });

test.each([
  [
    "a liquid thinner than the chart has no place on it",
    () => fitWalther({ points: [at(40, 2e-7), at(100, 1e-7)], beyond: "extend" }),
    "where the logarithm ends",
  ],
  [
    "one temperature makes no line of the chart",
    () => fitWalther({ points: [at(40, 3e-5), at(40, 3e-5)] }),
    "two or more temperatures",
  ],
  [
    "temperatures that differ in their last digit make no law",
    () => fitAndrade({ points: [25, 25 + 1e-14].map((temperature) => ({ temperature, viscosity: 1 })) }),
    "a wider span of temperatures",
  ],
  [
    "a law that is not fitted here has no standard errors",
    () => fittedViscosityAt({ fit: { ...fit, law: { law: "constant", viscosity: 1 } } as never, temperature: 30 }),
    "a law that is fitted here",
  ],
] as const)("%s", (_, call, message) => {
  expect(call).toThrow(message);
});

test("the line of the chart never comes to 0: far above its readings it ends at 0.3 mm²/s", () => {
  const line = { intercept: 9.5, slope: 4, beyond: "extend" } as const;
  expect(waltherViscosityAt({ ...line, temperature: 1e6 })).toBeCloseTo(0.3e-6, 12);
});
