import { positive, record, refuse, result, show } from "../guards.js";
import type { PowerCurve } from "./power-curve.js";
import { compilePower } from "./power-number.js";

/** What every impeller may carry of its own, before anything that is known of its kind. */
export interface ImpellerConstants {
  /** Its power curve: measured, or from its maker. */
  readonly power?: PowerCurve;
  /** Mean shear rate in the batch over speed (Metzner and Otto), above 0. */
  readonly shearConstant?: number;
  /** Flow that it moves over N D³, in turbulent flow, above 0. */
  readonly flowNumber?: number;
}

/** An impeller, as plain data. */
export type Impeller = ImpellerConstants &
  (
    | {
        /** Of ship's shape, three blades, with a pitch of one diameter. */
        readonly kind: "propeller";
        /** [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Flat blades at a slant; four at 45° with a width of a fifth of the diameter, unless said otherwise. */
        readonly kind: "pitched-blade";
        /** [m], above 0. */
        readonly diameter: number;
        /** Number of blades, 2 or more. */
        readonly blades?: number;
        /** Of the blades to the horizontal [°], above 0 and up to 90. */
        readonly bladeAngle?: number;
        /** Width of a blade, along its face [m], above 0. */
        readonly bladeWidth?: number;
      }
    | {
        /** Flat upright blades: a paddle of two, a turbine of four or six. */
        readonly kind: "flat-blade";
        /** [m], above 0. */
        readonly diameter: number;
        /** Number of blades, 2 or more. */
        readonly blades: number;
        /** Width of a blade, which is its height [m], above 0. */
        readonly bladeWidth: number;
      }
    | {
        /** A disc with teeth bent up and down at its rim. */
        readonly kind: "disperser-disc";
        /** [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Follows the wall and the bottom of the vessel. */
        readonly kind: "anchor";
        /** [m], above 0. */
        readonly diameter: number;
        /** Height of its arms [m], above 0. */
        readonly armHeight?: number;
      }
    | {
        /** A ribbon that winds up along the wall once in its own diameter, 0.9 to 0.95 of the vessel's. */
        readonly kind: "helical-ribbon";
        /** [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** A rotor within a slotted ring. Makers' heads differ: its constants are the caller's. */
        readonly kind: "rotor-stator";
        /** Of the rotor [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Of any other shape: its constants are the caller's. */
        readonly kind: "other";
        /** [m], above 0. */
        readonly diameter: number;
      }
  );

/** The vessel around the impeller, as far as stirring knows it. */
export interface StirredVessel {
  /** Inner diameter [m], above 0. */
  readonly diameter: number;
  /** Level of the filling above the lowest point [m], above 0. */
  readonly level: number;
  /** Number of baffles at the wall, 0 or more; left out for none. */
  readonly baffles?: number;
  /** Width of a baffle [m], above 0. */
  readonly baffleWidth?: number;
}

/** What is known of a kind of impeller, where anything is. */
export interface KnownConstants {
  /** Power number times Reynolds number in creeping flow. */
  readonly constant?: number;
  /** In turbulent flow, with baffles. */
  readonly powerNumber?: number;
  /** Mean shear rate over speed. */
  readonly shearConstant?: number;
  /** Flow over N D³, in turbulent flow. */
  readonly flowNumber?: number;
}

/**
 * Constants by kind of impeller: `constant` (power number times Reynolds number in creeping flow), `powerNumber` (in
 * turbulent flow with baffles), `shearConstant` (Metzner and Otto), `flowNumber` (turbulent).
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
  readonly "pitched-blade": KnownConstants;
  readonly "flat-blade": KnownConstants;
  readonly "disperser-disc": KnownConstants;
  readonly anchor: KnownConstants;
  readonly "helical-ribbon": KnownConstants;
  readonly "rotor-stator": KnownConstants;
  readonly other: KnownConstants;
} = {
  propeller: { constant: 41, powerNumber: 0.32, shearConstant: 10, flowNumber: 0.5 },
  "pitched-blade": { constant: 44, powerNumber: 1.37, shearConstant: 13, flowNumber: 0.79 },
  "disperser-disc": { powerNumber: 0.45 },
  anchor: { constant: 200, powerNumber: 0.35, shearConstant: 25 },
  "helical-ribbon": { constant: 350, shearConstant: 30 },
  "flat-blade": {},
  "rotor-stator": {},
  other: {},
};

/** What is known of an impeller's kind; a kind that nobody knows is refused. */
function knownOf(impeller: Impeller, path: string): KnownConstants {
  record(impeller, path);
  positive(impeller.diameter, `${path}.diameter`);
  if (!Object.hasOwn(impellerConstants, impeller.kind as PropertyKey))
    refuse("input", `${path}.kind`, show(impeller.kind), Object.keys(impellerConstants).join(", "));
  return impellerConstants[impeller.kind];
}

