import { sccsDailyExposure } from "gelwright/exposure";
import { exposureFor, labelFor, planSeries, prepareJob, runPlan, sweep } from "gelwright/plan";
import {
  english,
  exposureToMarkdown,
  fillCheckToMarkdown,
  labelToMarkdown,
  scalesToMarkdown,
  stabilityToMarkdown,
  sweepToMarkdown,
  toCsv,
  toHtml,
  toMarkdown,
  type Wording,
} from "gelwright/sheet";
import { describe, expect, it, test } from "vitest";
import { htmlText, markdownText } from "../../src/sheet/escape.js";
import { englishPhrases } from "../../src/sheet/words/phrases.js";
import { plansByName } from "../plan/jobs/plans.js";
import { coldJob, exampleJob } from "../support/example.js";
import { german, germanFormats, germanPhrases } from "./german/index.js";

const inGerman: Wording = { words: german, formats: germanFormats };

/** Every entry of a table with its path: texts, and functions by their place. */
function entriesOf(table: unknown, path = ""): readonly (readonly [string, unknown])[] {
  return typeof table === "object" && table !== null
    ? Object.entries(table).flatMap(([key, entry]) => entriesOf(entry, `${path}.${key}`))
    : [[path, table]];
}

/** Texts that are the same in both languages: names of people, words that both have, and a unit. */
const same: readonly string[] = ["Newton", "Bingham", "Casson", "Carreau", "Phase", "Polymer", ""];

describe("the table of German words", () => {
  it("has an entry for every one of the English table, of its kind, and no other", () => {
    const kinds = (table: unknown) => entriesOf(table).map(([path, entry]) => `${path}: ${typeof entry}`);
    expect(kinds(german).sort()).toEqual(kinds(english).sort());
    expect(kinds(germanPhrases).sort()).toEqual(kinds(englishPhrases).sort());
  });

  it("has a text of its own for each, but for names and words that both languages have", () => {
    const own = new Map(entriesOf({ german, germanPhrases }));
    const alike = entriesOf({ german: english, germanPhrases: englishPhrases }).filter(
      ([path, text]) => typeof text === "string" && own.get(path) === text && !/^ (?:Pa|s)/.test(text),
    );
    expect(alike.filter(([, text]) => !same.includes(String(text)))).toEqual([]);
  });

  it("lends no function of the English one", () => {
    const functions = new Map(entriesOf({ english, englishPhrases }).map(([path, write]) => [write, path]));
    const lent = entriesOf({ german, germanPhrases }).filter(
      ([, write]) => typeof write === "function" && functions.has(write),
    );
    expect(lent.map(([path]) => path)).toEqual([]);
  });
});

/** Every text of a document, its keys (materials, and what a source is the source of) among them, as it stands in each form. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value, markdownText(value), htmlText(value)];
  return typeof value === "object" && value !== null ? Object.entries(value).flat().flatMap(textsIn) : [];
}

/** Titles of books and names of societies, which nobody translates. */
const titles: readonly string[] = [
  "Handbook of Industrial Mixing",
  "Perry's Chemical Engineers' Handbook",
  "OpenStax University Physics",
  "OpenStax Calculus",
  "Glycerine Producers' Association",
  sccsDailyExposure.edition,
];

/** The words of a sheet that are not the caller's own: letters in a row, without units. */
function wordsOf(sheet: string, job: unknown): ReadonlySet<string> {
  const own = [...new Set([...textsIn(job), ...textsIn(titles)])]
    .filter((text) => /\p{L}/u.test(text))
    .sort((one, other) => other.length - one.length);
  // A fingerprint has letters, too, and no words.
  let rest = sheet.replace(/(?:[0-9a-f]{4} ){3}[0-9a-f]{4}|[0-9a-f]{64}/g, " # ");
  for (const text of own) {
    const escaped = text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
    rest = rest.replace(new RegExp(`(?<!\\p{L})${escaped}(?!\\p{L})`, "gu"), " # ");
  }
  return new Set(rest.match(/\p{L}{2,}/gu) ?? []);
}

/** Words that German spells as English does, names of people, and units. */
const shared: readonly string[] = [
  ..."Charge Phase in In am an so was warm still all Gel Film Material Index Polymer".split(" "),
  ..."min kg mg mm mL µm sⁿ mbar rpm kW Pa EUR gelwright ISO HLB EU AICc Re".split(" "),
  ..."Metzner Otto Penney Coker Furukawa Bergman Churchill Chu Lloyd Moran Grenville Nienow Elson Nagata".split(" "),
  ..."Ludwig Eldridge Ferry Krieger Dougherty Burnham Anderson Cheng Ganser Happel Brenner Richardson Zaki".split(" "),
  ..."Beris Stokes Hadamard Rybczyński Jeffreys Fox Rabinowitsch Steffe Ohnesorge Fatemi Hammond Cox".split(" "),
  ..."Princen Kiss Grace de Bruijn Jansen Lorentz Lorenz Zhang Sun Herschel Bulkley Bingham Casson Newton".split(" "),
  ..."Carreau Yasuda Boyle Raoult Schröder Mason Bertola Bohren Huffman Debye Bueche Tan Reynolds".split(" "),
];

