/** A result of the caller's own: a run keeps what it found for the next one, and what a caller writes into a result must not change that. */
export function copied<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(copied) as T;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, copied(part)])) as T;
}
