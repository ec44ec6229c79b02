import { positive, record, refuse, result } from "../guards.js";
import { type Addition, additionSchedule } from "./addition-schedule.js";
import * as known from "./known.js";
import type { OilLaw } from "./oil-law.js";

/** What it takes to feed a failed mass into fresh gel former. */
export interface Restart {
  /** The failed mass, added as if it were oil. */
  readonly failed: readonly Addition[];
  /** Oil that goes in after it, so that oil and gel former come to the ratio wanted [kg]. */
  readonly massOilFurther: number;
  /** In the vessel at the end [kg]. */
  readonly massEnd: number;
}

/**
 * The arithmetic of a restart after oil went in too fast: fresh gel former, and the failed mass fed slowly as if it were oil.
 *
 * $$m_\mathrm{oil,more} = R\,(m_\mathrm{fresh} + m_\mathrm{gel\,former}) - m_\mathrm{oil} \qquad m_\mathrm{fresh} \ge V_\mathrm{failed}\,\frac{1 - \varphi_\mathrm{max}}{\varphi_\mathrm{max}}\,\rho_\mathrm{gel\,former}$$
 *
 * It is arithmetic and no promise: whether a broken emulsion is taken up again, a spoonful at the bench tells. The failed
 * mass counts as oil all through, because that is how it may behave.
 *
 * @param input.failed - Gel former and oil in the failed mass [kg], each above 0.
 * @param input.massFresh - Fresh gel former [kg], above 0.
 * @param input.oilPerGelFormer - Ratio of oil to gel former wanted in the end, by mass, above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.densityGelFormer - Density of the gel former [kg/m³], above 0.
 * @param input.share - The most that is taken up at once, against the fraction of what counts as oil.
 * @param input.increment - Smallest step of the balance [kg], above 0; default none.
 * @param input.volumeFractionOilMax - Maximum volume fraction of oil that trials allow, if there is one; the failed mass counts whole.
 * @returns The additions of failed mass, the oil that follows, and the mass in the end [kg].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where the fresh gel former is too little, or the failed mass has too much oil for the ratio.
 * @source common practice, no source
 * @example
 * ```ts
 * import { restartAfterOvershoot } from "gelwright/mixing";
 * const restart = restartAfterOvershoot({
 *   failed: { massGelFormer: 2, massOil: 3 },
 *   massFresh: 3,
 *   oilPerGelFormer: 5,
 *   densityOil: 915,
 *   densityGelFormer: 1250,
 *   share: { law: "constant", value: 0.05 },
 * });
 * restart.massOilFurther; // => 22
 * restart.failed.length; // => 21
 * ```
 */
export function restartAfterOvershoot(input: {
  readonly failed: {
    /** Gel former in the failed mass [kg], above 0. */
    readonly massGelFormer: number;
    /** Oil in the failed mass [kg], above 0. */
    readonly massOil: number;
  };
  readonly massFresh: number;
  readonly oilPerGelFormer: number;
  readonly densityOil: number;
  readonly densityGelFormer: number;
  readonly share: OilLaw;
  readonly increment?: number;
  readonly volumeFractionOilMax?: number;
}): Restart {
  const { failed, massFresh, oilPerGelFormer, densityOil, densityGelFormer, ...rest } = record(
    input,
    "input",
    known.restartAfterOvershoot,
  );
  const gelFormer = positive(record(failed, "failed").massGelFormer, "failed.massGelFormer");
  const oil = positive(failed.massOil, "failed.massOil");
  const fresh = positive(massFresh, "massFresh");
  const wanted = result(positive(oilPerGelFormer, "oilPerGelFormer") * (fresh + gelFormer), "oil in the end");
  if (wanted < oil * (1 - 1e-12))
    refuse(
      "unreachable",
      "massFresh",
      `${fresh} kg, which with the failed mass asks for ${wanted} kg of oil`,
      `at least ${oil / oilPerGelFormer - gelFormer} kg: there are ${oil} kg of oil already`,
    );
  const massOilFurther = Math.max(0, wanted - oil);
  const volume = oil / positive(densityOil, "densityOil") + gelFormer / positive(densityGelFormer, "densityGelFormer");
  const additions = additionSchedule({
    ...rest,
    massGelFormer: fresh,
    massToAdd: oil + gelFormer,
    densityOil: positive(result((oil + gelFormer) / volume, "density"), "density of the failed mass"),
    densityGelFormer,
  });
  return {
    failed: additions,
    massOilFurther,
    massEnd: result(fresh + gelFormer + oil + massOilFurther, "mass in the end"),
  };
}
