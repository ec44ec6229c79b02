import { spawnSync } from "node:child_process";
import { performance } from "node:perf_hooks";
import { rooms, root } from "../tests/support/rooms.js";
import { documentRooms } from "./sizes.js";
import { table } from "./table.js";

const rounds = 21;

/** What loading may add to the time that Node needs to start with nothing to do. */
const aims = { whole: "0.6", kernelRoom: "0.1", documentRoom: "none" };

function timeOf(code: string): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ["--input-type=module", "--eval", code], { cwd: root });
  if (status !== 0) throw new Error(String(stderr));
  return performance.now() - start;
}

/**
 * What an import adds to Node's bare start, as a share of that start: of runs taken in turn the fastest, which
 * other work on the machine has slowed least.
 */
export function importTimeTable(): string {
  const subjects = [
    { what: "everything", code: 'await import("gelwright")', aim: aims.whole },
    // What Node takes to find and read any file of a package: no room can be below it.
    { what: "error, the least there is", code: 'await import("gelwright/error")', aim: "none" },
    ...rooms.map((room) => ({
      what: room,
      code: `await import("gelwright/${room}")`,
      aim: documentRooms.includes(room) ? aims.documentRoom : aims.kernelRoom,
    })),
  ];
  const bare: number[] = [];
  const loaded = subjects.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    bare.push(timeOf(""));
    for (const [i, subject] of subjects.entries()) loaded[i]?.push(timeOf(subject.code));
  }
  const start = Math.min(...bare);
  const rows = subjects.map(({ what, aim }, i) => [
    what,
    ((Math.min(...(loaded[i] ?? [])) - start) / start).toFixed(3),
    aim,
  ]);
  return table(["import", "adds to Node's bare start", "aim, below"], rows);
}
