import { readBatch, scaleFormula } from "gelwright/batch";
import { expect, test } from "vitest";
import { refusal, withstands } from "../support/hostile.js";
import { validInputs } from "./valid-inputs.js";

withstands("readBatch", readBatch, validInputs["readBatch"]?.[0]?.[0] as object);

test("an allowance of a kind that there is not is refused, in a batch that nobody read", () => {
  const input = validInputs["scaleFormula"]?.[0]?.[0] as Parameters<typeof scaleFormula>[0];
  for (const kind of ["shares", "constructor", undefined]) {
    const allowances = [{ kind, name: "samples", mass: 1, fraction: 0.1 }] as never;
    expect(refusal(() => scaleFormula({ ...input, batch: { ...input.batch, allowances } })).faults).toMatchObject([
      { path: "allowances[0].kind" },
    ]);
  }
});
