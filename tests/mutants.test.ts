import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { minShares, readReasons, readScores, shareOf } from "./mutants/records.js";
import { root } from "./support/rooms.js";

const scores = readScores();
const reasons = readReasons();

test("every change of the judge that its own tests let pass is explained", () => {
  const out = execFileSync(
    process.execPath,
    [
      ...[`${root}node_modules/tsx/dist/cli.mjs`, `${root}tests/mutants/run.ts`, "src/plan/judge.ts", "5"],
      ...["--texts", "--look", "--tests=tests/plan/judge.test.ts"],
    ],
    { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] },
  );
  expect(out.split("\n").filter((line) => line.includes("survived") && !line.includes("(explained)"))).toEqual([]);
  expect(Number(/(\d+) tried/.exec(out)?.[1])).toBeGreaterThan(150);
});

test("what was found is of files that there are, and every reason of a change that is left", () => {
  expect(Object.keys(scores).filter((file) => !existsSync(`${root}${file}`))).toEqual([]);
  const left = new Set(Object.values(scores).flatMap((score) => score.left));
  expect(Object.keys(reasons).filter((key) => !left.has(key))).toEqual([]);
});

test("no change of a comparison in a question of a plan is left without a reason", () => {
  const files = Object.entries(scores).filter(([file]) => file.startsWith("src/plan/questions/"));
  const left = files.flatMap(([, score]) => score.left).filter((key) => key.includes(": EqualityOperator: "));
  expect(files.length).toBeGreaterThan(15);
  expect(left.filter((key) => reasons[key] === undefined)).toEqual([]);
});

test.each(Object.entries(minShares))("of the mutants of %s at least a share of %s was killed", (target, min) => {
  expect(shareOf(target, scores, reasons).value).toBeGreaterThanOrEqual(min);
});
