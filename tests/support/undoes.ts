import fc from "fast-check";
import { expect, test } from "vitest";

/** What came back, what it set out from, and what an error is measured by: what it set out from, if nothing is given. */
type Returned = readonly [found: number, wanted: number, scale?: number];

/**
 * States that one function undoes another, as a test: whatever goes through the second and back through the first is what
 * it was, within `tolerance`. `tests/inverse.test.ts` looks for these statements by the names.
 */
export function undoes<Input>(
  inverse: string,
  forward: string,
  inputs: fc.Arbitrary<Input>,
  thereAndBack: (input: Input) => Returned | readonly Returned[],
  tolerance = 1e-9,
  numRuns = 200,
): void {
  test(`${inverse} undoes ${forward}`, () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const all = thereAndBack(input);
        for (const [found, wanted, scale = wanted] of Array.isArray(all[0])
          ? (all as readonly Returned[])
          : [all as Returned])
          expect(Math.abs(found - wanted)).toBeLessThanOrEqual(tolerance * Math.abs(scale));
      }),
      { numRuns },
    );
  });
}
