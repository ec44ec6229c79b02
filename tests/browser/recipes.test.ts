import { readFileSync } from "node:fs";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { root } from "../support/rooms.js";
import { browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

/** The files that the page of recipes spells out, by the name in their first line. */
const files = new Map(
  [
    ...readFileSync(`${root}docs/guides/recipes.md`, "utf8").matchAll(
      /```(?:js|html)\n(?:\/\/ (\S+)|<!-- (\S+) -->)\n(.*?)```/gs,
    ),
  ].map(([, script, page, code = ""]) => [script ?? page ?? "", code]),
);

/** What esbuild makes of a script, with the package found by its own name, and so as it is published. */
async function bundled(name: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: files.get(name) ?? "throw new Error('no such script')", resolveDir: root },
    bundle: true,
    minify: true,
    write: false,
    tsconfigRaw: {},
    logLevel: "error",
  });
  return outputFiles[0]?.text ?? "";
}

const host = "https://recipes.test/";

/** Opens a page of the recipes, served out of this process: nothing else is at that address. */
async function open(page: Page, name: string): Promise<void> {
  await page.route(`${host}**`, async (route) => {
    const asked = new URL(route.request().url()).pathname.slice(1);
    if (asked.endsWith(".html")) return route.fulfill({ body: files.get(asked) ?? "", contentType: "text/html" });
    // A file of the installed package that a page takes as it is.
    if (asked.startsWith("node_modules/gelwright/"))
      return route.fulfill({
        body: readFileSync(root + asked.replace("node_modules/gelwright/", ""), "utf8"),
        contentType: "text/javascript",
      });
    const script = asked.replace(".bundle.js", ".js");
    if (!files.has(script)) return route.fulfill({ status: 204 });
    return route.fulfill({ body: await bundled(script), contentType: "text/javascript" });
  });
  await page.goto(host + name);
}

browserTest("the recipe for a page shows what it says, and follows what is typed", async () => {
  await withPage(
    {},
    async (page) => {
      await open(page, "page.html");
      expect(await page.locator("output").textContent()).toBe("153 min");
      await page.locator("input").fill("45");
      expect(await page.locator("output").textContent()).toBe("301 min");
    },
    host,
  );
});

browserTest("the recipe for a worker shows what it says", async () => {
  await withPage(
    {},
    async (page) => {
      await open(page, "asks.html");
      await page.locator("output", { hasText: "," }).waitFor();
      expect(await page.locator("output").textContent()).toBe("6.5, 65.2");
    },
    host,
  );
});

browserTest("the recipe without a bundler shows what it says", async () => {
  await withPage(
    {},
    async (page) => {
      await open(page, "no-bundler.html");
      await page.locator("output", { hasText: "min" }).waitFor();
      expect(await page.locator("output").textContent()).toBe("153 min");
      await page.locator("input").fill("45");
      expect(await page.locator("output").textContent()).toBe("301 min");
    },
    host,
  );
});
