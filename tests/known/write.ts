import { execFileSync } from "node:child_process";
import { existsSync, writeFileSync } from "node:fs";
import { root } from "../support/rooms.js";
import { knownTables } from "./known.js";

// Run by `npm run known`, after an argument came, went or changed its name.
const written = Object.entries(knownTables()).flatMap(([room, table]) => {
  const file = `${root}src/${room}/known.ts`;
  if (table === "" && !existsSync(file)) return [];
  writeFileSync(file, table);
  return [file];
});
execFileSync("npx", ["biome", "format", "--write", ...written], { cwd: root, stdio: "inherit" });
