import { createHash } from "node:crypto";
import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { fingerprint, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { canonicalJson } from "../../src/plan/fingerprint.js";
import { sha256 } from "../../src/plan/sha-256.js";
import { changed, exampleJob } from "../support/example.js";

describe("SHA-256", () => {
  test.each([
    ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
    ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
    [
      "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
      "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    ],
    ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
  ])("has the published value of %.60s", (text, hash) => {
    expect(sha256(text)).toBe(hash);
  });

  test("agrees with another implementation on any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        expect(sha256(text)).toBe(createHash("sha256").update(text).digest("hex"));
      }),
    );
  });
});

describe("canonical JSON", () => {
  test("is that of the standard's example", () => {
    const value = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    );
    expect(canonicalJson(value)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  test("sorts fields by their code units, as the standard's example does", () => {
    const value = { "\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\ud83d\ude00": 5, "\u0080": 6, "\u00f6": 7 };
    expect(Object.values(JSON.parse(canonicalJson(value).replaceAll(/"1":4,?/g, "")))).toEqual([2, 6, 7, 1, 5, 3]);
  });

  test("refuses what JSON cannot hold", () => {
    const round: Record<string, unknown> = {};
    round["self"] = round;
    for (const odd of [Number.NaN, Number.POSITIVE_INFINITY, () => 1, undefined, 1n, Symbol("x"), round])
      expect(() => canonicalJson(odd)).toThrow(CalculationError);
  });
});

describe("the fingerprint of a plan", () => {
  const job = exampleJob();

  test("is that of its document, whatever the order of fields and whatever way it was run", () => {
    const turned = Object.fromEntries(Object.entries(job).reverse());
    expect(runPlan(job).fingerprint).toBe(fingerprint(job));
    expect(runPlan(turned).fingerprint).toBe(fingerprint(job));
    expect(runPrepared({ prepared: prepareJob(job) }).fingerprint).toBe(fingerprint(job));
  });

  test("changes with a letter of a note and with a change of the run", () => {
    const other = changed(job, (draft) => Object.assign(draft.process.steps[0], { note: "Stir slowly; no air!" }));
    expect(fingerprint(other)).not.toBe(fingerprint(job));
    const prepared = prepareJob(job);
    const warm = (value: number) => runPrepared({ prepared, changes: [{ change: "room", value }] }).fingerprint;
    expect(new Set([warm(22), warm(23), fingerprint(job)]).size).toBe(3);
    expect(warm(22)).toBe(warm(22));
  });

  test("stays that of the document as it was prepared", () => {
    const draft = exampleJob() as { process: { name: string } };
    const prepared = prepareJob(draft);
    draft.process.name = "another";
    expect(runPrepared({ prepared }).fingerprint).toBe(fingerprint(job));
  });
});

test("half a letter counts as the replacement character, as UTF-8 has it", () => {
  for (const half of ["\ud83d", "\udca7", "a\ud83db"])
    expect(sha256(half)).toBe(createHash("sha256").update(half).digest("hex"));
  expect(sha256("\ud83d")).toBe(sha256("\ufffd"));
});
