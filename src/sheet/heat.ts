import type { AfterFilling, OilThermalExposure, OxidationRank, Plan, PlanEvaporation } from "../plan/index.js";
import { celsius, clock, kilograms, percent, span } from "./figures.js";
import { markdownList } from "./table.js";

/** When the packs have set, and how far their content sinks. */
export function afterFilling({ durationToSet, sinkDepth, topUp, basis, notKnown }: AfterFilling): readonly string[] {
  if (durationToSet === undefined)
    return [`When a pack has set through is not known: ${notKnown ?? "the room is too warm"}.`];
  const sinks =
    sinkDepth === undefined || topUp === undefined
      ? []
      : [
          `The content sinks by ${Number((sinkDepth * 1000).toPrecision(2))} mm as it cools; ${kilograms(topUp, 2)} a pack would make up for it.`,
        ];
  return [
    `The centre of a pack has passed the setting temperature ${span(durationToSet)} after filling: ${basis}.`,
    ...sinks,
  ];
}

/** What one spared oil went through. */
export function thermalExposureOf(of: OilThermalExposure): string {
  if ("notKnown" in of) return `${of.material}: not known, ${of.notKnown}.`;
  const { material, temperatureMax, durationAbove, temperatureAbove, duration, equivalent } = of;
  const asMuch = equivalent ? `; as much as ${span(equivalent.duration)} at ${celsius(equivalent.temperature)}` : "";
  return `${material}: at most ${celsius(temperatureMax)}, ${clock(durationAbove)} of ${clock(duration)} above ${celsius(temperatureAbove)}${asMuch}.`;
}

/** The time there is to stir and fill in, where it is known. */
export function timeToWorkIn({ durationToSet, durationMargin }: Plan["scale"]): string {
  if (durationToSet === undefined) return "";
  const left =
    durationMargin === undefined
      ? ""
      : durationMargin < 0
        ? `, ${span(-durationMargin)} before the packs are full`
        : `, ${span(durationMargin)} more than until the packs are full`;
  return ` Left to cool, the gel sets ${span(durationToSet)} after the last charge${left}.`;
}

/** The order in which oils ask to wait; nothing where no oil has a profile. */
export function orderOfAddition(oils: readonly OxidationRank[]): readonly string[] {
  const known = oils.filter((oil) => !("notKnown" in oil));
  if (known.length === 0) return [];
  return [
    "## Which oils to charge off the heat",
    markdownList(oils.map(orderOf)),
    "Ranked by what waiting spares: Cox value times share times heat. It ranks; from which figure on an oil has to wait is for the maker to say.",
  ];
}

function orderOf(oil: OxidationRank): string {
  if ("notKnown" in oil) return `${oil.material}: not known, ${oil.notKnown}.`;
  const { material, onHeat, oxidisability, massFraction, equivalentTime, equivalentTimeOffHeat, share } = oil;
  const what = `${material} (Cox value ${Number(oxidisability.toPrecision(2))}, ${percent(massFraction)} of the product)`;
  if (oxidisability === 0) return `${what}: holds no acid that the Cox value counts.`;
  const heat = `as much as ${span(equivalentTime)} at ${celsius(oil.temperatureReference)}`;
  const part = `${percent(Number(share.toPrecision(2)))} of what the heat does to the oils`;
  if (!onHeat) return `${what}: goes in off the heat; ${heat}, ${part}.`;
  const sets = oil.setsIfOffHeat ? ", but the mix would come too near its setting temperature" : "";
  return `${what}: goes in on the heat; ${heat}, ${part}. Off the heat: ${span(equivalentTimeOffHeat)}${sets}.`;
}

/** What one volatile material loses. */
export function evaporationOf({ material, stated, predicted, max, basis, notKnown }: PlanEvaporation): string {
  const made = stated === undefined ? "no loss is made up for" : `${percent(stated)} is made up for, as stated`;
  if (predicted === undefined || max === undefined) return `${material}: ${made}; no prediction, ${notKnown}.`;
  return `${material}: ${made}; ${percent(predicted)} is predicted, ${percent(max)} at the very most (${basis}).`;
}
