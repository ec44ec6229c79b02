/**
 * What every result of this room carries, as a code.
 *
 * `"qualified-assessor-decides"`: arithmetic on the data given. It is not the assessment that local law asks of a qualified
 * person, and does not replace it.
 */
export type ExposureCaution = "qualified-assessor-decides";
