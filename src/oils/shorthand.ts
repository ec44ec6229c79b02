/** A fatty acid, as far as arithmetic needs it. */
export interface Acid {
  /** As a key of a profile: `18:1 n-9`. */
  readonly shorthand: string;
  /** Carbons and double bonds alone: `18:1`; with a hydroxyl group `18:1-OH`. */
  readonly kind: string;
  readonly carbons: number;
  readonly doubleBonds: number;
  /** The hydroxyl groups of the chain, 0 or 1. */
  readonly hydroxyls: number;
  /** The carbon, counted from the methyl end, at which the first double bond stands; absent where not stated. */
  readonly family: number | undefined;
  /** [kg/mol] */
  readonly molarMass: number;
}

/** What is written in a fault where a shorthand was looked for. */
export const shorthandWanted = 'a fatty acid of 4 to 30 carbons such as "18:1", "C18:2 n-6" or "18:1-OH n-9"';

/** A fatty acid from its shorthand, or undefined where the text is none or no such acid can be. */
export function acidOf(text: unknown): Acid | undefined {
  const found =
    typeof text === "string" && /^C?([1-9]\d?):(\d)(-OH)?(?: ?\(?(?:n|ω|omega)[-−]?(\d{1,2})\)?)?$/i.exec(text.trim());
  if (!found) return undefined;
  const carbons = Number(found[1]);
  const doubleBonds = Number(found[2]);
  const hydroxyls = found[3] ? 1 : 0;
  const family = found[4] === undefined ? undefined : Number(found[4]);
  if (carbons < 4 || carbons > 30 || doubleBonds > 6) return undefined;
  // Every third carbon carries a double bond; the one next to the acid group is carbon 2.
  if (family === undefined ? 3 * doubleBonds >= carbons : !doubleBonds || family < 1) return undefined;
  if (family !== undefined && carbons - family - 3 * (doubleBonds - 1) < 2) return undefined;
  const kind = `${carbons}:${doubleBonds}${hydroxyls ? "-OH" : ""}`;
  const molarMass = (12.011 * carbons + 1.008 * 2 * (carbons - doubleBonds) + 15.999 * (2 + hydroxyls)) / 1000;
  return {
    shorthand: family === undefined ? kind : `${kind} n-${family}`,
    kind,
    carbons,
    doubleBonds,
    hydroxyls,
    family,
    molarMass,
  };
}
