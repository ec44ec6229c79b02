import { expect, test } from "vitest";
import { incompleteBeta } from "../../src/numeric/incomplete-beta.js";
import { logGamma } from "../../src/numeric/log-gamma.js";
import { momentsOf } from "../../src/numeric/moments.js";
import { normalBelow, normalQuantile } from "../../src/numeric/normal.js";
import { studentT } from "../../src/numeric/student.js";
import { fisherAbove, studentBeyond, studentTOf } from "../../src/numeric/tails.js";
import quantiles from "./quantiles.json" with { type: "json" };
import reference from "./tails.json" with { type: "json" };

/** Within some units in the last place of the value, and no nearer to 0 than doubles go. */
const near = (found: number, value: number, relative: number) =>
  expect(Math.abs(found - value)).toBeLessThanOrEqual(relative * Math.abs(value) + 1e-300);

test.each(reference.logGamma)("the logarithm of the gamma function of $x is mpmath's", ({ x, value }) => {
  expect(Math.abs(logGamma(x) - value)).toBeLessThanOrEqual(2e-14 * Math.max(1, Math.abs(value)));
});

test.each(reference.normalBelow)("the normal share below $x is mpmath's", ({ x, value }) => {
  near(normalBelow(x), value, 5e-13);
});

test.each(reference.incompleteBeta)("the incomplete beta function at $x of $a and $b is mpmath's", (one) => {
  near(incompleteBeta(one.x, 1 - one.x, one.a, one.b), one.value, 1e-12);
});

test.each(reference.studentBeyond)("Student's share beyond $t at $degrees degrees is mpmath's", (one) => {
  near(studentBeyond(one.t, one.degrees), one.value, 1e-11);
});

test.each(reference.fisherAbove)("the F share above $ratio with $above and $below degrees is mpmath's", (one) => {
  near(fisherAbove(one.ratio, one.above, one.below), one.value, 1e-11);
});

test.each(quantiles.studentTOf)("t for $confidence and $degrees degrees is mpmath's", (one) => {
  near(studentTOf(one.confidence, one.degrees), one.value, 1e-11);
});

test.each(quantiles.normalQuantile)("the place below which a normal share of $share lies is mpmath's", (one) => {
  expect(Math.abs(normalQuantile(one.share) - one.value)).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(one.value)));
});

test("for whole degrees of freedom both ways to Student's t agree", () => {
  for (const degrees of [1, 2, 5, 30, 121])
    for (const confidence of [0.1, 0.5, 0.9, 0.99])
      near(studentTOf(confidence, degrees), studentT(confidence, degrees), 1e-11);
});

test("nothing lies beyond what a double cannot hold", () => {
  expect(studentBeyond(1e200, 3)).toBe(0);
  expect(fisherAbove(Number.POSITIVE_INFINITY, 3, 4)).toBe(0);
  expect(fisherAbove(1e308, 1e3, 4)).toBe(0);
  expect(fisherAbove(1e12, 3, 4)).toBeGreaterThan(0);
});

test("a single reading has a mean and no variance", () => {
  expect(momentsOf([3])).toEqual({ mean: 3, variance: 0, count: 1 });
  expect(momentsOf([3, 5])).toEqual({ mean: 4, variance: 2, count: 2 });
});
