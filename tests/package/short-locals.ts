import { transform } from "esbuild";
import MagicString from "magic-string";
import { parseAst } from "rollup/parseAst";
import { after, type Mapped, type SourceMap } from "./source-map.js";

/**
 * Shortens the names inside functions and keeps those of functions, which stand in stack traces. A bundler's minifier
 * shortens all names of a module; of a script it keeps those at the top, so that is what it is given.
 */
export async function shortLocals({ code, map }: Mapped): Promise<Mapped> {
  const body = new MagicString(code);
  const [imports, exports]: [string[], string[]] = [[], []];
  for (const node of parseAst(code).body) {
    const { type, start, end } = node as unknown as { type: string; start: number; end: number };
    const isExported = type === "ExportNamedDeclaration" || type === "ExportAllDeclaration";
    if (type !== "ImportDeclaration" && !isExported) continue;
    const isLocal = isExported && (node as { source?: unknown }).source == null;
    (isLocal ? exports : imports).push(code.slice(start, end));
    body.remove(start, end);
  }
  const short = await transform(body.toString(), {
    target: "es2022",
    minifyIdentifiers: true,
    minifyWhitespace: true,
    minifySyntax: true,
    charset: "utf8",
    sourcemap: "external",
    sourcesContent: false,
  });
  const above = imports.join("").replaceAll("\n", " ");
  const cut = JSON.parse(body.generateMap({ hires: true, source: "before" }).toString()) as SourceMap;
  const found = after(after(short.map, cut), map);
  return {
    code: `${above}\n${short.code}${exports.join("")}\n`,
    map: { ...found, mappings: `;${found.mappings}` },
  };
}
