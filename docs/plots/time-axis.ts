import { axisX, dot, type Markish, marks, type ScaleOptions, text } from "@observablehq/plot";

/** A point of a cooling curve. */
export interface TimedPoint {
  /** [s]. */
  readonly time: number;
  /** [°C]. */
  readonly temperature: number;
}

/** A time as one says it in the workshop: 24 min, 3 h 10 min. */
export function spoken(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""].join(" ").trim();
}

const ticks = [60, 120, 300, 600, 1200, 3600, 7200, 18_000, 36_000];

/** Time over decades, from a minute to ten hours; `timeTicks` belongs to it. */
export const timeScale: ScaleOptions = { type: "log", domain: [60, 36_000], label: "time off the heat →" };

/** Its ticks, as marks, since a logarithmic scale would leave out those of sixty seconds. */
export const timeTicks: Markish = axisX(ticks, { text: spoken });

/** Times from one to another, evenly on that axis [s]. */
export function timesBetween(first: number, last: number): readonly number[] {
  return Array.from({ length: 49 }, (_, step) => (step === 48 ? last : first * (last / first) ** (step / 48)));
}

const besides = {
  left: { dx: -9, dy: 11, textAnchor: "end" },
  right: { dx: 9, dy: -9, textAnchor: "start" },
} as const;

/** Points of cooling curves with their times, on the side where the words keep clear of this curve and of its neighbour. */
export function timedPoints(points: readonly TimedPoint[], side: keyof typeof besides): Markish {
  const at = { x: "time", y: "temperature" };
  return marks(
    dot(points, { ...at, r: 4, fill: "currentColor" }),
    text(points, { ...at, text: ({ time }: TimedPoint) => spoken(time), ...besides[side] }),
  );
}
