import type { Evaporation, MaterialExposure, OxidationRank, Plan, PlanWait, RankedOil } from "../plan/index.js";
import { inMinutes, isAtOnce } from "./after-filling.js";
import { type Block, list, section, text } from "./blocks.js";
import { restsOn, type Sheet, whyNot } from "./render.js";

/** When the packs have set, and how far their content sinks; nothing if there is no gel in them that could set. */
export function afterFillingOf(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const {
    durationToSet: duration,
    sinkDepth: depth,
    topUpMass: mass,
    basis,
    assumptions,
    notKnown,
  } = plan.afterFilling;
  const { setThrough, setThroughNotKnown, sinks } = words.lines.heat;
  const lines = [
    ...(duration === undefined
      ? []
      : [setThrough({ duration, basis: restsOn(sheet, basis ? [basis] : [], assumptions) }, say)]),
    ...(notKnown && notKnown.code !== "nothing-there" ? [setThroughNotKnown({ reason: whyNot(sheet, notKnown) })] : []),
    ...handlingOf(sheet),
    ...(depth === undefined || mass === undefined ? [] : [sinks({ depth, mass }, say)]),
  ];
  return section(words.labels.afterFilling, list(lines));
}

/** When to close and when to move the packs. */
function handlingOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { capping, skin, moving } = plan.afterFilling;
  const { cap, capAtOnce, capNotKnown, skin: skinned, move, moveNotKnown } = words.lines.heat;
  // How a pack cools is said where it sets.
  const isPolicy = ({ kind }: PlanWait["basis"][number]): boolean => kind === "practice" || kind === "stated";
  const told = (of: PlanWait) => ({
    ...of,
    firstPack: inMinutes(of.firstPack),
    lastPack: inMinutes(of.lastPack),
    allPacks: inMinutes(of.allPacks),
    basis: restsOn(sheet, of.basis.filter(isPolicy)),
  });
  return [
    ...(skin && !("notKnown" in skin) ? [skinned(skin, say)] : []),
    "notKnown" in capping
      ? capNotKnown({ reason: whyNot(sheet, capping.notKnown) })
      : (isAtOnce(capping) ? capAtOnce : cap)(told(capping), say),
    ...(moving
      ? "notKnown" in moving
        ? [moveNotKnown({ reason: whyNot(sheet, moving.notKnown) })]
        : [move(told(moving), say)]
      : []),
  ];
}

/** What the heat-sensitive materials went through. */
export function exposuresOf(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  if (plan.thermalExposures.length === 0) return [];
  const lines = plan.thermalExposures.map((of) => exposureOf(sheet, of));
  return section(words.labels.sparedOils, [...list(lines), text(words.labels.sparedOilsNote)]);
}

function exposureOf(sheet: Sheet, of: MaterialExposure): string {
  const { words, say } = sheet;
  const { exposure, exposureAsMuchAs, materialNotKnown, asMuchAs } = words.lines.heat;
  const material = say.material(of.material);
  if ("notKnown" in of) return materialNotKnown({ material, reason: whyNot(sheet, of.notKnown) });
  const told = { ...of, material };
  return of.equivalent ? exposureAsMuchAs({ ...told, asMuch: asMuchAs(of.equivalent, say) }, say) : exposure(told, say);
}

/** The time there is to stir and fill in, if it is known; nothing if the charge is heated after the last of it is in. */
export function timeToWorkIn({ plan, words, say }: Sheet): string {
  const lastCharge = plan.timeline.map(({ massCharged }) => massCharged !== undefined).lastIndexOf(true);
  if (plan.timeline.slice(lastCharge + 1).some(({ step }) => step.do === "heat")) return "";
  const { durationToSet: duration, durationMargin: margin }: Plan["scale"] = plan.scale;
  const { sets, setsAfterFilling, setsBeforeFilling } = words.lines.heat;
  if (duration === undefined) return "";
  if (margin === undefined) return ` ${sets({ duration }, say)}`;
  return ` ${(margin < 0 ? setsBeforeFilling : setsAfterFilling)({ duration, margin }, say)}`;
}

/** The order in which oils should wait; nothing if no oil could be ranked. */
export function orderOfAddition(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const oils = plan.oxidationRanking;
  if (oils.every((oil) => "notKnown" in oil)) return [];
  const lines = oils.map((oil) => orderOf(sheet, oil));
  return section(words.labels.chargeOffTheHeat, [...list(lines), text(words.labels.chargeOffTheHeatNote)]);
}

function orderOf(sheet: Sheet, ranked: RankedOil): string {
  const { words, say } = sheet;
  const material = say.material(ranked.material);
  const { oil: oilWith, oilWithout, materialNotKnown } = words.lines.heat;
  if ("notKnown" in ranked) return materialNotKnown({ material, reason: whyNot(sheet, ranked.notKnown) });
  const { oxidisability, massFraction: share } = ranked;
  const oil = oilWith({ material, oxidisability, share }, say);
  return oxidisability === 0 ? oilWithout({ oil }) : heatOf(sheet, oil, ranked);
}

/** What the heat does to an oil, and would do if the oil waited. */
function heatOf({ words, say }: Sheet, oil: string, ranked: OxidationRank): string {
  const { equivalentTime, temperatureReference, onHeat, share, equivalentTimeOffHeat: offHeat, setsIfOffHeat } = ranked;
  const { asMuchAs, oilOffHeat, oilOnHeat, oilWouldSet } = words.lines.heat;
  const heat = asMuchAs({ duration: equivalentTime, temperature: temperatureReference }, say);
  if (!onHeat) return oilOffHeat({ oil, heat, share }, say);
  return (setsIfOffHeat ? oilWouldSet : oilOnHeat)({ oil, heat, share, offHeat }, say);
}

/** What the volatile materials lose. */
export function evaporationOf(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  return section(words.labels.evaporation, list(plan.evaporation.map((of) => lossOf(sheet, of))));
}

function lossOf(sheet: Sheet, of: Evaporation): string {
  const { words, say } = sheet;
  const { lossStated, lossNotStated, lossPredicted, lossNotPredicted } = words.lines.heat;
  const material = say.material(of.material);
  const loss = of.stated === undefined ? lossNotStated({ material }) : lossStated({ material, share: of.stated }, say);
  if ("notKnown" in of) return lossNotPredicted({ loss, reason: whyNot(sheet, of.notKnown) });
  return lossPredicted({ loss, predicted: of.predicted, max: of.max, basis: words.laws.evaporation }, say);
}
