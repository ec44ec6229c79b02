import * as gelwright from "gelwright";
import { brokenPromise } from "../support/fuzz.js";
import { validInputsOf } from "../support/valid-inputs.js";
import { damagedTwiceOrMore, frozen } from "./damage.js";
import { randomFrom } from "./random.js";

type Call = (...args: never[]) => unknown;

/** A public function with arguments that it takes. */
export interface Target {
  readonly name: string;
  readonly call: Call;
  readonly valid: readonly (readonly unknown[])[];
  /** Plan and sheet keep what they work out with the jobs and plans they are given; all other arguments are frozen. */
  readonly isFrozen: boolean;
}

/** Every function that the package exports. */
export async function targets(): Promise<readonly Target[]> {
  const found: Target[] = [];
  for (const [room, members] of Object.entries(gelwright)) {
    if (typeof members !== "object") continue;
    const valid = await validInputsOf(room);
    for (const [name, call] of Object.entries(members))
      if (typeof call === "function")
        found.push({
          name: `${room}.${name}`,
          call: call as Call,
          valid: valid[name] ?? [],
          isFrozen: room !== "plan" && room !== "sheet",
        });
  }
  return found;
}

/** What came of some calls: how many were answered and not refused, and where a promise was broken. */
export interface Fuzzed {
  readonly answered: number;
  readonly broken: readonly string[];
}

/** Calls a function a number of times, each time with other damages, and gives every broken promise with the number of its call. */
export function fuzzed({ name, call, valid, isFrozen }: Target, from: number, count: number, seed: number): Fuzzed {
  const broken: string[] = [];
  let answered = 0;
  const counted = (...args: never[]): unknown => {
    const result = call(...args);
    answered++;
    return result;
  };
  for (let i = from; i < from + count; i++) {
    const random = randomFrom(seed + i * 2_654_435_761 + [...name].reduce((sum, c) => sum * 31 + c.charCodeAt(0), 7));
    const damaged = damagedTwiceOrMore(random.of(valid), random);
    const promise = brokenPromise(counted, isFrozen ? frozen(damaged) : damaged);
    if (promise !== undefined) broken.push(`${name}, seed ${seed}, call ${i}: ${promise}`);
  }
  return { answered, broken };
}
