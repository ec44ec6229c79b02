import { additionSchedule, exponentialFeed, powerNumber } from "gelwright/mixing";
import { expect, test } from "vitest";

const oil = { massGelFormer: 10, massOil: 1, massToAdd: 30, densityOil: 915, densityGelFormer: 1250 };

test("an emulsion always keeps some of its outer phase", () => {
  const share = { law: "constant", value: 0.1 } as const;
  expect(() => additionSchedule({ ...oil, share, volumeFractionOilMax: 1 })).toThrow("below 1");
});

test("a feed that adds a millionth keeps the digits of its rate", () => {
  const { specificRate } = exponentialFeed({ massStart: 1, massEnd: 1 + 2 ** -20, duration: 1 });
  expect(specificRate / (2 ** -20 - 2 ** -41)).toBeCloseTo(1, 11);
});

test("a law for creeping flow says up to which Reynolds number it holds", () => {
  const power = { law: "laminar", laminarPowerConstant: 44 } as const;
  expect(() => powerNumber({ power, reynolds: 1e4 })).toThrow("at most");
});
