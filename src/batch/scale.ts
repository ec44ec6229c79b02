import { densityOfMixture, type Formula, type FormulaLine } from "../formula/index.js";
import { list, notNegative, positive, record, refuse, result } from "../guards.js";
import { densityAt } from "../laws/index.js";
import { allowancesOf, type BatchVessel, nameOf } from "./allowances-of.js";
import { type BatchCharge, chargeFor } from "./charge.js";
import * as known from "./known.js";
import { splitIntoLots } from "./lots.js";
import { type CostOfLots, costOfLots } from "./lots-cost.js";
import { text } from "./named.js";
import { deliveredMass } from "./target.js";
import type { Batch } from "./types.js";
import { type WeighedLot, weigh } from "./weigh.js";
import { type EqualLots, fewestWhole, inLots, lotsAskedFor } from "./whole-packs.js";

/** A formula scaled to a batch: what to weigh on what, how often, and what arrives. */
export interface ScaledBatch {
  /** Finished product asked for [kg]. */
  readonly massTarget: number;
  /** Packs asked for, where the target is in packs. */
  readonly packs?: number | undefined;
  /** Density of the product at 20 °C [kg/m³]; left out where it is not known. */
  readonly density?: number | undefined;
  /** Equal lots: as many as were asked for, else the fewest that fit the vessel with their packs whole. */
  readonly lots: number;
  /** Finished product that one lot is to bring [kg]. */
  readonly massOfLot: number;
  /** Packs of one lot, where the target is in packs; all lots together may hold a few more than were asked for. */
  readonly packsOfLot?: number | undefined;
  /** Exact charge of one lot, before rounding, and what each allowance takes. */
  readonly charge: BatchCharge;
  /** What is weighed for one lot. */
  readonly lot: WeighedLot;
  /** What the materials of all lots cost, per kilogram and pack delivered; or why that is not known. */
  readonly cost: CostOfLots;
}

/**
 * Scales a formula to a batch: charge with its allowances, lots, balances, rounded masses, tolerances and cost.
 *
 * Every allowance counts for each lot, because each lot empties the vessel once. The masses are rounded so that what was
 * asked for still arrives after all allowances. A lot holds whole packs. Volumes are at 20 °C: leave room in the vessel
 * for a hot batch to expand, or ask for more lots.
 *
 * @param input.formula - A formula that was read.
 * @param input.batch - A batch that was read.
 * @param input.vessel - Name, working volumes [m³] and inner diameter [m]. Without it the batch is one lot, and no film can be reckoned.
 * @param input.yieldStress - Yield stress [Pa] of the gel as the vessel is emptied, for a film without a thickness.
 * @returns The scaled batch: masses in kg, cost in the currency of the prices.
 * @throws CalculationError `input` where something needed is missing, such as a density for a volume; `unreachable`,
 *   naming every line that no balance can weigh, or where no number of equal lots fits the vessel.
 * @source definition
 * @example
 * ```ts
 * import { readBatch, scaleFormula } from "gelwright/batch";
 * import { readFormula } from "gelwright/formula";
 * const formula = readFormula({
 *   version: 1,
 *   name: "bench trial",
 *   materials: {
 *     former: { name: "gel former", function: "gel former" },
 *     oil: { name: "sunflower oil", function: "oil" },
 *   },
 *   phases: [
 *     { name: "A", lines: [{ material: "former", amount: "9 %" }, { material: "oil", amount: "q.s." }] },
 *   ],
 * });
 * const batch = readBatch({
 *   version: 1,
 *   target: { mass: "5 kg" },
 *   allowances: [{ kind: "mass", name: "samples", mass: "123.4 g" }],
 *   balances: [{ name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "50 g" }],
 * });
 * scaleFormula({ formula, batch }).lot.lines.map((line) => line.mass); // => [0.461, 4.663]
 * ```
 */
