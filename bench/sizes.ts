import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { rooms, root } from "../tests/support/rooms.js";
import { table } from "./table.js";

/** Rooms that read documents. The others compute: they are kernel rooms. */
export const documentRooms: readonly string[] = ["formula", "batch", "plan", "sheet"];

/** Budgets in bytes, minified and gzipped. */
const budgets = { function: 1500, kernelRoom: 3000, documentRoom: 8000, whole: 40_000 };

/** Rooms that may weigh more than their kind, and why. */
const exceptions: Readonly<Record<string, { readonly bytes: number; readonly why: string }>> = {};

/** What a user's bundle pays for something, dependencies included, minified and gzipped. */
export interface Size {
  readonly what: string;
  readonly bytes: number;
  readonly budget: number;
}

async function gzipped(code: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    logLevel: "error",
    tsconfigRaw: "{}",
  });
  return outputFiles.reduce((sum, file) => sum + gzipSync(file.contents, { level: 9 }).length, 0);
}

/** The public function of a room that weighs most by itself. */
async function heaviestFunction(room: string): Promise<Size[]> {
  const members = (await import(`${root}dist/${room}/index.js`)) as Record<string, unknown>;
  const names = Object.keys(members).filter((name) => typeof members[name] === "function");
  const sizes = await Promise.all(
    names.map(async (name) => ({
      what: `heaviest function of ${room}: ${name}`,
      bytes: await gzipped(`export { ${name} } from "./dist/${room}/index.js";`),
      budget: budgets.function,
    })),
  );
  return sizes.sort((a, b) => b.bytes - a.bytes).slice(0, 1);
}

async function roomSize(room: string): Promise<Size> {
  const kind = documentRooms.includes(room) ? "documentRoom" : "kernelRoom";
  const bytes = await gzipped(`export * from "./dist/${room}/index.js";`);
  return { what: `${room}, the whole room`, bytes, budget: exceptions[room]?.bytes ?? budgets[kind] };
}

/** The heaviest function of every kernel room, every room, and all of it. */
export async function sizes(): Promise<Size[]> {
  const kernelRooms = rooms.filter((room) => !documentRooms.includes(room));
  return [
    ...(await Promise.all(kernelRooms.map(heaviestFunction))).flat(),
    ...(await Promise.all(rooms.map(roomSize))),
    { what: "everything", bytes: await gzipped('export * from "./dist/index.js";'), budget: budgets.whole },
  ];
}

/** The sizes as a table, and below it why a room has a budget of its own. */
export function sizeTable(all: readonly Size[]): string {
  const kilo = (bytes: number) => (bytes / 1000).toFixed(2);
  const rows = all.map(({ what, bytes, budget }) => [
    what,
    kilo(bytes),
    kilo(budget),
    `${((100 * bytes) / budget).toFixed(0)} %`,
  ]);
  const notes = Object.entries(exceptions).map(([room, { why }]) => `\n${room} has a budget of its own: ${why}`);
  return [table(["bundled, minified, gzipped", "kB", "budget", "share of it"], rows), ...notes].join("\n");
}
