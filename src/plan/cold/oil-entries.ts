import { type Findings, join } from "../../formula/document.js";

/** The oil fraction of one entry. */
export function readOil(text: string | undefined, path: string, findings: Findings): number {
  const oil = findings.quantity(text, "volumeFraction", path, 0);
  if (oil > 1) findings.note(path, text, "100 % v/v at most");
  return oil;
}

/** Entries stand in rising order of oil. */
export function checkRising(oils: readonly number[], path: string, findings: Findings): void {
  oils.forEach((oil, i) => {
    if (oil <= (oils[i - 1] ?? -1))
      findings.note(join(join(path, i), "oil"), `${oil}`, "more oil than in the entry before");
  });
}