/** The shape of blades in a vessel, where both are told; an anchor is a wide paddle of two blades. */
function bladesIn(impeller: Impeller, vessel: StirredVessel, at: string): PowerCurve | undefined {
  const path = `${at}impeller`;
  const around = `${at}vessel`;
  const { baffles, baffleWidth } = record(vessel, around);
  const diameter = positive(vessel.diameter, `${around}.diameter`);
  const inVessel = {
    law: "kamei-hiraoka",
    diameterToVessel: impeller.diameter / diameter,
    levelToVessel: positive(vessel.level, `${around}.level`) / diameter,
    ...(baffles === undefined ? {} : { baffles }),
    ...(baffleWidth === undefined ? {} : { baffleToVessel: positive(baffleWidth, `${around}.baffleWidth`) / diameter }),
  } as const;
  if (impeller.kind === "anchor" && impeller.armHeight !== undefined) {
    const height = positive(impeller.armHeight, `${path}.armHeight`);
    return { ...inVessel, blades: 2, bladeAngle: 90, widthToDiameter: height / impeller.diameter };
  }
  if (impeller.kind === "flat-blade") {
    const width = positive(impeller.bladeWidth, `${path}.bladeWidth`);
    return { ...inVessel, blades: impeller.blades, bladeAngle: 90, widthToDiameter: width / impeller.diameter };
  }
  if (impeller.kind !== "pitched-blade") return undefined;
  const { blades = 4, bladeAngle = 45, bladeWidth = impeller.diameter / 5 } = impeller;
  const widthToDiameter = positive(bladeWidth, `${path}.bladeWidth`) / impeller.diameter;
  return { ...inVessel, blades, bladeAngle, widthToDiameter };
}

/**
 * The power curve that holds for an impeller: its own; else from the shape of its blades in this vessel; else from the
 * constants of its kind, for a vessel with baffles.
 *
 * @param input.impeller - The impeller, as plain data.
 * @param input.vessel - The vessel: for flat and pitched blades and for an anchor with `armHeight`, whose curve it then gives.
 * @returns The power curve, as plain data for `powerNumber`.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where nothing is known of the kind,
 *   so that its power curve is the caller's to give.
 * @source furukawa-2012 for blades and for an anchor as a wide paddle; for the constants see `impellerConstants`
 * @example
 * ```ts
 * import { powerCurveOf, powerNumber } from "gelwright/mixing";
 * const impeller = { kind: "pitched-blade", diameter: 0.2 } as const;
 * powerCurveOf({ impeller }); // => { law: "sum", constant: 44, powerNumber: 1.37 }
 * const power = powerCurveOf({ impeller, vessel: { diameter: 0.6, level: 0.6 } });
 * powerNumber({ power, reynolds: 1 }); // => 44.59518268097394
 * ```
 */
export function powerCurveOf(input: { readonly impeller: Impeller; readonly vessel?: StirredVessel }): PowerCurve {
  const { impeller, vessel } = record(input, "input");
  const curve = curveOf(impeller, vessel);
  compilePower(curve, "impeller.power", true);
  return curve;
}

/** As `powerCurveOf`; where impeller and vessel stand within something else, faults name that first. */
export function curveOf(impeller: Impeller, vessel: StirredVessel | undefined, at = ""): PowerCurve {
  const path = `${at}impeller`;
  const { constant, powerNumber } = knownOf(impeller, path);
  const blades = vessel === undefined ? undefined : bladesIn(impeller, vessel, at);
  if (impeller.power !== undefined) return impeller.power;
  if (blades !== undefined) return blades;
  if (constant !== undefined && powerNumber !== undefined) return { law: "sum", constant, powerNumber };
  if (powerNumber !== undefined) return { law: "turbulent", powerNumber };
  if (constant !== undefined) return { law: "laminar", constant };
  const wanted = `a power curve of your own for this ${nameOf(impeller)}`;
  return refuse(
    "unreachable",
    `${path}.power`,
    "nothing",
    impeller.kind === "flat-blade" ? `${wanted}, or the vessel around it` : wanted,
  );
}

/** A constant of an impeller: its own, or that of its kind. */
export function constantOf(impeller: Impeller, name: "shearConstant" | "flowNumber", path: string): number {
  const known = knownOf(impeller, path)[name];
  const own = impeller[name];
  if (own !== undefined) return positive(own, `${path}.${name}`);
  return (
    known ?? refuse("unreachable", `${path}.${name}`, "nothing", `a number of your own for this ${nameOf(impeller)}`)
  );
}

const nameOf = ({ kind }: Impeller): string => (kind === "other" ? "impeller" : kind);

/**
 * The shear rate that the gel meets on the whole in a stirred vessel, after Metzner and Otto.
 *
 * $$\dot\gamma = k_s\,N$$
 *
 * Found where flow creeps, and held to work up to Re 100 or so; the constant is one of the impeller and its vessel, not
 * of the gel. At the blades themselves the shear is many times higher.
 *
 * @param input.impeller - The impeller: its own `shearConstant`, or that of its kind.
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
  return result(constantOf(impeller, "shearConstant", "impeller") * positive(speed, "speed"), "shear rate");
}
