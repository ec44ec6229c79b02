import type { Fault } from "gelwright/error";

/** What is wrong, without its place. */
export function inWords({ found, expected }: Pick<Fault, "found" | "expected">): string {
  return `found ${found || "nothing"}, expected ${expected}`;
}
