import { baseUnit, type Dimension } from "gelwright/units";
import { expect, test } from "vitest";
import { dimensions, unitsOf } from "./all-units.js";
import { rowsUnder } from "./guide.js";

test("the guide lists every dimension with its base unit and all its units", () => {
  const rows = rowsUnder("Dimensions");
  expect(rows.map(([dimension]) => dimension).sort()).toEqual(dimensions.map((name) => `\`${name}\``).sort());
  for (const [dimension = "", base, others] of rows) {
    const name = dimension.replaceAll("`", "") as Dimension;
    expect(base).toBe(`\`${baseUnit(name)}\``);
    expect(others).toBe(
      unitsOf(name)
        .slice(1)
        .map((unit) => `\`${unit}\``)
        .join(", "),
    );
  }
});
