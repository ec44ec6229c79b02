import { hlbOfBlend, surfactantShare } from "gelwright/oils";
import { expect, test } from "vitest";

test("two surfactants of the same HLB cannot be blended to another", () => {
  expect(() => surfactantShare({ hlb: 9, hlbFirst: 9, hlbSecond: 9 })).toThrow("other than that of the first");
});

test("a blend of nothing has no HLB", () => {
  expect(() => hlbOfBlend({ parts: [{ mass: 0, hlb: 9 }] })).toThrow("a sum of mass above 0");
});
