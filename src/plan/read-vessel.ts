import { type Draft, type Findings, join } from "../formula/document.js";
import { volumeAtLevel } from "../mixing/index.js";
import type { Vessel } from "./documents/vessel.js";
import { lossOf } from "./loss.js";
import { checkStirrer } from "./read-stirrer.js";

/** What of a vessel needs several fields. */
export function checkVessel(draft: Draft<Vessel>, findings: Findings): void {
  const at = (...keys: string[]): string => keys.reduce(join, "vessel");
  const { workingVolume, diameter, bottom, baffles, heater, heatedWall, jacket, stirrer, coolingCurve } = draft;
  if (workingVolume?.min !== undefined && workingVolume.max !== undefined && workingVolume.min > workingVolume.max)
    findings.note(
      at("workingVolume", "min"),
      `${workingVolume.min} m³`,
      `no more than ${workingVolume.max} m³, the max`,
    );
  if (bottom && diameter !== undefined && !findings.holds(at("bottom")))
    findings.attempt(() => volumeAtLevel({ vessel: { diameter, bottom: bottom as never }, level: 0 }));
  if (baffles?.width !== undefined && diameter !== undefined && baffles.width >= diameter / 2)
    findings.note(at("baffles", "width"), `${baffles.width} m`, "less than half the diameter of the vessel");
  if (stirrer) checkStirrer(stirrer, draft, at("stirrer"), findings);
  const loss = ["heatLoss", "coolingCurve", "surfaces"].filter((key) => draft[key as keyof typeof draft] !== undefined);
  if (loss.length > 1) findings.note("vessel", loss.join(" and "), "one of heatLoss, coolingCurve and surfaces");
  else if (coolingCurve && !findings.holds("vessel"))
    findings.attempt(() => lossOf(draft as Vessel), at("coolingCurve", "readings"));
  if (heater?.temperatureMax !== undefined && !heatedWall && !findings.took(at("heatedWall")))
    findings.note(
      at("heater", "temperatureMax"),
      `${heater.temperatureMax} °C`,
      "vessel.heatedWall beside it, through which the heat passes",
    );
  if (heatedWall?.coefficient !== undefined && heatedWall.source === undefined)
    findings.note(at("heatedWall", "source"), "nothing", "where the coefficient comes from", "missing");
  if (!jacket) return;
  const { conductance, area, insideCoefficient, outsideCoefficient, source } = jacket;
  const isOpen = conductance === undefined && (area === undefined || outsideCoefficient === undefined);
  if (isOpen && !findings.holds(at("jacket")))
    findings.note(
      at("jacket"),
      "no conductance",
      "a conductance, or area and outsideCoefficient to find it from",
      "missing",
    );
  if ((insideCoefficient ?? outsideCoefficient) !== undefined && source === undefined)
    findings.note(at("jacket", "source"), "nothing", "where the coefficients come from", "missing");
}
