import { normalise, readFormula, replaceMaterial } from "gelwright/formula";
import { expect, test } from "vitest";

const formula = (amount: string) =>
  readFormula({
    version: 1,
    name: "trial",
    materials: {
      oil: { name: "oil", function: "oil" },
      ester: { name: "ester", function: "oil", strength: "50 %" },
      wax: { name: "wax", function: "gel former" },
    },
    phases: [
      {
        name: "A",
        lines: [
          { material: "oil", amount },
          { material: "wax", amount },
        ],
      },
    ],
  });

test("amounts that are all 0 have no shares", () => {
  expect(() => normalise({ amounts: [0, 0] })).toThrow("at least one is above 0");
});

test("a material that stands in no line cannot be replaced", () => {
  expect(() => replaceMaterial({ formula: formula("50 %"), material: "ester", by: "wax", at: "equal share" })).toThrow(
    "stands in a line",
  );
});

test("twice as much of an oil of half the strength needs a q.s. line to make room for it", () => {
  expect(() => replaceMaterial({ formula: formula("50 %"), material: "oil", by: "ester", at: "equal active" })).toThrow(
    "a q.s. line",
  );
});
