import { CalculationError } from "gelwright/error";
import {
  type Answer,
  assumptionCodes,
  type Change,
  cautionCodes,
  fieldCodes,
  lawCodes,
  leverCodes,
  noteCodes,
  type Plan,
  questionIds,
  type Reason,
  reasonCodes,
  sourceCodes,
  useCodes,
} from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { english } from "../../src/sheet/words/english.js";
import type { Digits } from "../../src/sheet/words/number.js";
import { sayWith } from "../../src/sheet/words/say.js";
import type { AnswerWords } from "../../src/sheet/words/types.js";
import { plansByName } from "../plan/jobs/plans.js";

/** Decimals with a comma, as German writes them. */
const commas = (value: number, digits: Digits): string =>
  new Intl.NumberFormat(
    "de",
    "decimals" in digits
      ? { minimumFractionDigits: digits.decimals, maximumFractionDigits: digits.decimals }
      : { maximumSignificantDigits: digits.significant },
  ).format(value);

/** Codes that are English words as well. */
const plainEnglish: readonly string[] = ["scale-up"];

/** Every code with a hyphen: a word of two parts that no sentence should hold. */
const codes = [
  ...[reasonCodes, fieldCodes, lawCodes, assumptionCodes, noteCodes, useCodes, leverCodes, cautionCodes],
  ...[sourceCodes, questionIds],
]
  .flat()
  .filter((code) => code.includes("-") && !plainEnglish.includes(code));

const bare = new RegExp(`(?<![\\w-])(${codes.join("|")})(?![\\w-])`, "u");

