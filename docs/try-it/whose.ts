import { at, join, keysOf } from "../in-page/paths.js";

/** The name of a material or a premix, by its key. */
function nameOf(document: unknown, list: "materials" | "premixes", key: unknown): string | undefined {
  const name = typeof key === "string" ? at(document, `${join(`formula.${list}`, key)}.name`) : "";
  return typeof name === "string" && name !== "" ? name : undefined;
}

/** Whose fault it is, in the words of the person who wrote the job: the material of a line, the number of a step. */
export function whose(document: unknown, path: string): string | undefined {
  const [part, list, place, lines, row] = keysOf(path);
  if (part === "process" && list === "steps" && typeof place === "number") return `step ${place + 1}`;
  if (part !== "formula") return undefined;
  if (list === "materials" || list === "premixes") return nameOf(document, list, place);
  if (list !== "phases" || lines !== "lines") return undefined;
  const key = at(document, `formula.phases[${place}].lines[${row}].material`);
  return nameOf(document, "materials", key) ?? nameOf(document, "premixes", key);
}
