import { Script } from "node:vm";
import { type Check, rankOf } from "../support/check.js";
import type { Rooms } from "../support/look-up.js";
import { readChecks, runCheck } from "../support/run-check.js";
import type { Instrumented } from "./instrumented.js";
import { type Change, type Mutant, mutantsOf } from "./mutants.js";

/** What the checks make of the changes of one constant. */
export interface Proof {
  /** The surest check that the change by 1 % fails. */
  readonly by: Check | undefined;
  /** The changes that fail no check. */
  readonly survives: readonly Change[];
}

/** Every check, the surest first. */
export const checksByRank: readonly Check[] = readChecks()
  .flatMap(({ checks }) => checks)
  .sort((a, b) => rankOf(a) - rankOf(b));

const task = new Script("globalThis.taskOfMutation()");

/** Runs a task for ten seconds at most: a changed constant may let a loop go on for ever. */
function inTime<T>(run: () => T): T {
  Object.assign(globalThis, { taskOfMutation: run });
  return task.runInThisContext({ timeout: 10_000 }) as T;
}

/** Whether a check holds on a library; a refusal is no result, and neither is a loop without end. */
export function holds(rooms: Rooms, check: Check): boolean {
  try {
    return inTime(() => runCheck(rooms, check)).every((deviation) => deviation.holds);
  } catch {
    return false;
  }
}

/** The library with one constant changed; `undefined` if it does not even load. */
export function changed({ shipped, make }: Instrumented, { constant, value }: Mutant): Rooms | undefined {
  const values = shipped.slice();
  values[constant] = value;
  try {
    return inTime(() => make(values));
  } catch {
    return undefined;
  }
}

/** Which checks could see a change of a constant. */
export interface Reach {
  readonly checksOf: (index: number) => readonly Check[];
}

/** What a check compares, as text: the same text, the same outcome. */
function outcome(rooms: Rooms, check: Check): string {
  try {
    return JSON.stringify(inTime(() => runCheck(rooms, check)).map(({ actual }) => actual));
  } catch {
    return "refused";
  }
}

/**
 * Finds which checks a constant reaches. A coefficient is read while a check runs. What is read before, while the library
 * is made, has left no trace by then: all the constants of its declaration are moved at once, each a little differently,
 * and every check whose outcome moves sees it.
 */
export function reachOf(library: Instrumented): Reach {
  const { constants, shipped } = library;
  let reads = new Set<number>();
  const recorder = new Proxy(shipped, {
    get: (values, key) => {
      reads.add(Number(key));
      return Reflect.get(values, key);
    },
  });
  const rooms = library.make(recorder);
  const early = reads;
  const before = checksByRank.map((check) => {
    reads = new Set();
    return { check, text: outcome(rooms, check), reads };
  });
  const moved = new Map<string, readonly Check[]>();
  const declarationOf = (index: number) => `${constants[index]?.file}#${constants[index]?.name}`;
  const seen = (declaration: string): readonly Check[] => {
    const known = moved.get(declaration);
    if (known) return known;
    const values = shipped.map((value, index) => {
      const factor = 1.01 + (index % 97) / 1e4;
      if (declarationOf(index) !== declaration || typeof value === "function") return value;
      return typeof value === "number" ? value * factor : `${value}*${factor}`;
    });
    const other = library.make(values);
    const found = before.filter(({ check, text }) => outcome(other, check) !== text);
    const checks = found.map(({ check }) => check);
    moved.set(declaration, checks);
    return checks;
  };
  return {
    checksOf: (index) =>
      early.has(index)
        ? seen(declarationOf(index))
        : before.filter((one) => one.reads.has(index)).map(({ check }) => check),
  };
}

/** Changes one constant in each way and runs the checks that could see it. */
export function prove(library: Instrumented, reach: Reach, index: number): Proof {
  const could = reach.checksOf(index);
  const [small, ...blunders] = mutantsOf(library.constants, index);
  if (!small) throw new Error(`no constant ${index}`);
  const by = catches(library, small, could);
  const first = by === undefined ? could : [by, ...could.filter((check) => check !== by)];
  return {
    by,
    survives: [
      ...(by === undefined ? [small.change] : []),
      ...blunders.filter((mutant) => catches(library, mutant, first) === undefined).map(({ change }) => change),
    ],
  };
}

/** The first check that a change fails. */
function catches(library: Instrumented, mutant: Mutant, checks: readonly Check[]): Check | undefined {
  const rooms = changed(library, mutant);
  return rooms === undefined ? checks[0] : checks.find((check) => !holds(rooms, check));
}
