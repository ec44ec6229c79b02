/** The name that is fewest changes of a letter away, if it is near enough to be a slip. */
export function nearest(found: string, known: readonly string[]): string | undefined {
  const lower = found.toLowerCase();
  const ranked = known
    .map((name) => ({ name, distance: distanceOf(lower, name.toLowerCase()) }))
    .sort((one, other) => one.distance - other.distance);
  const [first] = ranked;
  return first && first.distance < first.name.length && first.distance <= Math.ceil(first.name.length / 3)
    ? first.name
    : undefined;
}

/** The question after the expectation, if there is something near to ask for. */
export function didYouMean(near: string | undefined): string {
  return near === undefined ? "" : `; did you mean ${near}?`;
}

/** Insertions, deletions and replacements between two words (Levenshtein), on one row of the table. */
function distanceOf(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > 8 || one.length > 60) return Number.POSITIVE_INFINITY;
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++)
      next[j] = Math.min(
        (row[j] ?? 0) + 1,
        (next[j - 1] ?? 0) + 1,
        (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1),
      );
    row = next;
  }
  return row[other.length] ?? Number.POSITIVE_INFINITY;
}
