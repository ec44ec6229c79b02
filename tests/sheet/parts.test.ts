import { type Plan, runPlan } from "gelwright/plan";
import { changesToMarkdown, scalesToMarkdown, stabilityToMarkdown, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";

const hot = runPlan(exampleJob());
const cold = runPlan(coldJob());
const notKnown = { code: "not-stated", field: "material-density", of: "almond" } as const;

/** A section of the sheet of a plan with some of its parts replaced. */
function section(title: string, plan: Plan, change: object = {}): string {
  const sheet = toMarkdown({ plan: { ...plan, ...change } as Plan });
  return (sheet.split(`## ${title}\n`)[1] ?? "").split("\n## ")[0] ?? "";
}

describe("stock", () => {
  const materials = [{ material: "almond", needed: 8.329, inStock: 20, toBuy: 0 }];
  const stock = (largest: object) => section("Stock", hot, { stock: { materials, largest } });

  test("says how much it makes, in lots or packs, and what runs out or that the vessel is the limit", () => {
    expect(stock({ mass: 80, lots: 2, limitedBy: ["almond"] })).toContain(
      "The stock makes at most 80 kg in 2 equal lots. What runs out first: sweet almond oil.",
    );
    expect(stock({ mass: 40, lots: 1, limitedBy: [] })).toContain(
      "The stock makes at most 40 kg in 1 lot. What is left is too little for another lot",
    );
    expect(stock({ mass: 40, packs: 1411, lots: 1, limitedBy: [] })).toContain(
      "The stock makes at most 1411 packs (40 kg) in 1 lot.",
    );
  });

  test("says why the largest batch is not known", () => {
    expect(stock({ notKnown })).toMatch(/Not known: .*sweet almond oil/);
  });
});

describe("what a step is limited to", () => {
  const limits = (temperatures: object) =>
    section("Do", hot, { stepLimits: [{ step: 8, ...temperatures }] })
      .split("\n")
      .find((line) => line.startsWith("| 8 |"));

  test("is between two temperatures, or from one on", () => {
    expect(limits({ temperatureMin: 57.02, temperatureMax: 62.84 })).toContain("only between 57.1 °C and 62.8 °C");
    expect(limits({ temperatureMin: 57.02 })).toContain("only at 57.1 °C or warmer");
    expect(limits({ temperatureMax: 62.84 })).toContain("only at 62.8 °C or cooler");
  });

  test("is left out where rounding inwards leaves nothing between them", () => {
    expect(limits({ temperatureMin: 57.02, temperatureMax: 57.08 })).not.toContain("only");
  });
});

describe("times", () => {
  test("on the clock are said to be of the clock", () => {
    const [counted, told] = [toMarkdown({ plan: hot }), toMarkdown({ plan: hot, formats: { start: "07:30" } })];
    expect(counted).toContain("Times are hours and minutes from the start of step 1");
    expect(told).not.toContain("Times are hours and minutes from the start of step 1");
    expect(told).toContain("Times are times of day");
    expect(told).toMatch(/\b0?7:30/);
  });

  test("until it sets are said with or without what is to spare", () => {
    const { durationMargin: _, ...scale } = { ...hot.scale, durationToSet: 3600 };
    const spared = section("Do", hot, { scale: { ...scale, durationMargin: 600 } });
    const bare = section("Do", hot, { scale });
    expect(bare).toContain("60 min");
    expect(spared).toContain("10 min");
    expect(bare).not.toContain("10 min");
  });
});

describe("filling", () => {
  const [step] = hot.timeline.filter((one) => one.step.do === "fill");
  const filledWith = (change: object, more: object = {}) =>
    section("Fill", hot, {
      ...more,
      timeline: hot.timeline.map((one) => (one === step ? { ...one, ...change } : one)),
    });

  test("in two pours has the mass of each", () => {
    const topUp = { massFirst: 0.0261, massTopUp: 0.0022, temperature: 45 };
    expect(filledWith({}, { packs: { ...hot.packs, topUp } })).toMatch(/26\.1 g.*2\.2 g/);
  });

  test("of a vessel that warms meanwhile counts its temperatures without the words for cooling", () => {
    const [cools, warms] = [
      filledWith({ temperatureStart: 60, temperatureEnd: 58 }),
      filledWith({ temperatureStart: 58, temperatureEnd: 60 }),
    ];
    expect(cools).not.toBe(warms);
    expect(warms).toMatch(/58 °C.*60 °C/);
  });

  test("of a mass without packs names no packs that would be full in time", () => {
    const { packs: _, ...lots } = hot.lots;
    const { packs: _packs, ...plan } = hot;
    const text = section("Fill", { ...plan, lots } as Plan);
    expect(text).toContain("predicted to cool below");
    expect(text).not.toMatch(/packs are full by then/);
  });
});

describe("the stability plan", () => {
  const stability = hot.stability as NonNullable<Plan["stability"]>;
  const written = (change: object) => stabilityToMarkdown({ plan: { ...hot, stability: { ...stability, ...change } } });

  test("says why the mass of its samples is not known", () => {
    const { mass: _, ...unweighed } = stability;
    const text = stabilityToMarkdown({ plan: { ...hot, stability: { ...unweighed, notKnown } } });
    expect(text).toMatch(/not known.*sweet almond oil/);
    expect(stabilityToMarkdown({ plan: { ...hot, stability: unweighed } })).not.toContain("undefined");
  });

  test("says why it is not known what a storage stands for", () => {
    const storages = stability.storages.map((one) => ({ ...one, equivalent: { notKnown } }));
    expect(written({ storages })).toMatch(/not known.*sweet almond oil/);
  });

  test("dates no pull that has no date", () => {
    const pulls = stability.pulls.map(({ date: _, ...pull }) => pull);
    expect(written({})).toContain("2027");
    expect(written({ pulls })).not.toContain("2027");
  });
});

describe("the gel in use", () => {
  const emulsion = cold.emulsion as NonNullable<Plan["emulsion"]>;
  const inUse = (change: object, more: object = {}) =>
    section("The gel in use", cold, {
      emulsion: { ...emulsion, clarity: { ...emulsion.clarity, ...change } },
      ...more,
    });

  test("has the haze over its path, and no line for a haze or a correction that is not known", () => {
    const at = [{ temperature: 21, mismatch: 0.0004, haze: { min: 0.01, max: 0.2 } }];
    expect(inUse({ at, path: 0.02 })).toContain("1 % to 20 % of the light is scattered over 20 mm of gel");
    expect(inUse({ at })).not.toContain("scattered");
    expect(inUse({})).toContain("The indices match at room temperature");
    expect(inUse({ correction: { notKnown } })).not.toContain("The indices match at room temperature");
  });

  test("has what the oils ask for, or why that is not known, and the induction times that are", () => {
    const hlb = { required: 7.5, surfactants: { notKnown } };
    const times = { arrhenius: { duration: 86_400 * 400 }, logLinear: { duration: 86_400 * 200 } };
    const inductionTimes = [
      { material: "almond", temperature: 25, notKnown },
      { material: "sunflower", temperature: 25, ...times },
    ];
    const text = inUse({}, { oilLimits: { hlb, inductionTimes } });
    expect(text).toMatch(/the oil asks for 7\.5, the surfactants have not known \(.+\)\. Indicative only/);
    expect(text).toContain("sunflower oil: by its induction times it would last 200 days to 400 days");
    expect(text.match(/by its induction times/g)).toHaveLength(1);
  });
});

describe("the order of lots", () => {
  const lots = { ...hot.lots, count: 3 };

  test("that is not known is said to be, with the reason", () => {
    expect(toMarkdown({ plan: { ...hot, lots, lotOrder: { notKnown } } })).toMatch(
      /## Order of (?:the )?lots\n\nNot known: .*sweet almond oil/,
    );
  });
});

describe("plans beside one another", () => {
  const rowOf = (text: string, head: string) => text.split("\n").find((line) => line.startsWith(`| ${head} |`));

  test("say what one of them does not know, and that a stream has no additions", () => {
    const { costPerKilogram: _, surfaceToVolume: _surface, ...scale } = { ...cold.scale, costPerKilogram: 3 };
    const priced = { ...cold, scale: { ...cold.scale, costPerKilogram: 3 } } as unknown as Plan;
    const text = scalesToMarkdown({ plans: [priced, { ...cold, scale: { ...scale, additions: 0 } } as Plan] });
    expect(rowOf(text, "additions of oil")).toBe(`| additions of oil | ${cold.scale.additions} | none, a stream |`);
    expect(rowOf(text, "first addition")).toMatch(/\| [\d.]+ g \| {2}\|$/);
    expect(rowOf(text, "surface to volume")).toMatch(/1\/m \| not known \|$/);
  });

  test("say of a field that one of the documents does not have that it is not stated", () => {
    const [one, other] = [exampleJob(), changed(exampleJob(), ({ process }) => delete process.steps[9].for)];
    const text = scalesToMarkdown({ plans: [runPlan(one), runPlan(other)], documents: [one, other] });
    expect(text).toMatch(/\| stated: process\.steps\\\[9\\\]\.for \|[^|]+\| not stated \|/);
  });

  test("have a dash for a step that one of them does not have", () => {
    const shorter = { ...hot, timeline: hot.timeline.slice(0, -1) };
    const last = `step ${hot.timeline.length}`;
    const [row = ""] = changesToMarkdown({ before: hot, after: shorter })
      .split("\n")
      .filter((line) => line.startsWith(`| ${last} |`));
    expect(row.endsWith(" | – |")).toBe(true);
  });
});

test("a film that is predicted thicker asks for nothing where no film on the wall is allowed for", () => {
  const allowed = { thickness: 1e-4, predicted: 3e-4, isStated: true };
  const films = { ...hot.films, allowed };
  const wall = [{ name: "film", part: "wall", mass: 0.1 }];
  expect(toMarkdown({ plan: { ...hot, films, allowances: wall } as unknown as Plan })).toContain("200 g");
  expect(toMarkdown({ plan: { ...hot, films, allowances: [] } as unknown as Plan })).not.toContain("200 g");
});

describe("additions", () => {
  const emulsion = cold.emulsion as NonNullable<Plan["emulsion"]>;
  const [schedule] = emulsion.schedules as readonly Extract<(typeof emulsion.schedules)[number], { rows: unknown }>[];
  const withRows = (rows: readonly object[]) =>
    toMarkdown({ plan: { ...cold, emulsion: { ...emulsion, schedules: [{ ...schedule, rows }] } } as unknown as Plan });
  const heads = (text: string) => text.split("\n").find((line) => line.includes("Oil to add")) ?? "";
  const rows = schedule?.rows ?? [];

  test("have a column for the speed where it changes on the way, and for the torque where it is known", () => {
    expect(heads(withRows(rows.map((row) => ({ ...row, speed: 1.5 }))))).toMatch(/rpm|[Tt]urns|[Ss]peed/);
    const { length } = heads(withRows(rows)).split("|");
    const bare = withRows(rows.map(({ torque: _, ...row }) => row));
    expect(heads(bare).split("|")).toHaveLength(length - 1);
    const single = withRows(rows.map(({ torqueMin: _min, torqueMax: _max, ...row }) => row));
    expect(single).toMatch(/_7\.1 N·m_/);
  });

  test("of which there are none have no table", () => {
    expect(heads(withRows([]))).toBe("");
  });
});

describe("premixes", () => {
  const line = hot.weighing.lines.find(({ material }) => material === "almond") as Plan["weighing"]["lines"][number];
  const made = (premixes: readonly object[]) =>
    toMarkdown({ plan: { ...hot, weighing: { ...hot.weighing, premixes } } as unknown as Plan });
  const inner = {
    premix: "inner",
    name: "inner mix",
    phase: line.phase,
    lines: [{ material: "almond", mass: 1 }],
    premixes: [],
    total: 1,
  };
  const outer = { ...inner, premix: "outer", name: "outer mix", premixes: [{ premix: "inner", mass: 1 }], total: 2 };

  test("that go whole into another are charged with it, not by themselves", () => {
    const text = made([inner, outer]);
    expect(text).toContain("2.000 kg premix outer mix");
    expect(text).not.toContain("1.000 kg premix inner mix");
    expect(text).toContain("Make the premix outer mix");
    expect(text).toContain("1.000 kg inner mix");
  });

  test("of which the balance is not known are in plain kilograms", () => {
    const unknown = { ...inner, lines: [{ material: "shea", mass: 1.23456 }], total: 1.23456 };
    expect(made([unknown])).toMatch(/1\.23\d* kg shea/);
  });
});
