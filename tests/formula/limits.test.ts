import { CalculationError } from "gelwright/error";
import {
  conductivityOfMixture,
  densityOfMixture,
  normalise,
  readFormula,
  specificHeatOfMixture,
  suppliedShare,
} from "gelwright/formula";
import { expect, test } from "vitest";
import { isRest } from "../../src/formula/amount.js";
import { readDate } from "../../src/formula/dated-table.js";
import { join } from "../../src/formula/document.js";
import { byName, nameKey, readName } from "../../src/formula/ingredient-name.js";

const materials = {
  former: { name: "gel former", function: "gel former" },
  oil: { name: "sunflower oil", function: "oil" },
  vitamin: { name: "tocopherol", function: "antioxidant", strength: "50 %" },
};
type Line = { readonly material: string; readonly amount: unknown; readonly as?: string };
const document = (lines: readonly Line[], more: object = {}) => ({
  ...{ version: 1, name: "trial", materials, phases: [{ name: "A", lines }] },
  ...more,
});
const line = (material: string, amount: unknown, as?: string): Line => ({
  material,
  amount,
  ...(as !== undefined && { as }),
});
const shares = (...lines: readonly Line[]) =>
  readFormula(document(lines)).lines.map(({ massFraction }) => massFraction);

function faults(of: unknown) {
  try {
    readFormula(of);
  } catch (error) {
    if (error instanceof CalculationError) return error.faults;
    throw error;
  }
  throw new Error("this was read");
}
const faultsOf = (...lines: readonly Line[]) =>
  faults(document(lines)).map(({ path, expected }) => `${path}: ${expected}`);

test("q.s. is written with points or without, apart or together, and stands alone", () => {
  for (const text of ["q.s.", "qs", "Q.S.", "q. s.", "q s", " q.s. ", "q.s"]) expect(isRest(text)).toBe(true);
  for (const text of ["x q.s.", "q.s. to 100", "q..s.", "s.q.", "q-s", ""]) expect(isRest(text)).toBe(false);
  expect(shares(line("former", "20 %"), line("oil", " Q. S. "))).toEqual([0.2, 0.8]);
});

test("one part and several parts are parts, of what the shares leave", () => {
  expect(shares(line("former", "1 part"), line("oil", "3 parts"))).toEqual([0.25, 0.75]);
  expect(shares(line("former", "20 %"), line("oil", "1 part"), line("vitamin", "1 parts"))).toEqual([0.2, 0.4, 0.4]);
  expect(shares(line("former", "50 g"), line("oil", "0.15 kg"))).toEqual([0.25, expect.closeTo(0.75, 15)]);
  expect(shares(line("former", "1part"), line("oil", "3parts"))).toEqual([0.25, 0.75]);
  expect(shares(line("former", "2.5  parts"), line("oil", " 7.5 parts "))).toEqual([0.25, 0.75]);
  for (const amount of ["0 %", "-1 %", "parts", "1 parting", "much", "parts 2", "1 part more"])
    expect(faultsOf(line("former", amount), line("oil", "q.s."))[0]).toMatch(/^phases\[0\]\.lines\[0\]\.amount: /);
});

test("shares make up the whole to a billionth, and a q.s. line may be left nothing and no less", () => {
  expect(shares(line("former", "40 %"), line("oil", "60.00000009 %"))[1]).toBeCloseTo(0.6, 8);
  expect(faultsOf(line("former", "40 %"), line("oil", "60.0000002 %"))).toEqual([
    expect.stringContaining("lines that sum to 100 %, or one q.s. line"),
  ]);
  expect(faultsOf(line("former", "40 %"), line("oil", "59.9999998 %"))).toHaveLength(1);
  expect(shares(line("former", "100 %"), line("oil", "q.s."))[1]).toBe(0);
  expect(faultsOf(line("former", "100.1 %"), line("oil", "q.s."))[0]).toContain("100 % at most");
});

test("lines of two measures, two q.s. lines, and shares that leave nothing are told once each", () => {
  expect(faultsOf(line("former", "1 part"), line("oil", "1 kg"))).toEqual([
    expect.stringContaining("nothing says what a part weighs"),
  ]);
  expect(faultsOf(line("former", "q.s."), line("oil", "q.s."))[0]).toContain("one q.s. line only");
  expect(faultsOf(line("former", "1 part"), line("oil", "q.s."))[0]).toContain("all other lines in % or ppm");
  expect(faultsOf(line("former", "100 %"), line("oil", "1 part"))).toEqual([
    expect.stringContaining("shares below 100 %"),
  ]);
  expect(shares(line("former", "99.9 %"), line("oil", "1 part"))[1]).toBeCloseTo(0.001, 12);
  // A line that cannot be read leaves the sum open.
  expect(faultsOf(line("former", "much"), line("oil", "10 %"))).toHaveLength(1);
});

