import { expect, test } from "vitest";
import { at, join, keysOf, parentOf, put } from "../../docs/in-page/paths.js";

const value = { a: { list: [1, { "wax, white": 2 }, 3] }, b: 4 };

test("a value takes the place of another, and the rest stays in order", () => {
  expect(put(value, 'a.list[1]["wax, white"]', 5)).toEqual({ a: { list: [1, { "wax, white": 5 }, 3] }, b: 4 });
  expect(Object.keys(put(value, "a", 0) as object)).toEqual(["a", "b"]);
  expect(put(value, "c.d", 6)).toEqual({ ...value, c: { d: 6 } });
  expect(at(put(value, "a.list[3]", 7), "a.list")).toEqual([1, { "wax, white": 2 }, 3, 7]);
});

test("a field or a member is taken away, and nothing is left in its place", () => {
  expect(put(value, "a", undefined)).toEqual({ b: 4 });
  expect(at(put(value, "a.list[0]", undefined), "a.list")).toEqual([{ "wax, white": 2 }, 3]);
  expect(value).toEqual({ a: { list: [1, { "wax, white": 2 }, 3] }, b: 4 });
});

test("a path is put together as it is taken apart", () => {
  for (const path of ["a.list[1]", 'a.list[1]["wax, white"]', "", '["a.b"].c'])
    expect(keysOf(path).reduce<string>(join, "")).toBe(path);
  expect(parentOf('a.list[1]["wax, white"]')).toBe("a.list[1]");
  expect(parentOf("a")).toBe("");
});
