import {
  convert,
  converter,
  type Dimension,
  formatQuantity,
  type Quantity,
  readQuantity,
  type Unit,
} from "gelwright/units";
import { expect, expectTypeOf, test } from "vitest";

// These are checked by the compiler; the runner only keeps them company.
test("a quantity is a number, a space and a unit of its dimension", () => {
  expectTypeOf<"60 kg">().toExtend<Quantity<"mass">>();
  expectTypeOf<"1.2e3 mPa·s">().toExtend<Quantity<"dynamicViscosity">>();
  expectTypeOf<"1200 mPa*s">().toExtend<Quantity<"dynamicViscosity">>();
  expectTypeOf<"12 Btu/(h*ft2*degF)">().toExtend<Quantity<"heatTransferCoefficient">>();
  expectTypeOf<"85 degC">().toExtend<Quantity<"temperature">>();
  expectTypeOf<"-5 Δ°C">().toExtend<Quantity<"temperatureDifference">>();
  expectTypeOf<"8 US fl oz">().toExtend<Quantity<"volume">>();
  expectTypeOf<"9 % v/v">().toExtend<Quantity<"volumeFraction">>();
});

test("and nothing else", () => {
  expectTypeOf<"60">().not.toExtend<Quantity<"mass">>();
  expectTypeOf<"60kg">().not.toExtend<Quantity<"mass">>();
  expectTypeOf<"60 kilos">().not.toExtend<Quantity<"mass">>();
  expectTypeOf<"60 L">().not.toExtend<Quantity<"mass">>();
  expectTypeOf<"12,5 kg">().not.toExtend<Quantity<"mass">>();
  expectTypeOf<"9 % v/v">().not.toExtend<Quantity<"massFraction">>();
  expectTypeOf<"85 °C">().not.toExtend<Quantity<"temperatureDifference">>();
  expectTypeOf<string>().not.toExtend<Quantity<"mass">>();
});

test("only units of one dimension convert into one another", () => {
  expectTypeOf(convert<"kg">)
    .parameter(2)
    .toEqualTypeOf<Unit<"mass">>();
  expectTypeOf(converter<"%">)
    .parameter(1)
    .toEqualTypeOf<Unit<"massFraction">>();
  expectTypeOf(convert<"K">)
    .parameter(2)
    .toEqualTypeOf<Unit<"temperature"> | Unit<"temperatureDifference">>();
  expectTypeOf<"stone">().not.toExtend<Unit>();
  expectTypeOf<"mass">().toExtend<Dimension>();
  const [from, to]: [Unit, Unit] = ["lb", "kg"];
  expect(convert(1, from, to)).toBe(0.45359237);
});

test("what the formatter gives is a quantity", () => {
  const text: Quantity<"mass"> = formatQuantity(60, "kg");
  expectTypeOf(formatQuantity(85, "degC")).toExtend<Quantity<"temperature">>();
  expect(readQuantity(text, "mass")).toBe(60);
});