test("an amount of the active part is divided by the strength, and the rest has none", () => {
  expect(shares(line("vitamin", "5 %", "active"), line("oil", "q.s."))).toEqual([0.1, 0.9]);
  expect(shares(line("vitamin", "5 %", "supplied"), line("oil", "q.s."))).toEqual([0.05, 0.95]);
  expect(faultsOf(line("former", "5 %"), line("vitamin", "q.s.", "active"))[0]).toContain(
    "the rest is taken as supplied",
  );
  expect(suppliedShare({ active: 0.5, strength: 0.5 })).toBe(1);
  expect(() => suppliedShare({ active: 0.51, strength: 0.5 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
});

test("a field of the wrong kind is told by what belongs there", () => {
  const wrong = (change: object) => faults({ ...document([line("former", "100 %")]), ...change })[0];
  expect(wrong({ name: 5 })).toMatchObject({
    path: "name",
    rule: "wrong-type",
    expected: expect.stringContaining("text"),
  });
  expect(wrong({ phases: {} })).toMatchObject({ path: "phases", rule: "wrong-type", expected: "a list" });
  expect(wrong({ materials: "none" })).toMatchObject({ rule: "wrong-type", expected: "an object with named fields" });
  expect(wrong({ version: 3 })).toMatchObject({ path: "version", rule: "not-one-of" });
  expect(wrong({ name: undefined })).toMatchObject({ path: "name", rule: "missing", found: "nothing" });
  expect(wrong({ nmae: "trial" })).toMatchObject({ path: "nmae", rule: "unknown-field" });
  const oil = { ...materials.oil, heatSensitive: "yes" };
  expect(wrong({ materials: { ...materials, oil } })).toMatchObject({
    ...{ path: "materials.oil.heatSensitive", rule: "wrong-type", expected: "true or false" },
  });
  const strong = { ...materials.oil, strength: "120 %" };
  expect(wrong({ materials: { ...materials, oil: strong } })?.path).toBe("materials.oil.strength");
});

test("a material that there is not is told with the nearest that there is", () => {
  expect(faults(document([line("formar", "20 %"), line("oil", "q.s.")]))[0]).toMatchObject({
    path: "phases[0].lines[0].material",
    rule: "unknown-name",
    parameters: { name: "formar", nearest: "former" },
  });
  expect(faults(document([line("xyz", "20 %"), line("oil", "q.s.")]))[0]?.parameters).toEqual({ name: "xyz" });
});

test("a path is written with points and places, and a name that is no word stands in quotes", () => {
  expect([join("", "name"), join("a", "b"), join("a", 3), join("", 0)]).toEqual(["name", "a.b", "a[3]", "[0]"]);
  expect([join("a", "gel former"), join("", "9x"), join("a", "größe"), join("a", "x-1")]).toEqual([
    ...['a["gel former"]', '["9x"]', "a.größe", "a.x-1"],
  ]);
  expect(join("", "x".repeat(101))).toBe(`["${"x".repeat(100)}…"]`);
  expect(join("", "x".repeat(100))).toBe("x".repeat(100));
});

test("names are one in any spelling of their letters and spaces, and stand in an order that depends on no locale", () => {
  expect(readName("  Gel \t Former ", "name")).toBe("Gel Former");
  expect(nameKey(" GEL  former", "name")).toBe(nameKey("Gel Former", "name"));
  expect(nameKey("ﬁne oil", "name")).toBe("fine oil");
  for (const wrong of ["", "  ", 5, undefined]) expect(() => readName(wrong as string, "name")).toThrow("not empty");
  const [a, b] = [{ name: "a" }, { name: "b" }];
  expect([byName(a, b), byName(b, a), byName(a, a)]).toEqual([-1, 1, 0]);
});

test("a date is a day of the calendar that the language has too, in leap years and others", () => {
  const two = (part: number) => String(part).padStart(2, "0");
  const isRead = (day: string) => {
    try {
      return readDate(day, "date") === day;
    } catch {
      return false;
    }
  };
  for (const year of [1900, 2000, 2027, 2028])
    for (let month = 0; month <= 13; month++)
      for (let day = 0; day <= 39; day++) {
        const text = `${year}-${two(month)}-${two(day)}`;
        const date = new Date(`${text}T00:00:00Z`);
        expect(isRead(text), text).toBe(!Number.isNaN(date.valueOf()) && date.toISOString().startsWith(text));
      }
});

test("a date is written as four, two and two digits, and is a text", () => {
  for (const other of [
    ...[
      "2027-1-1",
      "x2027-01-01",
      "2027-01-011",
      "27-01-01",
      "2027/01/01",
      "2027-01-01x",
      "20280-02-29",
      "2028-02-291",
    ],
    ...[20270101, ["2027-01-31"], null, undefined],
  ])
    expect(() => readDate(other as string, "date")).toThrow("a day of the calendar");
});

test("mixtures: volumes add up to the density, heats by mass, conductivities by volume", () => {
  const parts = [
    { mass: 1, density: 500, specificHeat: 2000, conductivity: 0.1 },
    { mass: 3, density: 1000, specificHeat: 4000, conductivity: 0.3 },
  ];
  const of = (...names: readonly string[]) =>
    parts.map((part) => Object.fromEntries(Object.entries(part).filter(([name]) => names.includes(name)))) as never;
  expect(densityOfMixture({ parts: of("mass", "density") })).toBeCloseTo(800, 9);
  expect(specificHeatOfMixture({ parts: of("mass", "specificHeat") })).toBeCloseTo(3500, 9);
  // 2 L and 3 L.
  expect(conductivityOfMixture({ parts: of("mass", "density", "conductivity") })).toBeCloseTo(0.22, 12);
  expect(normalise({ amounts: [1, 0, 3] })).toEqual([0.25, 0, 0.75]);
  expect(() => normalise({ amounts: [0, 0] })).toThrow("above 0");
  expect(() => densityOfMixture({ parts: [{ mass: 0, density: 900 }] })).toThrow("parts[0].mass");
});
