import type { Cell, Table } from "./table.js";

/** A piece of a sheet, before it is Markdown or HTML. All text is plain: whoever writes it escapes it. */
export type Block =
  | { readonly kind: "title"; readonly text: string }
  /** What begins on a page of its own. */
  | { readonly kind: "part"; readonly text: string }
  | { readonly kind: "section"; readonly text: string }
  /** A heading within a section. */
  | { readonly kind: "subsection"; readonly text: string }
  /** A paragraph: what is to be seen first of it in bold, or all of it in small. */
  | { readonly kind: "text"; readonly text: string; readonly strong?: string; readonly isSmall?: boolean }
  | { readonly kind: "list"; readonly lines: readonly Cell[] }
  /** A table; of a form, with room to write in its empty cells; of many rows, with low ones; on paper beside another. */
  | {
      readonly kind: "table";
      readonly table: Table;
      readonly isForm?: boolean;
      readonly isDense?: boolean;
      readonly side?: "left" | "right";
    }
  /** A drawing, which Markdown leaves out. */
  | { readonly kind: "figure"; readonly svg: string; readonly caption: string };

/** A section, if there is anything in it. */
export function section(text: string, blocks: readonly Block[]): readonly Block[] {
  return blocks.length === 0 ? [] : [{ kind: "section", text }, ...blocks];
}

/** What is a sheet of its own elsewhere, as a section of another: its sections stand one level lower. */
export function within(blocks: readonly Block[]): readonly Block[] {
  return blocks.map(
    (block): Block =>
      block.kind === "title"
        ? { ...block, kind: "section" }
        : block.kind === "section"
          ? { ...block, kind: "subsection" }
          : block,
  );
}

/** A paragraph. */
export function text(of: string): Block {
  return { kind: "text", text: of };
}

/** A list, if there are lines. */
export function list(lines: readonly Cell[]): readonly Block[] {
  return lines.length === 0 ? [] : [{ kind: "list", lines }];
}

/** A table that is read. */
export function table(of: Table): Block {
  return { kind: "table", table: of };
}

/** A table to be written into. */
export function form(of: Table): Block {
  return { kind: "table", table: of, isForm: true };
}

/** Two tables side by side on paper. */
export function beside(left: Block, right: Block): readonly Block[] {
  return [{ ...left, side: "left" } as Block, { ...right, side: "right" } as Block];
}

/** A form of many rows, each for a mark or one figure. */
export function denseForm(of: Table): Block {
  return { kind: "table", table: of, isForm: true, isDense: true };
}
