import type { PlanStock, WeighingLine } from "../plan/index.js";
import { type Block, section, table, text } from "./blocks.js";
import { type Sheet, whyNot } from "./render.js";
import type { Table } from "./table.js";

/** What all lots take beside what there is in stock, and the largest batch that it makes. */
export function stockSection(sheet: Sheet): readonly Block[] {
  const { stock } = sheet.plan;
  if (!stock) return [];
  return section(sheet.words.labels.stock, [table(stockTable(sheet, stock)), text(largest(sheet, stock))]);
}

function stockTable({ plan, words, say }: Sheet, { materials }: PlanStock): Table {
  const { material: name, neededByAllLots, inStock: there, toBuy: missing, notOnTheList } = words.labels;
  const finest = (key: string): number => Math.min(...plan.weighing.lines.filter(isOf(key)).map(incrementOf));
  return {
    columns: [name, neededByAllLots, there, missing],
    rows: materials.map(({ material, needed, inStock, toBuy }) => [
      say.material(material),
      say.weighed(needed, finest(material)),
      inStock === undefined ? notOnTheList : say.kilograms(inStock, 6),
      toBuy === 0 ? "" : say.weighed(toBuy, finest(material)),
    ]),
  };
}

function isOf(key: string): (line: WeighingLine) => boolean {
  return ({ material }) => material === key;
}

function incrementOf({ increment }: WeighingLine): number {
  return increment;
}

function largest(sheet: Sheet, { largest: found }: PlanStock): string {
  const { words, say } = sheet;
  const { notKnown, stockMakes, stockMakesInPacks, limitedBy, limitedByVessel } = words.lines.batch;
  if ("notKnown" in found) return notKnown({ reason: whyNot(sheet, found.notKnown) });
  const { mass, packs, lots } = found;
  const makes = packs === undefined ? stockMakes({ mass, lots }, say) : stockMakesInPacks({ mass, packs, lots }, say);
  const names = found.limitedBy.map((key) => say.material(key));
  return `${makes} ${names.length === 0 ? limitedByVessel() : limitedBy({ materials: names })}`;
}
