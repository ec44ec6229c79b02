import { result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { blendFourier, blendReynoldsMin } from "./blend-time.js";
import { impellerFroude } from "./froude.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import { compileStirring, type StirredBatch, type StirredState } from "./stirring.js";
import { tipSpeed } from "./tip-speed.js";

/** Stirring at one scale. */
export interface StirringAtScale extends StirredState {
  /** [rev/s]. */
  readonly speed: number;
  /** [m/s]. */
  readonly tipSpeed: number;
  /** [W/m³]. */
  readonly powerPerVolume: number;
  /** N² D/g. */
  readonly froude: number;
  /** For 95 % by Grenville and Nienow [s]; left out where that is not known: below Re 200, or with no vessel told. */
  readonly blendTime?: number;
}

/** The same shape at another size. */
export function sameShape(
  impeller: Impeller,
  vessel: StirredVessel | undefined,
  s: number,
): [Impeller, StirredVessel?] {
  const larger = { ...impeller } as Record<string, unknown>;
  for (const length of ["diameter", "bladeWidth", "armHeight"])
    if (typeof larger[length] === "number") larger[length] = (larger[length] as number) * s;
  const grown = larger as unknown as Impeller;
  if (vessel === undefined) return [grown];
  const { baffleWidth } = vessel;
  const around = { ...vessel, diameter: vessel.diameter * s, level: vessel.level * s };
  return [grown, baffleWidth === undefined ? around : { ...around, baffleWidth: baffleWidth * s }];
}

/** Stirring at one scale, to be asked at any speed. */
export interface AtScale {
  readonly at: (speed: number) => StirredState;
  /** By Grenville and Nienow, even below where it holds [s]; undefined with no vessel told. */
  readonly blend: (state: StirredState) => number | undefined;
  readonly full: (speed: number) => StirringAtScale;
}

/** Checks impeller and batch; `path` stands before what faults name. */
export function stirringAtScale(
  batch: StirredBatch,
  volume: number,
  beyond: Beyond | undefined,
  path?: string,
): AtScale {
  const { at, density } = compileStirring(batch, beyond, path);
  const { impeller, vessel } = batch;
  const size = vessel === undefined ? undefined : vessel.diameter * Math.sqrt(vessel.diameter * vessel.level);
  const blend = ({ powerNumber, reynolds, viscosity }: StirredState): number | undefined =>
    size === undefined ? undefined : (blendFourier(Math.cbrt(powerNumber) * reynolds) * size * density) / viscosity;
  const full = (speed: number): StirringAtScale => {
    const state = at(speed);
    const time = state.reynolds < blendReynoldsMin ? undefined : blend(state);
    return {
      ...state,
      speed,
      tipSpeed: tipSpeed({ speed, impeller }),
      powerPerVolume: result(state.power / volume, "power per volume"),
      froude: impellerFroude({ speed, impeller }),
      ...(time === undefined ? {} : { blendTime: result(time, "blend time") }),
    };
  };
  return { at, blend, full };
}
