import type { ScaledBatch } from "../../batch/index.js";
import type { Check, MaterialFunction } from "../../formula/index.js";
import { checkRatio } from "../../gel/index.js";
import { densityAt } from "../../laws/index.js";
import { volumeOfMass } from "../../units/index.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { say } from "../say.js";

/** Oil to gel former, against the working range found in trials. */
export function checkGelFormerRatio({ formula, bench }: Job): readonly Check[] {
  const of = (what: MaterialFunction): number =>
    formula.lines.reduce(
      (sum, line) => sum + (formula.materials[line.material]?.function === what ? line.massFraction : 0),
      0,
    );
  const former = of("gel former");
  if (former === 0) return [];
  return [checkRatio({ ratio: of("oil") / former, ...bench.oilPerGelFormer, source: bench.source })];
}

/** The packs asked for are reached after every allowance. */
export function checkDelivered({ lot, lots, massTarget, packs }: ScaledBatch): Check {
  const asked = massTarget / lots;
  const reached = lot.delivered >= asked * (1 - 1e-12);
  const each = packs === undefined ? "" : `, ${say.packs(packs / lots)}`;
  return {
    id: "delivered",
    verdict: reached ? "met" : "not met",
    statement: reached
      ? "What is weighed brings what was asked for, after every allowance."
      : "What is weighed does not bring what was asked for.",
    value: say.kilograms(lot.delivered),
    limit: `at least ${say.kilograms(asked)}${each}`,
    source: "mass balance over the stated allowances",
  };
}

/** The charge fits the vessel: cold, and at its hottest, when it is largest. */
export function checkVolume({ charge, density }: ScaledBatch, { vessel }: Job, moments: readonly Moment[]): Check {
  const { volumeMin, volumeMax, name } = vessel;
  const check = {
    id: "working-volume",
    limit: `${say.litres(volumeMin)} to ${say.litres(volumeMax)}`,
    source: `stated for the ${name}`,
  };
  if (density === undefined)
    return { ...check, verdict: "not known", statement: "The density of the charge is not known.", value: "not known" };
  const whole = charge.total / density;
  const hottest = Math.max(0, ...moments.flatMap(({ after }) => volumeOf(after) ?? []));
  const fits = whole >= volumeMin && Math.max(whole, hottest) <= volumeMax;
  return {
    ...check,
    verdict: fits ? "met" : "not met",
    statement: fits
      ? "A lot covers the impeller and leaves room to stir."
      : "A lot does not fit the working volume of the vessel.",
    value: `${say.litres(whole)} at 20 °C${hottest > 0 ? `, ${say.litres(hottest)} when largest` : ""}`,
  };
}

/** Volume of what is in the vessel at its temperature [m³], where every density is known. */
function volumeOf({ contents, temperature }: Moment["after"]): number | undefined {
  if (temperature === undefined) return undefined;
  let volume = 0;
  for (const { material, mass } of contents) {
    if (!material.density) return undefined;
    volume += volumeOfMass({ mass, density: densityAt({ law: material.density, temperature }) });
  }
  return volume;
}

/** No material is over its highest share in the finished product, as weighed. */
export function checkMaximumShares(job: Job, { lot }: ScaledBatch): readonly Check[] {
  const { materials, lines } = job.formula;
  return Object.values(materials).flatMap((material) => {
    const limit = material.massFractionMax;
    if (limit === undefined || !lines.some((line) => line.material === material.key)) return [];
    const weighed = lot.lines
      .filter((line) => line.material === material.key)
      .reduce((mass, line) => mass + line.mass, 0);
    // What evaporates is not counted off: the share is that of the charge, as weighed.
    const share = weighed / lot.total;
    return [
      {
        id: `maximum-share:${material.key}`,
        verdict: share <= limit ? ("met" as const) : ("not met" as const),
        statement:
          share <= limit
            ? `${material.name} stays within its highest share.`
            : `There is more ${material.name} than its highest share.`,
        value: say.percent(share),
        limit: `at most ${say.percent(limit)}`,
        source: material.sources["limits"] ?? "stated in the formula",
      },
    ];
  });
}
