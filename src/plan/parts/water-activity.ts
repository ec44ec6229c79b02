import { waterActivity, waterActivityBand } from "../../gel/index.js";
import { bandAround } from "../../laws/index.js";
import { ofOuterPhase } from "../composition.js";
import { isGlycerin, isWater, massOf } from "../contents.js";
import type { Figure } from "../figure.js";
import type { Run } from "../state.js";
import { by } from "../unknown.js";
import { gelOf } from "./droplets.js";

/** Water in the outer phase of the finished gel [kg]; what is not active in a material as supplied counts as water. */
export function waterInOuterPhase(run: Run): number {
  return gelOf(run)
    .charge.outer()
    .reduce(
      (sum, one) => sum + (isWater(one) ? one.mass : isGlycerin(one) ? 0 : one.mass * (1 - one.material.strength)),
      0,
    );
}

/** Water activity of the outer phase: as measured, or by the law of its glycerin and water that holds there, with its band. */
export function waterActivityOf(run: Run): Figure {
  const { charge } = gelOf(run);
  const { bench, process } = charge.job;
  const measured = ofOuterPhase(charge.job, bench.emulsion?.waterActivity);
  if (measured !== undefined)
    return {
      min: measured,
      value: measured,
      max: measured,
      basis: [{ kind: "reading", key: "emulsion-water-activity", source: bench.source }],
    };
  const glycerin = massOf(charge.outer().filter(isGlycerin));
  const massFractionGlycerin = glycerin / (glycerin + waterInOuterPhase(run));
  const { wilson: value } = by("water-activity", () =>
    waterActivity({ massFractionGlycerin, temperature: process.room }),
  );
  const { min, max } = bandAround({ value, band: waterActivityBand });
  // Neither end can lie beyond that of water alone or of glycerin alone.
  return {
    min: Math.max(min, 0),
    value,
    max: Math.min(max, 1),
    basis: [{ kind: "law", key: "water-activity" }],
  };
}
