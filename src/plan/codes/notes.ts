/** What is to be said without a verdict. */
export const noteCodes = [
  /** Whether, or how finely, the gel sprays is to be tried: no number says it. */
  "atomises-by-trial",
  /** The bench took up additions that are larger than the shares which it states. */
  "bench-additions-beyond-shares",
  /** More of the charge is lost on the way into the packs than is usual. */
  "loss-out-of-the-ordinary",
  /** The film in the vessel counts as that of the set gel, since the one of what it is emptied of is not known. */
  "film-of-the-set-gel",
  /** What water makes of the gel: from how much it turns to milk and flows off, and what it is along the way. */
  "rinse-off",
  /** How far the gel is drawn into a fine line beside its film. */
  "drawn-into-lines",
  /** How much water the gel takes up from the room once its pack is opened. */
  "water-after-opening",
  /** A composition without readings flows by the curve of another one, shifted with the setting temperature as asked for. */
  "viscosity-shifted",
] as const;

/** Something to know that no verdict is given on. */
export type NoteCode = (typeof noteCodes)[number];

/** Usual cautions for what a process holds. */
export const cautionCodes = [
  "additions-not-hurried",
  "no-preservative",
  "vacuum",
  "water-kept-out",
  "hot-oil",
  "stirrer",
  "dust",
  "spray-inhaled",
  "sensitisers",
  "preservation",
  /** In the caller's own words. */
  "restriction",
  /** These figures are arithmetic: local codes, safety data sheets and qualified people come first. */
  "arithmetic-only",
] as const;

/** A caution that stands with a plan. */
export type CautionCode = (typeof cautionCodes)[number];
