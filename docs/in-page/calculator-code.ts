import type { Calculator } from "./calculator-data.js";

/** The call as code to copy. */
export function codeOf(
  { room, name }: Pick<Calculator, "room" | "name">,
  args: readonly unknown[],
  result?: unknown,
): string {
  const line = args.map((arg) => literal(arg)).join(", ");
  const call = `${name}(${line.length > 90 ? args.map((arg) => literal(arg, "")).join(", ") : line});`;
  const value = typeof result === "number" ? ` // => ${result}` : "";
  return `import { ${name} } from "gelwright/${room}";\n\n${call}${value}\n`;
}

/** A value as code; on several lines if an indent is given. */
function literal(value: unknown, indent?: string): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const inner = indent === undefined ? undefined : `${indent}  `;
  const flat = Array.isArray(value)
    ? `[${value.map((one) => literal(one)).join(", ")}]`
    : `{ ${entriesOf(value, (one) => literal(one)).join(", ")} }`;
  if (inner === undefined || (flat.length <= 80 && indent !== "")) return flat;
  const [open, close] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
  const parts = Array.isArray(value)
    ? value.map((one) => literal(one, inner))
    : entriesOf(value, (one) => literal(one, inner));
  return `${open}\n${parts.map((part) => `${inner}${part},\n`).join("")}${indent}${close}`;
}

function entriesOf(value: object, write: (value: unknown) => string): string[] {
  return Object.entries(value).map(
    ([key, one]) => `${/^[a-z_$][\w$]*$/i.test(key) ? key : JSON.stringify(key)}: ${write(one)}`,
  );
}
