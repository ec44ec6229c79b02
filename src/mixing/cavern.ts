import { positive, record, refuse, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import type { Beyond } from "../laws/beyond.js";
import type { Interval } from "../laws/interval.js";
import { root } from "../numeric/root.js";
import type { StirredVessel } from "./impeller.js";
import * as known from "./known.js";
import { diameterAround, type ImpellerSize, impellerDiameter, type VesselSize } from "./sizes.js";
import { compileStirring, type StirredBatch } from "./stirring.js";

/** The part of a gel with a yield stress that an impeller moves. */
export interface Cavern {
  /** Of the cavern as the torque would have it, were the vessel wide enough [m]. */
  readonly diameter: number;
  /** Its height [m]: of one that has reached the wall, where it grows in height alone. */
  readonly height: number;
  /** Diameter of the cavern over that of the impeller. */
  readonly diameterRatio: number;
  /** Whether it reaches the wall: only then can the batch become even at all. */
  readonly reachesWall: boolean;
}

/**
 * Height over diameter of a cavern: 0.4 around a disc turbine, 0.55 around pitched blades, up to 0.75 around a
 * propeller.
 *
 * The higher it is, the narrower: whether it reaches the wall is judged at `max`.
 *
 * @source elson-1986 from memory, all three
 */
export const cavernHeightToDiameter: Interval = { min: 0.4, value: 0.55, max: 0.75 };

/**
 * How sure the diameter of a cavern is: by the range of its height over its diameter, and by a third of the doubt in
 * the torque, a fifth. A cavern of another shape, such as the sphere, lies within it.
 */
export const cavernBand: Band = {
  by: "factor",
  min: 0.87,
  max: 1.13,
  basis: "spread",
  sources: ["elson-1986", "solomon-1981"],
};

function slenderness(given: number | undefined): number {
  return given === undefined ? cavernHeightToDiameter.value : positive(given, "heightToDiameter");
}

/** (D_c/D)³ for a cylinder whose wall and ends carry the torque at the yield stress. */
function cubed(load: number, yieldStress: number, slender: number): number {
  return load / (Math.PI * Math.PI * (slender + 1 / 3) * yieldStress);
}

/**
 * How far an impeller moves a gel that has a yield stress: a cavern, around which the gel stands still.
 *
 * $$\left(\frac{D_c}{D}\right)^3 = \frac{\mathrm{Po}\,\rho N^2 D^2}{\pi^2 (a + \tfrac13)\,\tau_y}$$
 *
 * The torque of the impeller is balanced by the yield stress on wall and ends of a cylinder whose height is a times its
 * diameter. Elson's factor 1.36 is a = 0.4, observed around a disc turbine; other impellers make taller and narrower
 * caverns (`cavernHeightToDiameter`). A sphere corresponds to a = 0.45. Where the cavern does not reach the wall, the
 * gel there does not move, what is added is not spread, and no blend time exists. A cavern smaller than the impeller
 * means that the gel moves only with the blades. A cavern that has reached the wall grows only in height, with the same
 * torque on wall and ends:
 *
 * $$\frac{H_c}{T} = \frac{\mathrm{Po}\,\rho N^2 D^5}{\pi^2 \tau_y T^3} - \tfrac13$$
 *
 * An end at the free surface carries no stress, which makes it up to a sixth of the vessel's diameter higher. A gel
 * that slips on the wall or heals slowly has no clear edge.
 *
 * @param input.powerNumber - Power number of the impeller in the gel, above 0.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.yieldStress - Yield stress [Pa], above 0.
 * @param input.vessel - The vessel: its inner diameter [m], at least that of the impeller.
 * @param input.heightToDiameter - Height over diameter of the cavern, a, above 0; default 0.55.
 * @returns Diameter and height [m], diameter over that of the impeller, whether it reaches the wall.
 * @throws CalculationError `input` where an argument is out of range.
 * @source elson-1986 from memory, the heights for their width; both formulas derived here from the torque on a cylinder
 * @example
 * ```ts
 * import { cavern } from "gelwright/mixing";
 * const gel = { density: 915, yieldStress: 30 };
 * const bench = { powerNumber: 1.8, speed: 12, impeller: { diameter: 0.05 }, vessel: { diameter: 0.12 } };
 * cavern({ ...gel, ...bench }).reachesWall; // => false
 * ```
 */
export function cavern(input: {
  readonly powerNumber: number;
  readonly speed: number;
  readonly impeller: ImpellerSize;
  readonly density: number;
  readonly yieldStress: number;
  readonly vessel: VesselSize;
  readonly heightToDiameter?: number;
}): Cavern {
  const { powerNumber, speed, impeller, density, yieldStress, vessel, heightToDiameter } = record(
    input,
    "input",
    known.cavern,
  );
  const slender = slenderness(heightToDiameter);
  const blades = impellerDiameter(impeller);
  const wall = diameterAround(vessel, blades);
  const load =
    positive(powerNumber, "powerNumber") * positive(density, "density") * (positive(speed, "speed") * blades) ** 2;
  const diameterRatio = result(Math.cbrt(cubed(load, positive(yieldStress, "yieldStress"), slender)), "cavern");
  const diameter = result(diameterRatio * blades, "diameter of the cavern");
  const reachesWall = diameter >= wall;
  const grown = (slender + 1 / 3) * (diameter / wall) ** 3 - 1 / 3;
  const height = result(reachesWall ? grown * wall : slender * diameter, "height of the cavern");
  return { diameter, height, diameterRatio, reachesWall };
}

/** Whether more than the width of a vessel is told, so that a power curve is to come from it. */
function isFilled(vessel: VesselSize | StirredVessel): vessel is StirredVessel {
  const { level, baffles, baffleWidth } = vessel as Partial<StirredVessel>;
  return level !== undefined || baffles !== undefined || baffleWidth !== undefined;
}

/**
 * The slowest speed at which the gel at the wall of the vessel moves.
 *
 * $$D_c(N) = T$$
 *
 * with the power number and the effective viscosity that go with each speed. Below it no blend time exists.
 *
 * @param input - Impeller, density and flow curve as for `stirring`; the flow curve with a yield stress.
 * @param input.vessel - The vessel [m], at least as wide as the impeller; with its level blades and anchors have their
 *   power curve from it, and by its inner diameter alone the constants of the kind hold.
 * @param input.heightToDiameter - Height over diameter of the cavern, above 0; default 0.55.
 * @param input.beyond - Outside the Reynolds numbers of the power curve: `"throw"` (default) or `"extend"` it.
 * @returns Speed [rev/s].
 * @throws CalculationError `input` where an argument is out of range or the gel has no yield stress; `unreachable` where
 *   no constant of the impeller is known, or the torque at any slow speed already moves the wall.
 * @source elson-1986 from memory, the heights
 * @example
 * ```ts
 * import { speedToMoveGelAtWall } from "gelwright/mixing";
 * const curve = { law: "herschel-bulkley", yieldStress: 30, consistency: 12, flowIndex: 0.5 } as const;
 * const impeller = { kind: "pitched-blade turbine", diameter: 0.05 } as const;
 * speedToMoveGelAtWall({ impeller, density: 915, curve, vessel: { diameter: 0.12 } }); // => 29.013709494141136
 * ```
 */
export function speedToMoveGelAtWall(
  input: Omit<StirredBatch, "vessel"> & {
    readonly vessel: VesselSize | StirredVessel;
    readonly heightToDiameter?: number;
    readonly beyond?: Beyond;
  },
): number {
  const { vessel, heightToDiameter, beyond, ...batch } = record(input, "input", known.speedToMoveGelAtWall);
  const slender = slenderness(heightToDiameter);
  const around = record(vessel, "vessel");
  const stirred = isFilled(around) ? { ...batch, vessel: around } : batch;
  const { at, flow, density, diameter } = compileStirring(stirred, beyond);
  const wide = diameterAround(around, diameter) / diameter;
  if (!(flow.yieldStress > 0)) refuse("input", "curve", "no yield stress", "a flow curve with a yield stress");
  const short = (logSpeed: number): number => {
    const speed = Math.exp(logSpeed);
    const load = at(speed).powerNumber * density * (speed * diameter) ** 2;
    return Math.log(cubed(load, flow.yieldStress, slender)) - 3 * Math.log(wide);
  };
  // The torque rises with the speed from that of the yield stress: from one turn in a day to a million a second.
  const [slow, fast] = [-12, 14];
  if (!(short(slow) < 0))
    refuse("unreachable", "speed", `a cavern at the wall at ${Math.exp(slow)} rev/s`, "a vessel that is wider");
  return result(Math.exp(root(short, slow, fast, "speed", 1e-13)), "speed");
}
