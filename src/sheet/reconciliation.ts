import { type Block, form, section, text } from "./blocks.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";

/** Where the mass that was weighed has to be found again, with room for what was found. */
export function reconciliation(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  return section(labels.reconciliationTitle, [form(balanceTable(sheet)), text(labels.reconciliationNote)]);
}

function balanceTable({ plan, words, say }: Sheet): Table {
  const { labels, lines } = words;
  const { lots, allowances, weighing } = plan;
  const finest = Math.min(...weighing.lines.map(({ increment }) => increment));
  const packs =
    lots.packs === undefined ? labels.inThePacks : lines.kettle.inPacks({ count: Math.floor(lots.packs + 1e-9) }, say);
  return {
    columns: [labels.where, labels.planned, labels.found, labels.by],
    rows: [
      [labels.weighedIn, say.weighed(weighing.total, finest), "", ""],
      [packs, say.kilograms(lots.delivered), "", ""],
      ...allowances.map(({ name, mass }) => [name, say.kilograms(mass, 3), "", ""]),
      [labels.unaccounted, say.kilograms(0), "", ""],
      [labels.yield, say.percent(lots.delivered / lots.charge, 3), "", ""],
    ],
  };
}
