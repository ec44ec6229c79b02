import { readFileSync } from "node:fs";
import { type Band, bandAround } from "gelwright/laws";
import { expect, test } from "vitest";
import { shippedBands } from "./support/bands.js";
import { root } from "./support/rooms.js";

test("every band that is shipped holds its figure and names sources that are in the bibliography", () => {
  const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8"));
  expect(shippedBands.length).toBeGreaterThan(25);
  for (const [name, band] of shippedBands) {
    const { min, max } = bandAround({ value: 1, band });
    expect(max, name).toBeGreaterThan(min);
    for (const key of band.sources) expect(bibliography, name).toHaveProperty(key);
    if (band.basis !== "judgement") expect(band.sources.length, name).toBeGreaterThan(0);
  }
});

test("the page of bands shows every band with the ends that it has", () => {
  const page = readFileSync(`${root}docs/how-sure.md`, "utf8");
  const sign = (end: number) => (end > 0 ? `+${end}` : String(end).replace("-", "−"));
  const shown = ({ by, min, max }: Band) => (by === "factor" ? `× ${min} to ${max}` : `${sign(min)} to ${sign(max)}`);
  const missing = shippedBands.filter(
    ([name, band]) =>
      !page
        .split("\n")
        .some((line) => line.includes(`\`${name}\``) && line.includes(shown(band)) && line.includes(band.basis)),
  );
  expect(missing.map(([name, band]) => `${name}: ${shown(band)}, ${band.basis}`)).toEqual([]);
});
