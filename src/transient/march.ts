import { refuse } from "../guards.js";
import type { Track } from "./track.js";

/** Closer to its limit than this [K], a segment goes on as the exponential in which every segment ends. */
const nearest = 1e-6;

/** Where a segment has come to after a time. */
export interface Arrival {
  readonly position: number;
  readonly temperature: number;
  /** Time left to be spent at that position [s]: no more than rounding, unless the limit is all but reached. */
  readonly rest: number;
  /** The part of the time on the exponential end that counts at `position` [s]; the rest counts at `temperature`. */
  readonly near: number;
}

/**
 * Where a segment has come to after `duration`, by Newton's method on the duration, with the slope, which is the pace, taken
 * half-way along the step.
 *
 * Steps that turn back too far, or that do not halve what is missing, give way to bisection; until a time too long is known, to
 * twice the way so far.
 */
export function march(track: Track, duration: number): Arrival {
  const { from, forward, limited, between, paceAt, temperatureOf } = track;
  const max = limited && forward < 0 ? Math.max(0, from - Math.log(nearest)) : Number.POSITIVE_INFINITY;
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let progress = 0;
  let missing = duration;
  let slow = false;
  for (let round = 0; round < 200; round += 1) {
    const position = from + forward * progress;
    const newton = missing / (paceAt(temperatureOf(position)) * forward);
    // What is left is spent on the spot, once neither a position nor the progress towards it can express it.
    const finest = 2e-16 * Math.max(1, Math.abs(position), progress);
    if (Math.abs(newton) <= finest) return { position, temperature: temperatureOf(position), rest: missing, near: 0 };
    if (progress === max && missing > 0) {
      // Over the exponential a rate that is linear in temperature has the mean of its ends, in these shares.
      const left = Math.exp(-newton);
      const near = (missing * ((1 - left) / newton - left)) / (1 - left);
      return { position, temperature: temperatureOf(position - newton), rest: missing - near, near };
    }
    // The pace half-way is nearly the mean of the step: that one look saves an integral.
    const middle = Math.max(low, Math.min(max, progress + newton / 2));
    const halfway = paceAt(temperatureOf(from + forward * middle));
    let next = Math.min(max, progress + missing / (halfway * forward));
    if (slow || next <= low)
      next = high < Number.POSITIVE_INFINITY ? (low + high) / 2 : Math.max(next, Math.min(max, 2 * progress));
    const over = (between(position, from + forward * next, 1)[0] as number) - missing;
    slow = Math.abs(over) > Math.abs(missing) / 2;
    if (over < 0) low = next;
    else high = next;
    // The error of an integral goes with what it comes to: a step that is too long by more than the whole time is not taken.
    if (over > duration) continue;
    missing = -over;
    progress = next;
  }
  return refuse("not-converged", "duration", duration, "a segment whose pace does not swing wildly");
}
