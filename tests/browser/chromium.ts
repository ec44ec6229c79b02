import { existsSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { test } from "vitest";
import { chromiumPath } from "../support/chromium-path.js";
import { root } from "../support/rooms.js";

const required = process.env["BROWSER_TESTS"] === "required";
if (chromiumPath === undefined && required) throw new Error("BROWSER_TESTS is required, and there is no Chromium");
if (chromiumPath === undefined) console.warn("browser tests skipped: no Chromium");

/** A test that needs a browser: skipped where there is none, unless BROWSER_TESTS=required. */
export function browserTest(name: string, run: () => Promise<void>): void {
  test.skipIf(chromiumPath === undefined)(name, run);
}

/** The site's pages as files: what opens from a folder opens from any server. */
export function addressOf(page: string): string {
  const file = `${root}docs/site/${page}`;
  if (!existsSync(file)) throw new Error(`there is no ${page}: npm run docs builds the site`);
  return pathToFileURL(file).href;
}

let browser: Promise<Browser> | undefined;

/** Does something with a page of its own; fails if the page throws, or asks for anything but files and what is at `own`. */
export async function withPage<T>(
  options: BrowserContextOptions,
  use: (page: Page) => Promise<T>,
  own = "file:",
): Promise<T> {
  browser ??= chromium.launch({ executablePath: chromiumPath ?? "", args: ["--no-sandbox"] });
  const context = await (await browser).newContext({ reducedMotion: "reduce", ...options });
  const faults: string[] = [];
  context.on("request", (request) => {
    const url = request.url();
    if (!/^(file|data|blob):/.test(url) && !url.startsWith(own)) faults.push(`asks for ${url}`);
  });
  context.on("weberror", (error) => faults.push(String(error.error())));
  try {
    const value = await use(await context.newPage());
    if (faults.length > 0) throw new Error(`the page ${faults.join(", ")}`);
    return value;
  } finally {
    await context.close();
  }
}

/** Ends the browser; for `afterAll` of each file. */
export async function closeBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = undefined;
}
