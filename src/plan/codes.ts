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
  "material-hlb",
  "material-required-hlb",
  "material-induction-times",
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
  "in-use-film",
  "in-use-surface-tension",
  "in-use-opened",
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
  "pack-content",
  "pack-packs",
  "pack-nozzle",
  "pack-nominal",
  "pack-brim-capacity",
  "pack-tare",
  "pack-fill-spread",
  "pack-fill-target",
  "pack-storage-temperature-max",
  "pack-temperature-max",
  "pack-head-space-min",
  "pack-average-quantity",
  "pack-closing-temperature",
  "process-air-speed",
  "process-air",
  "material-temperature-max",
  "material-share-max",
  "formula-claim",
  "batch-target",
  "stability",
  "stability-allowance",
  "stability-ageing",
  "label",
  "label-date",
  "exposure",
  "exposure-study",
  "material-index",
  "material-certified-class",
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
  "held-as-stated",
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
  "test-plan",
  "equivalent-storage",
  "ingredient-order",
  "fragrance-allergens",
  "microplastics",
  "claim-figure",
  "certified-shares",
  "daily-exposure",
  "systemic-exposure",
  "ingredient-limits",
  "gel-with-water",
  "film-runs-off",
  "capillary-reach",
  "turbidity",
  "water-uptake",
  "required-hlb",
  "induction-time",
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
  /** A wall beyond the viscosity readings counts as thick as where they end: the coefficient there is a bound. */
  "wall-as-thick-as-read",
  /** The viscosity is not known: the yield stress alone bounds what is moved. */
  "yield-stress-alone",
  /** What states no expansion expands by nothing up to the most that is usual. */
  "expansion-up-to-the-usual",
  /** The droplets are packed closer than any whose breakup in shear was seen. */
  "droplets-packed-closer-than-seen",
  /** The viscosity of another composition is shifted with the setting temperature: it may err either way. */
  "viscosity-shifted-with-setting",
] as const;

/** What is taken for granted in a figure. */
export type AssumptionCode = (typeof assumptionCodes)[number];

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
  /** A composition that nobody read flows by the curve of another one, shifted with the setting temperature as asked for. */
  "viscosity-shifted",
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
  "faster-filling",
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
  "lower-share",
  "more-lots",
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

