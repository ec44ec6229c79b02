import { didYouMean, nearest, refuse, show } from "../guards.js";
import { convertAt } from "./convert.js";
import { plainSpelling } from "./spelling.js";
import { baseUnit, type Dimension, dimensionsWith, factorsOf, showUnit, siName, type Unit, unitsOf } from "./unit.js";

/** A quantity that was read from text. */
export interface ParsedQuantity<D extends Dimension = Dimension> {
  /** The number as it was written. */
  readonly value: number;
  /** Its unit, in the SI spelling. */
  readonly unit: Unit<D>;
}

/** No quantity is written out so long, and its pattern is not tried on a longer text. */
const lettersMax = 200;

// A sign; digits, which spaces may group in threes; decimals after a point; an exponent.
const number = /^([+\-\u2212]?)((?:\d{1,3}(?:\s\d{3})+|\d*)(?:\.\d+)?)(?:e([+\-\u2212]?\d+))?(?![\d.,])/i;
const otherBase = /^[+\-\u2212]?0(?:x[\da-f]|[bo]\d)/i;

/** The number at the start of a text in the parts that it is written in; without digits if there is none. */
export function numberIn(text: string): {
  readonly matched: string;
  readonly sign: "" | "-";
  readonly digits: string;
  readonly exponent: string;
} {
  const [matched = "", sign = "", digits = "", exponent = "0"] = number.exec(text) ?? [];
  return {
    matched,
    sign: sign === "" || sign === "+" ? "" : "-",
    digits: digits.replace(/\s/g, ""),
    exponent: exponent.replace("\u2212", "-").replace("+", ""),
  };
}

/**
 * Reads a quantity such as `"60 kg"`, `"1.2e3 mPa·s"` or `"9 %"`.
 *
 * Takes, beside the spellings of `Unit`: any space or none before the unit (thin, narrow and no-break too), spaces
 * between groups of three digits, U+2212 as minus, both µ, `*`, `.`, `⋅` or a space for `·`, `^2` for `²`, `℃`,
 * lower-case litres, and `J/kg/K` or `J/(kg·°C)` for `J/(kg·K)`.
 *
 * @param text - The quantity: a decimal number with a point, then a unit.
 * @param dimension - What it is a quantity of.
 * @param path - Where it stands, for the fault of the error.
 * @returns The number as written, and its unit in the SI spelling.
 * @throws CalculationError `input` for a decimal comma, a hexadecimal or bare number, a text of more than 200 letters, a unit that is unknown or of
 * another dimension, a temperature below absolute zero; `range` where a double cannot hold it in the base unit.
 * @source bipm-si-brochure section 5.4
 * @example
 * ```ts
 * import { parseQuantity } from "gelwright/units";
 * parseQuantity("1 250 mL", "volume"); // => { value: 1250, unit: "mL" }
 * parseQuantity("2150 J/kg/K", "specificHeat"); // => { value: 2150, unit: "J/(kg·K)" }
 * ```
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D, path = "quantity"): ParsedQuantity<D> {
  const base = baseUnit(dimension);
  if (typeof path !== "string") return refuse("input", "path", show(path), "a text");
  const expect = (expected: string): never => refuse("input", path, show(text), expected, { rule: "not-a-quantity" });
  const wanted = `a decimal number and its unit, such as "12.5 ${base}"`;
  if (typeof text !== "string") return refuse("input", path, show(text), wanted, { rule: "wrong-type" });

  const trimmed = text.trim();
  if (trimmed.length > lettersMax) return expect(`at most ${lettersMax} letters: ${wanted}`);
  if (/\d,\d/.test(trimmed)) return expect(`a decimal point and no comma, such as ${corrected(trimmed)}`);
  const { matched, sign, digits, exponent } = numberIn(trimmed);
  const written = trimmed.slice(matched.length).trim();
  if (!digits || !written || otherBase.test(trimmed)) return expect(wanted);

  const magnitude = Number(`${digits}e${exponent}`);
  if (magnitude === 0 ? /[1-9]/.test(digits) : magnitude === Number.POSITIVE_INFINITY)
    return refuse("range", path, show(text), "a number that a double can hold (about 1e-308 to 1e308)");
  const value = sign === "-" ? -magnitude : magnitude;

  // Most units stand there as the tables have them; the other ways to write one take longer to see through.
  const unit = (siName(dimension, written) ?? siName(dimension, plainSpelling(written))) as Unit<D> | undefined;
  if (!unit) return refuseUnit(text, written, dimension, path);
  convertAt(value, unit, base, path);
  return { value, unit };
}

/**
 * Reads a quantity into the unit in which the kernels calculate: `"85 °F"` into °C, `"9 %"` into 0.09.
 *
 * @param text - The quantity, in any spelling that `parseQuantity` takes.
 * @param dimension - What it is a quantity of.
 * @param path - Where it stands, for the fault of the error.
 * @returns The value [base unit of the dimension].
 * @throws CalculationError as `parseQuantity` does.
 * @source nist-sp811 Appendix B
 * @example
 * ```ts
 * import { readQuantity } from "gelwright/units";
 * readQuantity("2 lb", "mass"); // => 0.90718474
 * ```
 */
export function readQuantity<D extends Dimension>(text: string, dimension: D, path = "quantity"): number {
  const { value, unit } = parseQuantity(text, dimension, path);
  return convertAt(value, unit, baseUnit(dimension), path);
}

/** Says where a unit belongs that is not of the dimension, or which one was probably meant. */
function refuseUnit(text: string, written: string, dimension: Dimension, path: string): never {
  const spelling = plainSpelling(written);
  const near = dimensionsWith(spelling).length > 0 ? undefined : nearest(written, Object.keys(factorsOf(dimension)));
  return refuse(
    "input",
    path,
    `${show(text)}, whose unit is ${showUnit(spelling, written)}`,
    unitsOf(dimension) + didYouMean(near),
    { rule: "unknown-unit", name: written, dimension, ...(near !== undefined && { nearest: near }) },
  );
}

/** The text without its comma: as a point where it parts decimals, as nothing where it parts thousands. */
function corrected(text: string): string {
  const [written] = /[\d.,]*\d/.exec(text) as RegExpExecArray;
  const rewritten = (digits: string): string => show(text.replace(written, digits));
  const [comma, point] = [written.indexOf(","), written.indexOf(".")];
  if (comma !== written.lastIndexOf(",") || point > comma) return rewritten(written.replaceAll(",", ""));
  const decimals = rewritten(written.replaceAll(".", "").replace(",", "."));
  if (!/^[1-9]\d{0,2},\d{3}$/.test(written)) return decimals;
  return `${decimals} or ${rewritten(written.replace(",", ""))}`;
}
