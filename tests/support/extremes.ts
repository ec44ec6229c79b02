import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import reference from "./extremes.json" with { type: "json" };
import { root } from "./rooms.js";

const roomOf = (call: string): string => call.split(".")[0] as string;

/** Rooms of which there are such figures and no `extremes.test.ts`, in which each asks for those of its own alone. */
export const untested: readonly string[] = [...new Set(reference.cases.map(({ call }) => roomOf(call)))].filter(
  (room) => !existsSync(`${root}tests/${room}/extremes.test.ts`),
);

/** Holds the functions of a room to figures of 50 digits at extreme ratios and near equal ends, as a test for each. */
export function keepsDigits(room: string, calls: Readonly<Record<string, (inputs: never) => number>>): void {
  const cases = reference.cases.filter(({ call }) => roomOf(call) === room);
  test.each(cases)("$call at $inputs keeps its digits: $why", ({ call, inputs, expected, bound }) => {
    const found = calls[call.slice(room.length + 1)]?.(inputs as never) ?? Number.NaN;
    expect(Math.abs(found / expected - 1)).toBeLessThanOrEqual(bound);
  });
}
