import { fraction, list, positive, refuse, variant } from "../guards.js";
import * as known from "./known.js";
import { each, text } from "./named.js";

/** Where in a vessel a film is left. */
export type FilmPart = "wall" | "bottom";

/** A loss that grows with what is in the vessel: evaporation, the film on a wall that the batch wets. */
export interface ProportionalAllowance {
  readonly kind: "proportional";
  readonly name: string;
  /** Where it is left, if it is a film. */
  readonly part?: FilmPart;
  /** The part [0 to below 1] that is lost of each line it takes from. */
  readonly fraction: number;
  /** Names of the lines it takes from: what evaporates, or what is in the vessel by then. All where left out. */
  readonly lines?: readonly string[];
}

/** A loss that is the same in every batch: hold-up of a pipe or pump, samples, the film on a flat bottom. */
export interface FixedAllowance {
  readonly kind: "fixed";
  readonly name: string;
  /** Where it is left, if it is a film. */
  readonly part?: FilmPart;
  /** Mass [kg] lost, in the composition that the lines it takes from have by then. */
  readonly mass: number;
  /** Names of the lines it takes from: what is in the vessel by then. All where left out. */
  readonly lines?: readonly string[];
}

/** A loss between weighing and pack. A list of them stands in the order of the process. */
export type Allowance = ProportionalAllowance | FixedAllowance;

/** What the caller calls a loss. */
export interface NamedLoss {
  readonly name: string;
  /** Where it is left, if it is a film. */
  readonly part?: FilmPart;
}

/** A checked allowance with the members of the stock that it takes from. */
export interface Taking<T> {
  readonly called: NamedLoss;
  readonly at: string;
  readonly kind: Allowance["kind"];
  /** The fraction or the mass, by kind. */
  readonly amount: number;
  readonly from: readonly T[];
}

/** Checks allowances and finds for each the lines that it takes from. */
export function takings<T extends { readonly name: string }>(
  allowances: readonly Allowance[],
  stock: readonly T[],
): readonly Taking<T>[] {
  return each(allowances, "allowances", (allowance, at) => taking(allowance, at, stock), 0);
}

function taking<T extends { readonly name: string }>(allowance: Allowance, at: string, stock: readonly T[]): Taking<T> {
  variant(allowance, at, "kind", known.allowance);
  const { kind, name, part, lines } = allowance;
  if (part !== undefined && part !== "wall" && part !== "bottom")
    refuse("input", `${at}.part`, part, '"wall" or "bottom"');
  const called = { name, ...(part && { part }) };
  const names =
    lines === undefined ? undefined : list(lines, `${at}.lines`, 1).map((line, i) => text(line, `${at}.lines[${i}]`));
  const stranger = names?.find((line) => !stock.some((member) => member.name === line));
  if (stranger !== undefined) refuse("input", `${at}.lines`, stranger, "the name of a line of the batch");
  const from = names ? stock.filter((member) => names.includes(member.name)) : stock;
  if (kind === "fixed") return { kind, called, at, from, amount: positive(allowance.mass, `${at}.mass`) };
  if (kind !== "proportional") refuse("input", `${at}.kind`, kind, '"proportional" or "fixed"');
  const amount = fraction(allowance.fraction, `${at}.fraction`);
  if (amount === 1) refuse("input", `${at}.fraction`, amount, "a fraction below 1");
  return { kind, called, at, from, amount };
}
