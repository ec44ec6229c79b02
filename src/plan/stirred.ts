import { type FlowCurve, viscosityBreakpoints } from "../laws/index.js";
import {
  type Cavern,
  cavern,
  powerBandOf,
  type StirredState,
  stirring,
  stirringPowerFunction,
} from "../mixing/index.js";
import type { AlongTemperature, Charge } from "./charge.js";
import type { Ends } from "./contents.js";
import type { Stirrer } from "./documents/vessel.js";
import type { Job } from "./job.js";
import { levelAt, levelsAt } from "./level.js";
import type { Readings } from "./readings.js";
import type { State, Turn } from "./state.js";
import { impellerOf, stirrerOf, vesselAround, viscosityAtStirrer } from "./stirrer.js";
import { by, remembered, unknown } from "./unknown.js";

/** A charge that is stirred. */
export interface Stirred extends StirredState {
  /** [rev/s]. */
  readonly speed: number;
  /** Density of the charge [kg/m³]. */
  readonly density: number;
  /** Of the charge above the lowest point of the vessel [m]. */
  readonly level: number;
  /** Of its flow curve [Pa]; undefined for one without. */
  readonly yieldStress?: number | undefined;
}

/** The temperature at which an emulsion's thickness was read is the room's; a melt has its own. */
export function temperatureOfStirring({ charge, temperature }: State): number {
  return charge.isEmulsion() ? charge.job.process.room : temperature();
}

/** Which way a melt goes while it is stirred, by which its readings are chosen. */
export function wayOf({ onHeat }: State): Readings["direction"] {
  return onHeat ? "heating" : "cooling";
}

/** The readings by which a melt is stirred, down to a temperature: thinner than its readings it takes next to nothing, thicker it might take any power. */
function readingsDownTo(charge: Charge, coolest: number, way: Readings["direction"]): Readings {
  const readings = charge.readings(way);
  const { temperatureMin: min, temperatureMax: max } = readings;
  if (coolest < min)
    unknown("outside-range", {
      law: "viscosity",
      quantity: "temperature",
      value: coolest,
      min,
      max,
      field: "bench-viscosities",
    });
  return readings;
}

/** How the charge flows at a stirrer: an emulsion by the oil in it, a melt by its temperature. */
function curveAt(
  charge: Charge,
  temperature: number,
  speed: number,
  way: Readings["direction"],
  stirrer: Stirrer,
): FlowCurve {
  if (charge.isEmulsion()) return charge.emulsionCurve();
  const readings = readingsDownTo(charge, temperature, way);
  return { law: "newton", viscosity: viscosityAtStirrer(readings, stirrer, speed)(temperature) };
}

/** What stirring comes to at a temperature and with a flow curve. */
export function stirredWith(
  charge: Charge,
  temperature: number,
  curve: FlowCurve,
  speed: number,
  stirrer: Stirrer = stirrerOf(charge.job),
  level: number = levelAt(charge, temperature),
): Stirred {
  const { job } = charge;
  const density = charge.density(temperature);
  const state = by(
    "power-number",
    () => stirring({ impeller: impellerOf(stirrer), vessel: vesselAround(job.vessel, level), density, curve, speed }),
    { field: "stirrer-power", of: stirrer.kind },
  );
  return { ...state, speed, level, density, yieldStress: "yieldStress" in curve ? curve.yieldStress : undefined };
}

/** What the stirrer does with a charge. */
export function stirredAt(
  charge: Charge,
  temperature: number,
  speed: number,
  way: Readings["direction"],
  stirrer: Stirrer = stirrerOf(charge.job),
  level?: number,
): Stirred {
  return stirredWith(charge, temperature, curveAt(charge, temperature, speed, way, stirrer), speed, stirrer, level);
}

/** What the stirrer does in a turn. */
export const stirredIn: (turn: Turn) => Stirred = remembered(({ state, speed }: Turn) =>
  stirredAt(state.charge, temperatureOfStirring(state), speed(), wayOf(state)),
);

/** Between which ends the torque lies, by how sure the power of the stirrer is [N·m]. */
export function torqueBand(
  { torque, reynolds, level }: Stirred,
  job: Job,
): { readonly min: number; readonly max: number } {
  const stirrer = stirrerOf(job);
  const band = by("power-number", () =>
    powerBandOf({ impeller: impellerOf(stirrer), vessel: vesselAround(job.vessel, level), reynolds }),
  );
  return { min: torque * band.min, max: torque * band.max };
}

/** Between which levels the charge of a turn stands [m]. */
export function levelsIn({ state }: Turn): Ends {
  return levelsAt(state.charge, temperatureOfStirring(state));
}

/** The level of the charge in a turn [m]. */
export function levelIn({ state }: Turn): number {
  return levelAt(state.charge, temperatureOfStirring(state));
}

/** The power of the stirrer [W] as a function of temperature [°C] between two temperatures. */
export function stirringPower(
  { charge, ...state }: State,
  [coolest, warmest]: readonly [number, number],
  speed: number,
): AlongTemperature {
  const way = wayOf({ charge, ...state });
  const { job } = charge;
  if (charge.isEmulsion()) {
    // The bench's readings are of the room's temperature alone: a gel that warms is thinner, and takes less.
    const { power } = stirredAt(charge, job.process.room, speed, way);
    return { at: () => power, breakpoints: [] };
  }
  const stirrer = stirrerOf(job);
  const readings = readingsDownTo(charge, coolest, way);
  const viscosity = viscosityAtStirrer(readings, stirrer, speed);
  const middle = (coolest + warmest) / 2;
  const vessel = vesselAround(job.vessel, levelAt(charge, middle));
  const density = charge.density(middle);
  return by(
    "power-number",
    () => {
      const powerAt = stirringPowerFunction({ impeller: impellerOf(stirrer), vessel, density, speed });
      const at = (temperature: number): number => powerAt(viscosity(temperature));
      // What holds at both ends holds between them.
      at(coolest);
      at(warmest);
      return { at, breakpoints: viscosityBreakpoints(readings.law) };
    },
    { field: "stirrer-power", of: stirrer.kind },
  );
}

/** How far a stirrer moves a gel that has a yield stress. */
export function movedBy(
  { vessel }: Job,
  stirrer: Stirrer,
  {
    powerNumber,
    speed,
    density,
    yieldStress,
    heightToDiameter,
  }: Pick<Stirred, "powerNumber" | "speed" | "density"> & {
    readonly yieldStress: number;
    readonly heightToDiameter: number;
  },
): Cavern {
  return by("cavern", () =>
    cavern({
      powerNumber,
      speed,
      density,
      yieldStress,
      heightToDiameter,
      impeller: { diameter: stirrer.diameter },
      vessel: { diameter: vessel.diameter },
    }),
  );
}

/** Power that the stirrer puts into a volume of the charge [W/m³]. */
export function powerPerVolumeOf({ power, density }: Stirred, charge: Charge): number {
  return (power * density) / charge.mass;
}