export function scaleFormula(input: {
  readonly formula: Formula;
  readonly batch: Batch;
  readonly vessel?: BatchVessel | undefined;
  readonly yieldStress?: number | undefined;
}): ScaledBatch {
  const { formula, batch, vessel, yieldStress } = record(input, "input", known.scaleFormula);
  const { target, packs, lots: wanted } = record(batch, "batch");
  const lines = linesOf(formula);
  const density =
    batch.density === undefined ? densityOf(lines, formula.materials) : positive(batch.density, "density");
  record(target, "target");
  const massTarget = deliveredMass("mass" in target ? target : { ...target, density: density ?? unknownDensity() });
  if (packs !== undefined) positive(packs, "packs");
  if (vessel !== undefined) record(vessel, "vessel");
  const allowances = allowancesOf(formula, batch, { vessel, density, yieldStress });
  const chargeOf = (delivered: number): BatchCharge =>
    chargeFor({
      delivered,
      lines: lines.map((line) => ({ name: nameOf(line), massFraction: line.massFraction })),
      allowances,
    });
  const split = (): EqualLots => {
    if (wanted !== undefined) return inLots(massTarget, packs, lotsAskedFor(wanted, packs));
    if (vessel === undefined) return inLots(massTarget, packs, 1);
    const of = density ?? unknownDensity();
    const fewest = lotsOf(chargeOf(massTarget), of, vessel);
    const room = vessel.volumeMax * of * (1 + 1e-12);
    return fewestWhole(massTarget, packs, fewest, (massOfLot) => chargeOf(massOfLot).total <= room);
  };
  const { lots, massOfLot, packsOfLot } = split();
  const charge = chargeOf(massOfLot);
  const lot = weigh(lines, charge, allowances, massOfLot, batch, formula.materials);
  const cost = costOfLots(formula, lot, lots, packsOfLot === undefined ? undefined : packsOfLot * lots);
  return { massTarget, packs, density, lots, massOfLot, packsOfLot, charge, lot, cost };
}

function unknownDensity(): never {
  return refuse("input", "density", "nothing", "a density of the product, or one of every material");
}

/** The lines that there is something to weigh of. */
function linesOf(formula: Formula): readonly FormulaLine[] {
  record(record(formula, "formula").materials, "formula.materials");
  return list(formula.lines, "formula.lines", 1).filter((line, i) => {
    const at = `formula.lines[${i}]`;
    text(record(line, at).phase, `${at}.phase`);
    record(formula.materials[text(line.material, `${at}.material`)] ?? {}, `formula.materials.${line.material}`);
    return notNegative(line.massFraction, `${at}.massFraction`) > 0;
  });
}

/** Density of the product at 20 °C from those of its materials, if all are known. */
function densityOf(lines: readonly FormulaLine[], materials: Formula["materials"]): number | undefined {
  const parts = lines.flatMap(({ massFraction, material }) => {
    const known = materials[material]?.density;
    if (known === undefined) return [];
    return [{ mass: massFraction, density: densityAt({ law: known, temperature: 20 }) }];
  });
  return parts.length === lines.length ? densityOfMixture({ parts }) : undefined;
}

/** Lots so that the charge of each, with the fixed allowances that each needs anew, fits the working volume. */
function lotsOf(charge: BatchCharge, density: number, { volumeMin, volumeMax }: BatchVessel): number {
  const fixed = charge.lines.reduce((sum, line) => sum + line.massFixed, 0) / density;
  const scaling = charge.lines.reduce((sum, line) => sum + line.massProportional, 0) / density;
  if (fixed >= positive(volumeMax, "volumeMax"))
    refuse("unreachable", "allowances", `${fixed} m³ of losses`, `less than ${volumeMax} m³`);
  return splitIntoLots({
    volume: result(scaling, "volume"),
    volumeMin: Math.max(notNegative(volumeMin, "volumeMin") - fixed, Number.MIN_VALUE),
    volumeMax: volumeMax - fixed,
  }).lots;
}
