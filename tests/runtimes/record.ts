/** What one runtime gave, and when. */
export interface Ran {
  readonly name: string;
  readonly version: string;
  /** The day of the run, `2026-11-29`. */
  readonly date: string;
  /** The version of Node that it was compared with. */
  readonly node: string;
  /** How many numbers and words were compared. */
  readonly results: number;
  /** For each function that differs, its largest deviation relative to the figure. */
  readonly differing: Readonly<Record<string, number>>;
}

/** What is kept of all runs. */
export interface RuntimesRecord {
  /** The largest deviation allowed, relative to the figure. */
  readonly bound: number;
  readonly runtimes: readonly Ran[];
}

/** The runtimes that the page names, and the order in which it does. */
const wanted = ["Node", "Bun", "Deno", "Chromium"];

/** Each major version of Node has a line; any other runtime has one, for the version that was run last. */
const lineOf = ({ name, version }: Ran): string => (name === "Node" ? `${name} ${version.split(".")[0]}` : name);

const order = (one: Ran): number => wanted.indexOf(one.name) * 1000 + Number(one.version.split(".")[0]);

/** New runs in place of the stored ones of the same runtime; one that is not installed today keeps its last run. */
export function withRuns(stored: readonly Ran[], runs: readonly Ran[]): readonly Ran[] {
  const byLine = new Map([...stored, ...runs].map((ran) => [lineOf(ran), ran]));
  return [...byLine.values()].sort((one, other) => order(one) - order(other));
}

/** The runtimes that the page names and a list has no run of. */
export function neverRun(runtimes: readonly Ran[]): readonly string[] {
  return wanted.filter((name) => !runtimes.some((one) => one.name === name));
}
