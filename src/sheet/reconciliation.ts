import { maxOf } from "../numeric/extremes.js";
import type { Plan } from "../plan/index.js";
import { type Block, beside, denseForm, form, section, text } from "./blocks.js";
import { packedLot } from "./filling.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";
import { lossName } from "./tables.js";

/** Where the mass that was weighed has to be found again, with room for what was found, and for the release. */
export function reconciliation(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  const { lines: weighed } = plan.weighing;
  const step = stepOf(plan);
  const tolerance = weighed.reduce((sum, { tolerance: { min, max } }) => sum + (max - min) / 2, 0);
  const allowed = say.weighed(Math.ceil(tolerance / step - 1e-6) * step, step, plan.weighing.total);
  const { deviations, releasedBy } = labels;
  return section(labels.reconciliationTitle, [
    ...beside(denseForm(balanceTable(sheet)), form({ columns: [deviations, releasedBy], rows: [["", ""]] })),
    ...thickerFilm(sheet).map(text),
    text(lines.kettle.unaccounted({ tolerance: allowed })),
  ]);
}

/** How much more would stay in the vessel if its film were the predicted one; nothing if that is no thicker than the stated one. */
function thickerFilm({ plan, words, say }: Sheet): readonly string[] {
  const { thickness: stated, predicted, isStated } = plan.films.allowed ?? {};
  if (!isStated || stated === undefined || predicted === undefined || predicted <= stated) return [];
  const onWall = plan.allowances.reduce((sum, { part, mass }) => (part === "wall" ? sum + mass : sum), 0);
  const mass = onWall * (predicted / stated - 1);
  return mass > 0 ? [words.lines.kettle.thickerFilm({ stated, predicted, mass }, say)] : [];
}

/** The step of the coarsest balance that weighs for this lot: no total is known finer. */
function stepOf({ weighing }: Plan): number {
  return maxOf(weighing.lines.map(({ increment }) => increment));
}

/** Every mass to the digit of the coarsest balance, and the column adds up: the packs get what its other rows leave. What is below that digit has no row. */
function balanceTable({ plan, words, say }: Sheet): Table {
  const { labels, lines } = words;
  const { lots, allowances, weighing } = plan;
  const step = stepOf(plan);
  const packed = packedLot(plan);
  const steps = (mass: number): number => Math.round(mass / step);
  const losses = new Map<string, number>();
  for (const { name, part, mass } of allowances) {
    const what = part === undefined ? lossName({ name, mass }, words) : lines.kettle.leftInVessel({ name });
    losses.set(what, (losses.get(what) ?? 0) + mass);
  }
  const others = [
    ...(packed ? [{ name: labels.leftAfterPacks, mass: packed.massLeft }] : []),
    ...[...losses].map(([name, mass]) => ({ name, mass })),
  ]
    .map(({ name, mass }) => ({ name, steps: steps(mass) }))
    .filter((one) => one.steps > 0);
  const inPacks = others.reduce((rest, one) => rest - one.steps, steps(weighing.total));
  const written = (count: number): string => say.weighed(count * step, step, weighing.total);
  return {
    columns: [labels.where, labels.planned, labels.found, labels.by],
    rows: [
      [labels.weighedIn, written(steps(weighing.total)), "", ""],
      [packed ? lines.kettle.inPacks(packed, say) : labels.inThePacks, written(inPacks), "", ""],
      [labels.inRejectedPacks, written(0), "", ""],
      ...others.map((one) => [one.name, written(one.steps), "", ""]),
      // Something stays in every vessel, planned or not.
      ...(allowances.length === 0 ? [[lines.kettle.leftBehind(), written(0), "", ""]] : []),
      [labels.unaccounted, written(0), "", ""],
      [labels.yield, say.percent((inPacks * step) / lots.charge, 3), "", ""],
    ],
  };
}
