import { convert, formatQuantity } from "../units/index.js";

/** Figures as the person at the kettle reads them. Three or four digits: more would promise what no bench can keep. */
export const say = {
  celsius: (temperature: number): string => `${temperature.toFixed(1)} °C`,
  kelvins: (difference: number): string => `${difference.toFixed(1)} K`,
  kilograms: (mass: number): string => formatQuantity(mass, "kg", { significantDigits: 4 }),
  litres: (volume: number): string => formatQuantity(convert(volume, "m³", "L"), "L", { significantDigits: 3 }),
  percent: (fraction: number): string => formatQuantity(convert(fraction, "kg/kg", "%"), "%", { significantDigits: 4 }),
  pascalSeconds: (viscosity: number): string => formatQuantity(viscosity, "Pa·s", { significantDigits: 3 }),
  millimetres: (length: number): string => formatQuantity(convert(length, "m", "mm"), "mm", { significantDigits: 3 }),
  /** Equal lots need not hold whole packs. */
  packs: (packs: number): string => `${Number.isInteger(packs) ? packs : `about ${packs.toFixed(1)}`} packs`,
  micrometres: (length: number): string => `${Number(convert(length, "m", "µm").toPrecision(2))} µm`,
  /** Minutes below two hours, hours from there on. */
  duration: (duration: number): string =>
    duration < 7200 ? `${Math.round(duration / 60)} min` : `${Number((duration / 3600).toPrecision(3))} h`,
  minutes: (duration: number): string => `${Math.round(duration / 60)} min`,
  watts: (power: number): string =>
    power < 1000
      ? formatQuantity(power, "W", { significantDigits: 3 })
      : formatQuantity(convert(power, "W", "kW"), "kW", { significantDigits: 3 }),
  wattsPerKelvin: (conductance: number): string => formatQuantity(conductance, "W/K", { significantDigits: 3 }),
  /** What follows an instruction, where the stirrer turns. */
  atSpeed: (speed: number | undefined): string =>
    speed === undefined ? "" : ` at ${Math.round(convert(speed, "rev/s", "rpm"))} rpm`,
  /** What follows a time that a factor was put on, from first to last. */
  times: (factor: { readonly first: number; readonly last: number } | undefined): string => {
    const [first, last] = [factor?.first ?? 1, factor?.last ?? 1].map((one) => Number(one.toPrecision(3)));
    if (first === last) return first === 1 ? "" : `, times ${first}`;
    return `, times ${first} at first and ${last} in the end`;
  },
  /** Places in a list that may be long. */
  places: (places: readonly string[]): string =>
    places.length > 4 ? `${places.slice(0, 3).join(", ")} and ${places.length - 3} more` : places.join(", "),
  /** How far a stirrer moves a gel, which may be further than there is vessel. */
  moved: (cavern: { readonly diameter: number; readonly reachesWall: boolean }, where?: string): string =>
    `${cavern.reachesWall ? "enough for " : ""}${say.millimetres(cavern.diameter)}${cavern.reachesWall ? "" : " moved"}${where === undefined ? "" : ` in ${where}`}`,
  number: (value: number): string => String(Number(value.toPrecision(2))),
  pascals: (pressure: number): string => formatQuantity(pressure, "Pa", { significantDigits: 3 }),
} as const;
