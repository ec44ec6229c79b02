import {
  insideCoefficientFunction,
  jacketCoefficient,
  jacketedWall,
  stirredCorrelations,
  wallTemperature,
} from "../heat/index.js";
import type { Charge } from "./charge.js";
import type { AssumptionCode } from "./codes.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import { stirrerOf, viscosityAtStirrer } from "./stirred.js";
import { by, stated, unknown } from "./unknown.js";

/** How heat passes between the charge and a wall. */
export interface Inside {
  /** Coefficient [W/(m²·K)] at the temperatures of charge and wall [°C]. */
  readonly at: (temperatureBulk: number, temperatureWall: number) => number;
  /** The same where a wall is judged: a correlation counts at three quarters of its value. */
  readonly judgedAt: (temperatureBulk: number, temperatureWall: number) => number;
  /** One figure that holds at all temperatures, if one was stated [W/(m²·K)]. */
  readonly stated?: number;
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

/** Correlations for stirred walls hold to about a quarter of their value, so a wall is judged at three quarters: common practice, no source. */
const judgedShare = 0.75;

interface StatedWall {
  readonly coefficient?: number | undefined;
  readonly source?: string | undefined;
}

/** The coefficient at a wall: as stated, else by the correlation for the stirrer, from one temperature of the charge to another. */
export function insideOf(
  charge: Charge,
  { coefficient: given, source }: StatedWall,
  [from, to]: readonly [number, number],
  direction: "heating" | "cooling",
): Inside {
  if (given !== undefined)
    return {
      at: () => given,
      judgedAt: () => given,
      stated: given,
      basis: [{ kind: "stated", key: "vessel-heated-wall", ...(source !== undefined && { source }) }],
      assumptions: [],
    };
  const { vessel } = charge.job;
  const stirrer = stirrerOf(charge.job);
  const { kind } = stirrer;
  if (kind === "other" || kind === "disperser disc" || kind === "rotor-stator")
    return unknown("no-correlation", { law: "stirred-wall", of: kind });
  const speed = stated(stirrer.speed, "stirrer-speed", { of: kind });
  const readings = charge.readings(direction);
  const viscosity = viscosityAtStirrer(readings, stirrer, speed);
  const middle = (from + to) / 2;
  const properties = {
    density: charge.density(middle),
    conductivity: charge.conductivity(middle),
    specificHeat: charge.specificHeat(middle),
  };
  return by("stirred-wall", () => {
    const at = insideCoefficientFunction({
      correlation: stirredCorrelations[kind],
      vessel: { diameter: vessel.diameter },
      impeller: { diameter: stirrer.diameter },
      speed,
      ...properties,
      viscosity,
    });
    // The Reynolds number rises with warmth: what holds at both ends holds between them.
    at(from, from);
    at(to, to);
    const beyond = Math.min(from, to) < readings.temperatureMin || Math.max(from, to) > readings.temperatureMax;
    return {
      at,
      judgedAt: (bulk, other) => judgedShare * at(bulk, other),
      basis: [
        { kind: "law", key: "stirred-wall", of: kind },
        { kind: "reading", key: "bench-viscosities", source: charge.job.bench.source },
      ],
      assumptions: ["three-quarters-of-the-correlation", ...(beyond ? (["beyond-readings"] as const) : [])],
    };
  });
}

/** The heated wall at its hottest in a step that heats from one temperature of the charge to another [°C]: as much hotter than the charge as what the heater gives needs to pass it, and no hotter than the heater. */
export function hottestWall(
  charge: Charge,
  start: number,
  end: number,
): { readonly temperature: number; readonly inside: Inside } {
  const { heater: described, heatedWall } = charge.job.vessel;
  const heater = stated(described, "vessel-heater", { of: charge.job.vessel.name });
  const wall = stated(heatedWall, "vessel-heated-wall", { of: charge.job.vessel.name });
  const inside = insideOf(charge, wall, [end, end], "heating");
  const at = (bulk: number): number =>
    Math.min(
      heater.temperatureMax ?? Number.MAX_VALUE,
      wallTemperature({
        temperatureBulk: bulk,
        heatFlow: heater.power,
        area: wall.area,
        heatTransferCoefficient: inside.stated ?? ((other) => inside.judgedAt(bulk, other)),
      }),
    );
  // A thick charge keeps its wall hot: the wall is looked at where the viscosity was read, too.
  const { law } = inside.stated === undefined ? charge.readings("heating") : { law: undefined };
  const read = law?.law === "readings" ? law.points.map((point) => point.temperature) : [];
  const between = read.filter((bulk) => bulk > start && bulk < end);
  return by("wall-temperature", () => ({ temperature: Math.max(at(end), ...between.map(at)), inside }));
}

/** What a jacket conducts over the whole wall [W/K]: one figure, or a function of the charge's temperature [°C]. */
export interface JacketConducts {
  readonly conductance: number | ((temperature: number) => number);
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

/** The jacket of a job. */
export function jacketOf({ vessel }: Job): NonNullable<Job["vessel"]["jacket"]> {
  return stated(vessel.jacket, "vessel-jacket", { of: vessel.name });
}

/** The conductance of the jacket as stated, else from the coefficients on both sides of its wall. */
export function jacketConducts(charge: Charge, between: readonly [number, number]): JacketConducts {
  const jacket = jacketOf(charge.job);
  const { area, outsideCoefficient, coolant, insideCoefficient, source } = jacket;
  if (jacket.conductance !== undefined)
    return {
      conductance: jacket.conductance,
      basis: [{ kind: "stated", key: "vessel-jacket-conductance" }],
      assumptions: [],
    };
  const wetted = stated(area, "vessel-jacket-area");
  const outside = stated(outsideCoefficient, "vessel-jacket-conductance");
  const inside = insideOf(charge, { coefficient: insideCoefficient, source }, between, "cooling");
  const [warmest, coolest] = [Math.max(...between), Math.min(...between)];
  const overallAt = (at: number): number => {
    // The segment looks for its limit beyond its end, where the charge would be too thick for any correlation.
    const bulk = Math.min(warmest, Math.max(coolest, at));
    return (
      wetted *
      jacketedWall({
        temperatureBulk: bulk,
        temperatureJacket: coolant,
        heatTransferCoefficient: inside.stated ?? ((other) => inside.at(bulk, other)),
        heatTransferCoefficientJacket: outside,
      }).heatTransferCoefficientOverall
    );
  };
  const { basis, assumptions } = inside;
  return { conductance: inside.stated === undefined ? overallAt : overallAt(between[0]), basis, assumptions };
}

/** The coolest wall of a jacketed charge at one temperature: by the inlet, where the coolant is coldest. */
export interface ColdWall {
  /** [°C]. */
  readonly temperature: number;
  readonly inside: Inside;
  /** From the inner face of the wall to the coolant [W/(m²·K)]. */
  readonly outside: number;
}

/** The wall by the coolant's inlet. */
export function coldWall(charge: Charge, temperature: number): ColdWall {
  const jacket = jacketOf(charge.job);
  const { insideCoefficient: coefficient, source, conductance } = jacket;
  const area = stated(jacket.area, "vessel-jacket-area");
  const inside = insideOf(charge, { coefficient, source }, [temperature, temperature], "cooling");
  return by("stirred-wall", () => {
    const heatTransferCoefficient = inside.at(temperature, temperature);
    const outside =
      jacket.outsideCoefficient ??
      jacketCoefficient({
        conductance: stated(conductance, "vessel-jacket-conductance"),
        area,
        heatTransferCoefficient,
      });
    const { temperatureWall } = jacketedWall({
      temperatureBulk: temperature,
      temperatureJacket: jacket.coolant,
      heatTransferCoefficient: inside.stated ?? ((at) => inside.judgedAt(temperature, at)),
      heatTransferCoefficientJacket: outside,
    });
    return { temperature: temperatureWall, inside, outside };
  });
}
