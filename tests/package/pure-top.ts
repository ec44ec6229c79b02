import MagicString from "magic-string";
import { parseAst } from "rollup/parseAst";
import { after, type Mapped, type SourceMap } from "./source-map.js";

type Node = Readonly<Record<string, unknown>>;

/** What a bundler sees to have no effect. */
const plain = ["Identifier", "Literal", "ObjectExpression", "ArrayExpression", "Property"];
const functions = ["ArrowFunctionExpression", "FunctionExpression", "ClassExpression"];

function isPlain(node: unknown): boolean {
  if (Array.isArray(node)) return node.every(isPlain);
  if (typeof node !== "object" || node === null) return true;
  const { type, ...rest } = node as Node;
  if (functions.some((kind) => kind === type)) return true;
  return (type === undefined || plain.some((kind) => kind === type)) && Object.values(rest).every(isPlain);
}

/** `name(…)`, `Name.name(…)` or `new Name(…)`, with nothing in the brackets that has an effect of its own. */
function isPlainCall({ type, callee, arguments: given }: Node): boolean {
  if (type !== "CallExpression" && type !== "NewExpression") return false;
  const { type: kind, object } = callee as Node;
  const named = kind === "MemberExpression" ? (object as Node)["type"] : kind;
  return named === "Identifier" && isPlain(given);
}

/**
 * Marks each value that is computed while a module loads, so that a bundler may leave it out if nothing uses it.
 * Otherwise a schema, or a table with a spread in it, would stay in every bundle that takes anything from the same file.
 */
export function pureTop({ code, map }: Mapped): Mapped {
  const marks = parseAst(code).body.flatMap((statement) => {
    if (statement.type !== "VariableDeclaration") return [];
    return statement.declarations.flatMap(({ init }) =>
      init == null || isPlain(init) ? [] : [init as unknown as Node],
    );
  });
  const marked = new MagicString(code);
  for (const node of marks) {
    const { start, end } = node as { start: number; end: number };
    const [before, behind] = isPlainCall(node) ? ["", ""] : ["(()=>(", "))()"];
    marked.appendRight(start, `/*@__PURE__*/${before}`).appendLeft(end, behind);
  }
  const own = JSON.parse(marked.generateMap({ hires: true, source: "before" }).toString()) as SourceMap;
  return { code: marked.toString(), map: after(own, map) };
}
