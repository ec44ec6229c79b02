import type { PlanParticle } from "../plan/index.js";
import { type Sheet, whyNot } from "./render.js";

/** When a particle may go in, and what the gel makes of it. */
export function particleLine(sheet: Sheet, of: PlanParticle): string {
  const { words, say } = sheet;
  const sentences = [...sizeOf(sheet, of), ...windowOf(sheet, of), ...goesIn(sheet, of), ...keptUp(sheet, of)];
  return words.lines.gel.about({ material: say.material(of.material), sentences });
}

/** The size of a flake, as it is sold. */
function sizeOf({ words, say }: Sheet, { size: { diameter, width, thickness } }: PlanParticle): readonly string[] {
  return width === undefined || thickness === undefined
    ? []
    : [words.lines.gel.flake({ width, thickness, diameter }, say)];
}

function windowOf(sheet: Sheet, { window, windowNotKnown }: PlanParticle): readonly string[] {
  const { words, say } = sheet;
  const lines = words.lines.gel;
  if (windowNotKnown) return [lines.windowNotKnown({ reason: whyNot(sheet, windowNotKnown) })];
  if (!window) return [];
  if (!window.isOpen) return [lines.windowClosed(window, say)];
  const { timeMin, timeMax, openBy, packLacks } = window;
  return [
    lines.window(window, say),
    ...(timeMin === undefined || timeMax === undefined ? [] : [lines.windowTimes({ timeMin, timeMax }, say)]),
    ...(openBy ? [lines.windowOpenBy({ field: words.fields[openBy] })] : []),
    ...(packLacks ? [lines.windowPackNotKnown({ reason: whyNot(sheet, packLacks) })] : []),
  ];
}

function goesIn({ words, say }: Sheet, { window, goesIn: by }: PlanParticle): readonly string[] {
  if (!by || !window?.isOpen) return [];
  const { temperature, time } = by;
  const { goesIn: at, goesInAfter } = words.lines.gel;
  return [time === undefined ? at({ temperature }, say) : goesInAfter({ temperature, time }, say)];
}

function keptUp({ words, say }: Sheet, of: PlanParticle): readonly string[] {
  const { massFractionBeyond: share, largestSuspended: held, wettingOil: mass, thickening: factor } = of;
  const lines = words.lines.gel;
  const { inVessel, inPack } = of.settles ?? {};
  return [
    ...(inVessel === undefined
      ? []
      : [inPack === undefined ? lines.settles({ inVessel }, say) : lines.settlesInBoth({ inVessel, inPack }, say)]),
    ...(share === undefined ? [] : [lines.settlesFurther({ share }, say)]),
    ...(held ? [lines.held({ length: held.length, dimension: lines.heldDimensions[held.of] }, say)] : []),
    ...(mass === undefined
      ? []
      : [
          factor === undefined || say.number(factor) === say.number(1)
            ? lines.wet({ mass }, say)
            : lines.wetAndThicken({ mass, factor }, say),
        ]),
  ];
}
