import { refuse, show } from "../guards.js";
import { gravity } from "../laws/gravity.js";

/** What gravity pulls along a slope with, on each kilogram [N]: the slope in degrees, from above 0 to a wall's 90. */
export function pullAlong(inclination: number | undefined): number {
  const slope = inclination ?? 90;
  if (!(typeof slope === "number" && slope > 0 && slope <= 90))
    refuse("input", "inclination", show(slope), "degrees above 0, up to 90 for a wall");
  return gravity * Math.sin((slope * Math.PI) / 180);
}
