import { finite, list, notNegative, positive, record, refuse, result, show, temperature } from "../guards.js";
import type { Band } from "../laws/band.js";
import { type Beyond, extending } from "../laws/beyond.js";
import * as known from "./known.js";
import type { StirredCorrelation } from "./stirred-correlations.js";

/**
 * How sure a coefficient at a stirred wall is: a quarter either way, common practice, no source.
 *
 * The equations also hold factors of level and blade height, left out here: (T/H)^0.15 and the blades' height to 0.2,
 * as a public library restates them (free-fluids). With a level of 1.5 diameters the coefficient is 6 % lower, within
 * this band. That library lets a turbine's constant fall from 0.74 at Re 10 000 to 0.54 at 400: in that range the
 * coefficient may lie at the low end of the band and somewhat below.
 */
export const insideCoefficientBand: Band = {
  by: "factor",
  min: 0.75,
  max: 1.25,
  basis: "judgement",
  sources: ["penney-2004", "free-fluids"],
};

/** What heat transfer to a stirred batch rests on, apart from its viscosity. */
export interface StirredHeatTransfer {
  /** The ranges of the correlation, rising. */
  readonly correlation: StirredCorrelation;
  /** The vessel: its inner diameter [m], above 0. */
  readonly vessel: { readonly diameter: number };
  /** The impeller: its diameter [m], above 0 and not above that of the vessel. */
  readonly impeller: { readonly diameter: number };
  /** Speed of the impeller [rev/s], above 0. */
  readonly speed: number;
  /** Density of the batch [kg/m³], above 0. */
  readonly density: number;
  /** Specific heat of the batch [J/(kg·K)], above 0. */
  readonly specificHeat: number;
  /** Thermal conductivity of the batch [W/(m·K)], above 0. */
  readonly conductivity: number;
}

/** How well a stirred batch takes up or gives off heat at the wall, and the numbers it was found from. */
export interface InsideCoefficient {
  /** [W/(m²·K)]. */
  readonly heatTransferCoefficient: number;
  /** Nusselt number over the diameter of the vessel. */
  readonly nusselt: number;
  /** Reynolds number of the impeller. */
  readonly reynolds: number;
  /** Prandtl number of the batch. */
  readonly prandtl: number;
}

/**
 * The heat-transfer coefficient between a stirred batch and the wall of its vessel.
 *
 * $$\mathrm{Nu} = \frac{h D}{k} = C\,\mathrm{Re}^a\,\mathrm{Pr}^b \left(\frac{\mu}{\mu_\mathrm{wall}}\right)^m \qquad \mathrm{Re} = \frac{\rho N d^2}{\mu} \qquad \mathrm{Pr} = \frac{c\,\mu}{k}$$
 *
 * Such correlations hold to about a quarter of their value (`insideCoefficientBand`), common practice, no source; the
 * factor of blade height and level is left out. A gel thins under shear: give the viscosity at the shear rate of the
 * impeller. The correlation takes no account of a yield stress, or of gel that sets at the wall.
 *
 * @param input.correlation - Ranges of Reynolds number with their constants, as in `stirredCorrelations`, or your own.
 * @param input.vessel - The vessel: its inner diameter [m], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0 and not above that of the vessel.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.specificHeat - Specific heat [J/(kg·K)], above 0.
 * @param input.conductivity - Thermal conductivity [W/(m·K)], above 0.
 * @param input.viscosity - Viscosity in the batch [Pa·s], above 0.
 * @param input.viscosityWall - Viscosity at the temperature of the wall [Pa·s], above 0.
 * @param input.beyond - Outside the Reynolds numbers of the correlation: `"throw"` (default) or `"extend"` its nearest range.
 * @returns The coefficient [W/(m²·K)], and the Nusselt, Reynolds and Prandtl numbers.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` outside the Reynolds numbers of the correlation.
 * @source penney-2004 chapter 14.4 for the form
 * @example
 * ```ts
 * import { insideCoefficient, stirredCorrelations } from "gelwright/heat";
 * insideCoefficient({
 *   correlation: stirredCorrelations.anchor,
 *   vessel: { diameter: 0.4 },
 *   impeller: { diameter: 0.36 },
 *   speed: 1,
 *   density: 900,
 *   specificHeat: 2100,
 *   conductivity: 0.16,
 *   viscosity: 0.2,
 *   viscosityWall: 0.1,
 * }).heatTransferCoefficient; // => 135.8132937363967
 * ```
 */
export function insideCoefficient(
  input: StirredHeatTransfer & { readonly viscosity: number; readonly viscosityWall: number; readonly beyond?: Beyond },
): InsideCoefficient {
  const { viscosity, viscosityWall, beyond } = record(input, "input", known.insideCoefficient);
  return compileStirred(input, beyond)(positive(viscosity, "viscosity"), positive(viscosityWall, "viscosityWall"));
}

