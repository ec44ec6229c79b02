/**
 * What every result of this room carries, as a code.
 *
 * - `"responsible-person-decides"`: arithmetic on the data given. What may stand on a label, and whether a product may be
 *   sold, is law that differs by place and date, and is decided by the person who answers for the product.
 * - `"certifier-decides"`: arithmetic on the classes given. Whether an ingredient belongs to a class, and whether a
 *   product is certified, is decided by the certifier.
 */
export type LabellingCaution = "responsible-person-decides" | "certifier-decides";
