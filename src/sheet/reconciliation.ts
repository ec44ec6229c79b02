import { minOf } from "../numeric/extremes.js";
import { type Block, form, section, text } from "./blocks.js";
import { packedLot } from "./filling.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";
import { lossName } from "./tables.js";

/** Where the mass that was weighed has to be found again, with room for what was found. */
export function reconciliation(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  return section(labels.reconciliationTitle, [form(balanceTable(sheet)), text(labels.reconciliationNote)]);
}

/** Every mass to the last digit of the finest balance, and the column adds up: the packs get what its other rows leave. */
function balanceTable({ plan, words, say }: Sheet): Table {
  const { labels, lines } = words;
  const { lots, allowances, weighing } = plan;
  const finest = minOf(weighing.lines.map(({ increment }) => increment));
  const packed = packedLot(plan);
  const steps = (mass: number): number => Math.round(mass / finest);
  const others = [
    ...(packed && steps(packed.massLeft) > 0 ? [{ name: labels.leftAfterPacks, mass: packed.massLeft }] : []),
    ...allowances.map((loss) => ({ name: lossName(loss, words), mass: loss.mass })),
  ].map(({ name, mass }) => ({ name, steps: steps(mass) }));
  const inPacks = others.reduce((rest, one) => rest - one.steps, steps(weighing.total));
  const written = (count: number): string => say.weighed(count * finest, finest);
  return {
    columns: [labels.where, labels.planned, labels.found, labels.by],
    rows: [
      [labels.weighedIn, say.weighed(weighing.total, finest), "", ""],
      [packed ? lines.kettle.inPacks(packed, say) : labels.inThePacks, written(inPacks), "", ""],
      ...others.map((one) => [one.name, written(one.steps), "", ""]),
      [labels.unaccounted, written(0), "", ""],
      [labels.yield, say.percent((inPacks * finest) / lots.charge, 3), "", ""],
    ],
  };
}
