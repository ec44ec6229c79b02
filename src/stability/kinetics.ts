import { refuse, result, show, variant } from "../guards.js";
import { arrheniusExponent } from "../laws/arrhenius.js";
import { gasConstant } from "../laws/compile-viscosity.js";
import type { Interval } from "../laws/interval.js";
import { positiveInterval, through } from "./interval.js";
import * as known from "./known.js";

/** How much faster a chemical change goes where it is warmer, with its doubt. */
export type AgeingKinetics =
  | {
      /** By an activation energy. */
      readonly law: "arrhenius";
      /** [J/mol], above 0; one number, or a value with its bounds. */
      readonly activationEnergy: number | Interval;
    }
  | {
      /** By a factor for each 10 K. */
      readonly law: "q10";
      /** Above 0; one number, or a value with its bounds. */
      readonly q10: number | Interval;
    };

/** How many times faster it goes at one temperature than at another [°C], with the bounds that the kinetics give. */
export function accelerationOf(kinetics: AgeingKinetics): (hot: number, reference: number) => Interval {
  variant(kinetics, "kinetics", "law", known.ageingKinetics);
  switch (kinetics.law) {
    case "arrhenius": {
      const energy = positiveInterval(kinetics.activationEnergy, "kinetics.activationEnergy");
      return (hot, reference) =>
        through(energy, (own) =>
          result(Math.exp(arrheniusExponent(own / gasConstant, hot, reference)), "acceleration"),
        );
    }
    case "q10": {
      const q10 = positiveInterval(kinetics.q10, "kinetics.q10");
      return (hot, reference) => through(q10, (own) => result(own ** ((hot - reference) / 10), "acceleration"));
    }
    default:
      return refuse("input", "kinetics.law", show((kinetics as { law: unknown }).law), '"arrhenius" or "q10"');
  }
}
