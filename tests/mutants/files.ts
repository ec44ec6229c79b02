import { existsSync, readdirSync, statSync } from "node:fs";
import { root } from "../support/rooms.js";

function walk(path: string): readonly string[] {
  if (!statSync(`${root}${path}`).isDirectory()) return [path];
  return readdirSync(`${root}${path}`)
    .sort()
    .flatMap((name) => walk(`${path}/${name}`));
}

/** The sources below folders or files of `src`, parted by commas. */
export function filesIn(target: string): readonly string[] {
  const files = target
    .split(",")
    .flatMap((path) => walk(path.replace(/\/+$/, "")))
    // The names of arguments that `npm run known` writes are held by a test of all rooms.
    .filter((path) => path.startsWith("src/") && path.endsWith(".ts") && !path.endsWith("/known.ts"));
  if (files.length === 0) throw new Error(`no source in '${target}'`);
  return files;
}

/** The tests of the rooms of a target, the check values and the bands; or those that are named, parted by commas. */
export function testsOf(target: string, named: string | undefined): readonly string[] {
  const rooms = [...new Set(filesIn(target).map((file) => file.split("/")[1] as string))];
  const paths = named?.split(",") ?? [
    ...rooms.map((room) => `tests/${room}`).filter((path) => existsSync(`${root}${path}`)),
    ...(rooms.includes("plan") ? [] : ["tests/checks.test.ts", "tests/bands.test.ts"]),
  ];
  return [...new Set(paths.flatMap(walk))].filter((path) => path.endsWith(".test.ts"));
}
