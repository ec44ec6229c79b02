import { readFileSync } from "node:fs";
import { CompletionContext } from "@codemirror/autocomplete";
import { json } from "@codemirror/lang-json";
import { EditorState } from "@codemirror/state";
import { expect, test } from "vitest";
import { completionBy, pathAt } from "../../docs/try-it/completion.js";
import { root } from "../support/rooms.js";

const schema = JSON.parse(readFileSync(`${root}dist/schema/job.json`, "utf8"));
const document = { formula: { materials: { wax: {}, oil: {} }, phases: [{ name: "A" }, { name: "B" }] } };

/** The text before and behind the cursor, `|`, in an editor. */
function at(text: string): readonly [EditorState, number] {
  const pos = text.indexOf("|");
  return [EditorState.create({ doc: text.replace("|", ""), extensions: [json()] }), pos];
}

function offered(text: string, explicit = true) {
  const [state, pos] = at(text);
  return completionBy(schema, () => document)(new CompletionContext(state, pos, explicit));
}

const words = (text: string) => offered(text)?.options.map(({ label }) => JSON.parse(label));

test("fields are offered by what the object is, without those that it has", () => {
  expect(words('{ "process": { "steps": [{ "do": "heat", "|" }] } }')).toEqual(["to", "within", "note"]);
  expect(words('{ "process": { "steps": [{ "do": "heat", "note": "x", |')).toEqual(["to", "within"]);
  expect(words('{ "process": { "steps": [{ "do": "rest", "|": 1 }] } }')).toContain("for");
  expect(words('{ "vessel": { | } }')).toContain("diameter");
  expect(words("{ | }")).toEqual(Object.keys(schema.properties));
  expect(words('{ "formula": { "materials": { "any name": { | } } } }')).toContain("specificHeat");
});

test("a field comes with its colon and the shape of its value, unless it has them", () => {
  const applied = (text: string) => offered(text)?.options.map(({ apply }) => apply);
  expect(applied('{ "vessel": { | } }')).toContain('"diameter": ""');
  expect(applied('{ "vessel": { | } }')).toContain('"workingVolume": {"min":"","max":""}');
  expect(applied('{ "vessel": { "|": "1 m" } }')).toContain('"diameter"');
});

test("words are offered where one of some words belongs, and names of the document where one of those does", () => {
  expect(words('{ "process": { "steps": [{ "do": "ta|" }] } }')).toContain("take off the heat");
  expect(words('{ "vessel": { "stirrer": { "byHand": | } } }')).toEqual([true, false]);
  expect(words('{ "version": | }')).toEqual([1]);
  expect(words('{ "process": { "steps": [{ "do": "add", "phase": | }] } }')).toEqual(["A", "B"]);
  expect(words('{ "formula": { "phases": [{ "lines": [{ "material": "|" }] }] } }')).toEqual(["wax", "oil"]);
});

test("nothing is offered where the schema has nothing, nor unasked where nothing is typed", () => {
  expect(offered('{ "none": { | } }')).toBeNull();
  expect(offered('{ "vessel": { "name": | } }')).toBeNull();
  expect(offered("{ | }", false)).toBeNull();
  expect(offered("|")).toBeNull();
});

test("the place of the cursor has the path that a fault would name", () => {
  const path = (text: string) => pathAt(...at(text));
  expect(path('{ "a": [1, { "b c": |"x" }] }')).toBe('a[1]["b c"]');
  expect(path('{ "a": [1, |2] }')).toBe("a[1]");
});
