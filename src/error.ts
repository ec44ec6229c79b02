/** Why a calculation refused to answer. */
export type ErrorCode = "input" | "document" | "range" | "unreachable" | "not-converged";

/** What is wrong, for programs: which rule the value breaks. */
export type FaultRule =
  /** Nothing stands where something is needed. */
  | "missing"
  /** A field that there is not. */
  | "unknown-field"
  /** A value of another type: text for a number. */
  | "wrong-type"
  /** Text that is no quantity: no number, no unit, or a decimal comma. */
  | "not-a-quantity"
  /** A unit that there is not, or not of this dimension. */
  | "unknown-unit"
  /** Text that is no amount of a formula's line. */
  | "not-an-amount"
  /** Text that is no price. */
  | "not-a-price"
  /** A number or a list beyond what is allowed. */
  | "out-of-range"
  /** None of the words that are allowed. */
  | "not-one-of"
  /** A name that stands for nothing: of a material, a phase, a premix. */
  | "unknown-name"
  /** A name or a line that is there already. */
  | "duplicate"
  /** Fields that do not go together. */
  | "contradiction"
  /** What is asked for cannot be reached. */
  | "unreachable"
  /** A calculation did not come to an end. */
  | "not-converged"
  /** The value does not do, for the reason that `expected` gives. */
  | "not-allowed";

/** The parts of a fault, for programs. Numbers in a document are in the units of the kernels. */
export interface FaultParameters {
  /** The number that was found. */
  readonly value?: number;
  /** Lowest that is allowed. */
  readonly min?: number;
  /** Highest that is allowed. */
  readonly max?: number;
  /** The name, word or unit that was found. */
  readonly name?: string;
  /** What was probably meant by it. */
  readonly nearest?: string;
  /** The words that are allowed. */
  readonly allowed?: readonly string[];
  /** The dimension that a unit should have. */
  readonly dimension?: string;
}

/** One thing that is wrong: where it stands, what was found there, what is allowed there. */
export interface Fault {
  /** Where: an argument (`viscosity`), or a place in a document (`phases[1].lines[0].amount`). */
  readonly path: string;
  /** What stands there, as text for a human. */
  readonly found: string;
  /** What is allowed there, as text for a human. */
  readonly expected: string;
  /** The same for programs: which rule is broken. */
  readonly rule?: FaultRule;
  /** The parts of it, for programs: what was found, and the ends of what is allowed. */
  readonly parameters?: FaultParameters;
}

const brand: unique symbol = Symbol.for("gelwright.CalculationError") as never;

/** A CalculationError as plain data: what `toJSON` gives and `CalculationError.from` takes. */
export interface CalculationErrorData {
  readonly name: "CalculationError";
  /** Which kind of refusal it is. */
  readonly code: ErrorCode;
  /** The faults as text, for a reader who has no program. */
  readonly message: string;
  /** Everything that was wrong, at once. */
  readonly faults: readonly Fault[];
}

const codes: readonly unknown[] = ["input", "document", "range", "unreachable", "not-converged"] satisfies ErrorCode[];

/** How many faults a message names, and how many letters of each part; `faults` has all of them, in full. */
const namedMax = 100;
const lettersMax = { path: 200, found: 200, expected: 1000 };

function cut(fault: Fault, part: keyof typeof lettersMax): string {
  const max = lettersMax[part];
  return fault[part].length > max ? `${fault[part].slice(0, max)}…` : fault[part];
}

function messageOf(faults: readonly Fault[]): string {
  const lines = faults
    .slice(0, namedMax)
    .map((fault) => `${cut(fault, "path")}: found ${cut(fault, "found")}, expected ${cut(fault, "expected")}`);
  const more = faults.length - namedMax;
  return (more > 0 ? [...lines, `and ${more} more`] : lines).join("\n");
}

/** Whether every fault has its three texts. */
function areFaults(faults: unknown): faults is readonly Fault[] {
  return (
    Array.isArray(faults) &&
    faults.every((fault) => Object.keys(lettersMax).every((part) => typeof fault?.[part] === "string"))
  );
}

/**
 * The error that every function of the library throws, and the only one.
 *
 * `code` says which kind of refusal it is, `faults` lists everything that was wrong at once, and
 * the message names the first hundred faults, each with its place and what is allowed. `instanceof` holds across the
 * ESM build, the CJS build and every subpath, because it looks for a registered symbol and not for
 * the identity of a class.
 *
 * A structured clone (`postMessage`, a store in a browser) keeps the message of an error and nothing else. Send
 * `error.toJSON()`, or its JSON, and make the error again with `CalculationError.from`.
 *
 * @example
 * ```ts
 * import { CalculationError } from "gelwright/error";
 * const fault = { path: "power", found: "-5", expected: "a finite number above 0 W" };
 * const error = new CalculationError("input", [fault]);
 * error.message; // => "power: found -5, expected a finite number above 0 W"
 * CalculationError.from(structuredClone(error.toJSON())) instanceof CalculationError; // => true
 * ```
 */
export class CalculationError extends Error {
  /** Always `CalculationError`. */
  override readonly name = "CalculationError";
  /** Which kind of refusal it is. */
  readonly code: ErrorCode;
  /** Everything that was wrong, at once. */
  readonly faults: readonly Fault[];

  /** An error whose message names each of the faults on a line of its own, up to a hundred. */
  constructor(code: ErrorCode, faults: readonly Fault[]) {
    super(messageOf(faults));
    this.code = code;
    this.faults = faults;
    Object.defineProperty(this, brand, { value: true });
  }

  /** True for every CalculationError, whichever copy of the library threw it; for a class derived from it, only its own. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    // biome-ignore lint/complexity/noThisInStatic: a derived class inherits this method, and `this` is then that class.
    if (this !== CalculationError) return super[Symbol.hasInstance](value);
    return typeof value === "object" && value !== null && brand in value;
  }

  /** The error as plain data, for another thread, a store or a log. */
  toJSON(): CalculationErrorData {
    const { name, code, message, faults } = this;
    return { name, code, message, faults };
  }

  /**
   * Makes the error again from what `toJSON` gave, however that was sent or stored.
   *
   * @throws CalculationError `input` if it is something else.
   */
  static from(data: CalculationErrorData): CalculationError {
    const { name, code, faults }: Partial<CalculationErrorData> = Object(data);
    if (name === "CalculationError" && codes.includes(code) && areFaults(faults))
      return new CalculationError(code as ErrorCode, faults);
    const expected = "what toJSON of a CalculationError gives";
    throw new CalculationError("input", [{ path: "data", found: typeof data, expected, rule: "not-allowed" }]);
  }
}
