import fc from "fast-check";
import { readFormula, replaceMaterial } from "gelwright/formula";
import { expect, test } from "vitest";

const formula = readFormula({
  version: 1,
  name: "trial",
  materials: {
    weak: { name: "weak", function: "antioxidant", strength: "20 %" },
    strong: { name: "strong", function: "antioxidant", strength: "80 %" },
    oil: { name: "oil", function: "oil" },
    spare: { name: "spare oil", function: "oil" },
  },
  phases: [
    {
      name: "A",
      lines: [
        { material: "weak", amount: "0.8 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
    {
      name: "B",
      lines: [
        { material: "weak", amount: "0.4 %" },
        { material: "spare", amount: "30 %" },
      ],
    },
  ],
});

test("at equal active the active part is kept and the shares still sum to 1", () => {
  const changed = replaceMaterial({ formula, material: "weak", by: "strong", at: "equal active" });
  const sum = changed.reduce((total, line) => total + line.massFraction, 0);
  const active = changed
    .filter((line) => line.material === "strong")
    .reduce((total, line) => total + 0.8 * line.massFraction, 0);
  expect(sum).toBeCloseTo(1, 14);
  expect(active).toBeCloseTo(0.2 * 0.012, 14);
});

test("at equal share every share stays as it was, however strong the materials are", () => {
  const changed = replaceMaterial({ formula, material: "weak", by: "strong", at: "equal share" });
  expect(changed.map(({ massFraction }) => massFraction)).toEqual(formula.lines.map((line) => line.massFraction));
  expect(changed.map(({ material }) => material)).toEqual(["strong", "oil", "strong", "spare"]);
});

test("there and back again is where it was", () => {
  fc.assert(
    fc.property(fc.constantFrom("equal share" as const, "equal active" as const), (at) => {
      const there = replaceMaterial({ formula, material: "weak", by: "strong", at });
      const back = replaceMaterial({ formula: { ...formula, lines: there }, material: "strong", by: "weak", at });
      back.forEach((line, i) => {
        expect(line.material).toBe(formula.lines[i]?.material);
        expect(line.massFraction).toBeCloseTo(formula.lines[i]?.massFraction ?? Number.NaN, 14);
      });
    }),
  );
});

test("a replacement that stands in the phase already is refused, since two lines would have to become one unseen", () => {
  expect(() => replaceMaterial({ formula, material: "weak", by: "oil", at: "equal share" })).toThrow(
    "does not stand in phase A",
  );
});

test("a carrier that cannot make up the difference is named", () => {
  const tight = readFormula({
    version: 1,
    name: "tight",
    materials: {
      strong: { name: "strong", function: "antioxidant", strength: "80 %" },
      weak: { name: "weak", function: "antioxidant", strength: "20 %" },
      oil: { name: "oil", function: "oil" },
    },
    phases: [
      {
        name: "A",
        lines: [
          { material: "strong", amount: "60 %" },
          { material: "oil", amount: "q.s." },
        ],
      },
    ],
  });
  expect(() => replaceMaterial({ formula: tight, material: "strong", by: "weak", at: "equal active" })).toThrow(
    "to make up the difference",
  );
});
