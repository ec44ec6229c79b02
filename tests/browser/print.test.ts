import { readFileSync } from "node:fs";
import { type JobDocument, planSeries, prepareJob, runPlan } from "gelwright/plan";
import { toHtml } from "gelwright/sheet";
import { afterAll, expect } from "vitest";
import { allJobsByName } from "../plan/jobs/jobs.js";
import { root } from "../support/rooms.js";
import { browserTest, closeBrowser, withPage } from "./chromium.js";

afterAll(closeBrowser);

function readJob(path: string): JobDocument {
  return JSON.parse(readFileSync(`${root}${path}`, "utf8")) as JobDocument;
}

const jobs = allJobsByName();
const { "starter-without-readings": starter, "two-oils-in-three-lots": lots, "several-lots-in-a-day": day } = jobs;

/** Jobs whose sheets are printed: both examples at the size of the plant, the job to start from and a starter without readings, and further jobs of both routes. */
const printed: Readonly<Record<string, JobDocument | undefined>> = {
  "the example of the hot route": jobs["cuticle-gel-kettle"],
  "the example of the cold route": jobs["scrub-gel-vessel"],
  "the job to start from": readJob("docs/examples/starter/job.json"),
  "a starter without readings": starter,
  "a tinted lip gel": readJob("tests/sheet/jobs/lip-balm-gel.json"),
  "two oils in three lots": lots,
  "several lots in a day": day,
};

/** The sheet with its drawings, and the part that goes to the kettle alone. */
function sheetsOf(job: JobDocument): { readonly whole: string; readonly kettle: string } {
  const whole = toHtml({ plan: runPlan(job), series: planSeries({ prepared: prepareJob(job) }) });
  const at = whole.indexOf('<h1 class="part">');
  expect(at).toBeGreaterThan(0);
  return { whole, kettle: `${whole.slice(0, at)}</main></body></html>` };
}

/** Pages of a PDF: the writer leaves the objects of pages as plain text. */
function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

/** Printable width of A4 upright between the margins of the sheet, 210 mm less twice 11 mm, in pixels of 1/96 inch. */
const printableWidth = Math.floor((188 / 25.4) * 96);

for (const [name, job] of Object.entries(printed))
  browserTest(`the kettle part of ${name} prints on two A4 pages, and the appendices begin on the next`, async () => {
    if (!job) throw new Error(`no job for ${name}`);
    const { whole, kettle } = sheetsOf(job);
    await withPage({ viewport: { width: printableWidth, height: 900 } }, async (page) => {
      const print = async (html: string) => {
        await page.setContent(html);
        return pagesOf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      };
      const pagesOfKettle = await print(kettle);
      expect(pagesOfKettle).toBeGreaterThanOrEqual(1);
      expect(pagesOfKettle).toBeLessThanOrEqual(2);
      const [, appendices = ""] = whole.split(/(?=<h1 class="part">)/);
      const head = whole.slice(0, whole.indexOf("<main>") + "<main>".length);
      expect(await print(whole)).toBe(pagesOfKettle + (await print(`${head}${appendices}`)));
      // Nothing is wider than the paper.
      await page.emulateMedia({ media: "print" });
      await page.setContent(whole);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(printableWidth);
    });
  });
