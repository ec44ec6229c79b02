import { list, positive, record, refuse, show } from "../guards.js";
import { increment, multiple, stepsUp } from "../numeric/decimal.js";
import * as known from "./known.js";
import type { LegalGrade, LegalSource } from "./legal-table.js";

/** How far short a single pack may be, by its nominal quantity, as the law prints it. */
export interface ErrorTable extends LegalSource {
  /** Nominal quantity from which the table holds [g or mL]. */
  readonly nominalMin: number;
  /** In rising order; of two rows that meet, the lower one holds at the end they share. */
  readonly rows: readonly {
    /** Up to and with this nominal quantity [g or mL]; `null` where there is no end. */
    readonly nominalMax: number | null;
    /** As a share of the nominal quantity, 0.09 where the law prints 9 %; either this or `error`. */
    readonly errorRelative?: number;
    /** As a quantity [g or mL]; either this or `errorRelative`. */
    readonly error?: number;
    /** A relative row may be rounded up to another multiple than the others [g or mL]. */
    readonly roundUpTo?: number;
  }[];
  /** Relative rows are rounded up to a multiple of this [g or mL]; left out where the act says nothing of it. */
  readonly roundUpTo?: number;
}

/** A tolerable error, and what it was taken from. */
export interface TolerableError {
  /** [kg] of a mass, [m³] of a volume. */
  readonly error: number;
  readonly act: string;
  readonly grade: LegalGrade;
}

/**
 * The tolerable error of a pack: how far a single one may be short, by the law's table.
 *
 * $$T = Q_n\,p \ \text{rounded up, or a fixed quantity, by the row of } Q_n$$
 *
 * There is no default table: law differs by place and date. A table that is graded `from memory` has to be held against
 * the act before anybody relies on it, and the grade comes back with the result.
 *
 * @param input.table - The table that holds where and when the packs are sold.
 * @param input.nominal - Nominal quantity: [kg] by mass, [m³] by volume at 20 °C; within the table.
 * @param input.by - `"mass"` or `"volume"`, as the label has it.
 * @returns The tolerable error [kg or m³], with act and grade.
 * @throws CalculationError `input` where an argument is out of range or the table is not whole, `range` where the nominal
 *   quantity lies outside the table.
 * @source definition; each table names its own source
 * @example
 * ```ts
 * import { tolerableError, tolerableErrorsEec1976 } from "gelwright/packing";
 * const table = tolerableErrorsEec1976;
 * tolerableError({ table, nominal: 0.05, by: "mass" }).error; // => 0.0045
 * tolerableError({ table, nominal: 150e-6, by: "volume" }).error; // => 6.8e-6
 * tolerableError({ table, nominal: 0.05, by: "mass" }).grade; // => "second-hand"
 * ```
 */
export function tolerableError(input: {
  readonly table: ErrorTable;
  readonly nominal: number;
  readonly by: "mass" | "volume";
}): TolerableError {
  const { table, nominal, by } = record(input, "input", known.tolerableError);
  const { nominalMin, rows, roundUpTo, act, grade } = record(table, "table", known.errorTable);
  if (by !== "mass" && by !== "volume") refuse("input", "by", show(by), '"mass" or "volume"');
  if (typeof act !== "string" || act === "") refuse("input", "table.act", show(act), "a text");
  if (grade !== "first-hand" && grade !== "second-hand" && grade !== "from memory")
    refuse("input", "table.grade", show(grade), '"first-hand", "second-hand" or "from memory"');
  // The law counts in g and mL, and its limits are decimal, so the decimal point is moved: 0.15 kg is 150 g exactly.
  const places = by === "mass" ? 3 : 6;
  const quantity = shifted(nominal, places, "nominal");
  const min = positive(nominalMin, "table.nominalMin");
  const row = list(rows, "table.rows", 1).find((one, i) => {
    const { nominalMax } = record(one, `table.rows[${i}]`, known.errorTableRow);
    return nominalMax === null || quantity <= positive(nominalMax, `table.rows[${i}].nominalMax`);
  });
  if (quantity < min || !row) return refuse("range", "nominal", `${quantity} g or mL`, `a quantity within ${act}`);
  const { errorRelative, error } = row;
  if ((errorRelative === undefined) === (error === undefined))
    refuse("input", "table.rows", "a row with both or neither", "errorRelative or error in each row");
  const printed =
    error === undefined
      ? roundedUp(quantity * positive(errorRelative, "errorRelative"), row.roundUpTo ?? roundUpTo)
      : positive(error, "error");
  return { error: shifted(printed, -places, "error"), act, grade };
}

/** A positive number with its decimal point so many places further to the right. */
function shifted(value: number, places: number, path: string): number {
  const { digits, exponent } = increment(value, path);
  return multiple(1, { digits, exponent: exponent + places }, path);
}

function roundedUp(value: number, step: number | undefined): number {
  if (step === undefined) return value;
  return multiple(stepsUp(value / positive(step, "table.roundUpTo")), increment(step, "table.roundUpTo"), "error");
}
