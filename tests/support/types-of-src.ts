import { readdirSync } from "node:fs";
import ts from "typescript";
import { root } from "./rooms.js";

let program: ts.Program | undefined;

/** All of `src` as the compiler reads it, without Node and the DOM in sight. Read once for all that asks for types in a thread or a script. */
export function typesOfSrc(): ts.Program {
  program ??= ts.createProgram(
    readdirSync(`${root}src`, { recursive: true, encoding: "utf8" })
      .map((file) => `${root}src/${file.replaceAll("\\", "/")}`)
      .filter((file) => file.endsWith(".ts")),
    {
      module: ts.ModuleKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      lib: ["lib.es2022.d.ts"],
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      types: [],
    },
  );
  return program;
}
