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

/** What can be changed so that an answer becomes met. */
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
  "more-additions",
] as const;

/** What can be changed so that an answer becomes met. */
export type LeverCode = (typeof leverCodes)[number];
