import { type Impeller, type StirredVessel, stirringShearRate } from "../mixing/index.js";
import type { Ends } from "./contents.js";
import type { Stirrer, Vessel } from "./documents/vessel.js";
import type { Job } from "./job.js";
import type { Readings } from "./readings.js";
import { by, remembered, stated } from "./unknown.js";

/** The stirrer of a job. */
export function stirrerOf({ vessel }: Job): Stirrer {
  return stated(vessel.stirrer, "vessel-stirrer", { of: vessel.name });
}

/** The stirrer as the kernels take it. Of a kind that they do not know, only what the document states counts. */
export const impellerOf: (stirrer: Stirrer) => Impeller = remembered((stirrer: Stirrer): Impeller => {
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
});

/** What a drive passes on, if it is not stated: a worm gear 0.7, a shaft without gear all of it; common practice, no source. */
const usualEfficiency = { min: 0.7, max: 1 };

/** Power of the motor at the stirrer's shaft [W], between the ends of what its drive may pass on. */
export function motorPower(job: Job): Ends {
  const { motor, kind } = stirrerOf(job);
  const { power, efficiency } = stated(motor, "stirrer-motor", { of: kind });
  const { min, max } = efficiency === undefined ? usualEfficiency : { min: efficiency, max: efficiency };
  return { min: power * min, max: power * max };
}

/** The vessel around the stirrer, from which blades have their power. */
export function vesselAround({ diameter, baffles }: Vessel, level: number): StirredVessel {
  return { diameter, level, ...(baffles && { baffles: baffles.count, baffleWidth: baffles.width }) };
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
