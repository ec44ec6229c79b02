import ts from "typescript";
import { expect, test } from "vitest";
import { differences, matches, prints, throws } from "./expectations.js";
import { blocksOfDocstrings, blocksOfMarkdown, promises } from "./parse.js";
import { allBlocks } from "./write.js";

const promisesOf = (code: string) =>
  promises(ts.createSourceFile("x.ts", code, ts.ScriptTarget.ES2022, true)).map(({ kind, text }) => [kind, text]);

test("there are examples", () => {
  expect(allBlocks().length).toBeGreaterThan(0);
});

test("blocks are found in docstrings and Markdown with the line of their first line of code", () => {
  const doc =
    "const a = 1;\n/**\n * Words.\n *\n * @example\n * ```ts\n * f(1); // => 2\n * ```\n */\nfunction f() {}\n";
  expect(blocksOfDocstrings("x.ts", doc)).toEqual([{ file: "x.ts", line: 7, code: "f(1); // => 2\n" }]);
  const guide = "# T\n\n```sh\nnpm ci\n```\n\n- item\n\n  ```ts\n  f(1);\n    g();\n  ```\n";
  expect(blocksOfMarkdown("x.md", guide)).toEqual([{ file: "x.md", line: 10, code: "f(1);\n  g();\n" }]);
});

test("a promised value may go on over several comment lines, and ends where it reads as an expression", () => {
  expect(promisesOf("f(); // => {\n//   a: 1,\n// }\n// words\ng(); // => 2\n// words")).toEqual([
    ["=>", "{\n   a: 1,\n }"],
    ["=>", "2"],
  ]);
  expect(promisesOf('f(); // throws power\nconsole.log("x"); // prints x\ng();')).toEqual([
    ["throws", "power"],
    ["prints", "x"],
  ]);
});

test("numbers are compared at 1e-12 relative, and everything else exactly", () => {
  expect(differences({ a: [1, "x"] }, { a: [1 + 1e-13, "x"] }, "value")).toEqual([]);
  expect(differences(1, 1 + 1e-11, "value")).toHaveLength(1);
  expect(differences(0, 1e-300, "value")).toHaveLength(1);
  expect(differences(Number.NaN, 1, "value")).toHaveLength(1);
  expect(differences({ a: 1 }, { a: 1, b: undefined }, "value")).toEqual(["value.b is not there"]);
  expect(differences({ a: 1, b: 2 }, { a: 1 }, "value")).toEqual(["value.b is there, and should not be"]);
  expect(differences([], {}, "value")).toHaveLength(1);
  expect(differences("1", 1, "value")).toHaveLength(1);
  expect(() => matches(1, 2)).toThrow();
});

test("an example that prints or throws something else fails", async () => {
  await prints(() => console.log("two", "words"), "two words");
  await expect(prints(() => console.log("other"), "words")).rejects.toThrow();
  await expect(prints(() => undefined, "words")).rejects.toThrow();
  await throws(async () => {
    throw new Error("power: found -5");
  }, "power");
  await expect(throws(async () => 1, "power")).rejects.toThrow();
});
