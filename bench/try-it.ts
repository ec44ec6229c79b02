// `npx tsx bench/try-it.ts`, after `npm run docs`: how long the page Try it takes until it can be used, served from this
// machine, in a Chromium that is slowed down four times. Never a test: it goes by the machine and by what else runs on it.
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { closeBrowser, withPage } from "../tests/browser/chromium.js";
import { root } from "../tests/support/rooms.js";

const site = `${root}docs/site`;
const types: Readonly<Record<string, string>> = { ".html": "text/html", ".css": "text/css", ".js": "text/javascript" };
const runs = 7;

const server = createServer(({ url = "/" }, response) => {
  const { pathname } = new URL(url, "http://localhost");
  try {
    const body = readFileSync(site + pathname);
    response.writeHead(200, { "content-type": types[extname(pathname)] ?? "application/octet-stream" }).end(body);
  } catch {
    response.writeHead(404).end();
  }
});

/** Notes when the first field of the form is there, and when the page next has nothing to do: what is typed is then read. */
const watch = `
  globalThis.measured = new Promise((resolve) => {
    const look = () => {
      if (!document.querySelector("#fields-view input")) return requestAnimationFrame(look);
      setTimeout(() => resolve(performance.now()));
    };
    requestAnimationFrame(look);
  });
  globalThis.shown = new Promise((resolve) => {
    const look = () =>
      /^Answers/.test(document.querySelector("#status")?.textContent ?? "") ? resolve(performance.now()) : setTimeout(look, 10);
    look();
  });
`;

/** Milliseconds from the click on a link to the page until it can be used, and until the first sheet stands on it. */
async function once(address: string): Promise<readonly [used: number, shown: number]> {
  return withPage(
    { viewport: { width: 1280, height: 900 } },
    async (page) => {
      const session = await page.context().newCDPSession(page);
      await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
      await page.addInitScript(watch);
      await page.goto(`${address}/try-it/index.html`, { waitUntil: "commit" });
      return [await page.evaluate<number>("measured"), await page.evaluate<number>("shown")] as const;
    },
    address,
  );
}

await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
const { port } = server.address() as AddressInfo;
const times: (readonly [number, number])[] = [];
for (let i = 0; i < runs; i++) times.push(await once(`http://127.0.0.1:${port}`));
await closeBrowser();
server.close();
for (const [i, what] of ["can be used", "shows the first sheet"].entries()) {
  const each = times.map((one) => Math.round(one[i] ?? 0)).sort((a, b) => a - b);
  console.log(`Try it ${what} after ${each.join(", ")} ms, at a fourth of the speed`);
}
