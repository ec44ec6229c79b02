import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { expect, test } from "vitest";
import { root } from "../support/rooms.js";

const run = promisify(execFile);

test.each([
  [[], "# Batch sheet: Shimmering cuticle gel", "## From the beaker to the kettle"],
  [["scrub-gel"], "# Batch sheet: Rinse-off scrub gel", "## From the beaker to the vessel"],
])("the command of the README prints a sheet (%s)", async (example, first, last) => {
  const { stdout } = await run(process.execPath, [`${root}docs/examples/sheet.mjs`, ...example], { cwd: root });
  expect(stdout.startsWith(first)).toBe(true);
  expect(stdout).toContain(last);
  expect(stdout).not.toMatch(/undefined|NaN/);
});
