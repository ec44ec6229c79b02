import { refuse, show } from "../guards.js";

/** What to do outside the range in which a law was measured: refuse, or go on with the law as it stands. */
export type Beyond = "throw" | "extend";

/** Whether to go on beyond the range; anything but the two words is refused. */
export function extending(beyond: Beyond | undefined): boolean {
  if (beyond !== undefined && beyond !== "throw" && beyond !== "extend")
    refuse("input", "beyond", show(beyond), '"throw" or "extend"');
  return beyond === "extend";
}
