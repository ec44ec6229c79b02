/** Each of some plain values once, the first first. */
export function unique<T>(list: readonly T[]): readonly T[] {
  const seen = new Set<string>();
  return list.filter((one) => {
    const key = JSON.stringify(one);
    return !seen.has(key) && seen.add(key);
  });
}
