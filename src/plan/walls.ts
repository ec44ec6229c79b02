import {
  insideCoefficientBand,
  insideCoefficientFunction,
  jacketCoefficient,
  jacketedWall,
  stirredCorrelations,
  wallTemperature,
} from "../heat/index.js";
import type { Charge } from "./charge.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import { stirrerOf, viscosityAtStirrer } from "./stirrer.js";
import { along, by, otherwise, remembered, stated, unknown } from "./unknown.js";

/** An end of how sure a coefficient is, or its best value. */
export type End = "min" | "value" | "max";

/** How heat passes between the charge and a wall. */
export interface Inside {
  /** Coefficient [W/(m²·K)] at the temperatures of charge and wall [°C]; beyond the readings as thick as where they end. */
  readonly at: (temperatureBulk: number, temperatureWall: number, end?: End) => number;
  /** One figure that holds at all temperatures, if one was stated [W/(m²·K)]. */
  readonly stated?: number;
  /** Between which temperatures the viscosity was read [°C]. */
  readonly read: { readonly min: number; readonly max: number };
  readonly basis: readonly Basis[];
  readonly assumptions: readonly AssumptionCode[];
}

/** A wall between two ends [°C], of which `null` is open; without a value where it is beyond the viscosity readings. */
export interface WallEnds {
  readonly min: number;
  readonly max: number | null;
  readonly value?: number;
  readonly inside: Inside;
}

/** Of a wall beyond the readings only a bound is known: it counts as thick as where they end. */
export const atReadingsEnd: AssumptionCode = "wall-as-thick-as-read";

const anywhere = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };

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
      stated: given,
      read: anywhere,
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
  const { temperatureMin: min, temperatureMax: max } = readings;
  const read = (temperature: number): number => Math.min(max, Math.max(min, temperature));
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
      // No coefficient rests on a viscosity beyond the readings.
      viscosity: (temperature) => viscosity(read(temperature)),
    });
    // The Reynolds number rises with warmth: what holds at both ends holds between them.
    at(from, from);
    at(to, to);
    const factors: Readonly<Record<End, number>> = { ...insideCoefficientBand, value: 1 };
    return {
      at: (bulk, wall, end = "value") => factors[end] * at(bulk, wall),
      read: { min, max },
      basis: [
        { kind: "law", key: "stirred-wall", of: kind },
        { kind: "reading", key: "bench-viscosities", source: charge.job.bench.source },
      ],
      assumptions: read(from) === from && read(to) === to ? [] : [atReadingsEnd],
    };
  });
}

/** The coefficient towards any wall beside a charge at one temperature, at one end of how sure it is. */
export function beside(inside: Inside, bulk: number, end: End): number | ((wall: number) => number) {
  return inside.stated ?? ((wall) => inside.at(bulk, wall, end));
}

/**
 * The heated wall at its hottest in a step that heats from one temperature of the charge to another [°C]: as much hotter
 * than the charge as what the heater gives needs to pass it, and no hotter than the heater. Beyond the readings it is at
 * least as hot as they go, and the charge there is thinner, which keeps it below what their end lets expect.
 */
export function hottestWall(charge: Charge, start: number, end: number): WallEnds {
  return hottestAlong(charge)(start)(end);
}

const hottestAlong = remembered((charge: Charge) =>
  along((start) => along((end) => hottestBetween(charge, start, end))),
);

function hottestBetween(charge: Charge, start: number, end: number): WallEnds {
  const { heater: described, heatedWall } = charge.job.vessel;
  const heater = stated(described, "vessel-heater", { of: charge.job.vessel.name });
  const wall = stated(heatedWall, "vessel-heated-wall", { of: charge.job.vessel.name });
  const inside = insideOf(charge, wall, [end, end], "heating");
  const { temperatureMax: hottest = Number.MAX_VALUE } = heater;
  const at = (bulk: number, sure: End): number =>
    Math.min(
      hottest,
      wallTemperature({
        temperatureBulk: bulk,
        heatFlow: heater.power,
        area: wall.area,
        heatTransferCoefficient: beside(inside, bulk, sure),
      }),
    );
  // A thick charge keeps its wall hot: the wall is looked at where the viscosity was read, too.
  const { law } = inside.stated === undefined ? charge.readings("heating") : { law: undefined };
  const points = law?.law === "readings" ? law.points.map((point) => point.temperature) : [];
  const bulks = [end, ...points.filter((bulk) => bulk > start && bulk < end)];
  const { read } = inside;
  return by("wall-temperature", () => {
    const [min, value, max] = (["max", "value", "min"] as const).map((sure) =>
      Math.max(...bulks.map((bulk) => at(bulk, sure))),
    ) as [number, number, number];
    const coolest = min > read.max ? Math.max(end, read.max) : min;
    const isRead = value <= read.max && end >= read.min;
    // A charge that is thicker than any reading passes less than the thickest that was read.
    const open = end < read.min && hottest === Number.MAX_VALUE;
    return {
      min: Math.min(hottest, coolest),
      max: open ? null : end < read.min ? hottest : max,
      ...(isRead && { value }),
      inside: isRead ? inside : assuming(inside),
    };
  });
}

function assuming(inside: Inside): Inside {
  return { ...inside, assumptions: [atReadingsEnd] };
}

/** The jacket of a job. */
export function jacketOf({ vessel }: Job): NonNullable<Job["vessel"]["jacket"]> {
  return stated(vessel.jacket, "vessel-jacket", { of: vessel.name });
}

/**
 * The wall by the coolant's inlet, where it is coldest. Beyond the readings the charge there is thicker than their end,
 * so that the wall is cooler than that lets expect, and no colder than the coolant.
 */
export function coldWall(charge: Charge, temperature: number): WallEnds {
  return coldAlong(charge)(temperature);
}

const coldAlong = remembered((charge: Charge) => along((temperature) => coldAt(charge, temperature)));

function coldAt(charge: Charge, temperature: number): WallEnds {
  const jacket = jacketOf(charge.job);
  const { insideCoefficient: coefficient, source, conductance, outsideCoefficient, coolant } = jacket;
  const area = stated(jacket.area, "vessel-jacket-area");
  const inside = insideOf(charge, { coefficient, source }, [temperature, temperature], "cooling");
  const at = (sure: End): number => {
    const outside =
      outsideCoefficient ??
      jacketCoefficient({
        conductance: stated(conductance, "vessel-jacket-conductance"),
        area,
        heatTransferCoefficient: inside.at(temperature, temperature, sure),
      });
    return jacketedWall({
      temperatureBulk: temperature,
      temperatureJacket: coolant,
      heatTransferCoefficient: beside(inside, temperature, sure),
      heatTransferCoefficientJacket: outside,
    }).temperatureWall;
  };
  return by("stirred-wall", () => {
    const value = at("value");
    const isRead = (wall: number): boolean => wall >= inside.read.min;
    // What was measured through the jacket may be more than the lower end of the correlation passes.
    const coldest = otherwise(
      () => by("stirred-wall", () => at("min")),
      () => Number.NEGATIVE_INFINITY,
    );
    return {
      min: isRead(coldest) ? Math.max(coolant, coldest) : coolant,
      max: at("max"),
      ...(isRead(value) && { value }),
      inside: isRead(value) ? inside : assuming(inside),
    };
  });
}
