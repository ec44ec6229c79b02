import { expect, test } from "vitest";
import { type Complex, invertLaplace, over, times } from "../../src/numeric/laplace.js";

const one: Complex = [1, 0];

function rootOf([re, im]: Complex): Complex {
  const size = Math.hypot(re, im);
  const right = Math.sqrt((size + re) / 2);
  return [right, im / (2 * right)];
}

function decay([re, im]: Complex): Complex {
  return [Math.exp(-re) * Math.cos(im), -Math.exp(-re) * Math.sin(im)];
}

// Pairs of any table of Laplace transforms, at time 1; the values of erfc by mpmath 1.3.0.
test.each<[string, (s: Complex) => Complex, number]>([
  ["1/s", (s) => over(one, s), 1],
  ["1/(s + 1)", ([re, im]) => over(one, [re + 1, im]), Math.exp(-1)],
  ["1/s²", (s) => over(one, times(s, s)), 1],
  ["1/√s", (s) => over(one, rootOf(s)), 1 / Math.sqrt(Math.PI)],
  ["exp(−√s)/s", (s) => over(decay(rootOf(s)), s), 0.4795001221869535],
  ["1/(s + √s)", (s) => over(one, [s[0] + rootOf(s)[0], s[1] + rootOf(s)[1]]), 0.427583576155807],
])("%s is inverted to 3e-13, and asked for fifteen times", (_name, transform, value) => {
  let calls = 0;
  const counted = (s: Complex) => {
    calls += 1;
    return transform(s);
  };
  expect(Math.abs(invertLaplace(counted) - value)).toBeLessThan(3e-13);
  expect(calls).toBe(15);
});
