export { type CoolingVessel, coolingSegment } from "./cooling-segment.js";
export { type SegmentEnd, type SegmentResult, transientSegment } from "./segment.js";
export { temperatureAfter } from "./temperature-after.js";
export type { TemperatureHistory } from "./temperature-history.js";
export type { SegmentInput } from "./track.js";
