import type { NaturalOrigin, PlanSamples } from "../plan/index.js";
import { type Block, list, section, table, text } from "./blocks.js";
import { type Sheet, type Written, whyNot } from "./render.js";
import { allowanceTable } from "./tables.js";
import type { Say } from "./words/types.js";

type ContentBounds = NaturalOrigin["withFormulationWater"];

/** What the process takes from the charge, and what that leaves of it. */
export function allowances(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { deliveredTarget: mass, delivered, packs } = plan.lots;
  const { pack } = plan.names;
  const { asked, askedInPacks, delivered: brings } = words.lines.batch;
  const wanted = packs === undefined ? asked({ mass }, say) : askedInPacks({ mass, packs, pack }, say);
  const told = `${wanted} ${brings({ mass: delivered }, say)}${filmOnWall(sheet)}${filmAllowedFor(sheet)}`;
  const taken = plan.allowances.length === 0 ? [] : [table(allowanceTable(sheet))];
  return section(words.labels.processTakes, [...taken, text(told), ...list(samples(sheet))]);
}

/** What is kept back of a lot, and what for. */
function samples({ plan, words, say }: Sheet): readonly string[] {
  return (plan.samples ?? []).map((of) =>
    words.lines.batch.samplesOfLot({ name: of.name, parts: partsOf({ words, say }, of), mass: of.mass }, say),
  );
}

/** What samples are for, and how many there are of each. */
export function partsOf(
  { words, say }: Written,
  { stabilityTest, fillChecks, packs }: Omit<PlanSamples, "name" | "mass">,
): readonly string[] {
  const { ofStabilityTest, ofFillChecks, ofPacks } = words.lines.batch;
  return [
    say.given(stabilityTest, (count) => ofStabilityTest({ count }, say)),
    say.given(fillChecks, (count) => ofFillChecks({ count }, say)),
    say.given(packs, (count) => ofPacks({ count }, say)),
  ].filter((one) => one !== "");
}

/** What has not drained from the vessel, beside the allowance that was made for it. */
function filmOnWall({ plan: { films }, words, say }: Sheet): string {
  return say.given(films.thicknessOnWall, (thickness) => ` ${words.lines.batch.filmOnWall({ thickness }, say)}`);
}

/** The film that is stated, beside the one that is to be expected. */
function filmAllowedFor({ plan: { films }, words, say }: Sheet): string {
  const { allowed } = films;
  if (!allowed?.isStated) return "";
  const { thickness } = allowed;
  return say.given(
    allowed.predicted,
    (predicted) => ` ${words.lines.batch.filmAllowedFor({ thickness, predicted }, say)}`,
  );
}

/** The natural-origin content, and what it depends on. */
export function naturalOrigin(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { withFormulationWater, withoutFormulationWater, shortfalls, largestGelFormer } = plan.naturalOrigin;
  const lines = words.lines.batch;
  return section(
    words.labels.naturalOrigin,
    list([
      contentLine(sheet, withFormulationWater, withoutFormulationWater),
      ...shortfalls.filter(({ max }) => max > 0).map((shortfall) => shortfallLine(sheet, shortfall)),
      ...(largestGelFormer
        ? [
            lines.largestGelFormer(
              { material: say.material(largestGelFormer.material), share: largestGelFormer.massFraction },
              say,
            ),
          ]
        : []),
    ]),
  );
}

/** The content with formulation water and without, once if they are the same. */
function contentLine(sheet: Sheet, withIt: ContentBounds, withoutIt: ContentBounds | undefined): string {
  const { naturalOrigin, naturalOriginBoth, naturalOriginEitherWay } = sheet.words.lines.batch;
  const withWater = contentOf(sheet, withIt);
  if (!withoutIt) return naturalOrigin({ withWater });
  const withoutWater = contentOf(sheet, withoutIt);
  return withWater === withoutWater
    ? naturalOriginEitherWay({ content: withWater })
    : naturalOriginBoth({ withWater, withoutWater });
}

/** A content between its bounds: one figure if they meet. */
function contentOf({ words, say }: Sheet, bounds: ContentBounds): string {
  const { content, contentBetween } = words.lines.batch;
  return (isOneFigure(say, bounds) ? content : contentBetween)(bounds, say);
}

/** What a material takes from the content, between bounds if its index is not known. */
function shortfallLine({ words, say }: Sheet, shortfall: NaturalOrigin["shortfalls"][number]): string {
  const { min, max, part } = shortfall;
  const { parts, shortfall: takes, shortfallBetween } = words.lines.batch;
  const name = say.material(shortfall.material);
  const material = part ? parts[part]({ material: name }) : name;
  return isOneFigure(say, shortfall)
    ? takes({ material, share: max }, say)
    : shortfallBetween({ material, min, max }, say);
}

function isOneFigure(say: Say, { min, max }: ContentBounds): boolean {
  return say.percent(min) === say.percent(max);
}

/** What the materials cost. */
export function cost(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const lines = words.lines.batch;
  const title = words.labels.cost;
  if ("notKnown" in plan.cost)
    return section(title, [text(lines.notKnown({ reason: whyNot(sheet, plan.cost.notKnown) }))]);
  const { perPack } = plan.cost;
  const told = perPack === undefined ? lines.cost(plan.cost, say) : lines.costWithPack({ ...plan.cost, perPack }, say);
  return section(title, [text(told)]);
}
