import { at, keysOf } from "../in-page/paths.js";

const nameAt = (document: unknown, path: string): string | undefined => {
  const name = at(document, path);
  return typeof name === "string" && name !== "" ? name : undefined;
};

/** Whose fault it is, in the words of the person who wrote the job: the material of a line, the number of a step. */
export function whose(document: unknown, path: string): string | undefined {
  const keys = keysOf(path);
  const step = keys[0] === "process" && keys[1] === "steps" ? keys[2] : undefined;
  if (typeof step === "number") return `step ${step + 1}`;
  if (keys[0] !== "formula") return undefined;
  const [line] = /^formula\.phases\[\d+\]\.lines\[\d+\]/.exec(path) ?? [];
  const key = line === undefined ? keys[2] : at(document, `${line}.material`);
  const groups = line === undefined ? [keys[1]] : ["materials", "premixes"];
  for (const group of groups)
    if (group === "materials" || group === "premixes") {
      const name = nameAt(document, `formula.${group}[${JSON.stringify(String(key))}].name`);
      if (name !== undefined) return name;
    }
  return undefined;
}
