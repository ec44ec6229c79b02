import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { shippedConstants } from "./constants/constants.js";
import { type Instrumented, instrument } from "./constants/instrumented.js";
import { mutantsOf } from "./constants/mutants.js";
import { changed, checksByRank, holds } from "./constants/prove.js";
import { readReasons, readRecords, reasonOf, withinFile } from "./constants/records.js";

const constants = shippedConstants();
const records = readRecords();
const found = constants.map((constant) => ({ constant, found: records[constant.file]?.[withinFile(constant)] }));
const checks = new Map(checksByRank.map((check) => [check.id, check]));
let library: Instrumented;

beforeAll(async () => {
  library = await instrument();
});

/** Whether a check fails once a constant is 1 % larger. */
function fails(index: number, id: string): boolean {
  const [small] = mutantsOf(library.constants, index);
  const check = checks.get(id);
  if (!small || !check) return false;
  const rooms = changed(library, small);
  return rooms === undefined || !holds(rooms, check);
}

test("every constant that ships is on the list that `npm run constants` writes, and nothing else is", () => {
  const listed = Object.entries(records).flatMap(([file, names]) =>
    Object.keys(names).map((name) => `${file}#${name}`),
  );
  expect(listed.sort()).toEqual(constants.map(({ key }) => key).sort());
});

test("every constant that no check holds is named with a reason, and every reason is needed", () => {
  const reasons = readReasons();
  const survivors = found.flatMap(({ constant, found: one }) =>
    typeof one === "object" ? [{ key: constant.key, reason: reasonOf(reasons, constant.key, one.survives) }] : [],
  );
  expect(survivors.filter(({ reason }) => reason === undefined).map(({ key }) => key)).toEqual([]);
  const used = new Set(survivors.map(({ reason }) => reason));
  expect(Object.keys(reasons).filter((start) => !used.has(start))).toEqual([]);
});

test("a sample of the constants, made 1 % larger, fails the checks that are said to hold them", () => {
  const place = new Map(library.constants.map(({ key }, index) => [key, index]));
  const held = found.flatMap(({ constant, found: one }) => {
    const by = typeof one === "string" ? one : one?.by;
    const index = place.get(constant.key);
    return by === undefined || index === undefined ? [] : [{ key: constant.key, by, index }];
  });
  expect(held.length).toBeGreaterThan(constants.length / 2);
  const sample = fc.sample(fc.constantFrom(...held), { numRuns: 150, seed: 20261128 });
  expect(sample.filter(({ index, by }) => !fails(index, by))).toEqual([]);
});

test("a check that names constants fails when one of them moves by 1 %", () => {
  for (const check of checksByRank.filter(({ of }) => of !== undefined)) {
    for (const start of [check.of ?? []].flat()) {
      const indices = library.constants.flatMap(({ key }, index) => (isWithin(key, start) ? [index] : []));
      expect(indices.length, `${check.id}: ${start}`).toBeGreaterThan(0);
      expect(
        indices.some((index) => fails(index, check.id)),
        `${check.id}: ${start}`,
      ).toBe(true);
    }
  }
});

/** Whether a constant is the one named, or stands within what is named. */
function isWithin(key: string, start: string): boolean {
  return key === start || (key.startsWith(start) && /^[.[~(<>#]/.test(key.slice(start.length)));
}
