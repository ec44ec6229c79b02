import { collector, within } from "./harness.js";
import { type Instrumented, type Mutant, programsOf, type Switches, type TestProgram } from "./instrumented.js";

/** What came of a mutant: the test that fails on it, or that none did, or that no test reaches it. */
export type Outcome = { readonly killedBy: string } | "survived" | "not reached";

/** Some tests of one file, with what they cost. */
interface Group {
  readonly file: TestFile;
  /** Places of the tests in the file. */
  readonly tests: readonly number[];
  /** To evaluate the file and run them [ms]. */
  readonly cost: number;
  /** How many mutants they killed so far. */
  kills: number;
}

interface TestFile {
  readonly name: string;
  readonly program: TestProgram;
  readonly evaluation: Seen;
  readonly tests: readonly Seen[];
}

/** How often each mutant's place was passed, and how long it took [ms]. */
interface Seen {
  readonly name: string;
  readonly hits: Uint32Array;
  readonly time: number;
}

/** Tests that are ready to be tried on mutants. */
export interface Trial {
  /** Tests that are left out: they fail or take too long as it is. */
  readonly leftOut: readonly string[];
  readonly tests: number;
  /**
   * Runs what reaches a mutant, the quickest and most telling first, until one test fails or the time is over [ms]; then
   * the quick files that reach it, whole and in order.
   */
  try(mutant: Mutant, limit: number): Promise<Outcome>;
  /** Tests that killed mutants and fail without one too: a file that they read has changed meanwhile. */
  broken(): Promise<readonly string[]>;
}

/** A test that takes longer is tried after the others of its file [ms]. */
const slow = 1000;

/** Tests of a file that take no longer all together are tried on a survivor once more, whether they reached its place or not [ms]. */
const repeated = 5000;

/** The place of none. */
const noMutant = -1;

/** How much longer than it did a test may take before it counts as one that never ends. */
const longer = 20;
const grace = 20_000;

/** Runs every test once without a mutant, and notes what it reaches. */
export async function prepareTrial(
  files: readonly string[],
  library: Instrumented,
  timeMax: number,
  say: (line: string) => void,
): Promise<Trial> {
  const count = Math.max(-1, ...library.mutants.map(({ index }) => index)) + 1;
  const counting = await programsOf(files, library, true);
  const plain = await programsOf(files, library, false);
  const leftOut: string[] = [];
  const groups: Group[] = [];
  for (const [i, name] of files.entries()) {
    const [program, counter] = [plain[i] as TestProgram, counting[i] as TestProgram];
    const { evaluation, tests } = await seen(name, counter, count, timeMax, leftOut);
    const file: TestFile = { name, program, evaluation, tests };
    say(`${name}: ${tests.length} tests in ${Math.round(tests.reduce((sum, { time }) => sum + time, 0))} ms`);
    const kept = [...tests.keys()].filter((at) => !leftOut.includes(nameOf(file, at)));
    for (const isSlow of [false, true]) {
      const some = kept.filter((at) => timeOf(file, at) > slow === isSlow);
      some.sort((a, b) => timeOf(file, a) - timeOf(file, b));
      const cost = some.reduce((sum, at) => sum + timeOf(file, at), evaluation.time);
      if (some.length > 0) groups.push({ file, tests: some, cost, kills: 0 });
    }
  }
  return {
    leftOut,
    tests: groups.reduce((sum, { tests }) => sum + tests.length, 0),
    try: (mutant, limit) => tryOne(groups, mutant, limit),
    broken: async () => {
      const found: string[] = [];
      for (const group of groups.filter(({ kills }) => kills > 0)) {
        const failed = await runGroup(group, group.tests, noMutant, Number.POSITIVE_INFINITY);
        if (failed !== undefined) found.push(failed);
      }
      return found;
    },
  };
}

function nameOf({ name, tests }: TestFile, at: number): string {
  return `${name}: ${tests[at]?.name}`;
}

function timeOf({ tests }: TestFile, at: number): number {
  return tests[at]?.time ?? 0;
}

async function seen(
  name: string,
  program: TestProgram,
  count: number,
  timeMax: number,
  leftOut: string[],
): Promise<{ readonly evaluation: Seen; readonly tests: readonly Seen[] }> {
  let hits = new Uint32Array(count);
  const cover = (...indices: readonly number[]): void => {
    for (const index of indices) hits[index] = (hits[index] as number) + 1;
  };
  const { vitest, tests } = collector();
  const timed = async (of: string, run: () => unknown): Promise<Seen> => {
    hits = new Uint32Array(count);
    const before = performance.now();
    try {
      await within(timeMax, run);
    } catch (error) {
      leftOut.push(of);
      if (!(error instanceof Error)) throw error;
    }
    return { name: of, hits, time: performance.now() - before };
  };
  const evaluation = await timed(name, () => program({ active: -1, hit: () => undefined, cover }, vitest));
  const found: Seen[] = [];
  for (const test of tests) found.push({ ...(await timed(`${name}: ${test.name}`, test.run)), name: test.name });
  return { evaluation, tests: found };
}

async function tryOne(groups: readonly Group[], mutant: Mutant, limit: number): Promise<Outcome> {
  const { index } = mutant;
  const reaching = groups
    .map((group) => {
      const { file, tests } = group;
      const always = (file.evaluation.hits[index] as number) > 0;
      const chosen = tests.filter((at) => always || (file.tests[at]?.hits[index] as number) > 0);
      return { group, chosen, cost: chosen.reduce((sum, at) => sum + timeOf(file, at), file.evaluation.time) };
    })
    .filter(({ chosen }) => chosen.length > 0)
    .sort((a, b) => (1 + b.group.kills) / b.cost - (1 + a.group.kills) / a.cost);
  if (reaching.length === 0) return "not reached";
  const end = performance.now() + limit;
  for (const { group, chosen } of reaching) {
    if (performance.now() > end) break;
    const killedBy = await runGroup(group, chosen, index, end);
    if (killedBy !== undefined) {
      group.kills += 1;
      return { killedBy };
    }
  }
  // What a file keeps at its top, such as a cache, is filled by the first test that asks for it, and the others go by that.
  for (const { group } of reaching.filter(({ group: { cost } }) => cost < repeated)) {
    if (performance.now() > end) break;
    const inOrder = [...group.tests].sort((a, b) => a - b);
    const killedBy = await runGroup(group, inOrder, index, end);
    if (killedBy === undefined) continue;
    group.kills += 1;
    return { killedBy };
  }
  return "survived";
}

/** The first of the chosen tests that fails with the mutant, in a file that was evaluated with it. */
async function runGroup(
  { file }: Group,
  chosen: readonly number[],
  index: number,
  end: number,
): Promise<string | undefined> {
  let left = 0;
  const switches: Switches = {
    active: index,
    hit: () => {
      left -= 1;
      if (left < 0) throw new Error("this never ends");
    },
    cover: () => undefined,
  };
  const fails = async ({ hits, time }: Seen, run: () => unknown): Promise<boolean> => {
    left = 100 * (hits[index] ?? 0) + 1e5;
    try {
      await within(longer * time + grace, run);
      return left < 0;
    } catch {
      return true;
    }
  };
  const { vitest, tests } = collector();
  if (await fails(file.evaluation, () => file.program(switches, vitest))) return file.name;
  if (tests.length !== file.tests.length) return file.name;
  for (const at of chosen) {
    if (performance.now() > end) return undefined;
    if (await fails(file.tests[at] as Seen, tests[at]?.run as () => unknown)) return nameOf(file, at);
  }
  return undefined;
}
