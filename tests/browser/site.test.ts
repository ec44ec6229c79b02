import { readdirSync, readFileSync, statSync } from "node:fs";
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
    ["scorches", "heat.wallTemperature.html"],
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

/** How far a page is wider than its window, and the equations that are wider than their boxes, by page. */
type Widths = ReadonlyMap<string, { readonly beyond: number; readonly equations: readonly string[] }>;

const pageOf = (file: string) => `documents/${file.split("/").at(-1)?.replace(/md$/, "html")}`;

async function measure(): Promise<Widths> {
  const pages = [
    "index.html",
    "modules.html",
    "try-it/index.html",
    "modules/heat.html",
    "functions/heat.largestAddition.html",
    "interfaces/plan.JobDocument.html",
    "variables/oils.almondOil.html",
    ...documents.map(pageOf),
  ];
  return withPage(narrow, async (page) => {
    const widths = new Map();
    for (const one of pages) {
      await page.goto(addressOf(one));
      await page.waitForFunction("document.body.style.display !== 'none'");
      const beyond = await page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
      await page.evaluate("new Promise(requestAnimationFrame)");
      const equations = await page.evaluate(
        `[...document.querySelectorAll(".equation")].filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.querySelector("annotation").textContent)`,
      );
      widths.set(one, { beyond, equations });
    }
    return widths;
  });
}

let measured: Promise<Widths> | undefined;
/** Each page is opened once for all that is asked of its widths on a phone. */
function onAPhone(): Promise<Widths> {
  measured ??= measure();
  return measured;
}

browserTest(
  "every page opens by itself, asks for nothing from another host, and is no wider than a phone",
  async () => {
    for (const [page, { beyond }] of await onAPhone()) expect(beyond, page).toBe(0);
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

test("every page of a function leads to its theory, to related functions and to what proves it", () => {
  const folder = `${root}docs/site/functions/`;
  const pages = readdirSync(folder);
  expect(pages.length).toBeGreaterThan(300);
  const without = pages.filter((page) => {
    const html = readFileSync(folder + page, "utf8");
    const ways = ["theory", "related", "proved"].map(
      (way) => new RegExp(`<dd class="${way}">(.*?)</dd>`, "s").exec(html)?.[1] ?? "",
    );
    return !ways.every((way) => way.includes('href="'));
  });
  expect(without).toEqual([]);
});

test("the arguments of every function stand in a table, each with what it is", () => {
  const html = readFileSync(`${root}docs/site/functions/particles.additionWindow.html`, "utf8");
  const rows = [...html.matchAll(/<tr><th scope="row"><code>(\w+)<\/code><\/th>(.*?)<\/tr>/gs)];
  const row = rows.find(([, name]) => name === "diameter")?.[2] ?? "";
  expect(row).toContain('data-label="unit">m<');
  expect(row).toContain("above 0");
  for (const [, name, cells = ""] of rows) expect(cells.replaceAll(/<[^>]+>/g, "").length, name).toBeGreaterThan(12);
});

test("every room begins with a paragraph, its questions and its functions", () => {
  for (const room of rooms) {
    const html = readFileSync(`${root}docs/site/modules/${room}.html`, "utf8");
    const front = /<section class="tsd-panel room-front">(.*?)<\/section>/s.exec(html)?.[1] ?? "";
    expect(front.replaceAll(/<[^>]+>/g, " ").length, room).toBeGreaterThan(100);
    expect(front, room).toContain('<dl class="by-question">');
  }
});

test("the front page with all that it takes weighs less than 150 kB, and installs as a user does", () => {
  const html = readFileSync(`${root}docs/site/index.html`, "utf8");
  const files = [...html.matchAll(/(?:src|href)="(assets\/[^"]+)"/g)].map(([, file = ""]) => file);
  const bytes = [...files, "index.html"].reduce((sum, file) => sum + statSync(`${root}docs/site/${file}`).size, 0);
  expect(files.length).toBeGreaterThan(1);
  expect(bytes).toBeLessThan(150_000);
  expect(html).toContain("npm install gelwright");
});

browserTest("no equation is wider than a phone", async () => {
  const widths = await onAPhone();
  for (const theory of [...documents.filter((file) => !file.includes("/")), "x/plan-questions.md"])
    expect(widths.get(pageOf(theory))?.equations, theory).toEqual([]);
});

browserTest("an equation stands in the middle of its box and touches no side of it", async () => {
  await withPage(wide, async (page) => {
    await page.goto(addressOf("functions/heat.vesselSegment.html"));
    await page.waitForFunction("document.body.style.display !== 'none'");
    const sides = await page.evaluate<number[]>(`[...document.querySelectorAll(".equation > div")].flatMap((box) => {
      const [outer, inner] = [box, box.querySelector("semantics")].map((one) => one.getBoundingClientRect());
      return [inner.left - outer.left, outer.right - inner.right];
    })`);
    expect(sides.length).toBeGreaterThan(0);
    for (const side of sides) expect(side).toBeGreaterThan(8);
  });
});
