import type { NaturalOrigin } from "../plan/index.js";
import { type Sheet, whyNot } from "./render.js";
import { filmOnWall } from "./strength.js";
import { markdownList, markdownTable, markdownText } from "./table.js";
import { allowanceTable } from "./tables.js";

/** What the process takes from the charge, and what that leaves of it. */
export function allowances(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { deliveredTarget: mass, delivered, packs } = plan.lots;
  const { pack } = plan.names;
  const { asked, askedInPacks, delivered: brings } = words.lines.batch;
  const wanted = packs === undefined ? asked({ mass }, say) : askedInPacks({ mass, packs, pack }, say);
  return [
    `## ${words.labels.processTakes}`,
    markdownTable(allowanceTable(sheet)),
    `${markdownText(wanted)} ${brings({ mass: delivered }, say)}${filmOnWall(sheet)}`,
  ];
}

/** The natural-origin content, and what it depends on. */
export function naturalOrigin(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { withFormulationWater, withoutFormulationWater, shortfalls, largestGelFormer } = plan.naturalOrigin;
  const lines = words.lines.batch;
  const withWater = contentOf(sheet, withFormulationWater);
  return [
    `## ${words.labels.naturalOrigin}`,
    markdownList([
      withoutFormulationWater
        ? lines.naturalOriginBoth({ withWater, withoutWater: contentOf(sheet, withoutFormulationWater) })
        : lines.naturalOrigin({ withWater }),
      ...shortfalls
        .filter(({ max }) => max > 0)
        .map(({ material: key, part, max: share }) => {
          const material = say.material(key);
          return lines.shortfall({ material: part ? lines.parts[part]({ material }) : material, share }, say);
        }),
      ...(largestGelFormer
        ? [
            lines.largestGelFormer(
              { material: say.material(largestGelFormer.material), share: largestGelFormer.massFraction },
              say,
            ),
          ]
        : []),
    ]),
  ];
}

/** A content between its bounds: one figure if they meet. */
function contentOf({ words, say }: Sheet, bounds: NaturalOrigin["withFormulationWater"]): string {
  const { content, contentBetween } = words.lines.batch;
  return (say.percent(bounds.min) === say.percent(bounds.max) ? content : contentBetween)(bounds, say);
}

/** What the materials cost. */
export function cost(sheet: Sheet): readonly string[] {
  const { plan, words } = sheet;
  const lines = words.lines.batch;
  const title = `## ${words.labels.cost}`;
  if ("notKnown" in plan.cost)
    return [title, markdownText(lines.notKnown({ reason: whyNot(sheet, plan.cost.notKnown) }))];
  const { currency, batch, perKilogram, perPack } = plan.cost;
  const told = { currency, batch: batch.toFixed(2), perKilogram: perKilogram.toFixed(2) };
  return [
    title,
    markdownText(
      perPack === undefined ? lines.cost(told) : lines.costWithPack({ ...told, perPack: perPack.toFixed(3) }),
    ),
  ];
}
