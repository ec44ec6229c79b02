import { CalculationError } from "gelwright/error";
import { exposureFor, labelFor, prepareJob, runPrepared } from "gelwright/plan";
import {
  exposureToMarkdown,
  fillCheckToMarkdown,
  labelToMarkdown,
  stabilityToMarkdown,
  toHtml,
  toMarkdown,
} from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { exampleJob } from "../support/example.js";

const prepared = prepareJob(exampleJob());
const plan = runPrepared({ prepared });
const inFours = (fingerprint: string) => (fingerprint.slice(0, 16).match(/.{4}/g) ?? []).join(" ");

test.each([
  ["the batch sheet", toMarkdown({ plan })],
  ["the batch sheet to print", toHtml({ plan })],
  ["the fill check", fillCheckToMarkdown({ plan })],
  ["the stability plan", stabilityToMarkdown({ plan })],
  ["the label draft", labelToMarkdown({ label: labelFor({ prepared }) })],
  ["the exposure", exposureToMarkdown({ exposure: exposureFor({ prepared }) })],
])("%s says from which documents it was computed", (_name, text) => {
  expect(text).toContain(`from documents with the fingerprint ${inFours(plan.fingerprint)}.`);
});

describe("label and exposure on the batch sheet", () => {
  const parts = { label: labelFor({ prepared }), exposure: exposureFor({ prepared }) };

  test("are sections of it, with the lines of their own sheets", () => {
    const own = [labelToMarkdown({ label: parts.label }), exposureToMarkdown({ exposure: parts.exposure })];
    const [without, sheet] = [toMarkdown({ plan }), toMarkdown({ plan, ...parts })];
    for (const text of own) {
      const lines = text.split("\n").filter((line) => line !== "" && !line.startsWith("_Computed"));
      expect(lines.length).toBeGreaterThanOrEqual(4);
      for (const line of lines) expect(sheet).toContain(`\n${line.startsWith("#") ? "#" : ""}${line}\n`);
      expect(without).not.toContain(lines[0]);
    }
    const html = toHtml({ plan, ...parts });
    for (const line of own.flatMap((text) => text.split("\n").filter((one) => one.startsWith("## "))))
      expect(html).toContain(`<h3>${line.slice(3)}</h3>`);
  });

  test("are refused where they are of other documents than the plan, or not whole", () => {
    const other = runPrepared({ prepared, changes: [{ change: "room", value: 25 }] });
    for (const write of [toMarkdown, toHtml]) {
      expect(() => write({ plan: other, ...parts })).toThrow(/label.*fingerprint of the plan/s);
      expect(() => write({ plan: other, exposure: parts.exposure })).toThrow(/exposure.*fingerprint of the plan/s);
      expect(() => write({ plan, label: {} as never })).toThrow(CalculationError);
      const { fingerprint: _own, ...unsigned } = parts.label;
      expect(() => write({ plan, label: unsigned as never })).toThrow(/label.*fingerprint of the plan/s);
      const { names: _, ...halved } = parts.exposure;
      expect(() => write({ plan, exposure: halved as never })).toThrow(/exposure/);
    }
  });
});

test("the label draft and the exposure of a changed job carry the fingerprint of its plan", () => {
  const changes = [{ change: "room", value: 25 }] as const;
  const { fingerprint } = runPrepared({ prepared, changes });
  expect(fingerprint).not.toBe(plan.fingerprint);
  expect(labelFor({ prepared, changes }).fingerprint).toBe(fingerprint);
  expect(exposureFor({ prepared, changes }).fingerprint).toBe(fingerprint);
});

test("the fill check has one mass to aim at", () => {
  const stated = exampleJob();
  const aims = (text: string) => text.split("\n").filter((line) => line.startsWith("- Aim at "));
  expect(aims(fillCheckToMarkdown({ plan }))).toHaveLength(1);
  const fuller = { ...stated, pack: { ...stated.pack, fillTarget: "28.6 g" } };
  const text = fillCheckToMarkdown({ plan: runPrepared({ prepared: prepareJob(fuller) }) });
  expect(aims(text)).toEqual(["- Aim at 28.6 g net on average, as stated."]);
  expect(text).toContain("The rules on the quantity ask for");
});
