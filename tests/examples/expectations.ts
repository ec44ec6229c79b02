import { expect, vi } from "vitest";

export { test } from "vitest";

/** What an example promises of a value holds: numbers to 1e-12 relative, everything else exactly. */
export function matches(actual: unknown, expected: unknown): void {
  expect(differences(actual, expected, "value")).toEqual([]);
}

/** The code prints this text. */
export async function prints(code: () => unknown, text: string): Promise<void> {
  const log = vi.spyOn(console, "log").mockImplementation(() => undefined);
  try {
    await code();
    expect(log.mock.calls.map((call) => call.join(" ")).join("\n")).toBe(text);
  } finally {
    log.mockRestore();
  }
}

/** The code throws an error whose message holds this text. */
export async function throws(code: () => Promise<unknown>, text: string): Promise<void> {
  await expect(code()).rejects.toThrow(text);
}

/** Where two values differ, in words. */
export function differences(actual: unknown, expected: unknown, path: string): string[] {
  if (typeof actual === "number" && typeof expected === "number" && Number.isFinite(expected))
    return Math.abs(actual - expected) <= 1e-12 * Math.abs(expected) ? [] : [`${path} is ${actual}, not ${expected}`];
  if (!isObject(actual) || !isObject(expected))
    return Object.is(actual, expected) ? [] : [`${path} is ${String(actual)}, not ${String(expected)}`];
  if (Array.isArray(actual) !== Array.isArray(expected)) return [`${path} is a list, or should be`];
  return [...new Set([...Object.keys(actual), ...Object.keys(expected)])].flatMap((key) =>
    key in actual && key in expected
      ? differences(actual[key], expected[key], `${path}.${key}`)
      : [`${path}.${key} is ${key in actual ? "there, and should not be" : "not there"}`],
  );
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}
