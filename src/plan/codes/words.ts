/** What is usually done with a set gel, if the bench names no uses of its own. */
export const useCodes = ["pouring", "brushing-on", "rubbing-in"] as const;

/** A usual use of the gel. */
export type UseCode = (typeof useCodes)[number];

/** Where the finished gel changes, and how the temperature was found. */
export const gelPointCodes = ["sets", "dissolves", "measured", "between", "ideal"] as const;

/** A change of state that has no name of the caller's. */
export const transitionCodes = ["gel-point"] as const;

/** What sets the target of a fill. */
export const fillLimitCodes = ["nominal", "mean", "single-packs", "shares-of-packs"] as const;

/** Parts of a material as supplied. */
export const materialPartCodes = ["active", "carrier"] as const;

/** What is put into the gel former so that its refractive index matches the oil's. */
export const correctionCodes = ["water", "glycerin"] as const;

/** Ways of a temperature, by which a melt is read. */
export const directionCodes = ["heating", "cooling"] as const;

/** The two of which one is held beside the other. */
export const scaleCodes = ["bench", "plan"] as const;
