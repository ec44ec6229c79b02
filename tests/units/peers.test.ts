import configureMeasurements from "convert-units";
import temperature from "convert-units/definitions/temperature";
import fc from "fast-check";
import { convert } from "gelwright/units";
import Qty from "js-quantities/esm";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { rowsUnder } from "./guide.js";
import { deviations } from "./peers.js";

test("other libraries agree to 1e-12, but for the factors that the guide lists as rounded by them", () => {
  const listed = rowsUnder("Where other libraries differ");
  const found = deviations().filter(({ off }) => !(off <= 1e-12));
  expect(found.map(({ library, unit, off }) => [library, `\`${unit}\``, off.toExponential(1)])).toEqual(listed);
  expect(deviations().length).toBeGreaterThan(150);
});

test("temperatures agree with both", () => {
  const engine = configureMeasurements({ temperature });
  fc.assert(
    fc.property(between(-200, 500), (celsius) => {
      expect(convert(celsius, "°C", "°F")).toBeCloseTo(engine(celsius).from("C").to("F"), 10);
      expect(convert(celsius, "°C", "K")).toBeCloseTo(engine(celsius).from("C").to("K"), 10);
      expect(convert(celsius, "°F", "°R")).toBeCloseTo(engine(celsius).from("F").to("R"), 10);
      expect(convert(celsius, "°F", "°C")).toBeCloseTo(Qty(`${celsius.toFixed(9)} tempF`).to("tempC").scalar, 8);
    }),
  );
});
