import { readFileSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { root } from "../support/rooms.js";

/** Where a run leaves its report, with each file as a page. */
export const folder: string = `${root}node_modules/.coverage`;

const path = `${root}tests/coverage/coverage.json`;

/** How many there are, and how many of them a test reaches. */
export interface Reached {
  readonly covered: number;
  readonly total: number;
}

interface Coverage {
  readonly lines: Reached;
  readonly branches: Reached;
}

/** Of each folder of `src`. */
type ByFolder = Readonly<Record<string, Coverage>>;

/** The shares that tests have to reach of all lines and of all branches. */
export const minShares = { lines: 0.99, branches: 0.97 } as const;

const kinds = ["lines", "branches"] as const;

/** What the last run found, by folder. */
export function readCoverage(): ByFolder {
  return JSON.parse(readFileSync(path, "utf8")) as ByFolder;
}

/** Several files or folders together. */
function together(some: readonly Coverage[]): Coverage {
  const sum = (kind: keyof Coverage, count: keyof Reached): number =>
    some.reduce((total, one) => total + one[kind][count], 0);
  const of = (kind: keyof Coverage): Reached => ({ covered: sum(kind, "covered"), total: sum(kind, "total") });
  return { lines: of("lines"), branches: of("branches") };
}

/** All folders together. */
export function allOf(record: ByFolder): Coverage {
  return together(Object.values(record));
}

/** The share that is reached. */
export function shareOf({ covered, total }: Reached): number {
  return covered / total;
}

/** Keeps what a run found, and says of lines and of branches how many that is and whether it is enough. */
export function keepCoverage(): readonly { readonly line: string; readonly enough: boolean }[] {
  const files = JSON.parse(readFileSync(`${folder}/coverage-summary.json`, "utf8")) as Record<string, Coverage>;
  const byFolder = new Map<string, Coverage[]>();
  for (const [file, found] of Object.entries(files)) {
    const [, place = ""] = relative(root, file).split("/");
    if (file !== "total") byFolder.set(place, [...(byFolder.get(place) ?? []), found]);
  }
  const record = Object.fromEntries(
    [...byFolder]
      .filter(([, some]) => some.some(({ lines }) => lines.total > 0))
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([place, some]) => [place, together(some)]),
  );
  writeFileSync(path, `${JSON.stringify(record, null, 2)}\n`);
  const all = allOf(record);
  return kinds.map((kind) => {
    const { covered, total } = all[kind];
    const share = shareOf(all[kind]);
    const line = `${kind}: ${covered} of ${total} (${(100 * share).toFixed(2)} %), at least ${100 * minShares[kind]} % wanted`;
    return { line, enough: share >= minShares[kind] };
  });
}
