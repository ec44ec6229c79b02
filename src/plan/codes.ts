/** Why a figure is not known. */
export const reasonCodes = [
  /** A field of the documents is not stated: `field`, and of what. */
  "not-stated",
  /** The bench has no reading of this composition, in this direction or at this dose. */
  "not-read",
  /** A law or a set of readings does not reach this far. */
  "outside-range",
  /** No correlation is known for this kind of stirrer. */
  "no-correlation",
  /** What is asked of is not there: no oil, no droplets, an empty vessel. */
  "nothing-there",
  /** The process does not do what the figure needs. */
  "not-done",
  /** Readings contradict one another. */
  "contradiction",
  /** No method gives a number for this. */
  "no-method",
] as const;

/** Why a figure is not known. */
export type ReasonCode = (typeof reasonCodes)[number];

/** Fields of the documents that a figure may need, as codes; `docs` says where each stands. */
export const fieldCodes = [
  "material-density",
  "material-specific-heat",
  "material-conductivity",
  "material-refractive-index",
  "material-flash-point",
  "material-fatty-acids",
  "material-ageing-kinetics",
  "material-price",
  "bench-doses",
  "bench-viscosities",
  "bench-yield-stress",
  "bench-strength-trials",
  "bench-flow-curve",
  "bench-settling-max",
  "bench-stirrable-viscosity-max",
  "bench-pourable-viscosity-max",
  "bench-oil-per-gel-former",
  "bench-emulsion",
  "emulsion-oil-max",
  "emulsion-share-max",
  "emulsion-additions",
  "emulsion-incorporation-time",
  "emulsion-stirring",
  "emulsion-stirring-diameter",
  "emulsion-stirring-gel-former",
  "emulsion-thickness",
  "emulsion-thickness-shear-rate",
  "emulsion-thickness-flow-index",
  "emulsion-thickness-yield-stress",
  "emulsion-droplets",
  "emulsion-interfacial-tension",
  "emulsion-surfactant",
  "emulsion-mismatch-max",
  "emulsion-gel-former-index",
  "emulsion-water-activity",
  "emulsion-air",
  "vessel-working-volume",
  "vessel-heater",
  "vessel-heat-loss",
  "vessel-heated-wall",
  "vessel-jacket",
  "vessel-jacket-area",
  "vessel-jacket-conductance",
  "vessel-stirrer",
  "stirrer-speed",
  "stirrer-power",
  "stirrer-metzner-otto-constant",
  "stirrer-revolutions-to-blend",
  "stirrer-top-edge",
  "stirrer-motor",
  "pack",
  "pack-cooling",
  "pack-packs",
  "pack-nozzle",
  "pack-nominal",
  "pack-brim-capacity",
  "pack-tare",
  "pack-fill-spread",
  "pack-fill-target",
  "pack-storage-temperature-max",
  "pack-head-space-min",
  "pack-average-quantity",
  "process-air-speed",
  "process-air",
  "material-temperature-max",
  "material-share-max",
  "formula-claim",
  "batch-target",
  "process-working-day",
  "step-within",
] as const;

/** A field of the documents that a figure may need. */
export type FieldCode = (typeof fieldCodes)[number];

/** Laws, correlations and conventions on which figures rest. */
export const lawCodes = [
  "mass-balance",
  "iso-16128-2",
  "mixing-temperature",
  "heat-balance",
  "heater-power",
  "heater-limited-by-its-temperature",
  "newton-cooling",
  "convection-and-radiation",
  "jacket",
  "held-by-the-heater",
  "stirred-wall",
  "wall-temperature",
  "heat-of-stirring",
  "power-number",
  "motor-margin",
  "blend-time",
  "revolutions-to-blend",
  "cavern",
  "vortex",
  "level",
  "setting-line",
  "ideal-solubility",
  "viscosity",
  "temperature-at-viscosity",
  "flow-curve-along-oil",
  "suspension-viscosity",
  "flow-curve-fit",
  "dose-response",
  "sphere-drag",
  "grain-drag",
  "flake-drag",
  "settling",
  "window-for-adding",
  "yield-stress-to-hold",
  "bubble-rise",
  "bubble-held",
  "foam-head",
  "boiling",
  "pack-conduction",
  "pack-lump",
  "shrinkage",
  "drained-film",
  "film-that-stays",
  "nozzle-flow",
  "ohnesorge",
  "evaporation",
  "thermal-exposure",
  "oxidisability",
  "addition-schedule",
  "incorporation-time",
  "packed-droplets",
  "droplets-in-shear",
  "surfactant-coverage",
  "refractive-index",
  "glycerin-for-index-match",
  "water-activity",
  "scale-up",
  "lot-order",
  "fill-mass",
  "tolerable-error",
  "batch-test",
  "target-fill",
  "expansion",
  "head-space",
  "packs-from-batch",
] as const;

/** A law, correlation or convention on which a figure rests. */
export type LawCode = (typeof lawCodes)[number];

