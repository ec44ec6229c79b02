import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The folder of the package, with a slash at its end. */
export const root: string = fileURLToPath(new URL("../../", import.meta.url));

/** Every folder of `src`. */
export const folders: readonly string[] = readdirSync(`${root}src`, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();

/** The rooms: the folders of `src` that list something public. */
export const rooms: readonly string[] = folders.filter((name) => existsSync(`${root}src/${name}/index.ts`));

/** The name by which the front door exports a room: `natural-origin` is `naturalOrigin`. */
export function nameOf(room: string): string {
  return room.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** What `exports` in package.json must hold: a subpath a room, each with types of its own for either kind of import. */
export function expectedExports(): Record<string, unknown> {
  const entry = (file: string) => ({
    import: { types: `./dist/${file}.d.ts`, default: `./dist/${file}.js` },
    require: { types: `./dist/${file}.d.cts`, default: `./dist/${file}.cjs` },
  });
  return {
    ".": entry("index"),
    "./error": entry("error"),
    ...Object.fromEntries(rooms.map((room) => [`./${room}`, entry(`${room}/index`)])),
    "./schema/*.json": "./dist/schema/*.json",
    "./package.json": "./package.json",
  };
}
