// Renames the working tree by map.ts and rules.ts: npx tsx tests/rename/rename.ts. Deleted once it has run over main.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmdirSync, writeFileSync } from "node:fs";
import { dirname, posix } from "node:path";
import ts from "typescript";
import { checkIds, everywhere, values } from "./map.js";
import { internal, moves, prose, rules, texts } from "./rules.js";

const git = (...args: string[]) => execFileSync("git", args, { encoding: "utf8" });
const files = git("ls-files")
  .split("\n")
  .filter((file) => /\.(ts|mjs|json|md|html|js)$/.test(file))
  .filter(
    (file) =>
      !/^tests\/rename\/|^docs\/api\/.*\.md$|^tests\/architecture\/names\.test\.ts$|^docs\/guides\/names\.md$|^package-lock|^LICENSE/.test(
        file,
      ),
  )
  .filter((file) => existsSync(file));

const words: Readonly<Record<string, string>> = { ...everywhere, ...internal };
const own = (table: Readonly<Record<string, string>>, key: string) =>
  Object.hasOwn(table, key) ? table[key] : undefined;

const newPath = (file: string) => {
  for (const [from, to] of moves) if (from.test(file)) return file.replace(from, to);
  return file;
};

/** The new word for an old one, in a file; of an identifier its node decides too. */
function newWord(word: string, file: string, node?: ts.Identifier): string {
  for (const rule of rules) {
    if (rule.old !== word || !rule.in.test(file) || rule.not?.test(file)) continue;
    if (!rule.when) return rule.new;
    if (node && rule.when(node)) return rule.new;
  }
  return own(words, word) ?? word;
}

const compound = (word: string) => /[a-z][A-Z]/.test(word);
const identifier = /[A-Za-z_$][\w$]*/g;

/** Sentences: the words that the prose table knows, then names. */
function inSentence(text: string, file: string): string {
  let now = text;
  for (const rule of prose) if (rule.in.test(file)) now = now.replace(new RegExp(rule.from.source, "g"), rule.to);
  return inProse(now, file);
}

/** In prose only words that can be nothing but a name: those with a capital inside. */
const inProse = (text: string, file: string) =>
  ids(text, false).replace(identifier, (word) => (compound(word) ? newWord(word, file) : word));

const ruleOfIds = Object.entries(checkIds);
/** Ids of checks: those with a hyphen wherever they stand, single words at the beginning of a whole string. */
function ids(text: string, whole: boolean): string {
  for (const [old, now] of ruleOfIds) {
    if (old.includes("-")) text = text.replace(new RegExp(`(?<![\\w-])${old}(?![\\w-])`, "g"), now);
    else if (whole) text = text.replace(new RegExp(`^${old}(?=:|$)`), now);
  }
  return text;
}

const pathLike = /^[A-Za-z_$][\w$]*(?:\.[\w$*]+|\[[\w$*]*\])*$/;

/** A path such as `heater.highest` or a call such as `leg.coolingLeg`. */
function inPath(text: string, file: string): string {
  const parts = text.split(/([.[\]])/);
  return parts
    .map((part, i) => {
      if (part === "supply" && (parts[i - 2] === "supply" || parts[i - 2] === "beside")) return "kind";
      if (part === "leg" && i === 0 && parts.length > 1) return "transient";
      if (part === "leg" && i > 0) return "transientSegment";
      return newWord(part, file);
    })
    .join("");
}

/** What stands in quotes. */
function inString(text: string, file: string, plain = true): string {
  const value = own(values, text);
  if (value !== undefined) return value;
  if (text === "leg" || text === "gelwright/leg") return text.replace("leg", "transient");
  const named = ids(text, /^(src|tests)\/(plan|sheet|package)|\.md$/.test(file));
  if (named !== text) return named;
  if (/^leg\/[a-z]/.test(text)) return text.replace(/^leg\//, "transient/");
  const message = /^(\S+)(: found .*)$/.exec(text);
  if (message && pathLike.test(message[1] ?? ""))
    return inPath(message[1] ?? "", file) + inProse(message[2] ?? "", file);
  if (pathLike.test(text)) return plain || !/^[a-z]+$/.test(text) ? inPath(text, file) : text;
  return text.includes(" ") ? inSentence(text, file) : inProse(text, file);
}

/** What stands between backticks in prose. */
function inCode(text: string, file: string): string {
  const value = own(values, text.replaceAll('"', ""));
  if (value !== undefined) return `"${value}"`;
  if (/^(gelwright\/leg|src\/leg.*)$/.test(text)) return text.replace("leg", "transient");
  const named = ids(text, false);
  if (named !== text) return named;
  if (pathLike.test(text)) return inPath(text, file);
  const quoted = /^"([^"]*)"$/.exec(text);
  if (quoted) return `"${inString(quoted[1] ?? "", file)}"`;
  if (/[=(){};]|: /.test(text)) return inTypeScript(text, file);
  return inProse(text, file);
}

