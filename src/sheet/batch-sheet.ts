import { appendices } from "./appendices.js";
import { type Block, form, list, section } from "./blocks.js";
import { computedFrom } from "./computed.js";
import { doing } from "./doing.js";
import { filling } from "./filling.js";
import { beforeYouStart } from "./open-answers.js";
import { reconciliation } from "./reconciliation.js";
import type { Sheet } from "./render.js";
import { weighing } from "./weighing.js";

/** A whole batch sheet: the part for the kettle, in the order of the work, then the appendices. */
export function batchSheet(sheet: Sheet): readonly Block[] {
  return [...kettlePart(sheet), ...appendices(sheet)];
}

function kettlePart(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { labels } = words;
  const cautions = plan.cautions.map((caution) => words.cautions[caution.code](caution, say));
  return [
    { kind: "title", text: `${labels.title}: ${plan.names.formula}` },
    heading(sheet),
    ...section(labels.cautions, list(cautions)),
    ...beforeYouStart(sheet),
    ...weighing(sheet),
    ...doing(sheet),
    ...filling(sheet),
    ...reconciliation(sheet),
    computedFrom(plan.fingerprint, sheet, labels.estimates),
  ];
}

function heading({ plan: { names, lots }, words: { labels, lines }, say }: Sheet): Block {
  const { vessel, process, lot, chargeOfLot, batchNumber, date, startedAt, operator } = labels;
  const { count, charge: mass, volume } = lots;
  return form({
    columns: [vessel, process, lot, chargeOfLot, batchNumber, date, startedAt, operator],
    rows: [
      [
        names.vessel,
        names.process,
        count === 1 ? "1" : lines.batch.lots({ count }, say),
        lines.batch.charge({ mass, ...(volume !== undefined && { volume }) }, say),
        ...["", "", "", ""],
      ],
    ],
  });
}
