import type { Plan } from "../plan/index.js";
import { allowances, cost, naturalOrigin } from "./batch.js";
import { type Block, list, section, table, text, within } from "./blocks.js";
import { gelByDroplets, speedsOf } from "./emulsion.js";
import { assessment } from "./exposure.js";
import { courseFigures } from "./figures.js";
import { afterFillingOf, evaporationOf, exposuresOf, orderOfAddition } from "./heat.js";
import { inUseOf } from "./in-use.js";
import { labelDraft } from "./label.js";
import { packSection } from "./packs.js";
import { type Sheet, whyNot } from "./render.js";
import { soundPart } from "./sound.js";
import { stabilitySection } from "./stability.js";
import { stockSection } from "./stock.js";
import { airOf, gelOf, particlesOf } from "./strength.js";
import { answerTables, courseTable, formulaTable, orderTable } from "./tables.js";

/** What is not needed at the kettle: every answer, what the product will be like, and what the figures rest on. */
export function appendices(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  const { fingerprint } = sheet.plan;
  return [
    { kind: "part", text: labels.appendices },
    { kind: "text", text: labels.grades, isSmall: true },
    ...section(labels.answers, answerTables(sheet).map(table)),
    ...courseFigures(sheet),
    ...orderOfLots(sheet),
    ...particlesOf(sheet),
    ...gelOf(sheet),
    ...gelByDroplets(sheet),
    ...inUseOf(sheet),
    ...airOf(sheet),
    ...exposuresOf(sheet),
    ...orderOfAddition(sheet),
    ...evaporationOf(sheet),
    ...speedsOf(sheet),
    ...afterFillingOf(sheet),
    ...packSection(sheet),
    ...stabilitySection(sheet),
    ...allowances(sheet),
    ...stockSection(sheet),
    ...section(labels.formula, [table(formulaTable(sheet))]),
    ...naturalOrigin(sheet),
    ...cost(sheet),
    ...soundPart(sheet.label, { name: "label", fingerprint }, (label) => within(labelDraft(label, sheet))),
    ...soundPart(sheet.exposure, { name: "exposure", fingerprint }, (asked) => within(assessment(asked, sheet))),
    ...section(labels.course, [table(courseTable(sheet))]),
    ...section(labels.sources, list(sheet.plan.sources.map((source) => sourceOf(sheet, source)))),
  ];
}

/** Where figures come from. Of a material or an allowance a missing source is said; a heat loss has its own in its readings. */
function sourceOf({ words, say }: Sheet, source: Plan["sources"][number]): string {
  const of = words.sources[source.key](source, say);
  const from = source.source ?? (isSourceExpected(source) ? words.labels.noSource : "");
  return from === "" ? of : words.lines.batch.sourceOf({ of, from });
}

function isSourceExpected({ key }: Plan["sources"][number]): boolean {
  return key === "material" || key === "allowance";
}

/** The order of the lots, if there are several; of a single one the table of steps says it all. */
function orderOfLots(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { lotOrder: order, lots } = plan;
  if (!order || lots.count === 1) return [];
  const { notKnown, timesOfDays } = words.lines.batch;
  const title = words.labels.orderOfLots;
  if ("notKnown" in order) return section(title, [text(notKnown({ reason: whyNot(sheet, order.notKnown) }))]);
  const { workingDay, days } = order;
  const count = workingDay === undefined ? words.labels.timesCountFromFirstLot : timesOfDays({ workingDay, days }, say);
  return section(title, [table(orderTable(sheet, order)), text(count)]);
}
