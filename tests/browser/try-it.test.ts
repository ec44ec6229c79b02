import { readFileSync, statSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { root } from "../support/rooms.js";
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

const editor = (page: Page) => page.locator(".cm-content");
/** The text area holds the text, be it shown or behind the editor. */
const textOf = (page: Page) => page.locator("#job").inputValue();

async function toJson(page: Page): Promise<void> {
  await page.getByLabel("its JSON").check();
  await editor(page).waitFor();
}

async function write(page: Page, text: string): Promise<void> {
  await toJson(page);
  await paste(page, text);
}

/** Puts a text in the place of what the editor holds. Pasted: so much text as typing would take the browser half a minute. */
async function paste(page: Page, text: string): Promise<void> {
  await editor(page).focus();
  await page.keyboard.press("ControlOrMeta+a");
  await page.evaluate(`
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", ${JSON.stringify(text)});
    const event = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    document.activeElement.dispatchEvent(event);
  `);
}

/** The job that the text holds. */
const jobOf = async (page: Page) => JSON.parse(await textOf(page));

/** Starts a job of one's own and gives its line 3, which is new and empty. */
async function newLine(page: Page): Promise<Locator> {
  await page.getByRole("button", { name: "Start a job of your own" }).click();
  await page.getByRole("button", { name: "Add a line" }).click();
  return page.getByRole("group", { name: /^Line 3/ });
}

/** Writes into a field and leaves it for the next, as a hand does. */
async function fillAndLeave(page: Page, field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await page.keyboard.press("Tab");
}

async function type(page: Page, from: string, to: string): Promise<void> {
  const text = await textOf(page);
  expect(text).toContain(from);
  await write(page, text.replace(from, to));
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
    expect(await textOf(page)).toContain('"outerPhase"');
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
    expect((await textOf(page)).split("\n").length).toBeLessThanOrEqual(20);
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
  await withPage(desk, async (page) => {
    await page.addInitScript(() => {
      const { parse } = JSON;
      JSON.parse = (...given) => {
        try {
          return parse(...given);
        } catch {
          throw new SyntaxError((globalThis as { dialect?: string }).dialect);
        }
      };
    });
    await page.goto(addressOf("try-it/index.html"));
    await settled(page);
    const fault = page.locator("#fault-list button");
    for (const words of dialects) {
      await page.evaluate(`globalThis.dialect = ${JSON.stringify(words)}`);
      await type(page, '"version": 1,', '"version": 1');
      await fault.getByText("line 3, column 3", { exact: true }).waitFor();
      expect(await fault.count()).toBe(1);
      await page.getByRole("button", { name: "Put it back as it was" }).click();
      await settled(page);
      await write(page, `// a comment\n${await textOf(page)}`);
      await fault.getByText("line 1, column 1", { exact: true }).waitFor();
      expect(await fault.count()).toBe(1);
      await fault.click();
      expect(await page.evaluate("getSelection().toString()")).toBe("// a comment");
      await page.getByRole("button", { name: "Put it back as it was" }).click();
      await settled(page);
    }
  });
});

browserTest("nothing that was typed is lost when the page is loaded again or another job is chosen", async () => {
  await onTryIt(async (page) => {
    const choice = page.getByLabel("Job", { exact: true });
    await type(page, '"amount": "9 %"', '"amount": "12 %"');
    await choice.selectOption("200 g in a beaker");
    await write(page, "{ half");
    await page.reload();
    await page.locator("#fault-list button").first().waitFor();
    expect(await choice.inputValue()).toBe("200 g in a beaker");
    expect(await textOf(page)).toBe("{ half");
    await choice.selectOption("1200 jars from a kettle");
    expect(await textOf(page)).toContain('"amount": "12 %"');
    await page.getByRole("button", { name: "Put it back as it was" }).click();
    expect(await textOf(page)).toContain('"amount": "9 %"');
  });
});