/**
 * The coefficient between a stirred batch and its wall as a function of both temperatures, its other arguments checked
 * once: for the wall's temperature, and for segments through a heated or cooled wall.
 *
 * $$h(T, T_\mathrm{wall}) = \frac kD\,C\,\mathrm{Re}^a\,\mathrm{Pr}^b \left(\frac{\mu(T)}{\mu(T_\mathrm{wall})}\right)^m$$
 *
 * The limits of `insideCoefficient` apply. Density, specific heat and conductivity are constants: use those at the
 * middle of the range.
 *
 * @param input - The stirred vessel as for `insideCoefficient`, and:
 * @param input.viscosity - Viscosity [Pa·s] at a temperature [°C], as `viscosityFunction` gives it.
 * @param input.beyond - Outside the Reynolds numbers of the correlation: `"throw"` (default) or `"extend"`.
 * @returns A function of the temperatures of batch and wall [°C] that gives the coefficient [W/(m²·K)]; it throws
 *   `range` outside the Reynolds numbers, and what the viscosity throws.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source penney-2004 chapter 14.4 for the form
 * @example
 * ```ts
 * import { insideCoefficientFunction, stirredCorrelations } from "gelwright/heat";
 * import { viscosityFunction } from "gelwright/laws";
 * const inside = insideCoefficientFunction({
 *   correlation: stirredCorrelations.anchor,
 *   vessel: { diameter: 0.4 },
 *   impeller: { diameter: 0.36 },
 *   speed: 1,
 *   density: 900,
 *   specificHeat: 2100,
 *   conductivity: 0.16,
 *   viscosity: viscosityFunction({ law: "andrade", factor: 1.3e-6, activationEnergy: 32000 }),
 * });
 * inside(70, 90); // => 171.28709217859438
 * ```
 */
export function insideCoefficientFunction(
  input: StirredHeatTransfer & { readonly viscosity: (temperature: number) => number; readonly beyond?: Beyond },
): (temperatureBulk: number, temperatureWall: number) => number {
  const { viscosity, beyond } = record(input, "input", known.insideCoefficientFunction);
  if (typeof viscosity !== "function")
    refuse("input", "viscosity", show(viscosity), "a function of temperature, as of viscosityFunction");
  const insideAt = compileStirred(input, beyond);
  return (temperatureBulk, temperatureWall) =>
    insideAt(
      positive(viscosity(temperature(temperatureBulk, "temperatureBulk")), "viscosity"),
      positive(viscosity(temperature(temperatureWall, "temperatureWall")), "viscosity"),
    ).heatTransferCoefficient;
}

/** The coefficient as a function of both viscosities, its other arguments checked. */
export function compileStirred(
  stirred: StirredHeatTransfer,
  beyond: Beyond | undefined,
): (viscosity: number, viscosityWall: number) => InsideCoefficient {
  const extended = extending(beyond);
  const ranges = list(stirred.correlation, "correlation", 1).map((one, i) => {
    const at = `correlation[${i}]`;
    const { coefficient, exponentReynolds, exponentPrandtl, exponentViscosity, reynoldsMin, reynoldsMax } = record(
      one,
      at,
      known.stirredRange,
    );
    return {
      coefficient: positive(coefficient, `${at}.coefficient`),
      exponentReynolds: finite(exponentReynolds, `${at}.exponentReynolds`),
      exponentPrandtl: finite(exponentPrandtl, `${at}.exponentPrandtl`),
      exponentViscosity: finite(exponentViscosity, `${at}.exponentViscosity`),
      min: notNegative(reynoldsMin, `${at}.reynoldsMin`),
      max: reynoldsMax === undefined ? Number.POSITIVE_INFINITY : positive(reynoldsMax, `${at}.reynoldsMax`),
    };
  });
  const diameter = positive(record(stirred.vessel, "vessel").diameter, "vessel.diameter");
  const impeller = positive(record(stirred.impeller, "impeller").diameter, "impeller.diameter");
  if (impeller > diameter) refuse("input", "impeller.diameter", impeller, `not above vessel.diameter (${diameter} m)`);
  const swirl = positive(stirred.density, "density") * positive(stirred.speed, "speed") * impeller * impeller;
  const conductivity = positive(stirred.conductivity, "conductivity");
  const specificHeat = positive(stirred.specificHeat, "specificHeat");
  const first = ranges[0] as (typeof ranges)[number];
  return (viscosity, viscosityWall) => {
    const reynolds = result(swirl / viscosity, "Reynolds number");
    const prandtl = result((specificHeat * viscosity) / conductivity, "Prandtl number");
    const chosen = ranges.reduce((last, next) => (reynolds >= next.min ? next : last), first);
    if (!extended && (reynolds < chosen.min || reynolds > chosen.max))
      refuse(
        "range",
        "Reynolds number",
        reynolds,
        `${chosen.min} to ${chosen.max}, as the correlation is known, or beyond: "extend"`,
      );
    const nusselt = result(
      chosen.coefficient *
        reynolds ** chosen.exponentReynolds *
        prandtl ** chosen.exponentPrandtl *
        (viscosity / viscosityWall) ** chosen.exponentViscosity,
      "Nusselt number",
    );
    return {
      heatTransferCoefficient: result((nusselt * conductivity) / diameter, "coefficient"),
      nusselt,
      reynolds,
      prandtl,
    };
  };
}
