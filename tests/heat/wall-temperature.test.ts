import { wallTemperature } from "gelwright/heat";
import { expect, test } from "vitest";

const kettle = { temperatureBulk: 75, area: 0.5, heatTransferCoefficient: 150 };

test("the wall is hotter than a batch that it heats, and colder than one that it cools, by the same", () => {
  const wall = (heatFlow: number) => wallTemperature({ ...kettle, heatFlow });
  expect(wall(0)).toBe(75);
  expect(wall(3000) - 75).toBeCloseTo(75 - wall(-3000), 12);
  expect(wall(6000) - 75).toBeCloseTo(2 * (wall(3000) - 75), 12);
});

test("no wall is colder than absolute zero", () => {
  expect(() => wallTemperature({ ...kettle, heatFlow: -30000 })).toThrow(
    expect.objectContaining({ code: "range", message: expect.stringContaining("wall temperature: found -325") }),
  );
});