describe("a sheet in German", () => {
  it.each(plansByName())("has no English word left: %s", (_name, { job, plan }) => {
    const [before, after] = [toMarkdown({ plan }), toMarkdown({ plan, ...inGerman })].map((text) => wordsOf(text, job));
    expect(before?.size).toBeGreaterThan(200);
    const left = [...(after ?? [])].filter((word) => before?.has(word));
    expect(left.filter((word) => !shared.includes(word))).toEqual([]);
  });

  it("has as many sections, rows and columns as the English one", () => {
    for (const [, { plan }] of plansByName()) {
      const [one, other] = [toMarkdown({ plan }), toMarkdown({ plan, ...inGerman })].map((text) =>
        text.split("\n").map((line) => line.replace(/(?<!\\)\|[^|]*/g, "|").replace(/^([#-]*).*?(\|*)$/, "$1$2")),
      );
      expect(other).toEqual(one);
    }
  });

  test("a word that is left in English is found", () => {
    const plan = runPlan(exampleJob());
    const words = { ...german, labels: { ...german.labels, weighTitle: english.labels.reconciliationTitle } };
    const [before, after] = [toMarkdown({ plan }), toMarkdown({ plan, ...inGerman, words })].map((text) =>
      wordsOf(text, exampleJob()),
    );
    const left = [...(after ?? [])].filter((word) => before?.has(word) && !shared.includes(word));
    expect(left).toEqual(["Yield", "and", "reconciliation"]);
  });

  test("has its decimals behind a comma and its temperatures in degrees Fahrenheit", () => {
    for (const job of [exampleJob(), coldJob()]) {
      const own = textsIn(job)
        .filter((text) => /\p{L}/u.test(text) && /\d\.\d|°C| K/.test(text))
        .sort((one, other) => other.length - one.length);
      const sheet = own.reduce(
        (text, one) => text.replaceAll(one, " # "),
        toMarkdown({ plan: runPlan(job), ...inGerman }),
      );
      const fixed = [german.laws, german.assumptions, german.practices].flatMap((table) => Object.values(table));
      const rest = fixed.reduce((text, one) => text.replaceAll(markdownText(one), " # "), sheet);
      expect(rest).toMatch(/\d,\d/);
      expect(rest).toMatch(/\d °F/);
      expect(rest).not.toMatch(/°C|\d K\b/);
      expect(rest.replace("gelwright 0.1.0", "").match(/.{30}\d\.\d.{9}/g)).toBeNull();
    }
  });
});

describe("the other forms in German", () => {
  test.each([
    ["hot", exampleJob(), exampleJob("beaker")],
    ["cold", coldJob(), coldJob("beaker")],
  ])("have no English word left either: %s", (_name, job, beaker) => {
    const prepared = prepareJob(job);
    const plan = runPlan(job);
    const series = planSeries({ prepared });
    const plans = [runPlan(beaker), plan];
    const found = sweep({
      prepared,
      rows: [
        { label: "#", changes: [] },
        { label: "##", changes: [{ change: "room", value: 30 }] },
      ],
    });
    const parts = { label: labelFor({ prepared }), exposure: exposureFor({ prepared }) };
    const forms = (wording: Wording): readonly string[] => [
      toHtml({ plan, series, ...parts, ...wording })
        .replace(/<style>.*?<\/style>/s, "")
        .replace(/<[^>]+>/g, " "),
      ...(plan.packs?.limits ? [fillCheckToMarkdown({ plan, ...wording })] : []),
      ...(plan.stability ? [stabilityToMarkdown({ plan, ...wording })] : []),
      labelToMarkdown({ label: parts.label, ...wording }),
      exposureToMarkdown({ exposure: parts.exposure, ...wording }),
      scalesToMarkdown({ plans, ...wording }),
      sweepToMarkdown({ sweep: found, ...wording }),
      ...(["weighing", "timeline", "additions"] as const).map((table) => toCsv({ plan, table, ...wording })),
      // Its rows are codes, for programs.
      toCsv({ plan, table: "answers", ...wording }).split("\n", 1)[0] ?? "",
    ];
    const english = forms({});
    for (const [i, text] of forms(inGerman).entries()) {
      const before = wordsOf(english[i] ?? "", [job, beaker]);
      const left = [...wordsOf(text, [job, beaker])].filter((word) => before.has(word) && !shared.includes(word));
      expect(left, `form ${i}`).toEqual([]);
    }
  });
});
