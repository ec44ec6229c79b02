/** A copy without some of its fields, for a function that does not know them. */
export function without<T extends object>(value: T, ...names: readonly string[]): T {
  return Object.fromEntries(Object.entries(value).filter(([name]) => !names.includes(name))) as T;
}
