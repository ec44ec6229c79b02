import { readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { documents } from "../../docs/theme/documents.js";
import { nameOf, rooms, root } from "../support/rooms.js";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

const wide = { viewport: { width: 1280, height: 900 } };
const narrow = { viewport: { width: 390, height: 844 } };

async function walkToTheAnswer(page: Page): Promise<string> {
  await page.goto(addressOf("index.html"));
  const main = page.locator(".col-content");
  await main.getByRole("link", { name: "Which function answers which question" }).first().click();
  await main
    .getByRole("row", { name: "How warm may the oil be when I add it" })
    .getByRole("link", { name: "additionTemperatureMin" })
    .click();
  return (await main.textContent()) ?? "";
}

browserTest("a newcomer finds in two clicks how warm the oil may be", async () => {
  for (const options of [wide, narrow]) {
    const words = await withPage(options, walkToTheAnswer);
    expect(words).toContain("The temperature to which an addition must be warmed");
    expect(words).toContain("Source");
  }
});

browserTest("the search finds a function by its name and a guide by its title, with the keyboard alone", async () => {
  for (const [typed, found] of [
    ["largestAddition", "heat.largestAddition.html"],
    ["start in five", "start.html"],
    ["scorches", "heat.stirredWall.html"],
  ] as const)
    await withPage(wide, async (page) => {
      await page.goto(addressOf("index.html"));
      await page.waitForFunction("document.body.style.display !== 'none'");
      await page.keyboard.press("/");
      await page.keyboard.type(typed);
      // Results come and go with each letter: the key goes down once the whole word was looked for.
      await page.locator(`#find-hits [aria-selected=true] a[href*="${found}"]`).waitFor();
      await page.keyboard.press("Enter");
      await page.waitForURL((url) => url.pathname.endsWith(found));
    });
});

browserTest(
  "every page opens by itself, asks for nothing from another host, and is no wider than a phone",
  async () => {
    const pages = [
      "index.html",
      "modules.html",
      "try-it/index.html",
      "modules/heat.html",
      "functions/heat.largestAddition.html",
      "interfaces/plan.JobDocument.html",
      "variables/oils.almondOil.html",
      ...documents.map((file) => `documents/${file.split("/").at(-1)?.replace(/md$/, "html")}`),
    ];
    await withPage(narrow, async (page) => {
      for (const one of pages) {
        await page.goto(addressOf(one));
        await page.waitForFunction("document.body.style.display !== 'none'");
        const beyond = "document.documentElement.scrollWidth - document.documentElement.clientWidth";
        expect(await page.evaluate(beyond), one).toBe(0);
      }
    });
  },
);

browserTest("figures take the colours of the scheme that the page has", async () => {
  const colours = await Promise.all(
    (["light", "dark"] as const).map((colorScheme) =>
      withPage({ ...wide, colorScheme }, async (page) => {
        await page.goto(addressOf("documents/heat.html"));
        return page.evaluate("getComputedStyle(document.querySelector('.figure svg text')).color");
      }),
    ),
  );
  expect(new Set(colours).size).toBe(2);
});

test("every question has an answer that leads to a function, a type or a page", () => {
  const html = readFileSync(`${root}docs/site/documents/questions.html`, "utf8");
  const rows = [...html.matchAll(/<tr>\s*<td>(.*?)<\/td>\s*<td>(.*?)<\/td>/gs)];
  expect(rows.length).toBeGreaterThan(50);
  for (const [, question, answer = ""] of rows) {
    expect(answer, question).toContain("<a href");
    expect(answer.replaceAll(/<a .*?<\/a>/gs, ""), question).not.toContain("<code>");
  }
});

test("every room has a question that it answers", () => {
  const rows = readFileSync(`${root}docs/guides/questions.md`, "utf8").match(/^\|.*$/gm) ?? [];
  const asked = new Set(rows.flatMap((row) => [...row.matchAll(/`(\w+)`/g)].map(([, name]) => name)));
  for (const room of rooms) {
    const names = Object.keys((gelwright as unknown as Record<string, object>)[nameOf(room)] ?? {});
    expect(names.filter((name) => asked.has(name)).length, `docs/guides/questions.md asks ${room}`).toBeGreaterThan(0);
  }
});
