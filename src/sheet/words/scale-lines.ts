import type { Say } from "./types.js";

/** Words of the table that sets plans of one formula at several scales side by side. Times in s. */
export const scaleLines = {
  /** What each row is, in the order of the table. */
  heads: {
    mass: "charge of a lot",
    shareTaken: "taken by the process",
    dose: "gel former in the product",
    costPerKilogram: "materials of a kilogram delivered",
    surfaceToVolume: "surface to volume",
    durationHeating: "heating",
    durationCooling: "cooling",
    durationCoolingByRule: "cooling, by the cube-root rule from the first",
    durationToSet: "from the last charge until it sets",
    durationMargin: "to spare once the packs are full",
    additions: "additions of oil",
    massFirstAddition: "first addition",
    volumeFractionOil: "oil by volume in the end",
    durationAdding: "until all of it is taken up",
    temperatureMax: "warmest by stirring",
    tipSpeed: "tip speed where the stirrer works hardest",
    shearRate: "mean shear rate there",
    power: "power there",
    torque: "torque there",
  },
  setsBefore: ({ duration }: { readonly duration: number }, say: Say): string =>
    `none: it sets ${say.duration(duration)} before`,
  windowOf: ({ material }: { readonly material: string }): string => `when to add ${material}`,
  window: (of: { readonly temperatureMax: number; readonly temperatureMin: number }, say: Say): string =>
    of.temperatureMin > of.temperatureMax
      ? "at no temperature"
      : `${say.celsius(of.temperatureMax)} down to ${say.celsius(of.temperatureMin)}`,
  notAsked: (): string => "not asked",
  field: ({ path }: { readonly path: string }): string => `stated: ${path}`,
  notStated: (): string => "not stated",
  stream: (): string => "none, a stream",
};
