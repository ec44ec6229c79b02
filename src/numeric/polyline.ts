/**
 * The value at x of straight lines through points in rising order, at least two; beyond them along the first or last
 * line. Whether that is allowed, and on which axes the lines are straight, is the caller's to say.
 */
export function polyline(places: readonly number[], values: readonly number[], x: number): number {
  const next = places.findIndex((place, i) => i > 0 && place >= x);
  const to = next < 0 ? places.length - 1 : next;
  const [low, high] = [places[to - 1] as number, places[to] as number];
  const [from, end] = [values[to - 1] as number, values[to] as number];
  return x === high ? end : from + ((end - from) * (x - low)) / (high - low);
}
