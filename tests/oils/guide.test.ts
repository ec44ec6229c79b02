import { readFileSync } from "node:fs";
import * as oils from "gelwright/oils";
import { expect, test } from "vitest";

const guide = readFileSync(new URL("../../docs/oils.md", import.meta.url), "utf8");
const standard = Object.values(oils).filter(
  (member): member is oils.StandardOil => typeof member === "object" && "saponificationValue" in member,
);

/** The rows of the table under a heading, cell by cell, without its head. */
function rowsUnder(heading: string): string[][] {
  const section = guide.split(/^## /m).find((text) => text.startsWith(heading)) ?? "";
  const rows = section.split("\n").filter((line) => line.startsWith("| "));
  return rows.slice(1).map((row) => row.slice(2, -2).split(" | "));
}

const shown = ([min, max]: oils.Range) => `${min.toFixed(1)} to ${max.toFixed(1)}`;
const out = ([min, max]: oils.Range, within: oils.Range) =>
  `${Math.max(0, within[0] - min).toFixed(1)} / ${Math.max(0, max - within[1]).toFixed(1)}`;

test("the guide says of every oil how far its calculated ranges stick out of the standard's own", () => {
  const rows = rowsUnder("Ranges");
  expect(rows.map(([name]) => name).sort()).toEqual(standard.map((oil) => oil.name).sort());
  for (const row of rows) {
    const oil = standard.find((each) => each.name === row[0]);
    if (!oil) continue;
    const { iodineValue, saponificationValue, saponificationValueMolar } = oils.profileValueRanges({
      ranges: oil.profile,
    });
    expect(row).toEqual([
      oil.name,
      shown(iodineValue),
      oil.iodineValue.join(" to "),
      out(iodineValue, oil.iodineValue),
      shown(saponificationValueMolar),
      oil.saponificationValue.join(" to "),
      out(saponificationValueMolar, oil.saponificationValue),
      out(saponificationValue, oil.saponificationValue),
    ]);
  }
});

test("the guide says of every figure of the reference set how it was had", () => {
  const rows = rowsUnder("The reference set");
  expect(rows).toHaveLength(standard.length);
  for (const row of rows) {
    const read = standard.find((oil) => oil.name === row[0])?.read;
    expect(row.slice(1)).toEqual([
      read?.profile,
      read?.iodineValue,
      read?.saponificationValue,
      read?.relativeDensity,
      read?.refractiveIndex,
      read?.tocols ?? "–",
    ]);
  }
});
