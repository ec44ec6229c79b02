/**
 * What every result of this room carries, as a code: words stand in `sheet`.
 *
 * `"qualified-assessor-decides"`: arithmetic for a qualified person's assessment under local law, which it is no part of
 * and does not replace.
 */
export type ExposureCaution = "qualified-assessor-decides";
