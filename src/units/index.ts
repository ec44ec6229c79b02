export { convert, converter } from "./convert.js";
export { formatQuantity } from "./format.js";
export { convertInPlace } from "./in-place.js";
export { massOfVolume, volumeOfMass } from "./mass-and-volume.js";
export { type ParsedQuantity, parseQuantity, readQuantity } from "./parse.js";
export { baseUnit, type Dimension, type DimensionOf, type Quantity, type Unit } from "./unit.js";
