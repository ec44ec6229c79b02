import { Script } from "node:vm";
import ts from "typescript";

/** A block of example code, and where it stands. */
export interface Block {
  /** File, from the root of the package. */
  readonly file: string;
  /** Line of its first line of code, from 1. */
  readonly line: number;
  readonly code: string;
}

/** What a comment behind a statement promises: `// => value`, `// prints text` or `// throws text`. */
export interface Promised {
  readonly statement: ts.Statement;
  readonly kind: "=>" | "prints" | "throws";
  readonly text: string;
}

/** The `ts` blocks of a Markdown text. `line` is that of its first line. */
export function blocksOfMarkdown(file: string, text: string, line = 1): Block[] {
  const blocks: Block[] = [];
  for (const match of text.matchAll(/^( *)```ts\n([\s\S]*?)^ *```/gm)) {
    const [, indent = "", code = ""] = match;
    const above = text.slice(0, match.index).split("\n").length;
    blocks.push({ file, line: line + above, code: code.replaceAll(new RegExp(`^${indent}`, "gm"), "") });
  }
  return blocks;
}

/** The `ts` blocks in the docstrings of a TypeScript file. */
export function blocksOfDocstrings(file: string, text: string): Block[] {
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((match) =>
    blocksOfMarkdown(file, match[0].replaceAll(/^ *\* ?/gm, ""), text.slice(0, match.index).split("\n").length),
  );
}

/** What the comments of a block promise, statement by statement. */
export function promises(source: ts.SourceFile): Promised[] {
  return source.statements.flatMap((statement) => {
    const [comment] = ts.getTrailingCommentRanges(source.text, statement.end) ?? [];
    const found = comment && /^\/\/ (=>|prints|throws) (.*)$/.exec(source.text.slice(comment.pos, comment.end));
    if (!comment || !found) return [];
    const [, kind, text = ""] = found as unknown as [string, Promised["kind"], string];
    return [{ statement, kind, text: kind === "=>" ? wholeValue(source.text.slice(comment.end), text) : text }];
  });
}

/** A value may go on over the following comment lines: they are taken until it reads as an expression. */
function wholeValue(rest: string, start: string): string {
  let value = start;
  for (const line of rest.split("\n").slice(1)) {
    const more = /^\s*\/\/(.*)$/.exec(line);
    if (isExpression(value) || !more) break;
    value += `\n${more[1]}`;
  }
  return value;
}

/** Whether a text reads as one expression of JavaScript: it is compiled and not run. */
export function isExpression(text: string): boolean {
  try {
    new Script(`(${text}\n);`);
    return true;
  } catch {
    return false;
  }
}