/** What is wrong with a sentence, if anything. */
function faultsOf(text: string): readonly string[] {
  return [
    ...(text.trim() === "" ? ["empty"] : []),
    ...(/undefined|NaN|null|Infinity|\[object/u.test(text) ? ["no words"] : []),
    ...(/\bsafe(ly|ty)?\b(?! data sheet)/iu.test(text) ? ["safe"] : []),
    ...(bare.test(text) ? [`code ${bare.exec(text)?.[1]}`] : []),
    ...(/ {2}|\.\.| [,.;:]|\(\)|\( /u.test(text) ? ["punctuation"] : []),
  ].map((fault) => `${fault}: ${text}`);
}

/** All that the table says of an answer. */
function textsOf(answer: Answer, say: ReturnType<typeof sayWith>): readonly string[] {
  const words: AnswerWords = english.answers[answer.id];
  const sentence = answer.verdict === "not-met" ? words["not-met"][answer.side] : words[answer.verdict];
  return [words.question, ...[sentence, words.value, words.limit].map((write) => write(answer, say, english))];
}

function reasonText(reason: Reason, say: ReturnType<typeof sayWith>): string {
  return english.reasons[reason.code](reason, say, english);
}

const plans: Readonly<Record<string, Plan>> = Object.fromEntries(plansByName().map(([name, { plan }]) => [name, plan]));

describe("words of the plans of all jobs", () => {
  it.each(Object.keys(plans))("answers of %s", (name) => {
    const plan = plans[name] as Plan;
    const say = sayWith({ plan });
    expect(plan.answers.length).toBeGreaterThan(0);
    expect(plan.answers.flatMap((answer) => textsOf(answer, say)).flatMap(faultsOf)).toEqual([]);
  });

  it.each(Object.keys(plans))("steps, cautions, sources, reasons and bases of %s", (name) => {
    const plan = plans[name] as Plan;
    const say = sayWith({ plan });
    const texts = [
      ...plan.timeline.map((step) => english.steps[step.step.do](step, say)),
      ...plan.timeline.flatMap(({ notKnown }) => (notKnown ? [reasonText(notKnown, say)] : [])),
      ...plan.cautions.map((caution) => english.cautions[caution.code](caution, say)),
      ...plan.sources.map((source) => english.sources[source.key](source, say)),
      ...plan.notes.map((note) => english.notes[note.code](note, say, english)),
      ...plan.answers.flatMap(({ notKnown }) => notKnown).map((reason) => reasonText(reason, say)),
      ...plan.answers
        .flatMap(({ figure, limit }) => [figure, limit.min, limit.max])
        .flatMap((figure) => figure?.basis ?? [])
        .map((basis) => (english.bases[basis.kind] as (...all: readonly unknown[]) => string)(basis, say, english)),
    ];
    expect(texts.flatMap(faultsOf)).toEqual([]);
  });
});

const figures: readonly Answer["figure"][] = [
  { min: 0.5, max: 0.5, value: 0.5 },
  { min: 0.2, max: 0.7, value: 0.5 },
  { min: 0.2, max: 0.7 },
  { min: null, max: 0.7 },
  { min: 0.2, max: null },
  { min: null, max: null },
];

const limits: readonly Answer["limit"][] = figures.flatMap((figure) => [
  { min: figure },
  { max: figure },
  { min: figure, max: figure },
]);

const reasons: readonly Reason[] = [
  ...reasonCodes.map((code): Reason => ({ code })),
  ...reasonCodes.flatMap((code) =>
    fieldCodes.map((field): Reason => ({ code, field, of: "oil", step: 2, at: "bench", direction: "cooling" })),
  ),
  ...reasonCodes.flatMap((code) =>
    lawCodes.map(
      (law): Reason => ({
        code,
        law,
        quantity: "temperature-end",
        value: 92,
        min: 0,
        max: null,
        dose: 0.1,
        phases: ["A", "B"],
      }),
    ),
  ),
];

function answersOf(id: Answer["id"]): readonly Answer[] {
  const verdicts = (["met", "not-met", "not-known"] as const).flatMap((verdict) =>
    (["below", "above", "none"] as const).map((side) => ({ verdict, side })),
  );
  const base = { id, at: {}, states: { met: 0, notMet: 1, notKnown: 1 }, notKnown: [] } as const;
  return verdicts.flatMap(({ verdict, side }) =>
    figures.flatMap((figure) =>
      limits.flatMap((limit): readonly Answer[] => [
        { ...base, verdict, side, figure, limit, of: {}, quantity: "temperature" },
        {
          ...base,
          verdict,
          side,
          figure,
          limit,
          of: { material: "oil", phase: "B", step: 3, place: "heated-wall" },
          at: { step: 3, addition: 2, place: "vessel" },
          margin: { min: 2, max: 30 },
          quantity: "length",
          notKnown: reasons.slice(0, 5),
        },
      ]),
    ),
  );
}

describe("words of every code", () => {
  const say = sayWith();

  it.each(questionIds)("%s, for every verdict and side", (id) => {
    expect(
      answersOf(id)
        .flatMap((answer) => textsOf(answer, say))
        .flatMap(faultsOf),
    ).toEqual([]);
  });

  it("gives each verdict and side of a question words of its own", () => {
    for (const id of questionIds) {
      const { met, "not-known": notKnown, "not-met": sides } = english.answers[id];
      const answer: Answer = {
        id,
        of: {},
        verdict: "met",
        side: "none",
        quantity: "temperature",
        figure: { min: 40, max: 50 },
        limit: { min: { min: 45, max: 45 } },
        at: {},
        states: { met: 1, notMet: 0, notKnown: 0 },
        notKnown: [],
      };
      const all = [met, notKnown, sides.below, sides.above].map((sentence) => sentence(answer, say, english));
      expect(new Set(all.slice(0, 2)).size).toBe(2);
      // One of the sides may be open, but never both: some sentence says what is wrong.
      expect(new Set(all).size).toBeGreaterThan(2);
    }
  });

  it("reasons, with and without what they name", () => {
    expect(reasons.map((reason) => reasonText(reason, say)).flatMap(faultsOf)).toEqual([]);
  });

  it.each([
    ["fields", fieldCodes, english.fields],
    ["laws", lawCodes, english.laws],
    ["assumptions", assumptionCodes, english.assumptions],
    ["uses", useCodes, english.uses],
  ] as const)("%s", (_name, list, table) => {
    const words: Readonly<Record<string, string>> = table;
    expect(Object.keys(words).sort()).toEqual([...list].sort());
    expect(list.flatMap((code) => faultsOf(words[code] ?? ""))).toEqual([]);
  });

  it("cautions, notes, sources and levers", () => {
    const changes: readonly Change[] = [
      { change: "step", step: 2, field: "to", value: 60 },
      { change: "dose", material: "former", value: 0.1 },
    ];
    const texts = [
      ...cautionCodes.flatMap((code) => [
        english.cautions[code]({ code, text: "Keep away from eyes." }, say),
        english.cautions[code](
          { code, materials: ["a", "b"], text: "Keep off.", temperatureMax: 85, temperatureLeftOn: 140 },
          say,
        ),
      ]),
      ...noteCodes.flatMap((code) => [
        english.notes[code]({ code }, say, english),
        english.notes[code]({ code, yieldStress: 10, ohnesorge: 3 }, say, english),
      ]),
      ...sourceCodes.flatMap((key) => [
        english.sources[key]({ key }, say),
        english.sources[key]({ key, of: "kettle", property: "density" }, say),
      ]),
      ...leverCodes.flatMap((code) => changes.map((change) => english.levers[code](change, say))),
    ];
    expect(texts.flatMap(faultsOf)).toEqual([]);
  });

  it("keeps the cautions in full", () => {
    const hot = english.cautions["hot-oil"]({ code: "hot-oil", temperatureMax: 85, temperatureLeftOn: 140 }, say);
    for (const part of ["85 °C", "140 °C", "flash point", "unattended", "water away", "protection"])
      expect(hot).toContain(part);
    expect(english.cautions["arithmetic-only"]({ code: "arithmetic-only" }, say)).toContain("Local codes");
  });
});

describe("numbers", () => {
  it("are written in the units of the sheet", () => {
    const say = sayWith({ plan: { names: { materials: { oil: "Olive oil" } } } });
    expect(say.celsius(82)).toBe("82 °C");
    expect(say.celsius(57.04)).toBe("57 °C");
    expect(say.celsius(57.06)).toBe("57.1 °C");
    expect(say.kelvins(2)).toBe("2 K");
    expect(say.kilograms(0.25)).toBe("250 g");
    expect(say.kilograms(28.358_035)).toBe("28.36 kg");
    expect(say.weighed(2.5, 0.001)).toBe("2.500 kg");
    expect(say.weighed(0.25, 0.000_5)).toBe("250.0 g");
    expect(say.percent(0.058)).toBe("5.8 %");
    expect(say.litres(0.0307)).toBe("30.7 L");
    expect(say.millimetres(0.34)).toBe("340 mm");
    expect(say.micrometres(0.000_012)).toBe("12 µm");
    expect(say.rpm(2)).toBe("120 rpm");
    expect(say.watts(2500)).toBe("2.5 kW");
    expect(say.millibars(5000)).toBe("50 mbar");
    expect(say.massRate(0.001)).toBe("60 g/min");
    expect(say.litres(0.000_225)).toBe("225 mL");
    expect(say.money(311.187)).toBe("311.19");
    expect(say.duration(20)).toBe("20 s");
    expect(say.duration(90)).toBe("1.5 min");
    expect(say.duration(19_680)).toBe("5 h 28 min");
    expect(say.duration(3600)).toBe("60 min");
    expect(say.duration(43_200)).toBe("12 h");
    expect(say.duration(345_600)).toBe("4 days");
    expect(say.clock(5400)).toBe("1:30");
    expect(say.range("20.24 kg", "20.44 kg")).toBe("20.24 to 20.44 kg");
    expect(say.range("980 g", "1.1 kg")).toBe("980 g to 1.1 kg");
    expect(say.range("5 g", "5 g")).toBe("5 g");
    expect(say.estimate({ value: 14, min: 7, max: 28 }, "torque")).toBe("14 (7 to 28) N·m");
    expect(say.estimate({ value: 0.9, min: 0.8, max: 1.1 }, "mass")).toBe("900 g (800 g to 1.1 kg)");
    expect(say.material("oil")).toBe("Olive oil");
    expect(say.material("wax")).toBe("wax");
    expect(say.place({ step: 3, addition: 2, place: "heated-wall" })).toBe("step 3, addition 2, at the heated wall");
    expect(say.list(["a", "b", "c"])).toBe("a, b and c");
  });

  it("count times from the start, or on the clock of a stated one", () => {
    const say = sayWith({ start: "22:45" });
    expect(say.clock(0)).toBe("22:45");
    expect(say.clock(4500)).toBe("0:00 on day 2");
    expect(say.clock(2 * 86_400)).toBe("22:45 on day 3");
    expect(say.isClockTime).toBe(true);
    expect(sayWith({ start: "7:05" }).clock(60)).toBe("7:06");
    expect(sayWith().isClockTime).toBe(false);
    for (const start of ["24:00", "7", "07:60", "7.30 h"]) expect(() => sayWith({ start })).toThrow(CalculationError);
  });

  it("say how far a figure is known", () => {
    const say = sayWith();
    expect(say.interval({ min: 40, max: 40 }, "temperature")).toBe("40 °C");
    expect(say.interval({ min: 40, max: 50, value: 45 }, "temperature")).toBe("45 °C (40 to 50 °C)");
    expect(say.interval({ min: 40, max: 50 }, "temperature")).toBe("40 to 50 °C");
    expect(say.interval({ min: 40, max: null }, "temperature")).toBe("at least 40 °C");
    expect(say.interval({ min: null, max: null }, "temperature")).toBe("not known");
    expect(say.limit({ min: { min: 40, max: null } }, "temperature")).toBe("at least 40 °C, possibly more");
    expect(say.limit({ min: { min: 8, max: 8 }, max: { min: 12, max: 12 } }, "ratio")).toBe(
      "at least 8 and at most 12",
    );
    expect(say.celsius(null)).toBe("not known");
    expect(say.celsius(Number.NaN)).toBe("not known");
  });

  it("take other units and another decimal sign", () => {
    const say = sayWith({
      units: { temperature: "°F", temperatureDifference: "Δ°F", mass: "lb", volume: "US fl oz" },
      format: commas,
    });
    expect(say.celsius(82)).toBe("179,6 °F");
    expect(say.kelvins(5)).toBe("9 °F");
    expect(say.kilograms(0.453_592_37)).toBe("1 lb");
    expect(say.litres(0.001)).toBe("33,8 US fl oz");
    expect(say.quantity(0.082, "mass-fraction")).toBe("8,2 %");
  });
});
