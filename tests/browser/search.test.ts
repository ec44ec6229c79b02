import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { Finder } from "../../docs/search/finder.js";
import { readSite, wordingsByUrl } from "../../docs/search/read-site.js";
import { root } from "../support/rooms.js";
import { addressOf, browserTest, closeBrowser, withPage } from "./chromium.js";

interface Query {
  readonly asked: string;
  /** Pages, or places on a page, any of which answers. */
  readonly pages: readonly string[];
}

const read = (name: string) => JSON.parse(readFileSync(`${root}tests/docs/search/${name}.json`, "utf8")) as Query[];

let sections: ReturnType<typeof readSite>;
let finder: Finder;
beforeAll(() => {
  sections = readSite(`${root}docs/site`);
  finder = new Finder(sections);
});
afterAll(closeBrowser);

/** A calculator answers what its function answers. */
const address = (url: string) => url.replace(".html", "").replace("calculators/", "functions/");

/** The questions that none of the first three hits answers. */
function missed(queries: readonly Query[]): string[] {
  const isFound = ({ asked, pages }: Query) =>
    finder.find(asked, 3).some(({ section }) => pages.includes(address(section.url)));
  return queries.filter((query) => !isFound(query)).map(({ asked }) => asked);
}

test("the pages that the questions name are there", () => {
  const known = new Set(sections.map(({ url }) => address(url)));
  const none = [...read("queries"), ...read("further")].filter(({ pages }) => !pages.some((page) => known.has(page)));
  expect(none.map(({ asked }) => asked)).toEqual([]);
});

test("wordings belong to pages and places that are there, each wording to a place once", () => {
  const known = new Set(sections.map(({ url }) => url));
  const wordings = [...wordingsByUrl()];
  expect(wordings.length).toBeGreaterThan(300);
  expect(wordings.filter(([url]) => !known.has(url)).map(([url]) => url)).toEqual([]);
  const isFaulty = (all: readonly string[]) => new Set(all).size < all.length || all.some((one) => one.trim() === "");
  expect(wordings.filter(([, all]) => isFaulty(all)).map(([url]) => url)).toEqual([]);
});

test("of forty questions in the words of users at least thirty-six are answered by the first three hits", () => {
  const queries = read("queries");
  expect(queries).toHaveLength(40);
  expect(missed(queries).length, missed(queries).join("; ")).toBeLessThanOrEqual(4);
});

// A list that grows with what users ask. Ranking, synonyms and wordings have been tuned on most of it, so new questions
// fare worse: of the last fifty, written before the wordings were, 45 were answered by the first three hits once these
// were there, and 47 with the present weights.
test("of the further questions nine in ten are", () => {
  const queries = read("further");
  expect(queries.length).toBeGreaterThan(200);
  expect(missed(queries).length, missed(queries).join("; ")).toBeLessThanOrEqual(queries.length / 10);
});

test("names are found by their own words, each first", () => {
  for (const name of ["largestAddition", "toCsv", "additionWindow", "runPlan", "JobDocument"])
    expect(finder.find(name)[0]?.section.title, name).toBe(name);
});

browserTest("a question is typed, read and followed with the keyboard alone", async () => {
  for (const [asked, page, place] of [
    ["my glitter sinks", "functions/particles.settlingOver", ""],
    ["jar sets overnigt", "calculators/heat.packCoolingTime.html", ""],
    ["flash point check", "documents/plan-questions.html", "#flash-point"],
  ] as const)
    await withPage({ viewport: { width: 390, height: 844 } }, async (tab) => {
      await tab.goto(addressOf("documents/heat.html"));
      await tab.waitForFunction("document.body.style.display !== 'none'");
      await tab.keyboard.press("/");
      await tab.keyboard.type(asked);
      await tab.locator(`#find-hits[data-for="${asked}"] [aria-selected=true]`).waitFor();
      expect(await tab.locator("#find-hits mark").count()).toBeGreaterThan(0);
      await tab.keyboard.press("Enter");
      await tab.waitForURL((url) => url.pathname.includes(page) && url.hash.includes(place));
    });
});

browserTest("arrows choose another hit, Escape closes, and the box says when nothing is found", async () => {
  await withPage({ viewport: { width: 1280, height: 900 } }, async (tab) => {
    await tab.goto(addressOf("documents/heat.html"));
    await tab.waitForFunction("document.body.style.display !== 'none'");
    await tab.locator("#find-open").click();
    await tab.keyboard.type("how long to cool");
    await tab.locator('#find-hits[data-for="how long to cool"] #find-hit-1').waitFor();
    await tab.keyboard.press("ArrowDown");
    expect(await tab.locator("#find-words").getAttribute("aria-activedescendant")).toBe("find-hit-1");
    await tab.locator("#find-words").fill("xylophone zzyzx");
    await tab.locator("#find-status", { hasText: "Nothing found" }).waitFor();
    await tab.keyboard.press("Escape");
    expect(await tab.locator("#find").isVisible()).toBe(false);
  });
});
