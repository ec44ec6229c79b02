import { CalculationError } from "gelwright/error";
import { runPlan } from "gelwright/plan";
import { type Digits, english, type SomeWords, scalesToMarkdown, toCsv, toMarkdown, type Words } from "gelwright/sheet";
import { describe, expect, it, test } from "vitest";
import { markdownText } from "../../src/sheet/escape.js";
import { englishPhrases, type Phrases } from "../../src/sheet/words/phrases.js";
import { plansByName } from "../plan/jobs/plans.js";
import { coldJob, exampleJob } from "../support/example.js";

const [open, close] = ["⟦", "⟧"];

/** The same table with every text of it, and whatever a function of it gives, in brackets. */
function wrapped<T>(words: T): T {
  if (typeof words === "string") return `${open}${words}${close}` as T;
  if (typeof words === "function")
    return ((...given: readonly unknown[]) =>
      wrapped((words as (...all: readonly unknown[]) => unknown)(...given))) as T;
  return Object.fromEntries(Object.entries(words as object).map(([key, entry]) => [key, wrapped(entry)])) as T;
}

const words: Words = wrapped(english);
const phrases: Phrases = wrapped(englishPhrases);

/** What stands outside all brackets, in pieces. */
function outside(text: string): readonly string[] {
  let depth = 0;
  let out = "";
  for (const letter of text) {
    if (letter === close) depth -= 1;
    if (depth === 0) out += letter === close ? "\n" : letter;
    if (letter === open) depth += 1;
  }
  expect(depth).toBe(0);
  return out.replaceAll(open, "\n").split(/\n|(?<!\\)\|/);
}

/** Every text of a document, as it stands in Markdown. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [bare(markdownText(value))];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Without the marks of Markdown and of sentences at its ends. */
function bare(text: string): string {
  return text.replace(/^[\s#*_:;.,()–+-]+|[\s*_:;.,()–+-]+$/g, "");
}

/** One unit, as behind a band, or several numbers with theirs. */
const unit = "(?:%|°C|K|[mk]?g|kg/min|g/min|m?L|m³|mm|µm|m|s|min|h|1/m|m/s|1/s|rpm|W/m³|k?W|N·m|Pa·s|Pa|mbar)";
const number = "-?[\\d.:e+-]+";
const figures = new RegExp(`^(?:${unit}|(?:${number}(?: ${unit})?(?:[,;+ ]+|$))*)$`);

/** Pieces with letters that are neither the caller's own nor numbers with units. */
function unwrapped(text: string, own: unknown): readonly string[] {
  const callers = new Set(textsIn(own));
  return outside(text)
    .map(bare)
    .filter((piece) => /\p{L}/u.test(piece) && !callers.has(piece) && !figures.test(piece));
}

describe("a table of words of which every entry is in brackets", () => {
  it.each(plansByName())("leaves no word of %s without", (_name, { job, plan }) => {
    expect(unwrapped(toMarkdown({ plan, words, formats: { phrases } }), job)).toEqual([]);
  });

  it("leaves none in the table of scales", () => {
    for (const jobs of [
      [exampleJob("beaker"), exampleJob()],
      [coldJob("beaker"), coldJob()],
    ]) {
      const plans = jobs.map(runPlan);
      const text = scalesToMarkdown({ plans, words, formats: { phrases } });
      expect(unwrapped(text, jobs)).toEqual([]);
    }
  });

  it("finds a word that is left out of the table", () => {
    const plan = runPlan(exampleJob());
    const some = { ...words, labels: { ...words.labels, weighTitle: "Weigh" } };
    expect(unwrapped(toMarkdown({ plan, words: some, formats: { phrases } }), exampleJob())).toEqual(["Weigh"]);
  });
});

/** Decimals with a comma, as German writes them. */
const commas = (value: number, digits: Digits): string =>
  new Intl.NumberFormat(
    "de",
    "decimals" in digits
      ? { minimumFractionDigits: digits.decimals, maximumFractionDigits: digits.decimals }
      : { maximumSignificantDigits: digits.significant },
  ).format(value);

describe("another language in part", () => {
  const plan = runPlan(exampleJob());
  const german: SomeWords = {
    labels: { title: "Ansatzzettel", weighTitle: "Einwaage", phase: "Phase", material: "Rohstoff" },
    verdicts: { met: "erfüllt" },
    steps: { hold: () => "Halten" },
    lines: { batch: { total: ({ total }) => `Einwaage zusammen: ${total}` } },
    answers: { "gel-former-ratio": { question: "Stimmt das Verhältnis?" } },
  };
  const sheet = toMarkdown({ plan, words: german, formats: { format: commas, units: { temperature: "°F" } } });

  test("replaces its entries, at every depth, and leaves the others in English", () => {
    expect(sheet).toContain("# Ansatzzettel: Shimmering cuticle gel");
    expect(sheet).toContain("## Einwaage\n\n| Phase | Rohstoff | Weigh |");
    expect(sheet).toContain("| Stimmt das Verhältnis? | erfüllt | 9,957 |");
    expect(sheet).toContain(
      "| 3 | Halten, stirrer off (the process plans no stirring here). If it is not clear by then,",
    );
    expect(sheet).toContain("**Einwaage zusammen: 34,716");
    expect(sheet).toContain("## Cautions");
  });

  test("is written with the numbers and units that are asked for", () => {
    expect(sheet).toContain("| 22,78 kg | floor scale | 22,67 to 22,89 kg |");
    expect(sheet).toContain("| _185 °F_ |");
    expect(sheet.split("\n").filter((line) => /°C_? \|/.test(line))).toEqual([]);
  });

  test("puts its reasons into the sentences that stay in English", () => {
    const reasons: SomeWords["reasons"] = { "not-read": () => "nicht gemessen" };
    expect(toMarkdown({ plan, words: { reasons } })).toMatch(/has enough power .*is not known: nicht gemessen\./);
  });

  test("serves CSV and the table of scales too", () => {
    expect(toCsv({ plan, table: "weighing", words: german }).split(",")[1]).toBe("Rohstoff");
    const scales = scalesToMarkdown({ plans: [plan], words: { lines: { scales: { heads: { mass: "Ansatz" } } } } });
    expect(scales).toContain("| Ansatz | 34.72 kg |");
  });

  test("is refused if an entry is of another kind", () => {
    const wrong: readonly unknown[] = [
      { labels: { title: 1 } },
      { labels: "Titel" },
      { steps: { hold: "Halten" } },
      { labels: { title: () => "Titel" } },
      null,
    ];
    for (const one of wrong) expect(() => toMarkdown({ plan, words: one as SomeWords })).toThrow(CalculationError);
  });
});