/** A comment: fences as code, then code marks, names of arguments and links, then prose. */
function inComment(text: string, file: string): string {
  const value = /^(\/\/ => )([\s\S]*)$/.exec(text);
  if (value) return `${value[1]}${inTypeScript(`(${value[2]})`, file).slice(1, -1)}`;
  return text
    .split(/(^[ \t]*\*? ?```ts\n[\s\S]*?```)/m)
    .map((part) => {
      if (!/```ts\n/.test(part)) return inMarks(part, file);
      const lines = part.split("\n");
      const prefix = lines.map((line) => /^[ \t]*\*? ?/.exec(line)?.[0] ?? "");
      const bare = lines.map((line, i) => line.slice(prefix[i]?.length ?? 0));
      const inside = inTypeScript(bare.slice(1, -1).join("\n"), file).split("\n");
      return [bare[0], ...inside, bare.at(-1)].map((line, i) => `${prefix[i]}${line}`).join("\n");
    })
    .join("");
}

function inMarks(text: string, file: string): string {
  return text
    .split(/(`[^`\n]+`|@param [\w.]+|\{@link [^}]+\}|\$\$[^$]+\$\$|\$[^$\n]+\$)/)
    .map((part) => {
      if (part.startsWith("$")) return part;
      if (/^`[^`]+`$/.test(part)) return `\`${inCode(part.slice(1, -1), file)}\``;
      const param = /^@param (.+)$/.exec(part);
      if (param) return `@param ${inPath(param[1] ?? "", file)}`;
      return inSentence(part, file);
    })
    .join("");
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export function inTypeScript(text: string, file: string): string {
  const source = ts.createSourceFile("x.ts", text, ts.ScriptTarget.ES2022, true);
  const edits: Edit[] = [];
  const put = (start: number, end: number, now: string) => {
    if (text.slice(start, end) !== now) edits.push({ start, end, text: now });
  };
  const module = (node: ts.StringLiteral) =>
    ts.isImportDeclaration(node.parent) ||
    ts.isExportDeclaration(node.parent) ||
    ts.isExternalModuleReference(node.parent) ||
    (ts.isLiteralTypeNode(node.parent) && ts.isImportTypeNode(node.parent.parent)) ||
    (ts.isCallExpression(node.parent) && node.parent.expression.kind === ts.SyntaxKind.ImportKeyword);
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) put(node.getStart(), node.end, newWord(node.text, file, node));
    else if (ts.isStringLiteral(node)) {
      const now = module(node) ? specifier(node.text, file) : inString(node.text, file);
      const quote = text[node.getStart()] ?? '"';
      if (now !== node.text)
        put(
          node.getStart(),
          node.end,
          `${quote}${text.slice(node.getStart() + 1, node.end - 1) === node.text ? now : inProse(text.slice(node.getStart() + 1, node.end - 1), file)}${quote}`,
        );
    } else if (
      ts.isNoSubstitutionTemplateLiteral(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddle(node) ||
      ts.isTemplateTail(node)
    ) {
      const start = node.getStart() + 1;
      const end = node.end - (ts.isTemplateHead(node) || ts.isTemplateMiddle(node) ? 2 : 1);
      put(start, end, inTemplate(text.slice(start, end), file, ts.isTemplateHead(node)));
    } else if (ts.isRegularExpressionLiteral(node)) put(node.getStart(), node.end, inRegex(node.text, file));
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const { pos, end } of comments(source)) put(pos, end, inComment(text.slice(pos, end), file));
  let out = text;
  for (const edit of edits.sort((one, other) => other.start - one.start))
    out = out.slice(0, edit.start) + edit.text + out.slice(edit.end);
  return out;
}

/** A part of a template: the end of a path, an id of a check, or prose. */
function inTemplate(part: string, file: string, head: boolean): string {
  let now = ids(part, head && /^(src|tests)\/(plan|sheet)/.test(file));
  if (/^(?:\.[\w$]+|\[)+(?:\[?)$/.test(now))
    now = now.replace(identifier, (word) => (word === "supply" || word === "stretch" ? "kind" : newWord(word, file)));
  else if (head && /^[a-zA-Z]+(\[|\.)$/.test(now)) now = now.replace(identifier, (word) => newWord(word, file));
  else if (/^\]?\.[\w$]+$/.test(now)) now = now.replace(identifier, (word) => newWord(word, file));
  return / [a-z]/.test(now) ? inSentence(now, file) : inProse(now, file);
}

/** A regular expression: paths inside it too. */
const inRegex = (text: string, file: string) =>
  inProse(text, file).replace(/[A-Za-z]+(?:\\\.[A-Za-z]+|\\\[\d+\\\])+/g, (path) =>
    path.replace(identifier, (word) => newWord(word, file)),
  );

function comments(source: ts.SourceFile): { readonly pos: number; readonly end: number }[] {
  const found: { pos: number; end: number }[] = [];
  // Trivia between tokens of the tree, so that no scanner has to tell a template or a regular expression.
  const seen = new Set<number>();
  const leaf = (node: ts.Node): void => {
    const full = node.getFullStart();
    if (!seen.has(full)) {
      seen.add(full);
      for (const range of [
        ...(ts.getLeadingCommentRanges(source.text, full) ?? []),
        ...(ts.getTrailingCommentRanges(source.text, full) ?? []),
      ])
        if (!seen.has(-range.pos - 1)) {
          seen.add(-range.pos - 1);
          found.push({ pos: range.pos, end: range.end });
        }
    }
    for (const child of node.getChildren(source))
      if (child.kind < ts.SyntaxKind.FirstJSDocNode || child.kind > ts.SyntaxKind.LastJSDocNode) leaf(child);
  };
  leaf(source);
  return found;
}

/** A module, by where the files are now. */
function specifier(text: string, file: string): string {
  if (/^gelwright\/leg$/.test(text)) return "gelwright/transient";
  if (!text.startsWith(".")) return text;
  const target = posix.join(posix.dirname(file), text).replace(/\.js$/, ".ts");
  const from = posix.dirname(newPath(file));
  const now = posix.relative(from, newPath(target)).replace(/\.ts$/, /\.js$/.test(text) ? ".js" : ".ts");
  if (newPath(target) === target && newPath(file) === file) return text;
  return now.startsWith(".") ? now : `./${now}`;
}

function inMarkdown(text: string, file: string): string {
  return text
    .split(/(^```[a-z]*\n[\s\S]*?^```)/m)
    .map((part) => {
      const fence = /^```([a-z]*)\n([\s\S]*)^```$/m.exec(part);
      if (!fence || !part.startsWith("```")) return inMarks(part, file);
      const [, language = "", inside = ""] = fence;
      const now = /^(ts|js|typescript|javascript)$/.test(language)
        ? inTypeScript(inside, file)
        : language === "json"
          ? inJson(inside, file)
          : inProse(inside, file)
              .replaceAll("src/leg", "src/transient")
              .replaceAll("gelwright/leg", "gelwright/transient");
      return `\`\`\`${language}\n${now}\`\`\``;
    })
    .join("");
}

/** JSON text: keys, and strings that are names. A tag of a union is a key whose value is a string. */
function inJson(text: string, file: string): string {
  return text.replace(
    /"((?:[^"\\]|\\.)*)"(\s*:\s*(?=("?)))?/g,
    (_, string: string, colon: string | undefined, next: string) => {
      if (colon === undefined) return `"${inString(string, file, false)}"`;
      const key = (string === "supply" || string === "stretch") && next === '"' ? "kind" : inKey(string, file, text);
      return `"${key}"${colon}`;
    },
  );
}

