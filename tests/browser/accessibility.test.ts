import { createRequire } from "node:module";
import type { AxeResults, Result } from "axe-core";
import type { BrowserContextOptions } from "playwright-core";
import { afterAll, expect } from "vitest";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const engine = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What the engine may find, with the reason: rule, where, why. */
const exceptions: readonly { readonly rule: string; readonly where: RegExp; readonly why: string }[] = [
  {
    rule: "heading-order",
    where: /^\.tsd-parameters-title$/,
    why: "typedoc's page of a function goes from its title straight to small headings; moderate, and nothing is out of reach",
  },
];

function isExcepted({ id }: Result, target: string): boolean {
  return exceptions.some(({ rule, where }) => rule === id && where.test(target));
}

function faultsOf({ violations }: AxeResults): string[] {
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical" || impact === "moderate")
    .flatMap((violation) =>
      violation.nodes
        .map(({ target }) => target.join(" "))
        .filter((target) => !isExcepted(violation, target))
        .map((target) => `${violation.impact} ${violation.id}: ${target}`),
    );
}

const pages = [
  "index.html",
  "documents/questions.html",
  "functions/heat.largestAddition.html",
  "documents/heat.html",
  "documents/verification.html",
  "try-it/index.html",
];
const sizes = [
  { width: 1280, height: 900 },
  { width: 390, height: 844 },
];

async function audit(name: string, options: BrowserContextOptions): Promise<string[]> {
  return withPage({ ...options, bypassCSP: true }, async (page) => {
    await page.goto(addressOf(name));
    await page.waitForFunction("document.body.style.display !== 'none'");
    await page.addScriptTag({ path: engine });
    const results = (await page.evaluate(
      `axe.run({ runOnly: ${JSON.stringify(rules)}, resultTypes: ["violations"] })`,
    )) as AxeResults;
    expect(results.passes.length).toBeGreaterThan(5);
    return faultsOf(results);
  });
}

for (const name of pages)
  browserTest(
    `${name} is fit for keyboard, screen reader and weak eyes, on a desk and a phone, light and dark`,
    async () => {
      for (const viewport of sizes)
        for (const colorScheme of ["light", "dark"] as const)
          expect.soft(await audit(name, { viewport, colorScheme }), `${viewport.width} px, ${colorScheme}`).toEqual([]);
    },
  );
