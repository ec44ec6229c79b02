import { Bench } from "tinybench";
import { table } from "./table.js";

/** One way to get an answer, and how many answers a call of `run` gives. */
export interface Contestant {
  readonly name: string;
  readonly run: () => unknown;
  readonly answers: number;
  /** How far the answer is from the truth, where the contestants do not agree to the last digits. */
  readonly error?: string;
}

/** Nanoseconds in words. */
export function readable(nanoseconds: number): string {
  const [scale, unit] = nanoseconds < 1e3 ? [1, "ns"] : nanoseconds < 1e6 ? [1e3, "µs"] : ([1e6, "ms"] as const);
  return `${(nanoseconds / scale).toPrecision(3)} ${unit}`;
}

const rounds = 7;

/**
 * Nanoseconds for one answer of each contestant: the median of a round, of rounds taken in turn the fastest, by which
 * the compiler has settled and which other work on the machine has slowed least.
 */
export async function medians(contestants: readonly Omit<Contestant, "error">[]): Promise<readonly number[]> {
  const fastest = contestants.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round++) {
    const bench = new Bench({ time: 200, warmupTime: 50 });
    for (const { name, run } of contestants) bench.add(name, run);
    await bench.run();
    contestants.forEach(({ name, answers }, i) => {
      const sorted = [...(bench.getTask(name)?.result?.samples ?? [])].sort((a, b) => a - b);
      const median = sorted[Math.floor(sorted.length / 2)];
      if (median === undefined) throw new Error(`${name} did not run`);
      fastest[i] = Math.min(fastest[i] ?? median, (median * 1e6) / answers);
    });
  }
  return fastest;
}

/** The contestants side by side, in one run: the first is ours, and every other is given in ratio to it. */
export async function speedTable(title: string, contestants: readonly Contestant[]): Promise<string> {
  const times = await medians(contestants);
  const [ours = Number.NaN] = times;
  const rows = contestants.map(({ name, error }, i) => {
    const time = times[i] ?? Number.NaN;
    return [name, readable(time), `${(time / ours).toPrecision(2)} ×`, error ?? "none"];
  });
  return table([title, "one answer", "against the first", "off by"], rows);
}
