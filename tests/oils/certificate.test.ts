import { type Certificate, checkCertificate, safflowerOilHighOleic, sunflowerOil } from "gelwright/oils";
import { expect, test } from "vitest";

const verdict = (certificate: Certificate, id: string, oil = sunflowerOil) =>
  checkCertificate({ oil, certificate }).find((check) => check.id === id)?.verdict;

test("a figure on the limit of the standard fits, a figure beyond it does not", () => {
  expect(verdict({ iodineValue: 118 }, "iodine-value")).toBe("met");
  expect(verdict({ iodineValue: 117.9 }, "iodine-value")).toBe("not met");
  expect(verdict({ profile: { "18:1": 43 } }, "fatty-acid-18:1")).toBe("met");
  expect(verdict({ profile: { "18:1": 43.1 } }, "fatty-acid-18:1")).toBe("not met");
});

test("isomers count together, since the standard does not part them", () => {
  expect(verdict({ profile: { "18:1 n-9": 42, "18:1 n-7": 0.8 } }, "fatty-acid-18:1")).toBe("met");
  expect(verdict({ profile: { "18:1 n-9": 42.5, "18:1 n-7": 0.8 } }, "fatty-acid-18:1")).toBe("not met");
});

test("what is not stated, or stated at another temperature, is not known", () => {
  expect(checkCertificate({ oil: sunflowerOil, certificate: {} }).map((check) => check.verdict)).not.toContain("met");
  expect(verdict({ refractiveIndex: { value: 1.468, temperature: 20 } }, "refractive-index")).toBe("not known");
  expect(verdict({ refractiveIndex: { value: 1.468, temperature: 40 } }, "refractive-index")).toBe("met");
  expect(verdict({ profile: { "8:0": 1 } }, "fatty-acid-8:0")).toBe("not known");
});

test("a standard with two temperatures is asked at the certificate's own", () => {
  const at = (temperature: number) =>
    verdict({ relativeDensity: { value: 0.911, temperature } }, "relative-density", safflowerOilHighOleic);
  expect(at(25)).toBe("met");
  expect(at(20)).toBe("not met");
});

test("every answer says where its range comes from and how far it is trusted", () => {
  for (const check of checkCertificate({ oil: sunflowerOil, certificate: { iodineValue: 130 } }))
    expect(check.source).toMatch(/CXS 210-1999.*\((first-hand|second-hand|from memory)\)/);
});
