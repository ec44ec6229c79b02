import { type Impeller, type PowerCurve, type StirredVessel, stirringShearRate } from "../mixing/index.js";
import { attempt } from "./attempt.js";
import type { Stirrer, Vessel } from "./job.js";

/** The stirrer as the kernels take it. Of a kind that they do not know only what the document states counts. */
export function impellerOf(stirrer: Stirrer): Impeller {
  const { kind, diameter, metznerOttoConstant, blades, bladeAngle, bladeWidth, armHeight } = stirrer;
  const power = statedPower(stirrer);
  const own = {
    diameter,
    ...(power === undefined ? {} : { power }),
    ...(metznerOttoConstant === undefined ? {} : { metznerOttoConstant }),
  };
  switch (kind) {
    case "propeller":
    case "rotor-stator":
      return { kind, ...own };
    case "helical ribbon":
      return { kind: "helical ribbon", ...own };
    case "disperser disc":
      return { kind: "disperser disc", ...own };
    case "anchor":
      return { kind, ...own, ...(armHeight !== undefined && { armHeight }) };
    case "pitched-blade turbine":
      return {
        kind: "pitched-blade turbine",
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

function statedPower({ laminarPowerConstant, powerNumber }: Stirrer): PowerCurve | undefined {
  if (laminarPowerConstant !== undefined && powerNumber !== undefined)
    return { law: "sum", laminarPowerConstant, powerNumber };
  if (laminarPowerConstant !== undefined) return { law: "laminar", laminarPowerConstant };
  return powerNumber === undefined ? undefined : { law: "turbulent", powerNumber };
}

/** What a document is to state where the power of its kind of stirrer is known to nobody. */
export function powerWanted(stirrer: Stirrer | undefined): string {
  const flat = stirrer?.kind === "paddle" || stirrer?.kind === "flat-blade turbine";
  return `state laminarPowerConstant and powerNumber${flat ? ", or blades and bladeWidth" : ""}`;
}

/** What is to be said where the shear of a kind of stirrer is known to nobody. */
export function noShear(stirrer: Stirrer | undefined): string {
  return `nothing is known of the shear of this kind of stirrer (${stirrer?.kind}): state metznerOttoConstant`;
}

/** The mean shear rate that a stirrer brings [1/s], or that nothing is known of it. */
export function shearRateOf(stirrer: Stirrer, speed: number): number | string {
  return attempt(
    () => stirringShearRate({ impeller: impellerOf(stirrer), speed }),
    () => noShear(stirrer),
  );
}

/** The vessel around the stirrer, from which blades have their power; kinds without blades know no vessel. */
export function vesselAround({ diameter, baffles }: Vessel, level: number): StirredVessel {
  return { diameter, level, ...(baffles && { baffles: baffles.count, baffleWidth: baffles.width }) };
}
