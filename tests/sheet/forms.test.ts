import { exposureFor, labelFor, prepareJob, runPrepared } from "gelwright/plan";
import {
  exposureToMarkdown,
  fillCheckToMarkdown,
  labelToMarkdown,
  stabilityToMarkdown,
  toHtml,
  toMarkdown,
} from "gelwright/sheet";
import { expect, test } from "vitest";
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
