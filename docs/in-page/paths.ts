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

/** The same value with another at a path; `undefined` takes a field or a member of a list away. */
export function put(value: unknown, path: string, given: unknown): unknown {
  return putAt(value, keysOf(path), given);
}

function putAt(value: unknown, [key, ...rest]: readonly (string | number)[], given: unknown): unknown {
  if (key === undefined) return given;
  const inner = (value as Record<string | number, unknown> | undefined)?.[key];
  const changed = putAt(inner, rest, given);
  if (Array.isArray(value)) {
    const copy: unknown[] = [...value];
    copy.splice(Number(key), 1, ...(changed === undefined ? [] : [changed]));
    return copy;
  }
  const { [key]: _, ...others } = (value ?? {}) as Record<string | number, unknown>;
  if (changed === undefined) return others;
  return inner === undefined ? { ...others, [key]: changed } : { ...(value as object), [key]: changed };
}

/** A path with one step more, as a fault names it. */
export function join(path: string, key: string | number): string {
  if (typeof key === "number") return `${path}[${key}]`;
  if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === "" ? key : `${path}.${key}`;
}

/** A path without its last step. */
export function parentOf(path: string): string {
  return keysOf(path).slice(0, -1).reduce<string>(join, "");
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
