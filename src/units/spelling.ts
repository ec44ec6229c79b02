import { ascii, dimensionsWith } from "./unit.js";

/**
 * The ASCII spelling behind the usual ways to write a unit.
 *
 * Compatibility forms fall together first (`²`, `㎏`, `℃`, the two µ, every kind of space); what is left are the
 * trade's habits: a dot, a space or `*` for a product, `^2`, two slashes in a row, `/°C` for `/K`, lower-case litres.
 */
export function plainSpelling(written: string): string {
  const signs = written
    .replace(/[º˚]/g, "°")
    .normalize("NFKC")
    .replace(/\s+/g, " ")
    .replace(/[.⋅∙•]/g, "*")
    .replace(/\^/g, "")
    .replace(/μ/g, "u")
    .replace(/∆/g, "Δ");
  const [head = "", ...under] = ascii(signs).split("/");
  const joined = under.length > 1 ? `${head}/(${under.join("*")})` : [head, ...under].join("/");
  const spelling = joined.replace(/([*/( ])degC/g, "$1K").replace(/(^|\/)([mu]?)l(?![a-z])/g, "$1$2L");
  return dimensionsWith(spelling).length === 0 ? spelling.replaceAll(" ", "*") : spelling;
}