/** Every question, by its id, with what raises it, the states that its answer is about, their figure and its limit, and the margin if there is one. The page of questions is made of these lines. */
export const questionIds = [
  /** Raised by: a gel former in the formula, or the outer phase of an emulsion. States: the formula. Figure: oil per gel former by mass; in an emulsion outer phase against all that goes into it, particles aside. Limit: the bench's working range, both ends. */
  "gel-former-ratio",
  /** Raised by: a claimed natural-origin content. States: the formula. Figure: the content by ISO 16128-2 between the bounds that unknown indices leave. Limit: at least the claim. */
  "natural-origin-claim",
  /** Raised by: every job. States: one lot. Figure: what arrives in the packs from the masses as they are weighed. Limit: at least what one lot is asked for. */
  "delivered",
  /** Raised by: every job. States: the whole lot at 20 °C, and what is in the vessel before and after every step until the packs are filled. Figure: its volume at its temperature. Limit: the working volume of the vessel: at most the largest in every state, at least the smallest for the whole lot. */
  "working-volume",
  /** Raised by: a material with a maximum share. States: the lot as it is weighed. Figure: mass of the material over that of the charge. Limit: at most the share that is stated. */
  "maximum-share",
  /** Raised by: a working day. States: the end of every step that somebody has to be there for. Figure: time since the first step, with both ends of what passes through walls. Limit: at most the length of the day. */
  "lot-fits-the-day",
  /** Raised by: a heat-sensitive material other than an antioxidant, where anything is heated. States: every step with the material in the vessel. Figure: 1 on the heat, 0 off it. Limit: at most 0. */
  "heat-sensitive-off-the-heat",
  /** Raised by: a material with a maximum temperature. States: every step with the material in the vessel, in the charge and at the heated wall. Figure: the warmest that it gets, the wall within a quarter of the correlation; where the wall is not known, between the charge and the hottest that the heater gets, or the medium of a jacket that keeps it warm. Limit: at most the temperature that is stated. */
  "maximum-temperature",
  /** Raised by: every material in the vessel but water and particles, in the charge and at the heated wall. States: every step with the material at that place. Figure: the warmest that it gets, the wall within a quarter of the correlation; where the wall is not known, between the charge and the hottest that the heater gets, or the medium of a jacket that keeps it warm. Limit: at most the flash point. Margin: that of the process, else 30 K. */
  "flash-point",
  /** Raised by: a step that heats or cools with a time allowed for it. States: the step. Figure: how long it takes, the wall within a quarter of the correlation; at least that long where what would lengthen it was left out. Limit: at most the time allowed. */
  "done-in-time",
  /** Raised by: a step that heats or cools to a temperature, or holds off the heat at one. States: the step. Figure: the temperature that the vessel reaches by what heats or cools it. Limit: at least what the step asks for on heating, at most that on cooling. */
  "step-can-be-done",
  /** Raised by: a gel former that melts into the oil. States: some step with the gel former in the vessel, of those on the heat if there are any. Figure: temperature of the charge. Limit: at least the dissolving temperature at the dose. */
  "gel-former-dissolves",
  /** Raised by: a charge into a melt that holds gel former. States: the charge. Figure: temperature of the mix. Limit: at least the setting temperature at the new dose. Margin: that of the process, else 2 K. */
  "above-setting",
  /** Raised by: filling packs with a melt that holds gel former. States: the first pack and the last. Figure: temperature in the vessel. Limit: at least the setting temperature. Margin: that of the process, else 2 K. */
  "filled-before-it-sets",
  /** Raised by: filling packs with a melt that holds gel former. States: the first pack and the last. Figure: viscosity in the vessel; beyond the readings, at least that of the coolest or at most that of the warmest. Limit: at most the viscosity that the bench could still pour. */
  "pours-into-the-pack",
  /** Raised by: cooling a melt that holds gel former with the jacket. States: the end of the step, at the coolant's inlet. Figure: temperature of the wall, within a quarter of the correlation; beyond the viscosity readings down to the coolant. Limit: at least the setting temperature. Margin: that of the process, else 2 K. */
  "skin-on-the-wall",
  /** Raised by: a stirrer, and gel former that stands in the vessel before the oil of an emulsion. States: that step. Figure: volume of the gel former. Limit: at least the smallest working volume. */
  "gel-former-covers-impeller",
  /** Raised by: an emulsion with oil in it. States: every step that changes what is in it. Figure: volume of oil over that of oil and gel former, with the oil weighed as heavy and the gel former as light as the weighing tolerance lets them be. Limit: at most the oil fraction at which trials inverted. Margin: that of the process, else 1 % by volume. */
  "maximum-oil-fraction",
  /** Raised by: a phase of oil that goes into an emulsion, by whatever step. States: every addition; of a phase without a schedule all of it at once. Figure: mass of the addition over what is in the vessel. Limit: at most the largest share that the bench took up at once at that oil fraction. */
  "additions-within-share",
  /** Raised by: an emulsion with oil in it. States: the finished gel. Figure: mass of the surfactant's active part. Limit: at least what covers the droplets. */
  "surfactant-covers-droplets",
  /** Raised by: an emulsion with oil in it. States: the finished gel at the room's temperature, and at both ends of the temperatures at which it is used if they are stated. Figure: difference of the refractive indices of oil and gel former. Limit: at most the difference that was clear enough at the bench. */
  "clarity-match",
  /** Raised by: a step that matches clarity in an emulsion with oil in it. States: the step. Figure: difference of the refractive indices at the temperature of the step. Limit: on the same side of what the bench allows as in the room. */
  "clarity-while-warm",
  /** Raised by: water in the outer phase of an emulsion. States: the finished gel. Figure: water activity as measured, else by two laws. Limit: below 0.75 (ISO 29621, from memory). Margin: 1e-9, so that the limit itself is not met. */
  "water-activity",
  /** Raised by: a step that stirs a charge that has not set. States: every stirred state of the step. Figure: time to blend, by measurements in their range, else by the revolutions that were counted; without baffles at least as long; none where gel stands still. Limit: at most the time of the step. */
  "blended",
  /** Raised by: a step that stirs an emulsion, or a melt that may have set; not a stirrer that is moved by hand. States: every stirred state of the step. Figure: how wide the stirrer moves the gel. Limit: at least the diameter of the vessel. */
  "gel-moves-at-wall",
  /** Raised by: as whether it moves at the wall. States: every stirred state of the step. Figure: how high the stirrer moves the gel. Limit: at least the level of the charge. */
  "gel-moves-at-surface",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: power at the shaft. Limit: at most the motor's power at the shaft. Margin: a fifth of it, a quarter above what is needed. */
  "motor-power",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: torque at the shaft. Limit: at most the motor's torque at that speed, less a fifth; by its drive, or between both drives. */
  "motor-torque",
  /** Raised by: a stirrer that turns; one that follows the wall only with a cover asked for. States: every stirred state. Figure: level of the charge. Limit: at least the upper edge of the stirrer and the cover asked for. */
  "stirrer-covered",
  /** Raised by: a stirrer that turns; one that follows the wall only with a cover asked for. States: the vessel. Figure: the smallest working volume that is stated. Limit: at least the volume that covers the stirrer. */
  "minimum-volume",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: depth of the vortex: none in creeping flow, else from 0 to the deepest that there could be. Limit: at most the charge above the stirrer. */
  "no-air-down-the-vortex",
  /** Raised by: particles that go into a melt. States: every time that they do. Figure: temperature of the melt before. Limit: the window in which they neither sink too far, by the same ways through vessel and packs as they settle, nor tear the gel; open below where nothing says how thick it can be stirred, and above where the way in the pack is not known. */
  "particles-go-in",
  /** Raised by: particles that go into a melt. States: the first pack and the last, of every time that they go in. Figure: how far the largest sink until the gel has set, no further than vessel and pack are deep. Limit: at most what the bench allows. */
  "particles-settle",
  /** Raised by: particles. States: each material of them. Figure: yield stress of the set gel. Limit: at least what holds them, between the figures that are published. */
  "particles-stay-suspended",
  /** Raised by: a rest of packs of a melt. States: the first pack and the last. Figure: time from the end of filling until the centre has set. Limit: at most the rest. */
  "set-at-centre",
  /** Raised by: a label that states how much is in a pack, and a fill that is stated. States: the pack. Figure: the fill. Limit: at least the target by the rules of average quantity. */
  "fill-by-the-rules",
  /** Raised by: a label that states how much is in a pack. States: the first pack and the last. Figure: volume of the largest fill at the temperature of filling. Limit: at most the brim capacity. */
  "fits-the-brim",
  /** Raised by: a pack that states the hottest product which it stands. States: the first pack and the last. Figure: temperature of the product in the vessel. Limit: at most the temperature that is stated. */
  "pack-stands-the-heat",
  /** Raised by: a label that states how much is in a pack. States: the pack at the highest temperature of storage. Figure: share of the pack that is left empty. Limit: at least the share asked for, else 0. */
  "head-space-when-hot",
  /** Raised by: a target in packs with a label that states how much is in one. States: the batch. Figure: packs that it fills. Limit: at least what is asked for. */
  "whole-packs",
  /** Raised by: a stability test. States: the test. Figure: product in all of its samples. Limit: at most the allowance of a lot that gives them. */
  "samples-within-allowance",
  /** Raised by: a storage with a temperature in a stability test, of a melt or of a product that states where it changes its state. States: every such storage. Figure: its temperature. Limit: the next temperatures at which the product sets, melts or clears, above and below the temperature of use. Margin: that of the process, else 2 K. */
  "stored-below-transition",
  /** Raised by: a strength that is asked for. States: the product. Figure: its strength by the trials, or its yield stress. Limit: at least the strength asked for. */
  "gel-strength",
  /** Raised by: bubbles that are asked about in a melt. States: some stretch in which the melt stands. Figure: how far a bubble rises. Limit: at least the depth of the melt. */
  "air-leaves",
  /** Raised by: a step that de-aerates. States: the step. Figure: width of the bubbles under its pressure. Limit: wider than the largest that the gel holds. */
  "air-is-released",
  /** Raised by: a step that de-aerates. States: the step. Figure: time until the bubbles have risen through the gel. Limit: at most the time of the step. */
  "air-has-time",
  /** Raised by: a vacuum over the melt. States: the vacuum. Figure: height of the foam. Limit: at most the rim. */
  "vacuum-foam",
  /** Raised by: a vacuum, of the process or of a step that de-aerates, over volatile materials or water. States: the vacuum. Figure: its pressure. Limit: at least the pressure at which the material boils. */
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
export const practiceCodes = ["iso-29621", "capped-near-the-room", "moved-below-setting"] as const;

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
