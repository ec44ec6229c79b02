import { positive, refuse } from "../guards.js";
import { slack } from "../numeric/decimal.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { root } from "../numeric/root.js";
import type { BatchVessel } from "./allowances-of.js";
import { chargeOf, densityIn, type Scaling } from "./scaling.js";

/** How much product a stock makes, before anything is rounded. */
export interface LargestMass {
  /** Finished product of all lots [kg]. */
  readonly mass: number;
  /** Materials that are used up, or of which there is less than another full lot takes. */
  readonly limitedBy: readonly string[];
}

/**
 * The largest batch by exact masses, of any stock: as many lots as fill the vessel, or one more in which all of them are
 * less full.
 */
export function largestMass(scaling: Scaling): (stock: ReadonlyMap<string, number>) => LargestMass {
  const { batch, vessel } = scaling;
  const none = (): never => refuse("unreachable", "stock", "too little", "more than the losses of the lots take");
  if (batch.lots !== undefined || vessel === undefined)
    return (stock) => inLots(scaling, stock, batch.lots ?? 1) ?? none();
  const massOfFull = fullLot(scaling, vessel);
  return (stock) => {
    const sharesOfFull = sharesOf(scaling, stock, 1, massOfFull);
    const full = Math.floor((1 + slack) / maxOf(sharesOfFull.values()));
    const another = inLots(scaling, stock, full + 1);
    const isLarger = another !== undefined && another.mass > full * massOfFull;
    if (isLarger && covers(scaling, vessel, another.mass / (full + 1))) return another;
    if (full === 0) return another ? tooLittle(another.mass, vessel) : none();
    const limitedBy = [...sharesOfFull].flatMap(([key, share]) => ((full + 1) * share > 1 ? [key] : []));
    // If there is enough for a less full lot, it is the vessel that needs more.
    return { mass: full * massOfFull, limitedBy: isLarger ? [] : limitedBy };
  };
}

function tooLittle(mass: number, { volumeMin }: BatchVessel): never {
  return refuse("unreachable", "stock", `enough for ${mass} kg`, `a batch that fills ${volumeMin} m³ of the vessel`);
}

/** The batch in a given number of lots that uses up some material, unless the losses leave nothing. */
function inLots(scaling: Scaling, stock: ReadonlyMap<string, number>, lots: number): LargestMass | undefined {
  const over = (massOfLot: number): number => maxOf(sharesOf(scaling, stock, lots, massOfLot).values()) - 1;
  // Without losses a lot would bring as much as this; slightly more, since the ends have to lie on both sides.
  const far = (1 + 1e-9) * withoutLosses(scaling, stock, lots);
  if (far === 0 || !(over(far * nearNothing) < 0)) return undefined;
  const massOfLot = root(over, far * nearNothing, far, "mass of a lot");
  const shares = sharesOf(scaling, stock, lots, massOfLot);
  return {
    mass: lots * massOfLot,
    limitedBy: [...shares].flatMap(([key, share]) => (share > 1 - 1e-9 ? [key] : [])),
  };
}

/** A lot smaller by this factor counts as none. */
const nearNothing = 1e-9;

/** The share of each material in stock that some lots of one size [kg of finished product] take. */
function sharesOf(
  scaling: Scaling,
  stock: ReadonlyMap<string, number>,
  lots: number,
  massOfLot: number,
): ReadonlyMap<string, number> {
  const { lines } = chargeOf(scaling, massOfLot);
  const shares = new Map<string, number>();
  scaling.lines.forEach(({ material }, i) => {
    const there = stock.get(material);
    const taken = lots * (lines[i] as { readonly mass: number }).mass;
    if (there !== undefined) shares.set(material, (shares.get(material) ?? 0) + taken / there);
  });
  return shares;
}

/** Finished product of one lot if a stock is split into some lots and nothing is lost [kg]. */
function withoutLosses({ lines }: Scaling, stock: ReadonlyMap<string, number>, lots: number): number {
  const whole = lines.reduce((sum, { massFraction }) => sum + massFraction, 0);
  const masses = [...stock].map(([key, mass]) => {
    const share = lines.reduce((sum, line) => sum + (line.material === key ? line.massFraction / whole : 0), 0);
    return share > 0 ? mass / (share * lots) : Number.POSITIVE_INFINITY;
  });
  return minOf(masses);
}

/** Finished product of a lot that fills the vessel at 20 °C [kg]. */
function fullLot(scaling: Scaling, { volumeMax }: BatchVessel): number {
  const room = positive(volumeMax, "vessel.volumeMax") * densityIn(scaling);
  const over = (massOfLot: number): number => chargeOf(scaling, massOfLot).total / room - 1;
  const far = room * (1 + 1e-9);
  if (!(over(far * nearNothing) < 0))
    return refuse("unreachable", "allowances", "losses that fill the vessel", `less than ${volumeMax} m³`);
  return root(over, far * nearNothing, far, "mass of a lot");
}

/** Whether a lot covers the smallest working volume of the vessel. */
function covers(scaling: Scaling, { volumeMin }: BatchVessel, massOfLot: number): boolean {
  const smallest = positive(volumeMin, "vessel.volumeMin") * densityIn(scaling);
  return chargeOf(scaling, massOfLot).total >= smallest * (1 - slack);
}
