import { finite, fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import { vapourPressureAt } from "../laws/vapour-pressure.js";
import { vapourPressures } from "../laws/vapour-pressures.js";
import { integrate } from "../numeric/quadrature.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";
import { type ByTwoLaws, glycerinAtHumidity, laws, moles, water } from "./water-activity.js";

/** Gel former of glycerin and water that lies open in a room. */
export interface OpenGel {
  /** Glycerin [kg], above 0. */
  readonly massGlycerin: number;
  /** Water in the gel former at the start [kg], 0 or more. */
  readonly massWater: number;
  /** Open surface [m²], above 0. */
  readonly area: number;
  /** How fast air carries vapour to it [m/s], above 0: `stillAirCoefficient`, or a draught's. */
  readonly coefficient: number;
  /** Relative humidity of the room, above 0 and below 1. */
  readonly relativeHumidity: number;
  /** Temperature of air and gel [°C], 0.05 to 100. */
  readonly temperature: number;
  /** Norrish's K, -10 to 0; default -1.16 for glycerin. */
  readonly norrishConstant?: number;
}

/** The way of the water content towards rest with the room, by one law. */
interface Way {
  /** Water at the start, and at rest with the room [kg]. */
  readonly start: number;
  readonly rest: number;
  /** Time until u e-foldings of the distance from rest are gone [s]. */
  readonly durationTo: (folds: number) => number;
}

function waysOf(input: OpenGel): { readonly [Law in keyof ByTwoLaws]: Way } {
  const { massGlycerin, massWater, area, coefficient, relativeHumidity, temperature, norrishConstant } = record(
    input,
    "input",
  );
  const held = positive(massGlycerin, "massGlycerin");
  const start = notNegative(massWater, "massWater");
  if (!(positive(relativeHumidity, "relativeHumidity") < 1))
    refuse("input", "relativeHumidity", relativeHumidity, "below 1: in saturated air there is no end");
  const atRest = glycerinAtHumidity({
    relativeHumidity,
    temperature,
    ...(norrishConstant !== undefined && { norrishConstant }),
  });
  const saturated = vapourPressureAt({ law: vapourPressures.water, temperature });
  const conductance = positive(coefficient, "coefficient") * positive(area, "area");
  const max = result((conductance * water * saturated) / (gasConstant * (temperature + kelvin)), "uptake");
  if (max === 0) refuse("range", "coefficient", coefficient, "more: it is lost to rounding");
  const both = laws(temperature, norrishConstant);
  const wayBy = (law: keyof ByTwoLaws): Way => {
    const rest = result(held * (1 / atRest[law] - 1), "water at rest");
    const gap = rest - start;
    // Rounding may leave the activity at rest a hair beside the room's: the way is towards where it comes to rest.
    const level = both[law](moles(held / (held + rest)));
    // Near rest the distance falls by the same share in the same time; so in e-foldings the integrand stays level.
    const pace = (left: number): number => left / (max * (level - both[law](moles(held / (held + rest - left)))));
    const near = roundingFrom * (held + rest);
    const followed = Math.max(0, Math.log(Math.abs(gap) / near));
    const durationTo = (folds: number): number => {
      if (folds === 0 || gap === 0) return 0;
      const to = Math.min(folds, followed);
      const [time = 0] =
        to > 0
          ? integrate(
              [0, to],
              (u, values) => {
                values[0] = pace(gap * Math.exp(-u));
              },
              1,
              "duration",
            )
          : [];
      if (folds <= followed) return result(time, "duration");
      // So close to rest the difference of activities is lost to rounding: the pace goes on along a straight line.
      const left = gap * Math.exp(-followed);
      const last = pace(left);
      const atRest = 2 * last - pace(2 * left);
      const beyond = folds - followed;
      return result(time + atRest * beyond - (last - atRest) * Math.expm1(-beyond), "duration");
    };
    return { start, rest, durationTo };
  };
  return { norrish: wayBy("norrish"), wilson: wayBy("wilson") };
}

/** Distance from rest, as a share of all that is there, from which on the pace is taken as a straight line. */
const roundingFrom = 3e-5;

/** E-foldings from rest beyond which nothing can be told apart from rest. */
const foldsMax = 30;

/**
 * How soon an open gel takes up water from a room (or gives it off), until its gel former has a composition: the one at
 * which it hazes, softens, or has a water activity too high.
 *
 * $$\frac{\mathrm dm}{\mathrm dt} = A\,k\,\frac{M\,p_\mathrm{sat}(T)}{R\,T}\,\bigl(\mathrm{RH} - a_w(m)\bigr)$$
 *
 * The air is the only resistance, and the gel is uniform: right for a film on skin or in a dish, a lower limit for a
 * jar, where water also has to diffuse into the depth. Heat of the uptake is left out. At which
 * composition a gel hazes, `glycerinForIndexMatch` and its tolerance say.
 *
 * @param input - The gel, its surface and the room.
 * @param input.massFractionGlycerinEnd - Glycerin in glycerin and water at the end, above 0 and up to 1. This or the next.
 * @param input.waterActivityEnd - Water activity at the end, 0 or more and below 1.
 * @returns The time by each law of water activity [s].
 * @throws CalculationError `input` where an argument is out of range; `range` outside 0.05 to 100 °C; `unreachable` where
 *   the end does not lie between the start and rest with the room.
 * @source bergman-2011 section 6.7, convection mass transfer
 * @source makinen-2010 and zhang-2022, as for the water activity; poling-2001 the vapour pressure, second-hand
 * @example
 * ```ts
 * import { stillAirCoefficient, uptakeDuration } from "gelwright/gel";
 * const temperature = 25;
 * const film = { massGlycerin: 0.0085, massWater: 0.0015, area: 0.01, relativeHumidity: 0.6, temperature };
 * const coefficient = stillAirCoefficient({ gap: 0.015, temperature });
 * const { wilson } = uptakeDuration({ ...film, coefficient, massFractionGlycerinEnd: 0.8 });
 * Math.round(wilson / 60); // => 178
 * ```
 */
export function uptakeDuration(
  input: OpenGel & { readonly massFractionGlycerinEnd?: number; readonly waterActivityEnd?: number },
): ByTwoLaws {
  const { massGlycerin, massFractionGlycerinEnd, waterActivityEnd, temperature, norrishConstant } = record(
    input,
    "input",
    known.uptakeDuration,
  );
  if ((massFractionGlycerinEnd === undefined) === (waterActivityEnd === undefined))
    refuse(
      "input",
      "massFractionGlycerinEnd",
      waterActivityEnd === undefined ? "no end" : "two ends",
      "one of massFractionGlycerinEnd and waterActivityEnd",
    );
  const ways = waysOf(input);
  const ends =
    waterActivityEnd === undefined
      ? undefined
      : glycerinAtHumidity({
          relativeHumidity: waterActivityEnd,
          temperature,
          ...(norrishConstant !== undefined && { norrishConstant }),
        });
  const share =
    massFractionGlycerinEnd === undefined ? 1 : fraction(massFractionGlycerinEnd, "massFractionGlycerinEnd");
  const path = ends ? "waterActivityEnd" : "massFractionGlycerinEnd";
  const by = (law: keyof ByTwoLaws): number => {
    const { start, rest, durationTo } = ways[law];
    const end = massGlycerin * (1 / positive(ends ? ends[law] : share, path) - 1);
    const folds = Math.log((rest - start) / (rest - end));
    if (end === start) return 0;
    if (!(folds > 0 && folds <= foldsMax))
      refuse(
        "unreachable",
        path,
        waterActivityEnd ?? share,
        `an end between ${start} kg of water, at the start, and ${rest} kg, at rest with the room`,
      );
    return durationTo(folds);
  };
  return { norrish: by("norrish"), wilson: by("wilson") };
}

/**
 * The water that an open gel has taken up from a room after a time; below 0 the water that it has given off.
 *
 * $$\int_{m_0}^{m_0 + \Delta m} \frac{\mathrm dm}{\mathrm{RH} - a_w(m)} = A\,k\,\frac{M\,p_\mathrm{sat}(T)}{R\,T}\,t$$
 *
 * The inverse of `uptakeDuration`, with its limits; after a long time it comes to `waterTakenUp`.
 *
 * @param input - The gel, its surface and the room.
 * @param input.duration - Time that it has lain open [s], 0 or more.
 * @returns The water by each law of water activity [kg].
 * @throws CalculationError `input` where an argument is out of range; `range` outside 0.05 to 100 °C.
 * @source bergman-2011 section 6.7, convection mass transfer
 * @source makinen-2010 and zhang-2022, as for the water activity; poling-2001 the vapour pressure, second-hand
 * @example
 * ```ts
 * import { waterTakenUpAfter } from "gelwright/gel";
 * const film = { massGlycerin: 0.0085, massWater: 0.0015, area: 0.01, coefficient: 0.0018 };
 * waterTakenUpAfter({ ...film, relativeHumidity: 0.6, temperature: 25, duration: 0 }); // => { norrish: 0, wilson: 0 }
 * ```
 */
export function waterTakenUpAfter(input: OpenGel & { readonly duration: number }): ByTwoLaws {
  const { duration } = record(input, "input", known.waterTakenUpAfter);
  const time = notNegative(finite(duration, "duration"), "duration");
  const ways = waysOf(input);
  const by = (law: keyof ByTwoLaws): number => {
    const { start, rest, durationTo } = ways[law];
    if (time === 0 || rest === start) return 0;
    // So long after, what is missing to rest is lost to rounding.
    if (durationTo(foldsMax) <= time) return rest - start;
    const folds = root((u) => durationTo(u) - time, 0, foldsMax, "water taken up");
    return -(rest - start) * Math.expm1(-folds);
  };
  return { norrish: by("norrish"), wilson: by("wilson") };
}
