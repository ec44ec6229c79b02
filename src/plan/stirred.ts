import { type FlowCurve, viscosityBreakpoints } from "../laws/index.js";
import {
  type Cavern,
  cavern,
  type Impeller,
  levelOfVolume,
  powerBandOf,
  type StirredState,
  type StirredVessel,
  stirring,
  stirringPowerFunction,
  stirringShearRate,
} from "../mixing/index.js";
import type { AlongTemperature, Charge } from "./charge.js";
import type { Ends } from "./contents.js";
import type { Job, Stirrer, Vessel } from "./job.js";
import { type Readings, shapeOf } from "./setting.js";
import type { State, Turn } from "./state.js";
import { by, cell, stated, unknown } from "./unknown.js";

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

/** The stirrer of a job. */
export function stirrerOf({ vessel }: Job): Stirrer {
  return stated(vessel.stirrer, "vessel-stirrer", { of: vessel.name });
}

/** The stirrer as the kernels take it. Of a kind that they do not know, only what the document states counts. */
export function impellerOf(stirrer: Stirrer): Impeller {
  const { kind, diameter, metznerOttoConstant, blades, bladeAngle, bladeWidth, armHeight } = stirrer;
  const { laminarPowerConstant: laminar, powerNumber: turbulent } = stirrer;
  const power =
    laminar !== undefined && turbulent !== undefined
      ? ({ law: "sum", laminarPowerConstant: laminar, powerNumber: turbulent } as const)
      : laminar !== undefined
        ? ({ law: "laminar", laminarPowerConstant: laminar } as const)
        : turbulent !== undefined
          ? ({ law: "turbulent", powerNumber: turbulent } as const)
          : undefined;
  const own = { diameter, ...(power && { power }), ...(metznerOttoConstant !== undefined && { metznerOttoConstant }) };
  switch (kind) {
    case "propeller":
    case "rotor-stator":
    case "helical ribbon":
    case "disperser disc":
      return { kind, ...own };
    case "anchor":
      return { kind, ...own, ...(armHeight !== undefined && { armHeight }) };
    case "pitched-blade turbine":
      return {
        kind,
        ...own,
        ...(blades !== undefined && { blades }),
        ...(bladeAngle !== undefined && { bladeAngle }),
        ...(bladeWidth !== undefined && { bladeWidth }),
      };
    case "paddle":
    case "flat-blade turbine":
      if (blades === undefined || bladeWidth === undefined) return { kind: "other", ...own };
      return { kind: "flat-blade", ...own, blades, bladeWidth };
    default:
      return { kind: "other", ...own };
  }
}

/** The vessel around the stirrer, from which blades have their power. */
export function vesselAround({ diameter, baffles }: Vessel, level: number): StirredVessel {
  return { diameter, level, ...(baffles && { baffles: baffles.count, baffleWidth: baffles.width }) };
}

/** How high a charge stands above the lowest point of the vessel at a temperature [m]. */
export function levelAt(charge: Charge, temperature: number): number {
  const volume = charge.mass / charge.density(temperature);
  return by("level", () => levelOfVolume({ vessel: shapeOf(charge.job.vessel), volume }));
}

/** Between which levels the charge of a turn stands [m]: what states no expansion expands by nothing, or by the most that is usual. */
export function levelsIn({ state }: Turn): Ends {
  const { charge } = state;
  const { min, max } = charge.volume(temperatureOfStirring(state));
  const level = (volume: number): number =>
    by("level", () => levelOfVolume({ vessel: shapeOf(charge.job.vessel), volume }));
  return { min: level(min), max: level(max) };
}

/** The levels between which a charge in a cone counts for the power curves, which were found over flat and dished bottoms [m]: as deep as it is, and as high as it would stand on a plate. */
export function levelsOfPower(charge: Charge, temperature: number): readonly number[] {
  const { bottom, diameter } = charge.job.vessel;
  const level = levelAt(charge, temperature);
  if (bottom?.shape !== "cone") return [level];
  return [level, charge.mass / charge.density(temperature) / ((Math.PI / 4) * diameter ** 2)];
}

/** The mean shear rate that a stirrer brings [1/s]. */
export function shearRateOf(stirrer: Stirrer, speed: number): number {
  return by("power-number", () => stirringShearRate({ impeller: impellerOf(stirrer), speed }), {
    code: "not-stated",
    field: "stirrer-metzner-otto-constant",
    of: stirrer.kind,
  });
}

/** The viscosity by temperature at the shear rate of a stirrer: a power law through the readings of a melt that thins. */
export function viscosityAtStirrer(
  { at, flowIndex, shearRate }: Readings,
  stirrer: Stirrer,
  speed: number,
): (temperature: number) => number {
  if (flowIndex === undefined) return at;
  const factor = (shearRateOf(stirrer, speed) / shearRate) ** (flowIndex - 1);
  return (temperature) => factor * at(temperature);
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

const found = new WeakMap<Turn, () => Stirred>();

/** What the stirrer does in a turn. */
export function stirredIn(turn: Turn): Stirred {
  const there = found.get(turn);
  if (there) return there();
  const { state, speed } = turn;
  const find = cell(() => stirredAt(state.charge, temperatureOfStirring(state), speed(), wayOf(state)));
  found.set(turn, find);
  return find();
}

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
