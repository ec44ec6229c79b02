import { list, positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/** What cooling is like at one scale. */
export interface CoolingAtScale {
  /** [kg]. */
  readonly mass: number;
  /** Volume of the filling [m³]. */
  readonly volume: number;
  /** Diameter of the filling [m]. */
  readonly diameter: number;
  /** Height of the filling [m]. */
  readonly height: number;
  /** Wall, bottom and surface together [m²]. */
  readonly area: number;
  /** Area to volume [1/m]. */
  readonly surfaceToVolume: number;
  /** From the start until the addition may go in [s]. */
  readonly durationToAddition: number;
  /** From then until it sets: the time there is to work in [s]. */
  readonly durationWorking: number;
}

/**
 * What changes from a beaker to a vessel of the same shape: surface to volume, time to cool, time to spare before it sets.
 *
 * $$V = \frac m\rho = \frac\pi4 D^2 H \qquad A = \pi D H + \frac\pi2 D^2 \qquad t = \frac{m c}{U A} \ln\frac{T_0 - T_\mathrm{amb}}{T_1 - T_\mathrm{amb}}$$
 *
 * The filling is an upright cylinder that loses heat on all sides with the same U, stirred, with a vessel of no heat
 * capacity of its own; then the times go as the cube root of the mass.
 *
 * @param input.masses - The scales [kg], each above 0; at least one.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.specificHeat - Specific heat [J/(kg·K)], above 0.
 * @param input.heightToDiameter - Height of the filling over its diameter, above 0.
 * @param input.heatTransferCoefficient - U to the room on all sides [W/(m²·K)], above 0.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureAddition - At which the addition may go in [°C], not above the start.
 * @param input.temperatureSetting - At which it sets [°C], not above that of the addition, and above the room.
 * @returns The figures at each scale, in the order of the masses.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the room is not colder than the setting temperature.
 * @source bergman-2011 section 5.1
 * @example
 * ```ts
 * import { coolingAtScales } from "gelwright/heat";
 * coolingAtScales({
 *   masses: [0.25, 40, 400],
 *   density: 900,
 *   specificHeat: 2100,
 *   heightToDiameter: 1,
 *   heatTransferCoefficient: 8,
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureAddition: 65,
 *   temperatureSetting: 58,
 * }).map(({ durationWorking }) => Math.round(durationWorking / 60)); // => [8,43,92]
 * ```
 */
export function coolingAtScales(input: {
  readonly masses: readonly number[];
  readonly density: number;
  readonly specificHeat: number;
  readonly heightToDiameter: number;
  readonly heatTransferCoefficient: number;
  readonly temperatureAmbient: number;
  readonly temperatureStart: number;
  readonly temperatureAddition: number;
  readonly temperatureSetting: number;
}): readonly CoolingAtScale[] {
  const { masses, temperatureAmbient, temperatureStart, temperatureAddition, temperatureSetting } = record(
    input,
    "input",
    known.coolingAtScales,
  );
  const density = positive(input.density, "density");
  const specificHeat = positive(input.specificHeat, "specificHeat");
  const slender = positive(input.heightToDiameter, "heightToDiameter");
  const through = positive(input.heatTransferCoefficient, "heatTransferCoefficient");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const start = temperature(temperatureStart, "temperatureStart");
  const addition = temperature(temperatureAddition, "temperatureAddition");
  const setting = temperature(temperatureSetting, "temperatureSetting");
  if (addition > start) refuse("input", "temperatureAddition", addition, `not above temperatureStart (${start} °C)`);
  if (setting > addition)
    refuse("input", "temperatureSetting", setting, `not above temperatureAddition (${addition} °C)`);
  if (ambient >= setting)
    refuse("unreachable", "temperatureSetting", setting, `above temperatureAmbient (${ambient} °C)`);
  const toAddition = Math.log1p((start - addition) / (addition - ambient));
  const working = Math.log1p((addition - setting) / (setting - ambient));
  return list(masses, "masses", 1).map((value, i) => {
    const mass = positive(value, `masses[${i}]`);
    const volume = mass / density;
    const diameter = Math.cbrt((4 * volume) / (Math.PI * slender));
    const height = slender * diameter;
    const area = Math.PI * diameter * (height + diameter / 2);
    const timeConstant = (mass * specificHeat) / (through * area);
    return {
      mass,
      volume: result(volume, "volume"),
      diameter: result(diameter, "diameter"),
      height: result(height, "height"),
      area: result(area, "area"),
      surfaceToVolume: result(area / volume, "surfaceToVolume"),
      durationToAddition: result(timeConstant * toAddition, "durationToAddition"),
      durationWorking: result(timeConstant * working, "durationWorking"),
    };
  });
}
