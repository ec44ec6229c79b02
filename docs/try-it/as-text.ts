/** JSON for a reader: what fits into the width stands on one line, and the rest is indented. */
export function asText(value: unknown, width = 118, indent = "", before = ""): string {
  const line = onOneLine(value);
  if (typeof value !== "object" || value === null || (indent && indent.length + before.length + line.length < width))
    return line;
  const inner = `${indent}  `;
  if (Array.isArray(value))
    return `[\n${value.map((one) => inner + asText(one, width, inner)).join(",\n")}\n${indent}]`;
  const fields = Object.entries(value).map(([key, one]) => {
    const name = `${JSON.stringify(key)}: `;
    return inner + name + asText(one, width, inner, name);
  });
  return `{\n${fields.join(",\n")}\n${indent}}`;
}

function onOneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${onOneLine(one)}`);
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}
