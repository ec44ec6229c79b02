import { positive, record, refuse, result, show } from "../guards.js";
import type { Impeller } from "./impeller.js";

/** What is known of a kind of impeller, where anything is. */
export interface KnownConstants {
  /** Power number times Reynolds number in creeping flow. */
  readonly laminarPowerConstant?: number;
  /** In turbulent flow, with baffles. */
  readonly powerNumber?: number;
  /** Mean shear rate over speed. */
  readonly metznerOttoConstant?: number;
  /** Flow over N D³, in turbulent flow. */
  readonly flowNumber?: number;
}

/**
 * Constants by kind of impeller: `constant` (power number times Reynolds number in creeping flow), `powerNumber` (in
 * turbulent flow with baffles), `metznerOttoConstant` (Metzner and Otto), `flowNumber` (turbulent).
 *
 * Propeller: 41 from raju-2011, which restates it; the rest from memory. Pitched blade, four at 45°, D/5 wide: 1.37
 * from dickey-2004, 44 from the correlation in furukawa-2012, the rest from memory; published shear constants lie from
 * 9.5 to 13, flow numbers from 0.55 to 0.87. Anchor: 200, give or take a quarter, for Re up to 30 (anchor-sheet); its
 * shear constant of 25 from memory, where others say 12: it grows as the gap to the wall shrinks. Helical ribbon of one
 * start, its pitch its diameter: 350 for Re up to 10, and 30 (ribbon-sheet). Disperser disc: 0.45
 * from memory. Of a disperser disc in thick gel and of a rotor and stator nothing is known that would hold for all. Flat
 * upright blades have their power from their shape in the vessel, or from the caller; their other constants are the
 * caller's.
 */
export const impellerConstants: {
  readonly propeller: KnownConstants;
  readonly "pitched-blade turbine": KnownConstants;
  readonly "flat-blade": KnownConstants;
  readonly "disperser disc": KnownConstants;
  readonly anchor: KnownConstants;
  readonly "helical ribbon": KnownConstants;
  readonly "rotor-stator": KnownConstants;
  readonly other: KnownConstants;
} = {
  propeller: { laminarPowerConstant: 41, powerNumber: 0.32, metznerOttoConstant: 10, flowNumber: 0.5 },
  "pitched-blade turbine": { laminarPowerConstant: 44, powerNumber: 1.37, metznerOttoConstant: 13, flowNumber: 0.79 },
  "disperser disc": { powerNumber: 0.45 },
  anchor: { laminarPowerConstant: 200, powerNumber: 0.35, metznerOttoConstant: 25 },
  "helical ribbon": { laminarPowerConstant: 350, metznerOttoConstant: 30 },
  "flat-blade": {},
  "rotor-stator": {},
  other: {},
};

/** What is known of an impeller's kind; a kind that nobody knows is refused. */
export function knownOf(impeller: Impeller, path: string): KnownConstants {
  record(impeller, path);
  positive(impeller.diameter, `${path}.diameter`);
  if (!Object.hasOwn(impellerConstants, impeller.kind as PropertyKey))
    refuse("input", `${path}.kind`, show(impeller.kind), Object.keys(impellerConstants).join(", "));
  return impellerConstants[impeller.kind];
}

/** A constant of an impeller: its own, or that of its kind. */
export function constantOf(impeller: Impeller, name: "metznerOttoConstant" | "flowNumber", path: string): number {
  const known = knownOf(impeller, path)[name];
  const own = impeller[name];
  if (own !== undefined) return positive(own, `${path}.${name}`);
  return (
    known ?? refuse("unreachable", `${path}.${name}`, "nothing", `a number of your own for this ${nameOf(impeller)}`)
  );
}

export const nameOf = ({ kind }: Impeller): string => (kind === "other" ? "impeller" : kind);

/**
 * The shear rate that the gel meets on the whole in a stirred vessel, after Metzner and Otto.
 *
 * $$\dot\gamma = k_s\,N$$
 *
 * Found where flow creeps, and held to work up to Re 100 or so; the constant is one of the impeller and its vessel, not
 * of the gel. At the blades themselves the shear is many times higher.
 *
 * @param input.impeller - The impeller: its own `metznerOttoConstant`, or that of its kind.
 * @param input.speed - Speed [rev/s], above 0.
 * @returns Shear rate [1/s].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no constant is known.
 * @source metzner-otto-1957 from memory, restated in viscosity-sheet; for the constants see `impellerConstants`
 * @example
 * ```ts
 * import { stirringShearRate } from "gelwright/mixing";
 * stirringShearRate({ impeller: { kind: "propeller", diameter: 0.08 }, speed: 2 }); // => 20
 * ```
 */
export function stirringShearRate(input: { readonly impeller: Impeller; readonly speed: number }): number {
  const { impeller, speed } = record(input, "input");
  return result(constantOf(impeller, "metznerOttoConstant", "impeller") * positive(speed, "speed"), "shear rate");
}
