import { refuse } from "../guards.js";

/** The Reynolds number, if the drag law holds there or is to be extended. */
export function withinReynolds(reynolds: number, limit: number, law: string, extended: boolean): number {
  return extended || reynolds < limit
    ? reynolds
    : refuse("range", "reynolds", reynolds, `less than ${limit} for ${law}, or beyond: "extend"`);
}
