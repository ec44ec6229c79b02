import type { Words } from "./types.js";

/** What is assumed in a figure, as a clause. */
export const assumptions: Words["assumptions"] = {
  "heat-of-stirring-left-out": "the heat of stirring is left out, so the charge may be warmer",
  "heat-of-stirring-up-to-the-motor": "stirring warms the charge by no more than its motor can",
  "heat-loss-left-out": "no heat loss to the room is counted, so the charge may be cooler",
  "bottom-taken-as-flat": "the bottom of the vessel is taken as flat",
  "vessel-wall-left-out": "the vessel's wall is left out of the heat balance",
  "heat-of-melting-left-out": "no heat of melting is stated for the gel former, so heating may take longer",
  "coolant-as-at-its-inlet":
    "the coolant is taken to stay at its inlet temperature all along the jacket, so cooling may take longer",
  "vessel-full-while-filling":
    "the vessel counts as full until the last pack; what is left in it changes its temperature faster",
  "no-loss-while-charging": "no heat loss is counted while a phase is charged",
  "beyond-readings": "readings are extrapolated beyond their range",
  "thickness-of-the-room": "the gel is taken to be as thick as the bench measured at room temperature",
  "latent-heat-of-setting-left-out": "the latent heat of setting is left out",
  "wall-as-thick-as-read":
    "at a wall beyond the viscosity readings the charge is taken to be as thick as where they end, which gives a bound",
  "yield-stress-alone": "only the yield stress is known, so the stirrer may move more of the gel",
  "expansion-up-to-the-usual": "materials without a stated expansion are taken to expand by 0 to 0.12 % per kelvin",
  "droplets-packed-closer-than-seen":
    "the droplets are packed closer than in any published measurement of breakup in shear",
  "viscosity-shifted-with-setting":
    "the viscosity of another composition is shifted with the setting temperature, so the melt may be thicker or thinner",
};
