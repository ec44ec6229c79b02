import { insideCoefficientFunction, stirredCorrelations } from "../heat/index.js";
import { attempt } from "./attempt.js";
import { bulkProperties, specificHeatOf } from "./bulk-properties.js";
import type { Job, Readings, Wall } from "./job.js";
import { type Content, phasesOf } from "./moment.js";
import { readingsFor, viscosityAtStirrer } from "./viscosity.js";

/** How heat passes between the charge and a wall, and where that is from. */
export interface Inside {
  /** Coefficient [W/(m²·K)] at the temperatures of charge and wall [°C]. */
  readonly at: (temperatureBulk: number, temperatureWall: number) => number;
  /** The same where a wall is judged: a correlation counts for as little as it may be. */
  readonly judgedAt: (temperatureBulk: number, temperatureWall: number) => number;
  /** One figure that holds at all temperatures, where one was stated [W/(m²·K)]. */
  readonly stated?: number | undefined;
  readonly from: string;
}

/** Correlations for stirred walls hold to about a quarter of their value, so a wall is judged at three quarters of it: common practice, no source. */
const judgedShare = 0.75;

/** Which of the correlations goes with which kind of stirrer. */
const correlationOf = {
  anchor: "anchor",
  "helical ribbon": "helical ribbon",
  paddle: "paddle",
  propeller: "propeller",
  "disc turbine": "disc turbine",
  "flat-blade turbine": "flat-blade turbine",
  "pitched-blade turbine": "pitched-blade turbine",
  hydrofoil: "hydrofoil",
} as const;

/** The coefficient at a wall: as stated, else by the correlation for the stirrer, from one temperature of the charge to another; or what is missing for it. */
export function insideOf(
  { vessel, bench: { viscosities } }: Job,
  wall: Pick<Wall, "coefficient" | "source">,
  contents: readonly Content[],
  [from, to]: readonly [number, number],
  direction: Readings["direction"],
): Inside | string {
  const { coefficient: stated, source = "" } = wall;
  if (stated !== undefined) return { at: () => stated, judgedAt: () => stated, stated, from: source };
  const { stirrer } = vessel;
  if (!stirrer) return "neither the coefficient at the wall nor a stirrer is stated";
  const { kind } = stirrer;
  if (kind === "other" || kind === "disperser disc" || kind === "rotor-stator")
    return "there is no correlation for this kind of stirrer";
  const { speed } = stirrer;
  if (speed === undefined) return "no usual speed of the stirrer";
  const readings = readingsFor(viscosities, contents, direction);
  if (!readings) return `no viscosity readings on ${direction} of phases ${phasesOf(contents).join(" + ")} together`;
  const viscosity = viscosityAtStirrer(readings, stirrer, speed);
  if (typeof viscosity === "string") return viscosity;
  const middle = (from + to) / 2;
  const properties = bulkProperties(contents, middle);
  const specificHeat = specificHeatOf(contents, middle);
  if (typeof properties === "string") return properties;
  if (typeof specificHeat === "string") return specificHeat;
  return attempt(
    () => {
      const at = insideCoefficientFunction({
        correlation: stirredCorrelations[correlationOf[kind]],
        vessel,
        impeller: stirrer,
        speed,
        ...properties,
        specificHeat,
        viscosity,
      });
      // The Reynolds number rises with warmth: what holds at both ends holds between them.
      at(from, from);
      at(to, to);
      const beyond =
        Math.min(from, to) < readings.temperatureMin || Math.max(from, to) > readings.temperatureMax
          ? ", continued beyond its readings"
          : "";
      return {
        at,
        judgedAt: (bulk, other) => judgedShare * at(bulk, other),
        from: `correlation for the wall by a stirrer (${stirrer.kind}; ${stirrer.kind === "paddle" ? "Coker 2001" : "Penney 2004"}, read second-hand), viscosity at ${readings.shearRate}${readings.thinning ? ", carried to the stirrer's shear rate" : ""}${beyond}`,
      };
    },
    (refusal) => `outside the correlation for the stirrer, ${refusal.message}`,
  );
}
