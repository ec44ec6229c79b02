import { densityOfMixture, type Formula, type FormulaLine } from "../formula/index.js";
import { list, notNegative, positive, record, refuse, result, wholeNumber } from "../guards.js";
import { densityAt } from "../laws/index.js";
import { temperatureNominal } from "../laws/nominal-temperature.js";
import type { Allowance } from "./allowance.js";
import { allowancesOf, type BatchVessel, nameOf } from "./allowances-of.js";
import { type BatchCharge, chargeFor } from "./charge.js";
import * as known from "./known.js";
import { splitIntoLots } from "./lots.js";
import { text } from "./named.js";
import { deliveredMass } from "./target.js";
import type { Batch } from "./types.js";
import { type EqualLots, fewestWhole, inLots, lotsAskedFor } from "./whole-packs.js";

/** What is needed to scale a batch to any size. */
export interface Scaling {
  readonly formula: Formula;
  readonly batch: Batch;
  /** Finished product that the batch asks for [kg]. */
  readonly massTarget: number;
  /** The lines with something to weigh. */
  readonly lines: readonly FormulaLine[];
  /** Of the product at 20 °C [kg/m³], if it is known. */
  readonly density: number | undefined;
  readonly vessel: BatchVessel | undefined;
  readonly allowances: readonly Allowance[];
}

/** Reads what is needed to scale a batch to any size. */
export function scalingOf(input: {
  readonly formula: Formula;
  readonly batch: Batch;
  readonly vessel?: BatchVessel | undefined;
  readonly yieldStress?: number | undefined;
}): Scaling {
  const { formula, batch, vessel, yieldStress } = input;
  record(batch, "batch", known.batch);
  const lines = linesOf(formula);
  const density =
    batch.density === undefined ? densityOf(lines, formula.materials) : positive(batch.density, "density");
  const { target, packs } = batch;
  record(target, "target");
  const massTarget = deliveredMass("mass" in target ? target : { ...target, density: densityIn({ density }) });
  if (packs !== undefined) positive(packs, "packs");
  if (batch.lots !== undefined) wholeNumber(batch.lots, "lots", 1);
  if (vessel !== undefined) record(vessel, "vessel");
  const allowances = allowancesOf(formula, batch, {
    vessel,
    density,
    yieldStress,
    fill: packs === undefined ? undefined : massTarget / packs,
  });
  return { formula, batch, massTarget, lines, density, vessel, allowances };
}

/** The density of the product, for what cannot do without it [kg/m³]. */
export function densityIn({ density }: Pick<Scaling, "density">): number {
  return density ?? refuse("input", "density", "nothing", "a density of the product, or one of every material");
}

/** The exact charge of one lot that is to deliver a mass [kg]. */
export function chargeOf({ lines, allowances }: Scaling, delivered: number): BatchCharge {
  return chargeFor({
    delivered,
    lines: lines.map((line) => ({ name: nameOf(line), massFraction: line.massFraction })),
    allowances,
  });
}

/** The equal lots of a batch: as many as were asked for, else the fewest that fit the vessel with their packs whole. */
export function lotsOf(scaling: Scaling, massTarget: number, packs: number | undefined): EqualLots {
  const { batch, vessel } = scaling;
  if (batch.lots !== undefined) return inLots(massTarget, packs, lotsAskedFor(batch.lots, packs));
  if (vessel === undefined) return inLots(massTarget, packs, 1);
  const density = densityIn(scaling);
  const fewest = fewestLots(chargeOf(scaling, massTarget), density, vessel);
  const room = vessel.volumeMax * density * (1 + 1e-12);
  return fewestWhole(massTarget, packs, fewest, (massOfLot) => chargeOf(scaling, massOfLot).total <= room);
}

/** The lines with something to weigh. */
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
    return [{ mass: massFraction, density: densityAt({ law: known, temperature: temperatureNominal }) }];
  });
  return parts.length === lines.length ? densityOfMixture({ parts }) : undefined;
}

/** Lots so that the charge of each, with the fixed allowances that each needs anew, fits the working volume. */
function fewestLots(charge: BatchCharge, density: number, { volumeMin, volumeMax }: BatchVessel): number {
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
