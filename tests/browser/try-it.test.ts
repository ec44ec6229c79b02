import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const desk = { viewport: { width: 1280, height: 900 } };

async function onTryIt(use: (page: Page) => Promise<void>): Promise<void> {
  await withPage(desk, async (page) => {
    await page.goto(addressOf("try-it/index.html"));
    await use(page);
  });
}

async function type(page: Page, from: string, to: string): Promise<void> {
  const job = page.locator("#job");
  const text = await job.inputValue();
  expect(text).toContain(from);
  await job.fill(text.replace(from, to));
}

browserTest("the page opens with the example's sheet, its cautions first", async () => {
  await onTryIt(async (page) => {
    const result = page.locator("#result");
    expect(await result.getByRole("heading").first().textContent()).toBe("Batch sheet: Shimmering cuticle gel");
    expect(await result.getByRole("heading").nth(1).textContent()).toBe("Cautions");
    expect(await result.getByRole("table").count()).toBeGreaterThan(4);
    expect(await page.locator("#status").textContent()).toMatch(/^Answers: \d+ met, \d+ not met, \d+ not known\.$/);
  });
});

browserTest("what is changed in the text changes the sheet", async () => {
  await onTryIt(async (page) => {
    await type(page, '"amount": "9 %"', '"amount": "12 %"');
    await page.locator("#result").getByRole("cell", { name: "12 %", exact: true }).waitFor();
    await type(page, '"Shimmering cuticle gel"', '"<b>x</b>"');
    await page.getByRole("heading", { name: "Batch sheet: <b>x</b>" }).waitFor();
  });
});

browserTest("every fault is told with its place, and leads there", async () => {
  await onTryIt(async (page) => {
    await type(page, '"power": "1.2 kW"', '"power": "1.2 kg"');
    await type(page, '"temperatureMax": "62 °C"', '"temperatureMax": 62');
    const faults = page.locator("#fault-list button");
    await faults.nth(1).waitFor();
    expect((await faults.allTextContents()).sort()).toEqual([
      "formula.materials.fragrance.limits.temperatureMax",
      "vessel.heater.power",
    ]);
    await page.getByRole("button", { name: "vessel.heater.power" }).press("Enter");
    expect(await page.evaluate("getSelection().toString()")).toBe('"1.2 kg"');
    expect(await page.locator("#result").getAttribute("class")).toBe("old");
    await page.getByRole("button", { name: "Put it back as it was" }).press("Enter");
    expect(await page.locator("#faults").isVisible()).toBe(false);
  });
});

browserTest("the cold route runs as the hot one does", async () => {
  await onTryIt(async (page) => {
    await page.getByLabel("Example").selectOption("Scrub gel, cold route");
    expect(await page.locator("#faults").isVisible()).toBe(false);
    expect(await page.locator("#job").inputValue()).toContain('"outerPhase"');
    expect(await page.locator("#result").getByRole("heading").first().textContent()).toMatch(/^Batch sheet: .*crub/);
  });
});

browserTest("broken JSON is told with its line", async () => {
  await onTryIt(async (page) => {
    await type(page, '"version": 1,', '"version": 1');
    await page.locator("#fault-list button").first().waitFor();
    expect(await page.locator("#fault-list button").textContent()).toBe("line 3");
  });
});

browserTest("the keyboard alone chooses another example and another form, and downloads it", async () => {
  await onTryIt(async (page) => {
    await page.getByLabel("Example").focus();
    await page.keyboard.press("ArrowDown");
    expect(await page.locator("#job").inputValue()).toContain('"mass": "200 g"');
    await page.getByLabel("Show as").focus();
    await page.keyboard.press("ArrowDown");
    expect(await page.locator("#result").textContent()).toMatch(/^Phase,Material,Mass fraction/);
    await page.keyboard.press("Tab");
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toBe("weighing.csv");
    expect(readFileSync(await download.path(), "utf8")).toMatch(/^Phase,Material/);
    await page.getByLabel("Show as").selectOption("All figures, JSON");
    expect(JSON.parse((await page.locator("#result").textContent()) ?? "").library).toMatch(/^gelwright \d/);
  });
});
