import type { Job } from "../job.js";

/** What the cold route has to be told besides the usual cautions. */
export function coldCautionsOf({ formula }: Job): readonly string[] {
  const used = formula.lines.flatMap(({ material }) => formula.materials[material] ?? []);
  const wet = used.some((material) => material.formulationWater || material.function === "water");
  const preserved = used.some((material) => material.function === "preservative");
  return [
    "Never hurry an addition. Too much oil at once turns the gel over and it is lost. If it turns thin, greasy or grainy, add nothing more, keep what is there, and ask whoever owns the formula.",
    ...(wet && !preserved
      ? ["No preservative is named in this formula. A water activity below 0.75 lowers the risk and waives no test."]
      : []),
    "Keep water out of vessel, filler and packs: a film of this gel turns to milk under a little water. That is how it rinses off, and how a splash spoils it. Rinsed-off oil makes floors and drains slippery.",
  ];
}
