import { MessageChannel } from "node:worker_threads";
import { CalculationError, type CalculationErrorData } from "gelwright/error";
import { expect, test } from "vitest";

const fault = { path: "power", found: "-5", expected: "a finite number above 0", rule: "out-of-range" } as const;
const error = new CalculationError("input", [{ ...fault, parameters: { value: -5 } }]);

test("an error made again from its data is the same error, after a structured clone, JSON or a message to a worker", async () => {
  const { port1, port2 } = new MessageChannel();
  const received = new Promise<CalculationErrorData>((resolve) => port2.once("message", resolve));
  port1.postMessage(error.toJSON());
  const ways = [
    structuredClone(error.toJSON()),
    JSON.parse(JSON.stringify(error)) as CalculationErrorData,
    await received,
  ];
  port1.close();
  for (const data of ways) {
    const again = CalculationError.from(data);
    expect(again).toBeInstanceOf(CalculationError);
    expect(again).toMatchObject({ code: error.code, message: error.message, faults: error.faults });
    expect(again.toJSON()).toEqual(error.toJSON());
  }
});

test("data that no error gave are refused", () => {
  const good = error.toJSON();
  const wrong = [
    null,
    undefined,
    1,
    "x",
    {},
    [],
    new Error("x"),
    { ...good, name: "Error" },
    { ...good, code: "other" },
  ];
  const faultless = [
    { ...good, faults: {} },
    { ...good, faults: [null] },
    { ...good, faults: [{ path: "power", found: 5 }] },
  ];
  for (const data of [...wrong, ...faultless])
    expect(() => CalculationError.from(data as never)).toThrow(CalculationError);
});

test("a class derived from the error matches its own errors, and neither its parent's nor its siblings'", () => {
  class Mine extends CalculationError {}
  class Other extends CalculationError {}
  const mine = new Mine("input", [fault]);
  expect([mine instanceof Mine, mine instanceof CalculationError, mine instanceof Other]).toEqual([true, true, false]);
  expect(error instanceof Mine).toBe(false);
  for (const value of [null, undefined, 1, "x", Mine]) expect((value as unknown) instanceof Mine).toBe(false);
});

test("a message names a hundred faults and cuts off long words; the faults have all of it", () => {
  const long = "o".repeat(100_000);
  const many = Array.from({ length: 1000 }, (_, i) => ({ ...fault, path: `powers[${i}]` }));
  const { message, faults } = new CalculationError("input", [
    { ...fault, path: long, found: long, expected: long },
    ...many,
  ]);
  expect(message.split("\n")[0]).toBe(`${"o".repeat(200)}…: found ${"o".repeat(200)}…, expected ${"o".repeat(1000)}…`);
  expect(message.split("\n")).toHaveLength(101);
  expect(message).toMatch(/and 901 more$/);
  expect(faults).toHaveLength(1001);
  expect(faults[0]?.found).toBe(long);
});
