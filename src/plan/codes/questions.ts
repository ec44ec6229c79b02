/** Every question, by its id, with what raises it, the states that its answer is about, their figure and its limit, and the margin if there is one. The page of questions is made of these lines. */
export const questionIds = [
  /** Raised by: a gel former in the formula, or the outer phase of an emulsion. States: the formula. Figure: oil per gel former by mass; in an emulsion outer phase against all that goes into it, particles aside. Limit: the bench's working range, both ends, of its gel former in its oils. */
  "gel-former-ratio",
  /** Raised by: a claimed natural-origin content. States: the formula. Figure: the content by ISO 16128-2 between the bounds that unknown indices leave. Limit: at least the claim. */
  "natural-origin-claim",
  /** Raised by: every job. States: one lot. Figure: what arrives in the packs from the masses as they are weighed. Limit: at least what one lot is asked for. */
  "delivered",
  /** Raised by: every job. States: the whole lot at 20 °C, and what is in the vessel before and after every step until the packs are filled. Figure: its volume at its temperature. Limit: the working volume of the vessel: at most the largest in every state, at least the smallest for the whole lot. */
  "working-volume",
  /** Raised by: a material with a maximum share. States: the lot as it is weighed. Figure: mass of the material over that of the charge. Limit: at most the share that is stated. */
  "maximum-share",
  /** Raised by: a stock list. States: the batch as it is weighed. Figure: mass of the material in all lots. Limit: at most what there is in stock. */
  "stock-suffices",
  /** Raised by: a working day. States: the end of every step that somebody has to be there for. Figure: time since the first step, with both ends of what passes through walls; at least that long where what would lengthen a step was left out. Limit: at most the length of the day. */
  "lot-fits-the-day",
  /** Raised by: a heat-sensitive material other than an antioxidant, where anything is heated. States: every step with the material in the vessel. Figure: 1 on the heat, 0 off it. Limit: at most 0. */
  "heat-sensitive-off-the-heat",
  /** Raised by: a material with a maximum temperature. States: every step with the material in the vessel, in the charge and at the heated wall. Figure: the warmest that it gets, the wall within a quarter of the correlation; where the wall is not known, between the charge and the hottest that the heater gets, or the medium of a jacket that keeps it warm. Limit: at most the temperature that is stated. */
  "maximum-temperature",
  /** Raised by: every material in the vessel but water and particles, in the charge and at the heated wall. States: every step with the material at that place. Figure: the warmest that it gets, the wall within a quarter of the correlation; where the wall is not known, between the charge and the hottest that the heater gets, or the medium of a jacket that keeps it warm. Limit: at most the flash point. Margin: that of the process, else 30 K. */
  "flash-point",
  /** Raised by: a step that heats or cools with a time allowed for it. States: the step. Figure: how long it takes, the wall within a quarter of the correlation; at least that long where what would lengthen it was left out (wall, loss, stirring, the melting of a gel former, the flow of a coolant). Limit: at most the time allowed. */
  "done-in-time",
  /** Raised by: a step that heats or cools to a temperature, or holds off the heat at one. States: the step. Figure: the temperature that the vessel reaches by what heats or cools it. Limit: at least what the step asks for on heating, at most that on cooling. */
  "step-can-be-done",
  /** Raised by: a gel former that melts into the oil. States: some step with the gel former in the vessel, of those on the heat if there are any. Figure: temperature of the charge. Limit: at least the dissolving temperature at the dose; above the doses that were read, at least that of the largest. */
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
  /** Raised by: an emulsion with oil in it. States: every step that changes what is in it. Figure: volume of oil over that of oil and gel former, with the oil weighed as heavy and the gel former as light as the weighing tolerance lets them be, and the oil as wide as an expansion that is not stated lets it be. Limit: at most the oil fraction at which trials inverted. Margin: that of the process, else 1 % by volume. */
  "maximum-oil-fraction",
  /** Raised by: a phase of oil that goes into an emulsion, by whatever step. States: every addition; of a phase without a schedule its equal additions, or all of it at once. Figure: mass of the addition over what is in the vessel. Limit: at most the largest share that the bench took up at once at that oil fraction. */
  "additions-within-share",
  /** Raised by: an emulsion with oil in it. States: the finished gel. Figure: mass of the surfactant's active part. Limit: at least what covers the droplets, as measured or between the ends of their breakup in shear, and of an expansion that is not stated. */
  "surfactant-covers-droplets",
  /** Raised by: an emulsion with oil in it. States: the finished gel at the room's temperature, and at both ends of the temperatures at which it is used if they are stated. Figure: difference of the refractive indices of oil and gel former, within 0.0006 where that of the gel former is not measured, and within what an expansion that is not stated moves it. Limit: at most the difference that was clear enough at the bench with that oil; with more oil at least that, with less no more. */
  "clarity-match",
  /** Raised by: a step that matches clarity in an emulsion with oil in it. States: the step. Figure: difference of the refractive indices at the temperature of the step, likewise; where no loss or no wall is stated, over all temperatures that the gel may have. Limit: on the same side of what the bench allows as in the room. */
  "clarity-while-warm",
  /** Raised by: water in the outer phase of an emulsion. States: the finished gel. Figure: water activity as measured, else by two laws. Limit: below 0.75 (ISO 29621, second-hand). Margin: 1e-9, so that the limit itself is not met. */
  "water-activity",
  /** Raised by: a step that stirs a charge that has not set. States: every stirred state of the step. Figure: time to blend, by the correlation with its band in its range, else by the revolutions that were counted; without baffles at least as long; none where gel stands still. Limit: at most the time of the step. */
  "blended",
  /** Raised by: a step that stirs an emulsion, or a melt that may have set; not a stirrer that is moved by hand. States: every stirred state of the step. Figure: how wide the stirrer moves the gel, at both ends of its power, its shear constant and the height of a cavern. Limit: at least the diameter of the vessel. */
  "gel-moves-at-wall",
  /** Raised by: as whether it moves at the wall. States: every stirred state of the step. Figure: how high the stirrer moves the gel, likewise. Limit: at least the level of the charge. */
  "gel-moves-at-surface",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: power at the shaft, at both ends of the power and the shear constant that are published of the stirrer. Limit: at most the motor's power at the shaft. Margin: a fifth of it, a quarter above what is needed. */
  "motor-power",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: torque at the shaft, likewise. Limit: at most the motor's torque at that speed, less a fifth; by its drive, or between both drives. */
  "motor-torque",
  /** Raised by: a stirrer that turns; one that follows the wall only with a cover asked for. States: every stirred state. Figure: level of the charge. Limit: at least the upper edge of the stirrer and the cover asked for. */
  "stirrer-covered",
  /** Raised by: a stirrer that turns; one that follows the wall only with a cover asked for. States: the vessel. Figure: the smallest working volume that is stated. Limit: at least the volume that covers the stirrer. */
  "minimum-volume",
  /** Raised by: a stirrer that turns. States: every stirred state. Figure: depth of the vortex: none where the flow creeps at both ends of the shear constant, else from 0 to the deepest that there could be. Limit: at most the charge above the stirrer. */
  "no-air-down-the-vortex",
  /** Raised by: particles that go into a melt. States: every time that they do. Figure: temperature of the melt before, or warmer where the wall or the heat of stirring was left out. Limit: the window in which they neither sink too far, by the same ways through vessel and packs as they settle, nor tear the gel; open below where nothing says how thick it can be stirred, and above where the way in the pack is not known, or the melt may stay warm longer. */
  "particles-go-in",
  /** Raised by: particles that go into a melt. States: the first pack and the last, of every time that they go in. Figure: how far the largest sink until the gel has set, no further than vessel and pack are deep; at least so far where the wall or the heat of stirring was left out. Limit: at most what the bench allows. */
  "particles-settle",
  /** Raised by: particles. States: each material of them. Figure: yield stress of the set gel. Limit: at least what holds them, between the figures that are published. */
  "particles-stay-suspended",
  /** Raised by: a rest of packs of a melt. States: the first pack and the last. Figure: time from the end of filling until the centre has set, up to that of a pack filled as warm as it may be, with all heat of melting given off as it sets; no upper end where a gel former does not state how it melts. Limit: at most the rest. */
  "set-at-centre",
  /** Raised by: a label that states how much is in a pack, and a fill that is stated. States: the pack. Figure: the fill. Limit: at least the target by the rules of average quantity. */
  "fill-by-the-rules",
  /** Raised by: a label that states how much is in a pack. States: the first pack and the last. Figure: volume of the largest fill at the temperature of filling, or at the warmest that it may be. Limit: at most the brim capacity. */
  "fits-the-brim",
  /** Raised by: a pack that states the hottest product which it stands. States: the first pack and the last. Figure: temperature of the product in the vessel; where the wall was left out, up to the last that was sure. Limit: at most the temperature that is stated. */
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
  /** Raised by: bubbles that are asked about in a melt. States: some stretch in which the melt stands. Figure: how far a bubble rises. Limit: at least the depth of the melt, on a flat bottom and in a bowl where none is stated. */
  "air-leaves",
  /** Raised by: a step that de-aerates. States: the step. Figure: width of the bubbles under its pressure. Limit: wider than the largest that the gel holds. */
  "air-is-released",
  /** Raised by: a step that de-aerates. States: the step. Figure: time until the bubbles have risen through the gel, likewise. Limit: at most the time of the step. */
  "air-has-time",
  /** Raised by: a vacuum over the melt. States: the vacuum. Figure: height of the foam, likewise. Limit: at most the rim. */
  "vacuum-foam",
  /** Raised by: a vacuum, of the process or of a step that de-aerates, over volatile materials or water. States: the vacuum. Figure: its pressure. Limit: at least the pressure at which the material boils, at the warmest that the charge may be. */
  "vacuum-boils",
] as const;

/** A question that a plan may answer. */
export type QuestionId = (typeof questionIds)[number];
