import { spawnSync } from "node:child_process";
import { rooms, root } from "../tests/support/rooms.js";
import { documentRooms } from "./sizes.js";
import { table } from "./table.js";

const rounds = 21;

/** What loading may add to the time that Node needs to start with nothing to do. */
const aims = { whole: "0.9", kernelRoom: "0.15", documentRoom: "none" };

type Kind = "module" | "commonjs";

const asks = ";console.log(JSON.stringify([process.cpuUsage(), performance.now()]))";

interface Start {
  /** Processor time, which other work on the machine disturbs little [ms]. */
  readonly processor: number;
  readonly clock: number;
}

function start(code: string, kind: Kind): Start {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`--input-type=${kind}`, "--eval", code + asks], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  const [{ user, system }, clock] = JSON.parse(stdout) as [NodeJS.CpuUsage, number];
  return { processor: (user + system) / 1000, clock };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/**
 * What an import adds to Node's bare start, as a share of that start, of runs taken in turn: by the median and the
 * minimum of the processor's time, and by the minimum of the clock's.
 */
export function importTimeTable(): string {
  const subjects: readonly { what: string; code: string; kind?: Kind; aim: string }[] = [
    { what: "everything", code: 'await import("gelwright")', aim: aims.whole },
    { what: "everything, by require", code: 'require("gelwright")', kind: "commonjs", aim: aims.whole },
    // What Node takes to find and read any file of a package: no room can be below it.
    { what: "error, the smallest of them", code: 'await import("gelwright/error")', aim: "none" },
    { what: "the two dependencies alone", code: 'await import("valibot");await import("convert-units")', aim: "none" },
    ...rooms.map((room) => ({
      what: room,
      code: `await import("gelwright/${room}")`,
      aim: documentRooms.includes(room) ? aims.documentRoom : aims.kernelRoom,
    })),
  ];
  const bare = { module: [] as Start[], commonjs: [] as Start[] };
  const loaded = subjects.map((): Start[] => []);
  for (let round = 0; round < rounds; round++) {
    bare.module.push(start("", "module"));
    bare.commonjs.push(start("", "commonjs"));
    for (const [i, { code, kind = "module" }] of subjects.entries()) loaded[i]?.push(start(code, kind));
  }
  const min = (values: readonly number[]): number => Math.min(...values);
  const rows = subjects.map(({ what, kind = "module", aim }, i) => {
    const adds = (of: (values: readonly number[]) => number, time: keyof Start): string => {
      const [without, withIt] = [bare[kind], loaded[i] ?? []].map((starts) => of(starts.map((each) => each[time])));
      return ((withIt ?? Number.NaN) / (without ?? Number.NaN) - 1).toFixed(2);
    };
    return [what, adds(median, "processor"), adds(min, "processor"), adds(min, "clock"), aim];
  });
  return table(["import adds to Node's bare start", "processor, median", "processor, min", "clock, min", "aim"], rows);
}
