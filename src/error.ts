/** Why a calculation refused to answer. */
export type ErrorCode = "input" | "document" | "range" | "unreachable" | "not-converged";

/** One thing that is wrong: where it stands, what was found there, what is allowed there. */
export interface Fault {
  /** Where: an argument (`viscosity`), or a place in a document (`phases[1].lines[0].amount`). */
  readonly path: string;
  /** What stands there, as text for a human. */
  readonly found: string;
  /** What is allowed there, as text for a human. */
  readonly expected: string;
}

const brand: unique symbol = Symbol.for("gelwright.CalculationError") as never;

/**
 * The error that every function of the library throws, and the only one.
 *
 * `code` says which kind of refusal it is, `faults` lists everything that was wrong at once, and
 * the message names each fault with its place and what is allowed. `instanceof` holds across the
 * ESM build, the CJS build and every subpath, because it asks for a registered symbol and not for
 * the identity of a class.
 *
 * @example
 * ```ts
 * import { CalculationError } from "gelwright/error";
 * const fault = { path: "power", found: "-5", expected: "a finite number above 0 W" };
 * new CalculationError("input", [fault]).message; // => "power: found -5, expected a finite number above 0 W"
 * ```
 */
export class CalculationError extends Error {
  /** Always `CalculationError`. */
  override readonly name = "CalculationError";
  /** Which kind of refusal it is. */
  readonly code: ErrorCode;
  /** Everything that was wrong, at once. */
  readonly faults: readonly Fault[];

  /** An error whose message names each of the faults on a line of its own. */
  constructor(code: ErrorCode, faults: readonly Fault[]) {
    super(faults.map((f) => `${f.path}: found ${f.found}, expected ${f.expected}`).join("\n"));
    this.code = code;
    this.faults = faults;
    Object.defineProperty(this, brand, { value: true });
  }

  /** True for every CalculationError, whichever copy of the library threw it. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return typeof value === "object" && value !== null && brand in value;
  }
}
