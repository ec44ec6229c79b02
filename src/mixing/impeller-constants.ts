import { positive, record, refuse, result, show, variant } from "../guards.js";
import type { Interval } from "../laws/interval.js";
import type { Impeller } from "./impeller.js";
import * as known from "./known.js";

/** What is known of a kind of impeller, where anything is: each as a range, since published figures differ. */
export interface KnownConstants {
  /** Power number times Reynolds number in creeping flow. */
  readonly laminarPowerConstant?: Interval;
  /** Power number in turbulent flow, with baffles. */
  readonly powerNumber?: Interval;
  /** Mean shear rate over speed (Metzner and Otto). */
  readonly metznerOttoConstant?: Interval;
  /** Flow over N D³, in turbulent flow. */
  readonly flowNumber?: Interval;
}

/**
 * Constants by kind of impeller, each with the range in which published figures lie: `laminarPowerConstant` (power
 * number times Reynolds number in creeping flow), `powerNumber` (in turbulent flow with baffles),
 * `metznerOttoConstant`,
 * `flowNumber` (turbulent). Functions take `value`; judge a motor at `max`, and a gel at both ends of its shear
 * constant.
 *
 * Propeller: 41 from raju-2011, which restates it, and in stirring-tables as well; 0.32 from memory, 0.35 in
 * stirring-tables; the rest from memory, with ends of ours. Pitched blade, four at 45°, D/5 wide: 44 to 48 by the
 * correlation in furukawa-2012, from which 44 is taken, 36.5 in stirring-tables; 1.37 from dickey-2004, 1.27 in
 * stirring-tables; shear constants 9.5 (viscosity-sheet), 11 (stirring-tables) and 13, which metzner-otto-1957 found
 * for disc turbines (wu-2006); flow numbers from memory. Anchor: 140 to 375 by the correlation and by nagata-1975 (from
 * memory) for arms of 0.5 to 1.0 of the vessel's diameter, 200 ± 25 % in anchor-sheet, 300 in stirring-tables; shear
 * constants 12 (anchor-sheet) and 25 (stirring-tables), more where the gap is narrow. Helical ribbon: 157 to 208 for
 * one start and 269 to 357 for two by rieger-1988, 350 in stirring-tables for two and in ribbon-sheet for one; the
 * value is the geometric mean of the ends, for a ribbon whose number of starts is not known; shear constant 30 in both,
 * its ends ours. Disperser disc: 0.45 from memory, its ends ours. Of a disperser disc in thick gel and of a rotor and
 * stator nothing is known that would hold for all. Flat upright blades have their power from their shape in the vessel,
 * or from the caller; their other constants are the caller's.
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
  propeller: {
    laminarPowerConstant: { min: 37, value: 41, max: 45 },
    powerNumber: { min: 0.3, value: 0.32, max: 0.37 },
    metznerOttoConstant: { min: 8, value: 10, max: 12 },
    flowNumber: { min: 0.4, value: 0.5, max: 0.6 },
  },
  "pitched-blade turbine": {
    laminarPowerConstant: { min: 36, value: 44, max: 48 },
    powerNumber: { min: 1.2, value: 1.37, max: 1.45 },
    metznerOttoConstant: { min: 9.5, value: 11, max: 13 },
    flowNumber: { min: 0.55, value: 0.79, max: 0.87 },
  },
  "disperser disc": { powerNumber: { min: 0.3, value: 0.45, max: 0.6 } },
  anchor: {
    laminarPowerConstant: { min: 140, value: 250, max: 375 },
    powerNumber: { min: 0.25, value: 0.35, max: 0.5 },
    metznerOttoConstant: { min: 12, value: 25, max: 30 },
  },
  "helical ribbon": {
    laminarPowerConstant: { min: 157, value: 240, max: 360 },
    metznerOttoConstant: { min: 25, value: 30, max: 36 },
  },
  "flat-blade": {},
  "rotor-stator": {},
  other: {},
};

/** What is known of an impeller's kind; an unknown kind is refused. */
export function knownOf(impeller: Impeller, path: string): KnownConstants {
  variant(impeller, path, "kind", known.impeller);
  positive(impeller.diameter, `${path}.diameter`);
  if (typeof impeller.kind !== "string" || !Object.hasOwn(impellerConstants, impeller.kind))
    refuse("input", `${path}.kind`, show(impeller.kind), Object.keys(impellerConstants).join(", "));
  return impellerConstants[impeller.kind];
}

/** A constant of an impeller: its own, or that of its kind. */
export function constantOf(impeller: Impeller, name: "metznerOttoConstant" | "flowNumber", path: string): number {
  const ofKind = knownOf(impeller, path)[name]?.value;
  const own = impeller[name];
  if (own !== undefined) return positive(own, `${path}.${name}`);
  return (
    ofKind ?? refuse("unreachable", `${path}.${name}`, "nothing", `a number of your own for this ${nameOf(impeller)}`)
  );
}

export const nameOf = ({ kind }: Impeller): string => (kind === "other" ? "impeller" : kind);

/**
 * The mean shear rate in a stirred vessel, after Metzner and Otto.
 *
 * $$\dot\gamma = k_s\,N$$
 *
 * It was found in creeping flow and is used up to about Re 100; the constant depends on the impeller and its vessel,
 * and hardly on the shear thinning of the gel (metzner-otto-1957); published constants of one kind differ by up to a
 * factor of two, so see what both ends of `impellerConstants` do to the answer. At the blades themselves the shear is
 * many times higher.
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
  const { impeller, speed } = record(input, "input", known.stirringShearRate);
  return result(constantOf(impeller, "metznerOttoConstant", "impeller") * positive(speed, "speed"), "shear rate");
}
