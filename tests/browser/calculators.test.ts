import { readdirSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { root } from "../support/rooms.js";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const desk = { viewport: { width: 1280, height: 900 } };
const phone = { viewport: { width: 390, height: 844 } };
const warm = "calculators/heat.additionTemperatureMin.html";

const figure = (page: Page) => page.locator(".main-figure");

async function fill(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
}

browserTest("from the front page two clicks and two numbers lead to how warm the oil may be", async () => {
  for (const options of [desk, phone])
    await withPage(options, async (page) => {
      await page.goto(addressOf("index.html"));
      await page.getByRole("link", { name: "Calculators for the commonest questions" }).click();
      await page.getByRole("link", { name: "How warm may the oil be when I add it" }).click();
      expect(await figure(page).textContent()).toMatch(/^27\.39 /);
      await fill(page, "Addition: mass", "10");
      await fill(page, "Temperature min", "58");
      expect(await figure(page).textContent()).toMatch(/^36\.94 /);
      expect(await page.locator("#answer").textContent()).toMatch(
        /Between [\d.]+ °C and [\d.]+ °C with "Melt 1: specific heat"/,
      );
      expect(await page.getByText("That of liquid fats and oils at 66 °C").isVisible()).toBe(true);
    });
});

browserTest("every calculator answers when it is opened, draws what it can, and fits a phone", async () => {
  const pages = readdirSync(`${root}docs/site/calculators`).filter((file) => /\.\w+\.html$/.test(file));
  expect(pages.length).toBeGreaterThanOrEqual(20);
  await withPage(phone, async (page) => {
    for (const one of pages) {
      await page.goto(addressOf(`calculators/${one}`));
      expect(await figure(page).textContent(), one).toMatch(/\d/);
      expect(await page.locator(".fault:not(:empty)").count(), one).toBe(0);
      expect(await page.locator("#code").textContent(), one).toContain('from "gelwright/');
      const beyond = "document.documentElement.scrollWidth - document.documentElement.clientWidth";
      expect(await page.evaluate(beyond), one).toBe(0);
    }
  });
});

browserTest("a figure may be given and read in any unit of its dimension", async () => {
  await withPage(desk, async (page) => {
    await page.goto(addressOf(warm));
    await page.getByLabel("Unit of addition: mass").selectOption("lb");
    await fill(page, "Addition: mass", "17.63698");
    expect(await figure(page).textContent()).toMatch(/^27\.39 /);
    await page.getByLabel("Unit of the answer").selectOption("°F");
    expect(await figure(page).textContent()).toMatch(/^81\.3 /);
    await page.locator("#plot svg").waitFor();
    expect(await page.locator("#plot figcaption").textContent()).toContain("81.3 °F");
    await page.goto(addressOf("calculators/units.convert.html"));
    expect(await figure(page).textContent()).toBe("0.25 Pa·s");
    await page.getByLabel("From", { exact: true }).selectOption("lb");
    await page.getByLabel("To", { exact: true }).selectOption("kg");
    expect(await figure(page).textContent()).toBe("113.4 kg");
  });
});

browserTest("what is wrong is told at its field, and nothing old stays in sight", async () => {
  await withPage(desk, async (page) => {
    await page.goto(addressOf(warm));
    await fill(page, "Addition: mass", "-8");
    const field = page.getByLabel("Addition: mass", { exact: true });
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await page.locator("#answer").textContent()).toContain("Addition: mass: Found -8, expected");
    expect(await figure(page).count()).toBe(0);
    await fill(page, "Addition: mass", "8,5");
    expect(await page.locator("#answer").textContent()).toContain("Found 8,5, expected a number");
    expect(await page.locator("#code").textContent()).toBe("");
    await fill(page, "Addition: mass", "8.5");
    expect(await field.getAttribute("aria-invalid")).toBe("false");
    await page.getByLabel("Unit of temperature min").selectOption("°F");
    await fill(page, "Temperature min", "-500");
    expect(await page.locator("#answer").textContent()).toContain("Found -500 °F, expected absolute zero");
    expect(await figure(page).count()).toBe(0);
  });
});

browserTest("a link holds the inputs, rows that were added among them", async () => {
  await withPage({ ...desk, permissions: ["clipboard-read", "clipboard-write"] }, async (page) => {
    await page.goto(addressOf("calculators/heat.mixingTemperature.html"));
    await page.getByRole("button", { name: "Add a row" }).click();
    await fill(page, "Charge 3: temperature", "10");
    const answer = await figure(page).textContent();
    await page.getByRole("button", { name: "Copy a link to these inputs" }).click();
    await page.getByRole("button", { name: "Copied" }).waitFor();
    const link = await page.evaluate<string>("navigator.clipboard.readText()");
    await page.goto("about:blank");
    await page.goto(link);
    expect(await page.getByLabel("Charge 3: temperature", { exact: true }).inputValue()).toBe("10");
    expect(await figure(page).textContent()).toBe(answer);
    await page.getByRole("button", { name: "Remove the last row" }).click();
    expect(await figure(page).textContent()).not.toBe(answer);
    await page.getByRole("button", { name: "Start again" }).click();
    expect(await page.getByLabel("Charge 3: temperature", { exact: true }).count()).toBe(0);
  });
});

browserTest("a function and its question lead to the calculator, and it leads back", async () => {
  await withPage(desk, async (page) => {
    await page.goto(addressOf("functions/heat.additionTemperatureMin.html"));
    await page.getByRole("link", { name: "Open in a calculator" }).click();
    await page.waitForURL((url) => url.pathname.endsWith(warm));
    await page.getByRole("link", { name: "additionTemperatureMin" }).click();
    await page.waitForURL((url) => url.pathname.endsWith("functions/heat.additionTemperatureMin.html"));
    await page.goto(addressOf("documents/questions.html"));
    await page
      .getByRole("row", { name: "How warm may the oil be when I add it" })
      .getByRole("link", { name: "calculator", exact: true })
      .click();
    await page.waitForURL((url) => url.pathname.endsWith(warm));
  });
});
