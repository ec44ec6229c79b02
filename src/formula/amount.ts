import { CalculationError } from "../error.js";
import { type Dimension, readQuantity } from "../units/index.js";
import type { Findings } from "./document.js";

/** An amount as a line states it: a share of the whole, a measure that divides what the shares leave, or the rest. */
export interface Amount {
  readonly basis: "share" | "parts" | "mass" | "rest";
  /** Mass fraction, number of parts, mass [kg], or 0 for the rest. */
  readonly value: number;
}

/** Whether an amount is the rest to 100 %: `"q.s."`. */
export function isRest(text: string): boolean {
  return /^q\.? ?s\.?$/i.test(text.trim());
}

/** Reads `"9 %"`, `"500 ppm"`, `"2 parts"`, `"45 g"` or `"q.s."`; notes a fault and returns nothing for anything else. */
export function readAmount(text: string, path: string, findings: Findings): Amount | undefined {
  const plain = text.trim();
  if (isRest(plain)) return { basis: "rest", value: 0 };
  const parts = /^(.*\S)\s*parts?$/.exec(plain)?.[1];
  // Percentages are by far the most common, so they are tried first: each try that fails builds an error.
  const amount = parts
    ? tryRead(`${parts} kg`, "mass", "parts")
    : (tryRead(plain, "massFraction", "share") ?? tryRead(plain, "mass", "mass"));
  if (amount && amount.value > 0) return amount;
  // The parser knows best what is wrong with a number; here it only has to be known that nothing fits.
  findings.note(
    path,
    text,
    'an amount above zero: "9 %", "500 ppm", "2 parts", "45 g" or "q.s." (decimal point, no comma)',
    "not-an-amount",
  );
  return undefined;
}

function tryRead(text: string, dimension: Dimension, basis: Amount["basis"]): Amount | undefined {
  try {
    return { basis, value: readQuantity(text, dimension) };
  } catch (error) {
    if (error instanceof CalculationError) return undefined;
    throw error;
  }
}
