import { expect, test } from "vitest";
import { placeOf } from "../../docs/try-it/place.js";

const text = `{
  "a": { "list": [ 1, { "b \\"c\\"": "x, y" } ], "wax, white": -2.5e3 },
  "last": [ ]
}`;

function at(path: string): string {
  const { start, end } = placeOf(text, path);
  return text.slice(start, end);
}

test("the path of a fault leads to its value in the text", () => {
  expect(at("a.list[0]")).toBe("1");
  expect(at('a.list[1]["b \\"c\\""]')).toBe('"x, y"');
  expect(at('a["wax, white"]')).toBe("-2.5e3");
  expect(at("last")).toBe("[ ]");
  expect(at("a.list")).toBe('[ 1, { "b \\"c\\"": "x, y" } ]');
});

test("a path to what is not there leads as near as there is", () => {
  expect(at("last[3].name")).toBe("[ ]");
  expect(at("a.list[0].name")).toBe("1");
  expect(at("none")).toBe(text);
  expect(at("")).toBe(text);
});
