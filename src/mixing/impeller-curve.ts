import { positive, record, refuse } from "../guards.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import { knownOf, nameOf } from "./impeller-constants.js";
import * as known from "./known.js";
import type { PowerCurve } from "./power-curve.js";
import { compilePower } from "./power-number.js";
import { ribbonConstant } from "./ribbon-power-constant.js";

/** Diameter of a helical ribbon over that of its vessel, where no vessel is told. */
const usualShare = 0.92;

/** Angle of an upright blade to the horizontal [°]. */
const upright = 90;

/** The shape of blades in a vessel, where both are told; an anchor is a wide paddle of two blades. What stands out of the filling moves none of it: upright blades and arms end at its level. */
function bladesIn(impeller: Impeller, vessel: StirredVessel, at: string): PowerCurve | undefined {
  const path = `${at}impeller`;
  const around = `${at}vessel`;
  const { baffles, baffleWidth } = record(vessel, around);
  const diameter = diameterOf(vessel, around);
  const level = positive(vessel.level, `${around}.level`);
  const inVessel = {
    law: "kamei-hiraoka",
    diameterToVessel: impeller.diameter / diameter,
    levelToVessel: level / diameter,
    ...(baffles === undefined ? {} : { baffles }),
    ...(baffleWidth === undefined ? {} : { baffleToVessel: positive(baffleWidth, `${around}.baffleWidth`) / diameter }),
  } as const;
  if (impeller.kind === "anchor" && impeller.armHeight !== undefined) {
    const height = Math.min(positive(impeller.armHeight, `${path}.armHeight`), level);
    return { ...inVessel, blades: 2, bladeAngle: upright, widthToDiameter: height / impeller.diameter };
  }
  if (impeller.kind === "flat-blade") {
    const width = Math.min(positive(impeller.bladeWidth, `${path}.bladeWidth`), level);
    return { ...inVessel, blades: impeller.blades, bladeAngle: upright, widthToDiameter: width / impeller.diameter };
  }
  if (impeller.kind !== "pitched-blade turbine") return undefined;
  const { blades = 4, bladeAngle = 45, bladeWidth = impeller.diameter / 5 } = impeller;
  const widthToDiameter = positive(bladeWidth, `${path}.bladeWidth`) / impeller.diameter;
  return { ...inVessel, blades, bladeAngle, widthToDiameter };
}

function diameterOf(vessel: StirredVessel, path: string): number {
  return positive(record(vessel, path).diameter, `${path}.diameter`);
}

/**
 * The power curve that holds for an impeller: its own; else from the shape of its blades in this vessel, or of its
 * ribbons; else from the constants of its kind, for a vessel with baffles. Flat upright blades and the arms of an anchor
 * end at the level of the filling: what stands out of it draws no power. `powerBandOf` says how sure it is.
 *
 * @param input.impeller - The impeller, as plain data.
 * @param input.vessel - The vessel: for flat and pitched blades and for an anchor with `armHeight`, whose curve it then
 *   gives, and for a helical ribbon with `starts`, which without one has 0.92 of it.
 * @returns The power curve, as plain data for `powerNumber`.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where nothing is known of the kind,
 *   so that its power curve is the caller's to give.
 * @source furukawa-2012 for blades and for an anchor as a wide paddle; rieger-1988 for ribbons; for the constants see `impellerConstants`
 * @example
 * ```ts
 * import { powerCurveOf, powerNumber } from "gelwright/mixing";
 * const impeller = { kind: "pitched-blade turbine", diameter: 0.2 } as const;
 * powerCurveOf({ impeller }); // => { law: "sum", laminarPowerConstant: 44, powerNumber: 1.37 }
 * const power = powerCurveOf({ impeller, vessel: { diameter: 0.6, level: 0.6 } });
 * powerNumber({ power, reynolds: 1 }); // => 44.59518268097394
 * ```
 */
export function powerCurveOf(input: { readonly impeller: Impeller; readonly vessel?: StirredVessel }): PowerCurve {
  const { impeller, vessel } = record(input, "input", known.powerCurveOf);
  const curve = curveOf(impeller, vessel);
  compilePower(curve, "impeller.power", true);
  return curve;
}

/** As `powerCurveOf`; where impeller and vessel stand within something else, faults name that first. */
export function curveOf(impeller: Impeller, vessel: StirredVessel | undefined, at = ""): PowerCurve {
  const path = `${at}impeller`;
  const known = knownOf(impeller, path);
  const [laminarPowerConstant, powerNumber] = [known.laminarPowerConstant?.value, known.powerNumber?.value];
  const blades = vessel === undefined ? undefined : bladesIn(impeller, vessel, at);
  if (impeller.power !== undefined) return impeller.power;
  if (blades !== undefined) return blades;
  if (impeller.kind === "helical ribbon" && impeller.starts !== undefined) {
    const around = vessel === undefined ? impeller.diameter / usualShare : diameterOf(vessel, `${at}vessel`);
    const constant = ribbonConstant({ ...impeller, starts: impeller.starts }, around, path);
    return { law: "laminar", laminarPowerConstant: constant };
  }
  if (laminarPowerConstant !== undefined && powerNumber !== undefined)
    return { law: "sum", laminarPowerConstant, powerNumber };
  if (powerNumber !== undefined) return { law: "turbulent", powerNumber };
  if (laminarPowerConstant !== undefined) return { law: "laminar", laminarPowerConstant };
  const wanted = `a power curve of your own for this ${nameOf(impeller)}`;
  return refuse(
    "unreachable",
    `${path}.power`,
    "nothing",
    impeller.kind === "flat-blade" ? `${wanted}, or the vessel around it` : wanted,
  );
}
