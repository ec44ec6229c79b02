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

function readable(nanoseconds: number): string {
  const [scale, unit] = nanoseconds < 1e3 ? [1, "ns"] : nanoseconds < 1e6 ? [1e3, "µs"] : ([1e6, "ms"] as const);
  return `${(nanoseconds / scale).toPrecision(3)} ${unit}`;
}

/** The contestants side by side, in one run: the first is ours, and every other is given in ratio to it. */
export async function speedTable(title: string, contestants: readonly Contestant[]): Promise<string> {
  const bench = new Bench({ time: 300, warmupTime: 100 });
  for (const { name, run } of contestants) bench.add(name, run);
  await bench.run();
  const times = contestants.map(({ name, answers }) => {
    const samples = bench.getTask(name)?.result?.samples ?? [];
    const sorted = [...samples].sort((a, b) => a - b);
    const median = sorted[Math.floor(sorted.length / 2)];
    if (median === undefined) throw new Error(`${name} did not run`);
    return (median * 1e6) / answers;
  });
  const [ours = Number.NaN] = times;
  const rows = contestants.map(({ name, error }, i) => {
    const time = times[i] ?? Number.NaN;
    return [name, readable(time), `${(time / ours).toPrecision(2)} ×`, error ?? "none"];
  });
  return table([title, "one answer", "against the first", "off by"], rows);
}
