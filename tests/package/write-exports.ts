// Run by `npm run exports` when a room was added or removed.
import { readFileSync, writeFileSync } from "node:fs";
import { expectedExports, root } from "../support/rooms.js";

const file = `${root}package.json`;
const manifest = JSON.parse(readFileSync(file, "utf8")) as Record<string, unknown>;
writeFileSync(file, `${JSON.stringify({ ...manifest, exports: expectedExports() }, null, 2)}\n`);
