import { type Segment, vesselSegment } from "../heat/index.js";
import { by, remembered } from "./unknown.js";

/** One segment of a vessel that is heated, cooled or left to itself. */
export type VesselSegment = Extract<Segment, { readonly kind: "vessel" }>;

/** Where a segment ends, and when. */
export const endOf: (segment: VesselSegment) => { readonly temperatureEnd: number; readonly duration: number } =
  remembered((segment: VesselSegment) => by("heat-balance", () => vesselSegment(segment)));

/** A hold at one temperature. */
export function heldAt(temperature: number, duration: number): readonly Segment[] {
  return [{ kind: "ramp", temperatureStart: temperature, temperatureEnd: temperature, duration }];
}
