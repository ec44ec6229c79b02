import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";

/** What a document is refused by. */
export function refusal(read: () => unknown): CalculationError {
  try {
    read();
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error("it was taken");
}

/** States as tests that a reader of documents withstands those that are made to do harm. */
export function withstands(name: string, read: (document: unknown) => unknown, document: object): void {
  test(`${name} refuses names that have a meaning of their own, at any depth`, () => {
    for (const own of ["__proto__", "constructor", "prototype"]) {
      const text = JSON.stringify(document);
      const opening = [...text.matchAll(/\{/g)].map(({ index }) => index).filter((_, i) => i % 7 === 0);
      for (const at of opening) {
        const hostile = JSON.parse(`${text.slice(0, at)}{"${own}":{"a":1},${text.slice(at + 1)}`.replace(",}", "}"));
        expect(refusal(() => read(hostile)).faults).toContainEqual(
          expect.objectContaining({ rule: "unknown-field", parameters: { name: own } }),
        );
      }
    }
  });

  test(`${name} reads a document on a page that adds to the prototype of all objects`, () => {
    Object.defineProperty(Object.prototype, "addition", {
      value: 1,
      enumerable: true,
      configurable: true,
      writable: true,
    });
    try {
      expect(() => read(document)).not.toThrow();
    } finally {
      Reflect.deleteProperty(Object.prototype, "addition");
    }
  });

  test(`${name} refuses what is too large, or holds itself, by one clear fault`, () => {
    const round: Record<string, unknown> = { ...document };
    round["notes"] = round;
    const long = { ...document, notes: new Array(1e6).fill("x") };
    for (const hostile of [round, long])
      expect(refusal(() => read(hostile)).faults).toMatchObject([
        { path: "document", found: "more than 100 000 values", rule: "out-of-range" },
      ]);
  });
}
