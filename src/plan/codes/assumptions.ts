/** What is taken for granted in a figure. One with a direction opens that end of the figure. */
export const assumptionCodes = [
  /** The heat of stirring is left out: the charge may be warmer. */
  "heat-of-stirring-left-out",
  /** The heat of stirring is not known: at most all that the motor gives warms the charge. */
  "heat-of-stirring-up-to-the-motor",
  /** No loss to the room is stated, and none is counted: the charge may be cooler. */
  "heat-loss-left-out",
  /** The bottom of the vessel is taken as flat. */
  "bottom-taken-as-flat",
  /** The vessel's wall is left out of a heat balance. */
  "vessel-wall-left-out",
  /** A gel former whose melting is not stated takes up no heat of melting: it takes longer to heat. */
  "heat-of-melting-left-out",
  /** The flow of a coolant is not stated, and it counts as cold as it enters all along the jacket: it takes longer to cool. */
  "coolant-as-at-its-inlet",
  /** The vessel counts as full until the last pack, though its level falls. */
  "vessel-full-while-filling",
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
