import { finite, positive, record, refuse, result, show, temperature } from "../guards.js";
import { type AirProperties, airAt } from "./air.js";
import { extending } from "./beyond.js";
import { gravity } from "./gravity.js";
import type { ConvectionLoss } from "./heat-loss-law.js";
import * as known from "./known.js";
import { curvature, horizontal, horizontalRange, ranged, vertical, verticalRange } from "./nusselt.js";

/** Heat lost [W] where a surface is `excess` [K] warmer than the room at `ambient` [°C]. */
export type Loss = (excess: number, ambient: number) => number;

/** The properties, if all are above zero. */
function checkAir(air: AirProperties, path: string): AirProperties {
  const { conductivity, kinematicViscosity, prandtl } = record(air, path, known.air);
  positive(conductivity, `${path}.conductivity`);
  positive(kinematicViscosity, `${path}.kinematicViscosity`);
  positive(prandtl, `${path}.prandtl`);
  return air;
}

function rayleigh(excess: number, film: number, length: number, air: AirProperties): number {
  const perViscosity = length / air.kinematicViscosity;
  return ((gravity * Math.abs(excess)) / (film + 273.15)) * length * perViscosity * perViscosity * air.prandtl;
}

/** Checks the law; `extended` overrules what it says of its range. */
export function compileConvection(law: ConvectionLoss, path: string, extended: boolean): Loss {
  const area = positive(law.area, `${path}.area`);
  const air = law.air === undefined ? undefined : checkAir(law.air, `${path}.air`);
  const free = extending(law.beyond) || extended;
  const upright = law.surface === "vertical";
  if (!upright && law.surface !== "facing up" && law.surface !== "facing down")
    refuse("input", `${path}.surface`, show((law as { surface: unknown }).surface), '"vertical" or "facing …"');
  const length = upright ? positive(law.height, `${path}.height`) : area / positive(law.perimeter, `${path}.perimeter`);
  const slenderness =
    upright && law.diameter !== undefined ? length / positive(law.diameter, `${path}.diameter`) : undefined;
  return (excess, ambient) => {
    if (excess === 0) return 0;
    const film = ambient + excess / 2;
    const gas = air ?? airAt(film, 101325);
    const { conductivity, prandtl } = gas;
    const number = rayleigh(excess, film, length, gas);
    let nusselt: number;
    if (upright) {
      nusselt = vertical(ranged(number, verticalRange, free), prandtl);
      if (slenderness !== undefined) nusselt *= curvature(number, prandtl, slenderness);
    } else {
      const facing = (law.surface === "facing up") === excess > 0 ? "up" : "down";
      nusselt = horizontal(ranged(number, horizontalRange[facing], free), facing);
    }
    return ((nusselt * conductivity) / length) * area * excess;
  };
}

/**
 * The Rayleigh number of a surface in air: how strongly natural convection stirs.
 *
 * $$\mathrm{Ra} = \frac{g\,|T_\mathrm{surface} - T_\mathrm{ambient}|\,L^3}{T_\mathrm{film}\,\nu^2}\,\mathrm{Pr} \qquad T_\mathrm{film} = \frac{T_\mathrm{surface} + T_\mathrm{ambient}}{2}\;\text{in kelvin}$$
 *
 * @param input.temperatureSurface - Temperature of the surface [°C].
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.length - Height of a wall, or area over perimeter of a horizontal surface [m], above 0.
 * @param input.air - The air as it is at the surface; left out: dry air at 101325 Pa and the temperature of the film.
 * @returns The Rayleigh number, 0 or more.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where the film is outside −50
 *   to 150 °C and the air is left out.
 * @source bergman-2011 equation 9.25
 * @example
 * ```ts
 * import { rayleighNumber } from "gelwright/laws";
 * const air = { conductivity: 0.0272, kinematicViscosity: 1.75e-5, prandtl: 0.705 };
 * rayleighNumber({ temperatureSurface: 85, temperatureAmbient: 20, length: 0.6, air }); // => 973306716.8520105
 * ```
 */
export function rayleighNumber(input: {
  readonly temperatureSurface: number;
  readonly temperatureAmbient: number;
  readonly length: number;
  readonly air?: AirProperties;
}): number {
  const { temperatureSurface, temperatureAmbient, length, air } = record(input, "input", known.rayleighNumber);
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const excess = finite(temperature(temperatureSurface, "temperatureSurface") - ambient, "temperatureSurface");
  const film = ambient + excess / 2;
  const gas = air === undefined ? airAt(film, 101325) : checkAir(air, "air");
  return result(rayleigh(excess, film, positive(length, "length"), gas), "Rayleigh number");
}
