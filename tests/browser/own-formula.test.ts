import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

/** A hand whose clicks and keys are counted. */
function counted(page: Page) {
  const count = { clicks: 0, keys: 0 };
  return {
    count,
    click: async (role: "button" | "link", name: string) => {
      count.clicks += 1;
      await page.getByRole(role, { name, exact: true }).click();
    },
    type: async (text: string) => {
      count.keys += text.length;
      await page.keyboard.type(text);
    },
    press: async (key: string, times = 1) => {
      count.keys += times;
      for (let i = 0; i < times; i++) await page.keyboard.press(key);
    },
  };
}

browserTest(
  "from the front page to the sheet of an own formula in three clicks and ninety keys, without JSON",
  async () => {
    for (const viewport of [
      { width: 1280, height: 900 },
      { width: 390, height: 844 },
    ])
      await withPage({ viewport }, async (page) => {
        const { count, click, type, press } = counted(page);
        await page.goto(addressOf("index.html"));
        await click("link", "Try it in the browser");
        await click("button", "Start a job of your own");
        await type("Lip gel");
        // Past the phase to the material, and past what it is to the amount.
        await press("Tab", 2);
        await type("sugar ester");
        await press("Tab", 2);
        await type("12 %");
        await press("Tab", 3);
        await type("castor oil");
        await click("button", "Add a line");
        await type("mint aroma");
        await press("Tab");
        await type("fragrance");
        await press("Tab");
        await type("0.5 %");
        const result = page.locator("#result");
        await result.getByRole("heading", { name: "Batch sheet: Lip gel" }).waitFor();
        const row = (name: string) => result.getByRole("row", { name: new RegExp(`^A ${name}`) }).first();
        await row("sugar ester 1.200 kg").waitFor();
        await row("castor oil 8.750 kg").waitFor();
        await row("mint aroma 50 g").waitFor();
        expect(await page.locator("#faults").isVisible()).toBe(false);
        expect(await page.locator("#text-view").isVisible()).toBe(false);
        expect(count.clicks).toBe(3);
        expect(count.keys).toBeLessThanOrEqual(90);
      });
  },
);
