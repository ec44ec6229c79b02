import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const desk = { viewport: { width: 1280, height: 900 } };
const phone = { viewport: { width: 390, height: 844 } };

const ready = /^Answers: \d+ met, \d+ not met, \d+ not known\.$/;
const status = (page: Page) => page.locator("#status");
const settled = (page: Page) => status(page).getByText(ready).waitFor();

async function onTryIt(use: (page: Page) => Promise<void>, options = desk): Promise<void> {
  await withPage(options, async (page) => {
    await page.goto(addressOf("try-it/index.html"));
    await settled(page);
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

browserTest("every fault is told above the fold with its place, and leads there", async () => {
  for (const options of [desk, phone])
    await onTryIt(async (page) => {
      await type(page, '"power": "1.2 kW"', '"power": "1.2 kg"');
      await type(page, '"temperatureMax": "62 °C"', '"temperatureMax": 62');
      const faults = page.locator("#fault-list button");
      await faults.nth(1).waitFor();
      expect((await faults.allTextContents()).sort()).toEqual([
        "formula.materials.fragrance.limits.temperatureMax",
        "vessel.heater.power",
      ]);
      await page.evaluate("scrollTo(0, 0)");
      const { y = Number.POSITIVE_INFINITY, height = 0 } = (await faults.nth(1).boundingBox()) ?? {};
      expect(y + height).toBeLessThan(options.viewport.height);
      await page.getByRole("button", { name: "vessel.heater.power" }).press("Enter");
      expect(await page.evaluate("getSelection().toString()")).toBe('"1.2 kg"');
      expect(await page.locator("#result").getAttribute("class")).toBe("old");
      await page.getByRole("button", { name: "Put it back as it was" }).press("Enter");
      await settled(page);
      expect(await page.locator("#faults").isVisible()).toBe(false);
    }, options);
});

browserTest("no file is handed over that belongs to another text", async () => {
  await onTryIt(async (page) => {
    const buttons = ["Download", "Copy", "Print"].map((name) => page.getByRole("button", { name, exact: true }));
    for (const button of buttons) expect(await button.isEnabled()).toBe(true);
    await type(page, '"version": 1,', '"version": 2,');
    for (const button of buttons) expect(await button.isEnabled()).toBe(false);
    await page.locator("#fault-list button").first().waitFor();
    for (const button of buttons) expect(await button.isEnabled()).toBe(false);
    await type(page, '"version": 2,', '"version": 1,');
    await settled(page);
    for (const button of buttons) expect(await button.isEnabled()).toBe(true);
  });
});

browserTest("the cold route runs as the hot one does, and shows its additions and the torque", async () => {
  await onTryIt(async (page) => {
    expect(await page.locator("figcaption strong").allTextContents()).toEqual([
      "Temperature of the charge. ",
      "How far the largest particles settle. ",
    ]);
    expect(await page.locator("figcaption").first().textContent()).toMatch(/pearl.* may go in from 62\.8 °C/);
    await page.getByLabel("Job", { exact: true }).selectOption("Scrub gel, cold route");
    await page.locator("#result").getByRole("heading", { name: "crub" }).first().waitFor();
    await settled(page);
    expect(await page.locator("#faults").isVisible()).toBe(false);
    expect(await page.locator("#job").inputValue()).toContain('"outerPhase"');
    const titles = await page.locator("figcaption strong").allTextContents();
    expect(titles).toContain("Additions of phase B. ");
    expect(titles).toContain("Torque of the stirrer while phase B goes in. ");
    for (const figure of await page.locator("figure svg").all())
      expect(await figure.locator("path, rect, circle").count()).toBeGreaterThan(0);
  });
});

browserTest("the job to start from has twenty lines and runs", async () => {
  await onTryIt(async (page) => {
    await page.getByLabel("Job", { exact: true }).selectOption("Twenty lines to start from");
    await page.getByRole("heading", { name: "Batch sheet: Clear gel to start from" }).waitFor();
    expect((await page.locator("#job").inputValue()).split("\n").length).toBeLessThanOrEqual(20);
  });
});

/** What browsers say of JSON that is broken; the last two give no place. */
const dialects = [
  "Expected ',' or '}' after property value in JSON at position 353",
  "JSON.parse: expected ',' or '}' after property value in object at line 3 column 3 of the JSON data",
  "JSON Parse error: Expected '}'",
  "Unexpected token '/', \"// a comme\"... is not valid JSON",
];

browserTest("broken JSON is told with its line and column, whatever the browser calls it", async () => {
  for (const words of dialects)
    await withPage(desk, async (page) => {
      await page.addInitScript((message) => {
        const { parse } = JSON;
        JSON.parse = (...given) => {
          try {
            return parse(...given);
          } catch {
            throw new SyntaxError(message);
          }
        };
      }, words);
      await page.goto(addressOf("try-it/index.html"));
      await settled(page);
      const fault = page.locator("#fault-list button");
      await type(page, '"version": 1,', '"version": 1');
      await fault.first().waitFor();
      expect(await fault.textContent()).toBe("line 3, column 3");
      await page.getByRole("button", { name: "Put it back as it was" }).click();
      await settled(page);
      await page.locator("#job").fill(`// a comment\n${await page.locator("#job").inputValue()}`);
      await fault.first().waitFor();
      expect(await fault.textContent()).toBe("line 1, column 1");
      await fault.click();
      expect(await page.evaluate("getSelection().toString()")).toBe("// a comment");
    });
});

browserTest("nothing that was typed is lost when the page is loaded again or another job is chosen", async () => {
  await onTryIt(async (page) => {
    const choice = page.getByLabel("Job", { exact: true });
    await type(page, '"amount": "9 %"', '"amount": "12 %"');
    await choice.selectOption("200 g in a beaker");
    await page.locator("#job").fill("{ half");
    await page.reload();
    await page.locator("#fault-list button").first().waitFor();
    expect(await choice.inputValue()).toBe("200 g in a beaker");
    expect(await page.locator("#job").inputValue()).toBe("{ half");
    await choice.selectOption("1200 jars from a kettle");
    expect(await page.locator("#job").inputValue()).toContain('"amount": "12 %"');
    await page.getByRole("button", { name: "Put it back as it was" }).click();
    expect(await page.locator("#job").inputValue()).toContain('"amount": "9 %"');
  });
});

browserTest("a link holds the job, and opens beside what is there", async () => {
  await withPage({ ...desk, permissions: ["clipboard-read", "clipboard-write"] }, async (page) => {
    await page.goto(addressOf("try-it/index.html"));
    await settled(page);
    await type(page, '"Shimmering cuticle gel"', '"Gel of a friend"');
    const text = await page.locator("#job").inputValue();
    await page.getByRole("button", { name: "Copy a link to it" }).click();
    await page.getByRole("button", { name: "Copied" }).waitFor();
    const link = await page.evaluate<string>("navigator.clipboard.readText()");
    expect(link.length).toBeLessThan(8000);
    await page.getByRole("button", { name: "Put it back as it was" }).click();
    await page.goto(link);
    await page.getByRole("heading", { name: "Batch sheet: Gel of a friend" }).waitFor();
    expect(await page.locator("#job").inputValue()).toBe(text);
    expect(await page.getByLabel("Job", { exact: true }).inputValue()).toBe("From a link");
    await page.goto("about:blank");
    await page.goto(link.slice(0, -40));
    await page.getByText("The link was cut off").waitFor();
  });
});

browserTest("a job is opened from a file and handed over as one", async () => {
  await onTryIt(async (page) => {
    const text = (await page.locator("#job").inputValue()).replace("Shimmering cuticle gel", "Gel of a file");
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("button", { name: "Open a file" }).click(),
    ]);
    await chooser.setFiles({ name: "Monday.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await page.getByRole("heading", { name: "Batch sheet: Gel of a file" }).waitFor();
    expect(await page.getByLabel("Job", { exact: true }).inputValue()).toBe("Monday");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download the job" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("monday.json");
    expect(readFileSync(await download.path(), "utf8")).toBe(text);
    await page.getByRole("button", { name: "Remove this job" }).click();
    await page.getByRole("heading", { name: "Batch sheet: Shimmering cuticle gel" }).waitFor();
  });
});

browserTest("only the sheet is printed", async () => {
  await onTryIt(async (page) => {
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#result h3").first().isVisible()).toBe(true);
    for (const id of ["#job", "#status", "#form", "header"])
      expect(await page.locator(id).first().isVisible()).toBe(false);
  });
});

browserTest("the keyboard alone chooses another example and another form, and downloads it", async () => {
  await onTryIt(async (page) => {
    await page.getByLabel("Job", { exact: true }).focus();
    await page.keyboard.press("ArrowDown");
    expect(await page.locator("#job").inputValue()).toContain('"mass": "200 g"');
    await page.locator("#result").getByText("250 mL beaker").first().waitFor();
    await settled(page);
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
