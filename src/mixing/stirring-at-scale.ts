import { result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { blendFourier, blendReynoldsMin } from "./blend-time.js";
import { cavern } from "./cavern.js";
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
  /** For 95 % by Grenville and Nienow [s]; left out where there is none or it is not known: below Re 200, with no vessel told, or where a yield stress keeps the gel at the wall from moving. */
  readonly blendTime?: number;
  /** Of a gel with a yield stress in a vessel that is told: whether it moves as far as the wall. Where it does not, the batch never becomes even. */
  readonly reachesWall?: boolean;
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
  /** Whether the gel moves as far as the wall; undefined of a yield stress with no vessel told. Without one it does. */
  readonly reachesWall: (state: StirredState, speed: number) => boolean | undefined;
  readonly full: (speed: number) => StirringAtScale;
}

/** Checks impeller and batch; `path` stands before what faults name. */
export function stirringAtScale(
  batch: StirredBatch,
  volume: number,
  beyond: Beyond | undefined,
  path?: string,
): AtScale {
  const { at, density, flow } = compileStirring(batch, beyond, path);
  const { impeller, vessel } = batch;
  const size = vessel === undefined ? undefined : vessel.diameter * Math.sqrt(vessel.diameter * vessel.level);
  const blend = ({ powerNumber, reynolds, viscosity }: StirredState): number | undefined =>
    size === undefined ? undefined : (blendFourier(Math.cbrt(powerNumber) * reynolds) * size * density) / viscosity;
  const { yieldStress } = flow;
  const reachesWall = ({ powerNumber }: StirredState, speed: number): boolean | undefined =>
    yieldStress > 0
      ? vessel && cavern({ powerNumber, speed, density, yieldStress, impeller, vessel }).reachesWall
      : true;
  const full = (speed: number): StirringAtScale => {
    const state = at(speed);
    const reaches = reachesWall(state, speed);
    const time = state.reynolds < blendReynoldsMin || !reaches ? undefined : blend(state);
    return {
      ...state,
      speed,
      tipSpeed: tipSpeed({ speed, impeller }),
      powerPerVolume: result(state.power / volume, "power per volume"),
      froude: impellerFroude({ speed, impeller }),
      ...(time === undefined ? {} : { blendTime: result(time, "blend time") }),
      ...(yieldStress > 0 && reaches !== undefined ? { reachesWall: reaches } : {}),
    };
  };
  return { at, blend, reachesWall, full };
}
