import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { type Plan, planSeries, prepareJob, runPlan } from "gelwright/plan";
import { toCsv, toHtml, toMarkdown } from "gelwright/sheet";
import { parseHTML } from "linkedom";
import MarkdownIt from "markdown-it";
import { describe, expect, test } from "vitest";
import { plansByName } from "../plan/jobs/plans.js";
import { changed, coldJob, exampleJob } from "../support/example.js";

const hot = runPlan(exampleJob());
const series = planSeries({ prepared: prepareJob(exampleJob()) });
const cold = runPlan(coldJob());

type Page = ReturnType<typeof parseHTML>["document"];

function bodyOf(html: string): Page {
  return parseHTML(html).document;
}

describe("HTML", () => {
  test("is one file that loads nothing and runs nothing", () => {
    for (const html of [toHtml({ plan: hot, series }), toHtml({ plan: cold })]) {
      expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
      expect(html).not.toMatch(/<script|<link|<img|<iframe|@import|url\((?!#)|https?:|\bon[a-z]+=|javascript:/i);
    }
  });

  test("says what the Markdown says, section by section and row by row", () => {
    for (const plan of [hot, cold]) {
      const markdown = new MarkdownIt().render(toMarkdown({ plan }));
      const [one, other] = [bodyOf(`<main>${markdown}</main>`), bodyOf(toHtml({ plan }))];
      for (const tag of ["h1", "h2", "li", "tr", "th"]) {
        const texts = (of: Page): readonly string[] => [...of.querySelectorAll(`main ${tag}`)].map(plainText);
        if (tag === "tr") expect(texts(other)).toHaveLength(texts(one).length);
        else expect(texts(other)).toEqual(texts(one));
      }
    }
  });

  test("draws the temperature with its windows, or additions and torque with its band", () => {
    const figures = (html: string) => [...bodyOf(html).querySelectorAll("figure")];
    const [temperature, ...others] = figures(toHtml({ plan: hot, series }));
    expect(others).toEqual([]);
    expect(temperature?.querySelectorAll("polyline")).toHaveLength(2);
    expect(temperature?.querySelectorAll("polygon")).toHaveLength(1);
    expect(plainText(temperature)).toContain("pearl pigment (mica), 10 to 60 µm");
    expect(figures(toHtml({ plan: hot }))).toEqual([]);
    const [oil, torque] = figures(toHtml({ plan: cold }));
    expect(oil?.querySelectorAll("polyline")).toHaveLength(1);
    expect(torque?.querySelectorAll("polygon")).toHaveLength(1);
    const rows = cold.emulsion?.schedules.flatMap((of) => ("notKnown" in of ? [] : of.rows)) ?? [];
    const points = oil?.querySelector("polyline")?.getAttribute("points")?.split(" ") ?? [];
    expect(points).toHaveLength(rows.length + 1);
  });

  test("keeps every point of a drawing inside it", () => {
    for (const [, { job, plan }] of plansByName()) {
      const html = toHtml({ plan, series: planSeries({ prepared: prepareJob(job) }) });
      expect(html).not.toMatch(/NaN|Infinity|undefined/);
      for (const shape of bodyOf(html).querySelectorAll("polyline, polygon"))
        for (const point of (shape.getAttribute("points") ?? "").split(" ")) {
          const [x = Number.NaN, y = Number.NaN] = point.split(",").map(Number);
          expect(x >= 62 && x <= 706 && y >= -40 && y <= 250, `${point} of ${job.formula.name}`).toBe(true);
        }
    }
  });

  test("gives each figure the look of how it is come by", () => {
    const of = (plan: Plan) => bodyOf(toHtml({ plan }));
    expect([...of(hot).querySelectorAll("li b")].map(plainText).join("\n")).toContain("Yield stress 25 Pa");
    expect([...of(hot).querySelectorAll("li i")].map(plainText).join("\n")).toMatch(
      /trials.*24\.7 \(23\.1 to 26\.5\) Pa/,
    );
    expect([...of(cold).querySelectorAll("td i")].map(plainText)).toContain("17 (9.8 to 26) N·m");
    expect([...of(hot).querySelectorAll("td span")].map(plainText)).toContain("2.2 Pa·s");
  });

  test("names product, documents and batch number at the foot of each printed page, with its number", () => {
    const html = toHtml({ plan: named('gel "x"; } </style><b>') });
    const [, foot = ""] = /@bottom-left\{content:"([^"]*)"/.exec(html) ?? [];
    const said = foot.replace(/\\([0-9a-f]+) /g, (_all, code: string) =>
      String.fromCodePoint(Number.parseInt(code, 16)),
    );
    const fingerprint = (hot.fingerprint.slice(0, 16).match(/.{4}/g) ?? []).join(" ");
    expect(said).toBe(`Batch sheet: gel "x"; } </style><b> · ${fingerprint} · Batch number: ______________`);
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html).toContain('counter(page) " / " counter(pages)');
  });

  test("refuses a series with a figure that is none", () => {
    expect(() => toHtml({ plan: hot, series: { ...series, times: [Number.NaN] } })).toThrow(CalculationError);
    expect(() => toHtml({ plan: hot, series: {} as never })).toThrow(CalculationError);
  });
});

const turning = "\u202e\u2066\u200f";

/** Names that would be mark-up, links, entities or another line, and names made of such pieces at random. */
const names = fc.oneof(
  fc.constantFrom("<b>oil</b>", "&lt;", "a | b", "~~gone~~", "https://example.org/a_b", "www.example.org", "1. oil"),
  fc.constantFrom(
    "- oil",
    "# oil",
    "+ oil",
    "`code`",
    "![a](b)",
    "<script>alert(1)</script>",
    `oil${turning}lio`,
    "===",
    "&#x3c;b>",
  ),
  fc
    .array(fc.constantFrom(..."<>&|~`*_[]()!#\\\"'-+=.:/1 a\n", "www.", "http://", turning, "&amp;", "\\|"), {
      minLength: 1,
      maxLength: 12,
    })
    .map((pieces) => `x${pieces.join("")}x`),
);

/** What a reader should see of a name. */
function seen(name: string): string {
  return name
    .replace(/\s*[\r\n\t]+\s*/g, " ")
    .replace(/[\u202e\u2066\u200f]/g, "\ufffd")
    .replace(/\s+/g, " ")
    .trim();
}

function plainText(of: { readonly textContent: string | null } | null | undefined): string {
  return (of?.textContent ?? "").replace(/\s+/g, " ").trim();
}

/** A plan with a name for formula and first material, which is written as often as any. */
function named(name: string): Plan {
  const bare = { ...hot, answers: [], timeline: [], sources: [], cautions: [], notes: [], thermalExposures: [] };
  const materials = { ...hot.names.materials, [hot.weighing.lines[0]?.material ?? ""]: name };
  return { ...bare, names: { ...hot.names, formula: name, vessel: name, materials } };
}

describe("names of the documents", () => {
  const parser = new MarkdownIt({ html: true, linkify: true });
  const cases = [
    ["HTML", (plan: Plan) => toHtml({ plan })],
    ["Markdown", (plan: Plan) => `<main>${parser.render(toMarkdown({ plan }))}</main>`],
  ] as const;

  test.each(cases)("stand in %s as they are", (_form, write) => {
    fc.assert(
      fc.property(names, (name) => {
        const page = bodyOf(write(named(name)));
        expect(plainText(page.querySelector("h1"))).toBe(`Batch sheet: ${seen(name)}`.trim());
        const cells = [...page.querySelectorAll("td")].map(plainText);
        expect(cells.filter((cell) => cell === seen(name)).length).toBeGreaterThanOrEqual(2);
        expect(page.querySelectorAll("main a, main script, main s, main img, main code, main h3")).toHaveLength(0);
      }),
    );
  });

  test("cannot turn the direction of a line in CSV either, and run nothing there", () => {
    const csv = toCsv({ plan: named(`=1+1${turning}`), table: "weighing" });
    expect(csv).toContain("'=1+1");
    expect(csv).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
  });
});

test("a plan from a document with odd names is written in every form", () => {
  const odd = runPlan(
    changed(exampleJob(), (draft) => {
      draft.formula.materials.almond.name = "almond <oil> & | ~x~ www.a.b";
      draft.vessel.name = `kettle ${turning}`;
    }),
  );
  expect(toHtml({ plan: odd })).toContain("almond &lt;oil&gt; &amp; | ~x~ www.a.b");
  expect(toMarkdown({ plan: odd })).toContain("almond \\<oil\\> \\& \\| \\~x\\~ www\\.a.b");
});
