/** The keys of `charges[0].mass` and of `materials["wax, white"]`, one after the other. */
export function keysOf(path: string): readonly (string | number)[] {
  return [...path.matchAll(/\["((?:[^"\\]|\\.)*)"\]|\[(\d+)\]|([^.[\]]+)/g)].map(([, quoted, index, name = ""]) => {
    if (quoted !== undefined) return JSON.parse(`"${quoted}"`) as string;
    return index === undefined ? name : Number(index);
  });
}

/** What stands at a path. */
export function at(value: unknown, path: string): unknown {
  return keysOf(path).reduce<unknown>(
    (inner, key) => (typeof inner === "object" && inner !== null ? (inner as Record<string, unknown>)[key] : undefined),
    value,
  );
}

/** The same value with another at a path; `undefined` takes a field away. */
export function put(value: unknown, path: string, given: unknown): unknown {
  const [key, ...rest] = keysOf(path);
  if (key === undefined) return given;
  const copy: Record<string | number, unknown> | unknown[] = Array.isArray(value)
    ? [...value]
    : { ...(value as Record<string, unknown>) };
  const inner = rest.reduce<string>((all, one) => all + (typeof one === "number" ? `[${one}]` : `.${one}`), "");
  const changed = rest.length === 0 ? given : put((copy as Record<string | number, unknown>)[key] ?? {}, inner, given);
  if (changed === undefined) delete (copy as Record<string | number, unknown>)[key];
  else (copy as Record<string | number, unknown>)[key] = changed;
  return copy;
}

/** Every number in a value, with its path. */
export function numbersIn(value: unknown, path = ""): readonly (readonly [path: string, number: number])[] {
  if (typeof value === "number") return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((one, i) => numbersIn(one, `${path}[${i}]`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => numbersIn(one, path === "" ? key : `${path}.${key}`));
}

/** A path with `[*]` for each place in a list. */
export const general = (path: string): string => path.replaceAll(/\[\d+\]/g, "[*]");
