// What the editor offers while a job is typed: names of fields, words, and the names that the document gives things.
import type { Completion, CompletionContext, CompletionResult } from "@codemirror/autocomplete";
import { ensureSyntaxTree, syntaxTree } from "@codemirror/language";
import type { EditorState } from "@codemirror/state";
import type { SyntaxNode } from "@lezer/common";
import { join } from "../in-page/paths.js";
import { begun, choicesOf, descriptionOf, namesFor, type Schema, shapeOf, under } from "./schema.js";

/** Completion by a schema; `document` is the last text that was sound. */
export function completionBy(schema: Schema, document: () => unknown) {
  return ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const node = treeOf(state).resolveInner(pos, -1);
    const isText = node.name === "String" || node.name === "PropertyName";
    const before = state.sliceDoc(0, isText ? node.from : wordStart(state, pos)).trimEnd();
    const sign = before.at(-1);
    const place = isText ? { from: node.from, to: node.to } : { from: wordStart(state, pos), to: pos };
    if (!explicit && !isText && place.from === pos) return null;
    const box = boxOf(node);
    if (!box) return null;
    if (box.name === "Object" && sign !== ":") {
      const isNamed = state.sliceDoc(place.to).trimStart().startsWith(":");
      const options = fieldsFor(schemaOf(state, box, schema), shallow(state, box), isNamed);
      return options.length === 0 ? null : { ...place, options, filter: true, validFor: /^"?[\w$]*"?$/ };
    }
    const key = box.name === "Object" ? keyBefore(before) : 0;
    const holder = schemaOf(state, box, schema);
    const found = holder && under(holder, shallow(state, box), key);
    const options = found ? wordsFor(found, String(box.name === "Object" ? key : ""), document()) : [];
    return options.length === 0 ? null : { ...place, options, filter: true };
  };
}

/** The whole tree: a busy browser may not have parsed a text to its end yet. */
const treeOf = (state: EditorState) => ensureSyntaxTree(state, state.doc.length, 500) ?? syntaxTree(state);

/** Where the word begins that is being typed without a quotation mark. */
function wordStart(state: EditorState, pos: number): number {
  const { text, from } = state.doc.lineAt(pos);
  return pos - (/[\w$"]*$/.exec(text.slice(0, pos - from))?.[0].length ?? 0);
}

/** The object or the list around a place. */
function boxOf(node: SyntaxNode): SyntaxNode | undefined {
  for (let one: SyntaxNode | null = node; one; one = one.parent)
    if (one.name === "Object" || one.name === "Array") return one;
  return undefined;
}

const keyBefore = (before: string): string => {
  const [, quoted = '""'] = /("(?:[^"\\]|\\.)*")\s*:$/.exec(before) ?? [];
  return textOf(quoted);
};

function textOf(quoted: string): string {
  try {
    return String(JSON.parse(quoted));
  } catch {
    return "";
  }
}

/** What the schema says of an object or a list of the text, from the outermost inwards. */
function schemaOf(state: EditorState, box: SyntaxNode, whole: Schema): Schema | undefined {
  const { parent } = box;
  if (parent?.name === "Property") {
    const name = parent.getChild("PropertyName");
    const outer = parent.parent;
    const holder = outer ? schemaOf(state, outer, whole) : undefined;
    return name && outer && holder
      ? under(holder, shallow(state, outer), textOf(state.sliceDoc(name.from, name.to)))
      : undefined;
  }
  if (parent?.name === "Array") return schemaOf(state, parent, whole)?.items;
  return whole;
}

/** The fields of an object that hold a text, which is enough to tell its kind, and the names of the others. */
function shallow(state: EditorState, object: SyntaxNode): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    object.getChildren("Property").flatMap((property) => {
      const name = property.getChild("PropertyName");
      const text = property.getChild("String");
      if (!name) return [];
      const key = textOf(state.sliceDoc(name.from, name.to));
      return [[key, text ? textOf(state.sliceDoc(text.from, text.to)) : null] as const];
    }),
  );
}

function fieldsFor(
  schema: Schema | undefined,
  stated: Readonly<Record<string, unknown>>,
  isNamed: boolean,
): readonly Completion[] {
  const { fields, required } = shapeOf(schema ?? {}, stated);
  return Object.entries(fields)
    .filter(([key]) => isNamed || !(key in stated))
    .map(([key, field]) => {
      const info = descriptionOf(field);
      const start = isNamed ? "" : `: ${JSON.stringify(begun(field))}`;
      return {
        label: JSON.stringify(key),
        apply: JSON.stringify(key) + start,
        type: "property",
        ...(required.includes(key) && { detail: "required", boost: 1 }),
        ...(info !== "" && { info }),
      };
    });
}

function wordsFor(schema: Schema, key: string, document: unknown): readonly Completion[] {
  const words = schema.const === undefined ? (choicesOf(schema) ?? namesFor(key, document)) : [String(schema.const)];
  const isBare = schema.type === "boolean" || typeof schema.const === "number";
  return words.map((word) => ({ label: isBare ? word : JSON.stringify(word), type: "enum" }));
}

/** The path of the innermost value at a place of the text, as faults name it. */
export function pathAt(state: EditorState, pos: number): string {
  const keys: (string | number)[] = [];
  for (let node: SyntaxNode | null = treeOf(state).resolveInner(pos, 1); node; node = node.parent) {
    const { parent } = node;
    if (node.name === "Property") {
      const name = node.getChild("PropertyName");
      if (name) keys.unshift(textOf(state.sliceDoc(name.from, name.to)));
    } else if (parent?.name === "Array" && node.name !== "[" && node.name !== "]" && node.name !== ",") {
      let index = 0;
      for (let one = node.prevSibling; one; one = one.prevSibling) if (!/^[[\],⚠]$/.test(one.name)) index++;
      keys.unshift(index);
    }
  }
  return keys.reduce<string>(join, "");
}
