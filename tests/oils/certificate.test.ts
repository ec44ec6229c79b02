import {
  almondOil,
  almondOilPharmacopoeia,
  type Certificate,
  checkCertificate,
  oliveOil,
  type StandardOil,
  safflowerOilHighOleic,
  sunflowerOil,
} from "gelwright/oils";
import { expect, test } from "vitest";

const answer = (certificate: Certificate, what: string, oil = sunflowerOil) =>
  checkCertificate({ oil, certificate }).find(({ id, acid }) => (acid ?? id) === what);
const verdict = (...asked: Parameters<typeof answer>) => answer(...asked)?.verdict;

test("a figure on the limit of the standard fits, a figure beyond it does not", () => {
  expect(verdict({ iodineValue: 118 }, "iodine-value")).toBe("met");
  expect(verdict({ iodineValue: 117.9 }, "iodine-value")).toBe("not-met");
  expect(verdict({ profile: { "18:1": 43 } }, "18:1")).toBe("met");
  expect(verdict({ profile: { "18:1": 43.1 } }, "18:1")).toBe("not-met");
});

test("isomers count together, since the standard does not part them", () => {
  expect(verdict({ profile: { "18:1 n-9": 42, "18:1 n-7": 0.8 } }, "18:1")).toBe("met");
  expect(verdict({ profile: { "18:1 n-9": 42.5, "18:1 n-7": 0.8 } }, "18:1")).toBe("not-met");
});

test("what is not stated, or stated at another temperature, is not known", () => {
  expect(checkCertificate({ oil: sunflowerOil, certificate: {} }).map((one) => one.verdict)).not.toContain("met");
  expect(answer({}, "iodine-value")).toMatchObject({ reason: "no-figure", limit: { min: 118, max: 141 } });
  expect(answer({}, "iodine-value")).not.toHaveProperty("figure");
  expect(verdict({ refractiveIndex: { value: 1.468, temperature: 20 } }, "refractive-index")).toBe("not-known");
  expect(verdict({ refractiveIndex: { value: 1.468, temperature: 40 } }, "refractive-index")).toBe("met");
  expect(answer({ refractiveIndex: { value: 1.468, temperature: 20 } }, "refractive-index")).toMatchObject({
    reason: "no-range-at-temperature",
    figure: 1.468,
    temperature: 20,
  });
  expect(answer({ profile: { "8:0": 1 } }, "8:0")).toMatchObject({
    verdict: "not-known",
    reason: "range-not-read",
    figure: 1,
  });
});

test("what the certificate states and the standard does not limit is listed as not known", () => {
  const { tocols: _range, read, ...rest } = sunflowerOil;
  const { tocols: _read, ...others } = read;
  const silent: StandardOil = { ...rest, read: others, refractiveIndex: [] };
  expect(answer({ tocols: 500 }, "tocols", silent)).toEqual({
    id: "tocols",
    standard: sunflowerOil.standard,
    figure: 500,
    verdict: "not-known",
    side: "none",
    reason: "range-not-read",
  });
  expect(answer({}, "tocols", silent)).toBeUndefined();
  const index = { refractiveIndex: { value: 1.468, temperature: 40 } };
  expect(answer(index, "refractive-index", silent)).toMatchObject({
    verdict: "not-known",
    reason: "range-not-read",
    figure: 1.468,
    temperature: 40,
  });
});

test("a range that is shown without a figure comes with its temperature", () => {
  expect(answer({}, "refractive-index")).toMatchObject({ reason: "no-figure", temperature: 40 });
});

test("a standard with two temperatures is asked at the certificate's own", () => {
  const at = (temperature: number) =>
    verdict({ relativeDensity: { value: 0.911, temperature } }, "relative-density", safflowerOilHighOleic);
  expect(at(25)).toBe("met");
  expect(at(20)).toBe("not-met");
});

test("a figure outside its range says on which side it lies", () => {
  expect(answer({ iodineValue: 117.9 }, "iodine-value")).toMatchObject({ side: "below", figure: 117.9 });
  expect(answer({ iodineValue: 141.1 }, "iodine-value")).toMatchObject({ verdict: "not-met", side: "above" });
  expect(answer({ iodineValue: 130 }, "iodine-value")?.side).toBe("none");
});

test("every answer says where its range comes from and how it was read", () => {
  for (const { standard, provenance } of checkCertificate({ oil: sunflowerOil, certificate: { iodineValue: 130 } })) {
    expect(standard).toMatch(/CXS 210-1999/);
    expect(["first-hand", "second-hand", "from memory"]).toContain(provenance);
  }
});

test("an acid says how its own range was read, where that differs from the rest of the row", () => {
  const read = (acid: string) => answer({}, acid, oliveOil)?.provenance;
  expect([read("18:1"), read("18:3"), read("22:0")]).toEqual(["first-hand", "from memory", "from memory"]);
});

test("a lot is held against the standard that it was bought by", () => {
  const lot = { profile: { "18:1": 80 } };
  expect(verdict(lot, "18:1", almondOil)).toBe("not-met");
  expect(verdict(lot, "18:1", almondOilPharmacopoeia)).toBe("met");
});
