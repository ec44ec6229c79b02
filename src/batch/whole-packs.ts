import { refuse } from "../guards.js";

/** Equal lots, and what one of them is to bring. */
export interface EqualLots {
  readonly lots: number;
  /** Finished product of one lot [kg]. */
  readonly massOfLot: number;
  /** Packs of one lot, where the target is in packs. */
  readonly packsOfLot?: number;
}

/** The batch in so many equal lots. A lot holds whole packs, so that all lots together may bring a few packs more than were asked for. */
export function inLots(massTarget: number, packs: number | undefined, lots: number): EqualLots {
  if (packs === undefined) return { lots, massOfLot: massTarget / lots };
  const packsOfLot = Math.ceil(packs / lots);
  return { lots, massOfLot: (massTarget / packs) * packsOfLot, packsOfLot };
}

/** As many lots as were asked for; with packs no more than there are packs. */
export function lotsAskedFor(lots: number, packs: number | undefined): number {
  if (packs !== undefined && lots > packs) refuse("input", "lots", lots, `no more lots than packs, ${packs}`);
  return lots;
}

/** The fewest equal lots, from so many on, of which each fits with its packs whole. */
export function fewestWhole(
  massTarget: number,
  packs: number | undefined,
  from: number,
  fits: (massOfLot: number) => boolean,
): EqualLots {
  if (packs === undefined) return inLots(massTarget, packs, from);
  if (!fits(massTarget / packs))
    refuse("unreachable", "packs", `a pack of ${massTarget / packs} kg`, "a vessel that takes what fills one pack");
  // As many lots as packs fit for certain.
  let equal = inLots(massTarget, packs, from);
  while (!fits(equal.massOfLot)) equal = inLots(massTarget, packs, equal.lots + 1);
  return equal;
}
