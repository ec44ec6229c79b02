import { expect, test } from "vitest";
import { whose } from "../../docs/try-it/whose.js";

const job = {
  formula: {
    materials: { "wax, white": { name: "white wax" }, oil: { name: "castor oil" }, nameless: {} },
    premixes: { paste: { name: "pigment paste" } },
    phases: [{ name: "A", lines: [{ material: "wax, white" }, { material: "paste" }, { material: "none" }] }],
  },
};

test("a fault in a line is that of its material or premix, whatever the key", () => {
  expect(whose(job, "formula.phases[0].lines[0].amount")).toBe("white wax");
  expect(whose(job, "formula.phases[0].lines[1].amount")).toBe("pigment paste");
});

test("a fault in a material has the material's name, one in a step its number from one", () => {
  expect(whose(job, 'formula.materials["wax, white"].density')).toBe("white wax");
  expect(whose(job, "formula.premixes.paste.lines")).toBe("pigment paste");
  expect(whose(job, "process.steps[3].to")).toBe("step 4");
});

test("what has no name of its own is left with its path", () => {
  for (const path of [
    "formula.phases[0].lines[2].amount",
    "formula.phases[4].lines[0].amount",
    "formula.materials.nameless.name",
    "formula.name",
    "vessel.diameter",
    "line 3",
    "",
  ])
    expect(whose(job, path), path).toBeUndefined();
});
