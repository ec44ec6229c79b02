import { prepareJob } from "gelwright/plan";
import { expect, test } from "vitest";
import { lotOrderOf } from "../../../src/plan/parts/lot-order.js";
import { runOf } from "../../../src/plan/prepared-run.js";
import { changed, exampleJob, readOnTheWayDown } from "../../support/example.js";

test("a thousand lots are listed, and one more is said to be too many", () => {
  const inLots = (lots: number) =>
    lotOrderOf(
      runOf(
        prepareJob(
          changed(readOnTheWayDown(exampleJob()), ({ batch }) =>
            Object.assign(batch, { lots, target: { packs: 700 * lots, fillVolume: "30 mL" } }),
          ),
        ),
      ),
    );
  const thousand = inLots(1000);
  if (!thousand || "notKnown" in thousand) throw new Error("an order");
  expect(thousand.entries.at(-1)?.lot).toBe(1000);
  expect(inLots(1001)).toEqual({
    notKnown: { code: "outside-range", law: "lot-order", quantity: "lots", value: 1001, min: 1, max: 1000 },
  });
});
