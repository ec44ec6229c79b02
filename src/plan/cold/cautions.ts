import type { Job } from "../job.js";

/** Of the air [Pa]: a lower one is a vacuum. */
const airPressure = 100_000;

/** What the cold route has to be told besides the usual cautions. */
export function coldCautionsOf({ formula, process }: Job): readonly string[] {
  const used = formula.lines.flatMap(({ material }) => formula.materials[material] ?? []);
  const wet = used.some((material) => material.formulationWater || material.function === "water");
  const evacuated = process.steps.some(
    (step) => step.do === "de-aerate" && (step.pressure ?? airPressure) < airPressure,
  );
  const preserved = used.some((material) => material.function === "preservative");
  return [
    "Never hurry an addition. Too much oil at once breaks the gel, and no way back is sure. If it turns thin, greasy or grainy, add nothing more, keep what is there, and ask whoever owns the formula.",
    ...(wet && !preserved
      ? ["No preservative is named in this formula. A water activity below 0.75 lowers the risk and waives no test."]
      : []),
    ...(evacuated
      ? [
          "A vessel under vacuum must be made for it, and is opened only once air is back in. Volatile parts boil, foam rises: watch it.",
        ]
      : []),
    "Keep water out of vessel, filler and packs: a film of this gel turns to milk under a little water. That is how it rinses off, and how a splash spoils it. Rinsed-off oil makes floors and drains slippery.",
  ];
}
