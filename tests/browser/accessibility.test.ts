import { createRequire } from "node:module";
import type { AxeResults, Result } from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const engine = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/** What a scheme decides: the rest of a page is the same in the dark. */
const rulesOfColour = ["color-contrast", "link-in-text-block"];

/** What the engine may find, with the reason: rule, where, why. */
const exceptions: readonly { readonly rule: string; readonly where: RegExp; readonly why: string }[] = [];

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

/** The page whose navigation is looked at whole: its own entry stands deep in it, in a group that is open. */
const withNavigation = "functions/heat.largestAddition.html";

const pages = [
  "index.html",
  "documents/questions.html",
  withNavigation,
  "documents/heat.html",
  "documents/verification.html",
  "documents/verification-gel.html",
  "documents/glossary.html",
  "modules/heat.html",
  "try-it/index.html",
  "calculators/index.html",
  "calculators/heat.additionTemperatureMin.html",
  "calculators/mixing.additionSchedule.html",
];
const sizes = [
  { width: 1280, height: 900 },
  { width: 390, height: 844 },
];

const run = (runOnly: readonly string[]): string =>
  `axe.run(document, { runOnly: ${JSON.stringify(runOnly)}, resultTypes: ["violations"] })`;

/** What one function makes many of: the first stands for the rest, which would be most of what there is to look at. */
const repeated = {
  /** A table for each file of checks, on a page of Verification. */
  proofs: ".proof ~ .proof",
  /** Entries of the navigation, seven in eight elements of a page: one script makes them of one file for every page. */
  entries: "#tsd-nav-container li ~ li:not(:has(.current))",
  /** Rows of the batch sheet's tables, which the page has whole as it opens. */
  rows: "#result tr ~ tr",
};

/** Takes such elements off the page. */
async function takeOff(page: Page, selector: string): Promise<void> {
  await page.evaluate(`for (const one of document.querySelectorAll(${JSON.stringify(selector)})) one.remove()`);
}

/** The faults of a page at each width in each scheme, in words, once something was done on it. */
async function audit(name: string, act?: (page: Page) => Promise<void>): Promise<string[]> {
  return withPage({ bypassCSP: true }, async (page) => {
    const faults: string[] = [];
    await page.goto(addressOf(name));
    await page.waitForFunction("document.body.style.display !== 'none'");
    if (/^try-it|^calculators.*\.\w+\.html/.test(name)) await page.locator("figure svg").first().waitFor();
    await act?.(page);
    await takeOff(page, repeated.proofs);
    if (act) await takeOff(page, repeated.rows);
    if (name !== withNavigation) await takeOff(page, repeated.entries);
    else expect(await page.locator("#tsd-nav-container li").count()).toBeGreaterThan(500);
    await page.addScriptTag({ path: engine });
    for (const viewport of sizes)
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize(viewport);
        await page.emulateMedia({ colorScheme });
        // What watches its own width, as a box that scrolls does, hears of a new one with the next frame.
        await page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
        const isDark = colorScheme === "dark";
        const results = (await page.evaluate(run(isDark ? rulesOfColour : rules))) as AxeResults;
        expect(results.passes.length).toBeGreaterThan(isDark ? 0 : 5);
        faults.push(...faultsOf(results).map((fault) => `${viewport.width} px, ${colorScheme}: ${fault}`));
      }
    return faults;
  });
}

for (const name of pages)
  browserTest(
    `${name} is fit for keyboard, screen reader and weak eyes, on a desk and a phone, light and dark`,
    async () => {
      expect(await audit(name)).toEqual([]);
    },
  );

browserTest("a job of one's own, with its parts open, a fault and another beside it, is fit for them too", async () => {
  const open = async (page: Page) => {
    await page.getByRole("button", { name: "Start a job of your own" }).click();
    await page.getByRole("button", { name: "Add a line" }).click();
    for (const part of ["Materials", "Vessel", "Heater"])
      await page.locator("#fields-view summary", { hasText: part }).first().click();
    for (const job of ["My job", "200 g in a beaker"]) await page.getByRole("checkbox", { name: job }).check();
    await page.locator("#fields-view [aria-invalid]").first().waitFor();
  };
  expect(await audit("try-it/index.html", open)).toEqual([]);
});

browserTest("form and JSON beside one another are fit for them too", async () => {
  const open = async (page: Page) => {
    await page.getByLabel("both, side by side").check();
    await page.locator(".cm-content").waitFor();
  };
  expect(await audit("try-it/index.html", open)).toEqual([]);
});

browserTest("the editor of the JSON, with a fault and something to choose from, is fit for them too", async () => {
  const open = async (page: Page) => {
    await page.getByLabel("its JSON").check();
    await page.locator(".cm-content").focus();
    await page.keyboard.press("ControlOrMeta+End");
    await page.keyboard.type(',"');
    await page.locator(".cm-lintRange-error, .cm-lintPoint-error").first().waitFor();
    await page.keyboard.press("Control+Space");
  };
  expect(await audit("try-it/index.html", open)).toEqual([]);
});