/** What is taken for granted in a figure. One with a direction opens that end of the figure. */
export const assumptionCodes = [
  /** The heat of stirring is left out: the charge may be warmer. */
  "heat-of-stirring-left-out",
  /** No loss to the room is stated, and none is counted: the charge may be cooler. */
  "heat-loss-left-out",
  /** The bottom of the vessel is taken as flat. */
  "bottom-taken-as-flat",
  /** The vessel's wall is left out of a heat balance. */
  "vessel-wall-left-out",
  /** Nothing is lost to the room while a phase goes in. */
  "no-loss-while-charging",
  /** Readings are continued beyond their end. */
  "beyond-readings",
  /** The gel is taken as thick as the bench read it at the room's temperature. */
  "thickness-of-the-room",
  /** The latent heat of setting is left out. */
  "latent-heat-of-setting-left-out",
  /** A correlation for a wall counts at three quarters of its value. */
  "three-quarters-of-the-correlation",
  /** The viscosity is not known: the yield stress alone bounds what is moved. */
  "yield-stress-alone",
  /** What states no expansion expands by nothing up to the most that is usual. */
  "expansion-up-to-the-usual",
  /** The droplets are packed closer than any whose breakup in shear was seen. */
  "droplets-packed-closer-than-seen",
] as const;

/** What is taken for granted in a figure. */
export type AssumptionCode = (typeof assumptionCodes)[number];

/** What is to be said without a verdict. */
export const noteCodes = [
  /** Whether, or how finely, the gel sprays is to be tried: no number says it. */
  "atomises-by-trial",
] as const;

/** Something to know that no verdict is given on. */
export type NoteCode = (typeof noteCodes)[number];

/** What is usually done with a set gel, if the bench names no uses of its own. */
export const useCodes = ["pouring", "brushing-on", "rubbing-in"] as const;

/** A usual use of the gel. */
export type UseCode = (typeof useCodes)[number];

/** What can be turned so that an answer becomes met. */
export const leverCodes = [
  "warmer-addition",
  "hotter-melt",
  "shorter-filling",
  "warmer-coolant",
  "colder-coolant",
  "stronger-heater",
  "less-heat",
  "slower-stirring",
  "longer-stirring",
  "longer-rest",
  "longer-de-aeration",
  "more-gel-former",
  "less-gel-former",
  "cooler-melt",
  "less-cooling",
  "more-surfactant",
] as const;

/** What can be turned so that an answer becomes met. */
export type LeverCode = (typeof leverCodes)[number];

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

/** Parts of the documents whose figures have a source. */
export const sourceCodes = [
  "material",
  "bench",
  "bench-emulsion",
  "allowance",
  "heat-loss-by-surfaces",
  "heat-loss-by-cooling-curve",
  "heat-loss-stated",
  "pack-coefficient",
  "heated-wall",
  "jacket",
] as const;

/** What kind of figures a source is given for. */
export type SourceCode = (typeof sourceCodes)[number];

/** Every question, by its id. */
export const questionIds = [
  "gel-former-ratio",
  "natural-origin-claim",
  "delivered",
  "working-volume",
  "maximum-share",
  "lot-fits-the-day",
  "heat-sensitive-off-the-heat",
  "maximum-temperature",
  "flash-point",
  "done-in-time",
  "step-can-be-done",
  "gel-former-dissolves",
  "above-setting",
  "filled-before-it-sets",
  "pours-into-the-pack",
  "skin-on-the-wall",
  "gel-former-covers-impeller",
  "maximum-oil-fraction",
  "additions-within-share",
  "surfactant-covers-droplets",
  "clarity-match",
  "clarity-while-warm",
  "water-activity",
  "blended",
  "gel-moves-at-wall",
  "motor-power",
  "motor-torque",
  "stirrer-covered",
  "minimum-volume",
  "no-air-down-the-vortex",
  "particles-go-in",
  "particles-settle",
  "particles-stay-suspended",
  "set-at-centre",
  "fill-by-the-rules",
  "fits-the-brim",
  "head-space-when-hot",
  "whole-packs",
  "gel-strength",
  "air-leaves",
  "air-is-released",
  "air-has-time",
  "vacuum-foam",
  "vacuum-boils",
] as const;

/** A question that a plan may answer. */
export type QuestionId = (typeof questionIds)[number];

/** How a figure answers to a limit. */
export const verdictCodes = ["met", "not-met", "not-known"] as const;

/** On which side of its limit a figure lies. */
export const sideCodes = ["below", "above", "none"] as const;

/** What a figure is a figure of; its unit is the kernels'. */
export const quantityCodes = [
  "viscosity",
  "temperature",
  "temperature-difference",
  "duration",
  "mass",
  "volume",
  "mass-fraction",
  "volume-fraction",
  "ratio",
  "length",
  "speed",
  "power",
  "torque",
  "pressure",
  "stress",
  "count",
  "index-difference",
  "activity",
] as const;

/** Places at which a figure is found. */
export const placeCodes = [
  "charge",
  "heated-wall",
  "cooled-wall",
  "vessel",
  "pack",
  "first-pack",
  "last-pack",
] as const;

/** What kinds of things a figure rests on. */
export const basisCodes = ["law", "reading", "stated", "practice"] as const;

/** Standards and common practice on which a limit rests. */
export const practiceCodes = ["iso-29621"] as const;

/** Where the finished gel changes, and how the temperature was found. */
export const gelPointCodes = ["sets", "dissolves", "measured", "between", "ideal"] as const;

/** What sets the target of a fill. */
export const fillLimitCodes = ["nominal", "mean", "single-packs", "shares-of-packs"] as const;

/** Parts of a material as supplied. */
export const materialPartCodes = ["active", "carrier"] as const;

/** Ways of a temperature, by which a melt is read. */
export const directionCodes = ["heating", "cooling"] as const;

/** The two of which one is held beside the other. */
export const scaleCodes = ["bench", "plan"] as const;
