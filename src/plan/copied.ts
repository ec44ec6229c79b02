/** A copy for the caller. A run keeps its results for the next one, so that a caller must not write into those. */
export function copied<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(copied) as T;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, copied(part)])) as T;
}