browserTest("a link holds the job, and opens beside what is there", async () => {
  await withPage({ ...desk, permissions: ["clipboard-read", "clipboard-write"] }, async (page) => {
    await page.goto(addressOf("try-it/index.html"));
    await settled(page);
    await type(page, '"Shimmering cuticle gel"', '"Gel of a friend"');
    const text = await textOf(page);
    await page.getByRole("button", { name: "Copy a link to it" }).click();
    await page.getByRole("button", { name: "Copied" }).waitFor();
    const link = await page.evaluate<string>("navigator.clipboard.readText()");
    expect(link.length).toBeLessThan(8000);
    await page.getByRole("button", { name: "Put it back as it was" }).click();
    await page.goto(link);
    await page.getByRole("heading", { name: "Batch sheet: Gel of a friend" }).waitFor();
    expect(await textOf(page)).toBe(text);
    expect(await page.getByLabel("Job", { exact: true }).inputValue()).toBe("From a link");
    await page.goto("about:blank");
    await page.goto(link.slice(0, -40));
    // It is still said once the job that is there instead has been run.
    await status(page)
      .getByText(/^The link was cut off.* Answers: \d+ met/)
      .waitFor();
  });
});

browserTest("a job is opened from a file and handed over as one", async () => {
  await onTryIt(async (page) => {
    const text = (await textOf(page)).replace("Shimmering cuticle gel", "Gel of a file");
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
    expect(await textOf(page)).toContain('"mass": "200 g"');
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

/** What a fault list of the form leads to. */
const invalid = (page: Page) => page.locator("#fields-view [aria-invalid]");

browserTest("form and JSON are two views of one job", async () => {
  await onTryIt(async (page) => {
    await page.getByRole("button", { name: "Start a job of your own" }).click();
    const second = page.getByRole("group", { name: "Line 2: oil" });
    await fillAndLeave(page, second.getByRole("combobox", { name: "Material" }), "sunflower oil");
    await page.getByRole("group", { name: "Line 2: sunflower oil" }).waitFor();
    await page.getByRole("group", { name: "Step 2: heat" }).getByRole("textbox", { name: "To" }).fill("82 °C");
    await page.getByRole("cell", { name: "Heat to 82 °C with the heater full on" }).waitFor();
    const job = await jobOf(page);
    expect(job.formula.materials.sunflowerOil).toEqual({
      name: "sunflower oil",
      function: "oil",
      propertiesOf: "fats and oils",
    });
    expect(job.process.steps[1]).toEqual({ do: "heat", to: "82 °C" });
    await type(page, '"82 °C"', '"83 °C"');
    await page.getByLabel("a form").check();
    await page.getByRole("button", { name: "Add a step below step 2" }).click();
    const third = page.getByRole("group", { name: /^Step 3/ });
    await third.getByRole("combobox", { name: "Do" }).selectOption("hold");
    await third.getByRole("textbox", { name: "For" }).fill("10 min");
    await third.getByLabel("What may be added to 3").selectOption("Note");
    await third.getByRole("button", { name: "Add the chosen field to 3" }).click();
    await third.getByRole("textbox", { name: "Note" }).fill("lid on");
    await settled(page);
    expect((await jobOf(page)).process.steps.slice(1, 3)).toEqual([
      { do: "heat", to: "83 °C" },
      { do: "hold", for: "10 min", note: "lid on" },
    ]);
    await third.getByRole("button", { name: "Move step 3 up" }).click();
    await page.getByRole("button", { name: "Remove step 2" }).click();
    expect((await jobOf(page)).process.steps).toHaveLength(5);
  });
});

browserTest("form and JSON stand beside one another where there is room, and each follows the other", async () => {
  await onTryIt(async (page) => {
    await page.getByLabel("both, side by side").check();
    await editor(page).waitFor();
    const fields = page.locator("#fields-view");
    const name = fields.getByRole("textbox", { name: "Name", exact: true }).first();
    const [left, right] = [await fields.boundingBox(), await page.locator("#text-view").boundingBox()];
    expect((left?.x ?? 0) + (left?.width ?? 0)).toBeLessThan(right?.x ?? 0);
    await name.fill("Gel in two views");
    await editor(page).getByText('"Gel in two views"').waitFor();
    expect(await page.evaluate("document.activeElement.value")).toBe("Gel in two views");
    const text = (await textOf(page)).replace('"Gel in two views"', '"Gel by its JSON"');
    await paste(page, `${text},`);
    await page.getByText("The text is not valid JSON.").waitFor();
    expect(await fields.getAttribute("inert")).toBe("");
    await paste(page, text);
    await expect.poll(() => name.inputValue()).toBe("Gel by its JSON");
    await settled(page);
    expect(await fields.getAttribute("inert")).toBe(null);
    await page.setViewportSize({ width: 390, height: 844 });
    // The page hears of its new width after the browser.
    await page.locator("#text-view").waitFor({ state: "hidden" });
    expect(await page.getByLabel("both, side by side").isVisible()).toBe(false);
  });
});

browserTest("another name for a phase goes through steps, bench and batch, and nothing else changes", async () => {
  await onTryIt(async (page) => {
    const before = await textOf(page);
    const answers = await status(page).textContent();
    await page.getByText("Names of the phases").click();
    const first = page.getByRole("textbox", { name: "Phase 1" });
    await first.fill("");
    await first.press("Tab");
    await expect.poll(() => first.inputValue()).toBe("A");
    await first.fill("melt");
    await first.press("Tab");
    await expect.poll(() => textOf(page)).toContain('"phase": "melt"');
    await page.locator("#result").getByText("melt").first().waitFor();
    await settled(page);
    expect(await status(page).textContent()).toBe(answers);
    const back = (await textOf(page)).replaceAll('"melt"', '"A"');
    expect(back).toBe(before);
  });
});

browserTest("what a new line is called is the name by which the rest of the job refers to it", async () => {
  await onTryIt(async (page) => {
    const third = await newLine(page);
    await fillAndLeave(page, third.getByRole("combobox", { name: "Material" }), "mint aroma");
    await expect.poll(async () => (await jobOf(page)).formula.phases[0].lines[2].material).toBe("mintAroma");
    expect((await jobOf(page)).formula.materials.mintAroma.name).toBe("mint aroma");
    // The focus went on to the next field.
    expect(await page.evaluate("document.activeElement.labels[0].textContent")).toBe("What it is");
  });
});

browserTest("what is laid out by hand in the JSON stays so when one value changes in the form", async () => {
  await onTryIt(async (page) => {
    const before = (await textOf(page)).replaceAll("\n", "\n\n");
    await write(page, before);
    await page.getByLabel("a form").check();
    await page.getByRole("textbox", { name: "Name", exact: true }).first().fill("Other");
    expect(await textOf(page)).toBe(before.replace('"Shimmering cuticle gel"', '"Other"'));
  });
});

browserTest("lines take the name of another material, another phase, and go", async () => {
  await onTryIt(async (page) => {
    const third = await newLine(page);
    await third.getByRole("textbox", { name: "Amount" }).fill("3 %");
    await fillAndLeave(page, third.getByRole("combobox", { name: "Material" }), "oil");
    await expect.poll(async () => (await jobOf(page)).formula.phases[0].lines[2].material).toBe("oil");
    await third.getByRole("combobox", { name: "Phase" }).selectOption("another phase");
    expect((await jobOf(page)).formula.phases).toEqual([
      {
        name: "A",
        lines: [
          { material: "former", amount: "10 %" },
          { material: "oil", amount: "q.s." },
        ],
      },
      { name: "B", lines: [{ material: "oil", amount: "3 %" }] },
    ]);
    await page.getByRole("button", { name: "Remove line 3" }).click();
    expect((await jobOf(page)).formula.phases).toHaveLength(1);
    await settled(page);
  });
});

browserTest("a line has one button, which removes it; how its amount is meant is one choice of three", async () => {
  for (const options of [desk, phone])
    await onTryIt(async (page) => {
      const third = page.getByRole("group", { name: /^Line 3/ });
      const lineOf = async () => (await jobOf(page)).formula.phases[0].lines[2];
      const before = await lineOf();
      expect(before.as).toBe("active");
      const remove = third.getByRole("button");
      expect(await remove.count()).toBe(1);
      expect(await remove.getAttribute("aria-label")).toBe("Remove line 3");
      const meant = third.getByLabel("Amount as");
      expect(await meant.getByRole("option").allTextContents()).toEqual(["not given", "supplied", "active"]);
      await meant.selectOption("not given");
      expect(await lineOf()).toEqual({ material: before.material, amount: before.amount });
      await meant.selectOption("active");
      expect(await lineOf()).toEqual(before);
    }, options);
});

browserTest("a fault is marked at its field, in a part that is closed too, and the list leads there", async () => {
  for (const options of [desk, phone])
    await onTryIt(async (page) => {
      await type(page, '"power": "1.2 kW"', '"power": "1.2 kg"');
      await page.locator("#fault-list button").waitFor();
      await page.getByLabel("a form").check();
      const vessel = page.locator("summary", { hasText: "Vessel" }).first();
      await vessel.getByText("1 fault").waitFor();
      expect(await invalid(page).count()).toBe(0);
      await page.getByRole("button", { name: "vessel.heater.power" }).click();
      expect(await invalid(page).inputValue()).toBe("1.2 kg");
      expect(await page.evaluate("document.activeElement.value")).toBe("1.2 kg");
      expect(await page.evaluate("document.getElementById(document.activeElement.id + '-fault').textContent")).toMatch(
        /^found "1.2 kg"/,
      );
      await page.keyboard.type("1.2 kW");
      await settled(page);
      expect(await invalid(page).count()).toBe(0);
      expect(await vessel.getByText("fault").count()).toBe(0);
    }, options);
});

browserTest("the editor offers what the schema knows and what the document names", async () => {
  await onTryIt(async (page) => {
    const offered = page.locator(".cm-tooltip-autocomplete li");
    await page.getByRole("button", { name: "Start a job of your own" }).click();
    await write(page, (await textOf(page)).replace(/"process"[\s\S]*$/, ""));
    await page.keyboard.type('"pa');
    await offered.first().waitFor();
    expect((await offered.allTextContents())[0]).toBe('"pack"');
    await page.keyboard.press("Escape");
    await write(page, (await textOf(page)).replace('"pa"', '"process": { "steps": [{ "do": "charge", "phase": '));
    await page.locator("#fault-list").getByText("expected a value").waitFor();
    await page.keyboard.press("Control+Space");
    await offered.getByText('"A"').click();
    expect(await textOf(page)).toContain('"phase": "A"');
  });
});

browserTest("the editor marks faults at their places", async () => {
  await onTryIt(async (page) => {
    await write(page, '{ "version": 1, "vessel": { "heater": { "power": "1.2 kg" } } }');
    await page.locator(".cm-lintRange-error", { hasText: "1.2 kg" }).waitFor();
  });
});

browserTest("where the editor cannot be loaded, the plain text area does its work", async () => {
  await withPage(desk, async (page) => {
    await page.route("**/editor.js", (route) => route.abort());
    await page.goto(addressOf("try-it/index.html"));
    await settled(page);
    await page.getByLabel("its JSON").check();
    const area = page.locator("#job");
    await area.fill((await area.inputValue()).replace('"power": "1.2 kW"', '"power": "1.2 kg"'));
    await page.getByRole("button", { name: "vessel.heater.power" }).click();
    expect(await page.evaluate("getSelection().toString()")).toBe('"1.2 kg"');
    expect(await editor(page).count()).toBe(0);
  });
});

browserTest("jobs stand side by side, as they are now", async () => {
  await onTryIt(async (page) => {
    await page.getByRole("checkbox", { name: "1200 jars from a kettle" }).check();
    await page.getByText("Tick another one.").waitFor();
    await page.getByRole("checkbox", { name: "200 g in a beaker" }).check();
    const dose = page.locator("#beside").getByRole("row", { name: /^gel former in the product/ });
    await dose.waitFor();
    expect(await dose.getByRole("cell").allTextContents()).toEqual(["gel former in the product", "9 %", "9 %"]);
    expect(await page.locator("#beside th").allTextContents()).toEqual([
      "",
      "1200 jars from a kettle",
      "200 g in a beaker",
    ]);
    await type(page, '"amount": "9 %"', '"amount": "12 %"');
    await dose.getByRole("cell", { name: "12 %" }).waitFor();
    await write(page, "{ half");
    await page.getByText("There are faults in: 1200 jars from a kettle.").waitFor();
    expect(await dose.count()).toBe(0);
  });
});

browserTest(
  "before it can be used, the page loads neither the editor nor more than a quarter of a megabyte",
  async () => {
    await withPage(desk, async (page) => {
      const loaded: string[] = [];
      page.on("request", (request) => {
        const { protocol, pathname } = new URL(request.url());
        if (protocol === "file:") loaded.push(pathname.replace(/.*\/site\//, ""));
      });
      await page.goto(addressOf("try-it/index.html"));
      await page.getByRole("textbox", { name: "Name", exact: true }).first().fill("Mine");
      await settled(page);
      expect(loaded).not.toContain("try-it/editor.js");
      const before = loaded.filter((file) => !/^(try-it\/worker|plots)\.js$/.test(file));
      const bytes = before
        .map((file) => statSync(`${root}docs/site/${file}`).size)
        .reduce((sum, size) => sum + size, 0);
      expect(before).toContain("try-it/try-it.js");
      expect(bytes).toBeLessThan(250_000);
      await toJson(page);
      expect(loaded).toContain("try-it/editor.js");
    });
  },
);
