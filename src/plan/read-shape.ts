import { aboveZero, type Draft, type Findings } from "../formula/document.js";
import { type VesselBottom, volumeAtLevel } from "../mixing/index.js";
import type { Vessel } from "./job.js";
import type { VesselDocument } from "./vessel-document.js";

/** What of a vessel is no plain cylinder: its bottom, and its baffles. */
export function readShape(
  { bottom, baffles }: Draft<VesselDocument>,
  diameter: number,
  findings: Findings,
): Pick<Vessel, "bottom" | "baffles"> {
  return {
    ...(bottom && { bottom: readBottom(bottom, diameter, findings) }),
    ...(baffles && { baffles: readBaffles(baffles, diameter, findings) }),
  };
}

function readBottom(
  draft: Draft<NonNullable<VesselDocument["bottom"]>>,
  diameter: number,
  findings: Findings,
): VesselBottom | undefined {
  const before = findings.faults.length;
  const bottom = bottomOf(draft, findings);
  // The kernel knows which shapes there are; it is asked only for what has been sound so far.
  if (bottom && diameter > 0 && findings.faults.length === before)
    findings.attempt(() => volumeAtLevel({ vessel: { diameter, bottom }, level: 0 }));
  return bottom;
}

function bottomOf(draft: Draft<NonNullable<VesselDocument["bottom"]>>, findings: Findings): VesselBottom | undefined {
  switch (draft.shape) {
    case "cone":
    case "ellipsoidal":
      return {
        shape: draft.shape,
        depth: findings.quantity(draft.depth, "length", "vessel.bottom.depth", aboveZero),
      };
    case "dished": {
      const { crownToDiameter, knuckleToDiameter } = draft;
      return {
        shape: "dished",
        ...(crownToDiameter !== undefined && { crownToDiameter }),
        ...(knuckleToDiameter !== undefined && { knuckleToDiameter }),
      };
    }
    case "flat":
      return { shape: "flat" };
    default:
      return undefined;
  }
}

function readBaffles(
  draft: Draft<NonNullable<VesselDocument["baffles"]>>,
  diameter: number,
  findings: Findings,
): Vessel["baffles"] {
  const width = findings.quantity(draft.width, "length", "vessel.baffles.width", aboveZero);
  if (width >= diameter / 2)
    findings.note("vessel.baffles.width", draft.width, "less than half the diameter of the vessel");
  return { count: draft.count ?? Number.NaN, width };
}
