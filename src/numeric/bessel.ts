/** From here on Hankel's expansion is as exact as a double. */
const far = 25;
/** Points of the trapezoidal rule on a quarter turn: its error is J₆₄, below 1e-18 as far as `far`. */
const points = 16;

/** sin t at the points inside the quarter turn. */
let heights: readonly number[] | undefined;

/**
 * The Bessel functions J₀ and J₁ of zero or more, each within about 2e-16 of the truth.
 *
 * Near zero by the trapezoidal rule on Bessel's integral, which converges faster than any power of its step:
 *
 * $$J_0(x) = \frac1\pi\int_0^\pi\cos(x\sin t)\,\mathrm dt \qquad J_1(x) = \frac1\pi\int_0^\pi\sin t\,\sin(x\sin t)\,\mathrm dt$$
 *
 * Far out by Hankel's expansion, with cos(x − π/4) taken apart so that no digits of x are lost in the difference.
 *
 * @source abramowitz-stegun-1964 9.1.18, 9.1.21, 9.2.5 to 9.2.10
 */
export function besselJ(x: number): readonly [j0: number, j1: number] {
  return x < far ? byIntegral(x) : byExpansion(x);
}

function byIntegral(x: number): readonly [number, number] {
  heights ??= Array.from({ length: points - 1 }, (_, k) => Math.sin((Math.PI * (k + 1)) / (2 * points)));
  // Both ends of the quarter turn, where sin t is 0 and 1, have half weight.
  let j0 = (1 + Math.cos(x)) / 2;
  let j1 = Math.sin(x) / 2;
  for (const height of heights) {
    j0 += Math.cos(x * height);
    j1 += height * Math.sin(x * height);
  }
  return [j0 / points, j1 / points];
}

function byExpansion(x: number): readonly [number, number] {
  const [even0, odd0] = hankel(0, x);
  const [even1, odd1] = hankel(1, x);
  const [cos, sin] = [Math.cos(x), Math.sin(x)];
  const width = Math.sqrt(Math.PI * x);
  return [(even0 * (cos + sin) - odd0 * (sin - cos)) / width, (even1 * (sin - cos) + odd1 * (sin + cos)) / width];
}

/** The sums P and Q of Hankel's expansion, for ν². */
function hankel(square: number, x: number): readonly [number, number] {
  const sums: [number, number] = [1, 0];
  let term = 1;
  for (let k = 1; Math.abs(term) > Number.EPSILON / 8; k += 1) {
    term *= (square - (k - 1 / 2) ** 2) / (2 * k * x);
    // The signs run + + − −.
    if (k % 2 === 0) sums[0] += k % 4 === 0 ? term : -term;
    else sums[1] += k % 4 === 1 ? term : -term;
  }
  return sums;
}
