import type { Change } from "gelwright/plan";
import { runPlan } from "gelwright/plan";
import { english, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { visible } from "../../src/sheet/escape.js";
import { htmlOf } from "../../src/sheet/to-html.js";
import { markdownOf } from "../../src/sheet/to-markdown.js";
import { howRead } from "../../src/sheet/words/how-read.js";
import { sayWith } from "../../src/sheet/words/say.js";
import { exampleJob } from "../support/example.js";

const say = sayWith({});
const { batch, label, scales, gel, sweep } = english.lines;

test.each([
  [1, ["1 sample for", "1 pack for", "1 pack kept"]],
  [3, ["3 samples for", "3 packs for", "3 packs kept"]],
])("%i of a thing has the noun that goes with it", (count, starts) => {
  const told = [
    batch.ofStabilityTest({ count }, say),
    batch.ofFillChecks({ count }, say),
    batch.ofPacks({ count }, say),
  ];
  expect(told.map((text, i) => text.startsWith(starts[i] as string))).toEqual([true, true, true]);
  const lots = count === 1 ? "in 1 lot." : "in 3 equal lots.";
  expect(batch.stockMakes({ mass: 20, lots: count }, say)).toContain(lots);
  expect(batch.stockMakesInPacks({ mass: 20, packs: 400, lots: count }, say)).toContain(lots);
});

test("what one or several materials are made of is asked for in the number that they have", () => {
  expect(label.natureNotStated({ names: ["glitter"] }, say)).toBe("What glitter is made of is not stated.");
  expect(label.natureNotStated({ names: ["glitter", "scrub"] }, say)).toBe(
    "What glitter and scrub are made of is not stated.",
  );
});

test("samples of no parts have their name and mass alone", () => {
  expect(batch.samplesToTake({ name: "retained", parts: [], mass: 0.05 }, say)).toBe("retained: 50 g in all");
  expect(batch.samplesToTake({ name: "retained", parts: ["2 packs"], mass: 0.05 }, say)).toBe(
    "retained: 2 packs; 50 g in all",
  );
});

test("a window that is upside down is no window", () => {
  expect(scales.window({ temperatureMax: 60, temperatureMin: 62 }, say)).toBe("at no temperature");
  expect(scales.window({ temperatureMax: 62, temperatureMin: 60 }, say)).toBe("62 °C down to 60 °C");
});

test("what is from memory was not read", () => {
  expect(howRead("from memory")).toBe("from memory");
  expect(howRead("first-hand")).toBe("read first-hand");
});

test("a change of a count is a number without a unit", () => {
  const lots: Change = { change: "lots", value: 3 };
  expect(sweep.change(lots, say)).toBe("3");
});

test("a model that was the only one is not called the best of several", () => {
  const one = { model: "Casson", parameters: ["yield stress 12 Pa"] };
  expect(gel.modelOfSeveral({ ...one, candidates: 3 }, say)).toContain("3");
  expect(gel.model(one)).not.toMatch(/\d models/);
  expect(gel.model(one)).toContain("Casson");
});

test("a film of which no water was found that turns it milky says how far it was followed", () => {
  const untilMilky = { min: 0.12, max: null };
  const told = english.notes["rinse-off"]({ code: "rinse-off", untilMilky } as never, say, english);
  expect(told).toContain("12 % to more than it was followed to");
});

test("a balance whose step is no decimal has as many digits as show the step", () => {
  expect(say.weighed(1, 1 / 3)).toBe("1.0 kg");
  expect(say.weighed(20.34, 0.02)).toBe("20.34 kg");
});

describe("words of the caller's own", () => {
  const plan = runPlan(exampleJob());

  test("that are left undefined leave the English ones", () => {
    expect(toMarkdown({ plan, words: { labels: { title: undefined } } as never })).toBe(toMarkdown({ plan }));
  });

  test("may name a practice that English has no words for, as text", () => {
    expect(toMarkdown({ plan, words: { practices: { "our-rule": "rule 7 of the house" } } })).toBe(
      toMarkdown({ plan }),
    );
    expect(() => toMarkdown({ plan, words: { practices: { "our-rule": () => "rule 7" } } as never })).toThrow(
      /practices\.our-rule.*expected text/,
    );
  });
});

describe("what a sheet is made of", () => {
  test("white space stays, and what would turn a line around is shown as unreadable", () => {
    expect(visible("a\tb\r\nc\u202ed\u0000")).toBe("a\tb\r\nc\ufffdd\ufffd");
  });

  test("a page without a title has none, and is a whole page", () => {
    const page = htmlOf([{ kind: "text", text: "nothing else" }], "en", "foot");
    expect(page).toContain("<title></title>");
    expect(page).toContain("<p>nothing else</p>");
  });

  test("a paragraph of nothing but its strong words, and an empty figure, have no marks around nothing", () => {
    const blocks = [
      { kind: "text", strong: "Total", text: "" },
      {
        kind: "table",
        table: {
          columns: ["figure"],
          rows: [[{ text: "", grade: "measured" }], [{ text: "7", grade: "measured" }]],
        },
      },
    ] as const;
    expect(markdownOf(blocks)).toBe("**Total**\n\n| figure |\n|---|\n|  |\n| **7** |\n\n");
  });
});
