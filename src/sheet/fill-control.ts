import { isHandledAtOnce } from "./after-filling.js";
import { partsOf } from "./batch.js";
import { type Block, form, list } from "./blocks.js";
import { boxesOf, reasonOf } from "./packs.js";
import type { Sheet } from "./render.js";
import { takenOf } from "./stability.js";

/** How the content of the packs is checked while they are filled, with a box for each weighing; or that nothing of it is planned. */
export function contentControl(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  const { gross, weighWhereFilled, noContentControl } = lines.kettle;
  const limits = plan.packs?.limits;
  if (!limits) return list([noContentControl({ reason: reasonOf(sheet, plan.packs) })]);
  const { single, mean, sampleSize: count } = limits;
  const packs = boxesOf(sheet, count);
  const row = (time: string): readonly string[] => [time, ...packs.map(() => ""), "", ""];
  return [
    ...list([gross({ single, mean, count }, say), ...(isHandledAtOnce(plan) ? [] : [weighWhereFilled()])]),
    form({
      columns: [labels.time, ...packs, labels.mean, labels.by],
      rows: [row(labels.atTheStart), row(""), row(labels.atTheEnd)],
    }),
  ];
}

/** Samples to take while the packs are filled, each sort once, with a box. */
export function samplesToTake(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  const { samples = [], stability } = plan;
  const kept = samples.map((one) =>
    lines.batch.samplesToTake({ name: one.name, parts: partsOf(sheet, one), mass: one.mass }, say),
  );
  const isKept = samples.some(({ stabilityTest }) => stabilityTest !== undefined);
  const rows = [...kept, ...(stability && !isKept ? [takenOf(sheet, stability)] : [])];
  if (rows.length === 0) return [];
  return [
    form({
      columns: [labels.samplesWhileFilling, labels.takenAt, labels.by],
      rows: rows.map((what) => [what, "", ""]),
    }),
  ];
}
