import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { measuredCases } from "./measured/cases.js";
import { inUncertainties } from "./measured/measured.js";
import { root } from "./support/rooms.js";

const cases = measuredCases();

/** How many points lie within two standard uncertainties: a law that moves away from what was measured fails here. */
const within: Readonly<Record<string, number>> = {
  "oil-density": 19,
  "oil-viscosity": 21,
  "glycerin-water-density": 88,
  "glycerin-water-index": 34,
  "glycerin-water-activity": 19,
  "blend-squalane": 31,
  "blend-hexadecane": 12,
  "iodine-value": 11,
  "cooling-mug": 14,
  "sphere-drag": 14,
  "sphere-settling": 4,
};

test("every file of measurements is a case, and every case has its source", () => {
  const files = readdirSync(`${root}tests/measured/data`).map((file) => file.replace(/\.json$/, ""));
  expect(cases.map(({ id }) => id).sort()).toEqual(files.sort());
  const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8")) as Record<string, unknown>;
  for (const { id, bibliography: key, uncertainty } of cases) {
    expect(bibliography, id).toHaveProperty([key]);
    expect(["stated", "judged"], id).toContain(uncertainty.kind);
  }
});

test("our figures lie as far from what was measured as the page says", () => {
  const found = cases.map((one) => {
    for (const { measured, ours } of one.points) expect([measured, ours].every(Number.isFinite), one.id).toBe(true);
    return [one.id, one.points.filter((point) => Math.abs(inUncertainties(point, one)) <= 2).length] as const;
  });
  expect(Object.fromEntries(found)).toEqual(within);
});