function inKey(key: string, file: string, text: string): string {
  if (/\.json$/.test(file)) {
    if (key === "before") return /"do":/.test(text) ? "proceedWhen" : key;
    if (key === "shares") return /"coldRoute"|"emulsion"/.test(text) ? "additionShareMax" : key;
    if (key === "droplets") return /"coldRoute"|"emulsion"/.test(text) ? "dropletDiameter" : key;
    if (key === "bubbles") return /"coldRoute"|"emulsion"/.test(text) ? "bubbleDiameter" : key;
    if (key === "bubble") return /"do":/.test(text) ? "bubbleDiameter" : key;
  }
  if (!/^[A-Za-z_$][\w$]*$/.test(key)) return inString(key, file);
  return newWord(key, file);
}

for (const file of files) {
  const before = readFileSync(file, "utf8");
  let now = before;
  for (const { in: where, from, to } of texts)
    if (where.test(file) || where.test(newPath(file)))
      now = now.replaceAll(
        typeof from === "string" ? from : new RegExp(from.source, `${from.flags.replace("g", "")}g`),
        to,
      );
  if (/\.(ts|mjs|js)$/.test(file)) now = inTypeScript(now, file);
  else if (file.endsWith(".md")) now = inMarkdown(now, file);
  else if (file.endsWith(".json")) now = inJson(now, file);
  if (now !== before) writeFileSync(file, now);
  const path = newPath(file);
  if (path !== file) {
    mkdirSync(dirname(path), { recursive: true });
    git("mv", file, path);
  }
}

for (const folder of new Set(
  moves.map(([from]) => /^\^(?:\(src\|tests\)|[a-z]+)\\\/[a-z]+/.exec(from.source)?.[0] ?? ""),
))
  for (const top of ["src", "tests"]) {
    const path = folder.replace(/^\^(\(src\|tests\)|[a-z]+)\\/, top);
    if (existsSync(path) && readdirSync(path).length === 0) rmdirSync(path);
  }
