import { list, record, refuse } from "../guards.js";

/** The value, if it is a text that names something. */
export function text(value: unknown, path: string): string {
  if (typeof value === "string" && value.trim() !== "") return value;
  return refuse("input", path, value === "" ? '""' : value, "a name");
}

/** Reads every member of a list whose members have names, each with its place for the faults. */
export function each<T extends { readonly name: string }, R>(
  members: readonly T[],
  path: string,
  read: (member: T, at: string) => R,
  min = 1,
): R[] {
  return list(members, path, min).map((member, i) => {
    const at = `${path}[${i}]`;
    text(record(member, at).name, `${at}.name`);
    return read(member, at);
  });
}
