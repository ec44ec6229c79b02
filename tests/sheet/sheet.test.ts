import { readFileSync } from "node:fs";
import { CalculationError } from "gelwright/error";
import { type Answer, measureNext, type Plan, runPlan } from "gelwright/plan";
import { english, toCsv, toJson, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { jobsByName } from "../plan/jobs/jobs.js";
import { plansByName } from "../plan/jobs/plans.js";
import { answerOf } from "../support/answers.js";
import { changed, coldJob, exampleJob } from "../support/example.js";

const plan = runPlan(exampleJob());

describe("Markdown", () => {
  const sheet = toMarkdown({ plan });

  test("says the cautions before anything is weighed", () => {
    expect(sheet.indexOf("## Cautions")).toBeGreaterThan(0);
    expect(sheet.indexOf("## Cautions")).toBeLessThan(sheet.indexOf("## Weigh"));
    expect(sheet).toContain("never leave heat unattended");
  });

  test("shows each mass as its balance shows it, and the total on the finest", () => {
    expect(sheet).toMatch(/\| 22\.78 kg \| floor scale \| 22\.67 to 22\.89 kg \|/);
    expect(sheet).toMatch(/\| 107\.33 g \| fine balance \|/);
    expect(sheet).toMatch(/\*\*Total to weigh: 34\.716\d\d kg\*\*/);
  });

  test("gives the ends of a weighing in the unit of its mass, and says where the paste goes in", () => {
    const starter: unknown = JSON.parse(
      readFileSync(new URL("../../docs/examples/starter/job.json", import.meta.url), "utf8"),
    );
    expect(toMarkdown({ plan: runPlan(starter) })).toContain("| 1.000 kg | scale | 0.995 to 1.005 kg |");
    expect(sheet).toMatch(/\| B \| sweet almond oil, for the vessel \| 8\.176 kg \| bench scale \|/);
    expect(sheet).toMatch(/\| B \| sweet almond oil, for the paste \| 153\.00 g \| fine balance \|/);
    expect(sheet).toMatch(/\| 6 \| Stir in phase B \(8\.176 kg, .*: 8\.176 kg sweet almond oil/);
    expect(sheet).toContain(
      "|  | Make the paste: stir 277.64 g pearl pigment (mica), 10 to 60 µm into 153.00 g sweet almond oil",
    );
    expect(sheet).toMatch(/\| 8 \| Stir in phase C \(538 g, .*: 430\.64 g paste of pearl pigment/);
  });

  test("says of a vessel that cools while it is filled that what is left cools faster, of another no more than its temperature", () => {
    expect(sheet).toContain("56.1 °C at the end, calculated for a full vessel. What is left in it cools faster:");
    expect(sheet).toContain("| Temperature at the last pack |");
    // What is filled at room temperature cools no further.
    const cold = toMarkdown({ plan: runPlan(coldJob()) });
    expect(cold).not.toMatch(/cools faster|Temperature at the last pack|Predicted temperature in the vessel|cools\./);
    expect(cold).toContain("- Close each pack as it is filled.");
    const atOnce = runPlan(changed(exampleJob(), ({ process }) => delete process.steps[9].for));
    expect(toMarkdown({ plan: atOnce })).toContain("- Predicted temperature in the vessel: 58.1 °C.\n");
  });

  test("has packs weighed where they are filled, if they may not be moved or closed at once", () => {
    expect(sheet).toContain(
      "- Stop the filler and fill the packs to be weighed on the balance itself, each with its closure beside",
    );
    const cold = toMarkdown({ plan: runPlan(coldJob()) });
    expect(cold).toContain("- Close each pack as it is filled");
    expect(cold).not.toContain("on the balance itself");
  });

  test("asks for a rate at which the packs that the charge fills are full in time, rounded up", () => {
    const plan = runPlan(coldJob());
    expect(toMarkdown({ plan })).toMatch(/Planned rate: at least 13\.3 packs a minute/);
    const { packs: _, ...mass } = plan.lots;
    expect(toMarkdown({ plan: { ...plan, lots: mass, packs: undefined as never } })).toMatch(
      /Planned rate: at least 2\.01 kg\/min/,
    );
  });

  test("gives a difference of indices as many digits as it takes to see that its upper end is above the limit", () => {
    const plan = runPlan(jobsByName()["two-oils-in-three-lots"]);
    const { figure, limit } = answerOf(plan, "clarity-match");
    expect(figure.max).toBeGreaterThan(Number(limit.max?.min));
    expect(toMarkdown({ plan })).toMatch(
      /difference: 0\.00971 \(0\.00\d+ to 0\.0103\)\. Limit: difference: at most 0\.01\./,
    );
  });

  test("puts what is open before the weighing, in capitals, with its value and its limit", () => {
    const open = runPlan(
      changed(exampleJob(), (draft) => {
        for (const key of ["yieldStress", "flowCurve", "strengthTrials"]) delete draft.bench[key];
        draft.formula.claims = { naturalOrigin: "90 %" };
        delete draft.formula.materials.almond.indices;
      }),
    );
    const text = toMarkdown({ plan: open });
    const [, lines = ""] = text.split("## Before you start");
    expect(lines).toMatch(/- NOT KNOWN: .* is not known: .* Value: \d.* to \d.* Limit: at least 90 %/);
    expect(lines).toMatch(/- NOT MET: .* 56\.1 °C.* Limit: at least /);
    expect(lines).not.toContain("Value: not known");
    expect(text.indexOf("## Before you start")).toBeLessThan(text.indexOf("## Weigh"));
    // What is not known for want of a figure stands once, by the figure.
    expect(lines).toMatch(/\| Measure the yield stress of the set gel \| Is the set gel strong enough/);
    expect(text.indexOf("Measure the yield stress")).toBeLessThan(text.indexOf("## Weigh"));
  });

  test("puts what fails before what is not known, every open answer once or under the figure that it lacks", () => {
    for (const job of Object.values(jobsByName())) {
      const some = runPlan(job);
      const text = toMarkdown({ plan: some });
      const [, after = ""] = text.split("## Before you start");
      const lines = (after.split("\n## ")[0] ?? "").split("\n").filter((line) => line.startsWith("- NOT "));
      const verdicts = lines.map((line) => /^- (NOT MET|NOT KNOWN)/.exec(line)?.[1]);
      const count = (verdict: string): number => some.answers.filter((answer) => answer.verdict === verdict).length;
      const { figures, others } = measureNext(some);
      expect(verdicts).toEqual([
        ...Array.from({ length: count("not-met") }, () => "NOT MET"),
        ...Array.from({ length: others.length }, () => "NOT KNOWN"),
      ]);
      const waiting = new Set(figures.flatMap(({ answers }) => answers.map(({ id, of }) => JSON.stringify([id, of]))));
      expect(waiting.size + others.length).toBe(count("not-known"));
      // Every figure is named, and every question that waits for one stands once.
      const [open = ""] = after.split("\n## ");
      const words = english.lines.measure;
      for (const { how } of figures) expect(open).toContain(words.ways[how]({ figure: "" }));
      const rows = open.split("\n").filter((line) => /^\| (?!Missing figure|---)/.test(line));
      const cases = rows.flatMap((row) => row.split(/(?:\| | · )(?=[A-Z])/).slice(2));
      expect(rows.length).toBeLessThanOrEqual(figures.length);
      expect(new Set(cases).size).toBe(cases.length);
      for (const [id] of [...waiting].map((one) => JSON.parse(one) as [Answer["id"]]))
        expect(open).toContain(english.answers[id].question);
    }
  });

  test("says what is assumed in open values among what the checks rest on, once, and not in each of them", () => {
    const open = runPlan(jobsByName()["heater-held-by-its-bath"]);
    const { figure } = open.answers[0] ?? {};
    const unsure = open.answers.slice(0, 3).map((answer) => ({
      ...answer,
      verdict: "not-known" as const,
      figure: { ...figure, min: null, max: null, assumptions: ["heat-of-stirring-left-out" as const] },
      notKnown: [],
    }));
    const text = toMarkdown({ plan: { ...open, answers: unsure } });
    const [kettle = "", appendices = ""] = text.split("# Appendices");
    expect(kettle).toContain("- NOT KNOWN: ");
    expect(kettle).not.toContain("the heat of stirring is left out");
    const [, checks = ""] = appendices.split("## Checks");
    expect(checks.split("\n## ")[0]?.match(/the heat of stirring is left out/g)).toHaveLength(1);
  });

  test("says of gel that moves to the wall that all of it moves, and gives no bound that says nothing", () => {
    const cold = toMarkdown({ plan: runPlan(coldJob()) });
    expect(cold).toMatch(/\| Does the gel at the wall move\? \(step 3\) \| met \| all of it moves \|/);
    expect(sheet).toContain("predicted loss 0.24 %: evaporation");
    expect(sheet.split("# Appendices")[0]).not.toContain("Italics: predicted");
  });

  test("has no list of open questions if every answer is met", () => {
    const met = { ...plan, notes: [], answers: plan.answers.filter(({ verdict }) => verdict === "met") };
    expect(toMarkdown({ plan: met })).not.toContain("## Before you start");
  });

  test("names a lot as one of several, and portions where a balance cannot carry the mass", () => {
    const many = runPlan(
      changed(exampleJob(), (draft) => {
        draft.batch.target.packs = 2400;
        draft.batch.balances[2].capacity = "15.5 kg";
      }),
    );
    const text = toMarkdown({ plan: many });
    expect(text).toContain("of 2 equal lots");
    expect(text).toMatch(/22\.\d+ kg, as 11\.\d+ kg \+ 11\.\d+ kg/);
  });

  test("keeps text of the documents in its cell", () => {
    const odd = runPlan(
      changed(exampleJob(), (draft) =>
        Object.assign(draft.formula.materials.almond, { name: "oil | *cold*\n# pressed" }),
      ),
    );
    expect(toMarkdown({ plan: odd })).toContain("| oil \\| \\*cold\\* \\# pressed |");
  });

  test("tables the answers with their question, and what each rests on", () => {
    const [, table = ""] = sheet.split("## Checks");
    const rows = (table.split("\n## ")[0] ?? "").split("\n").filter((line) => line.startsWith("| "));
    const notes = rows.indexOf("| No. | Rests on |");
    // What is open in full and first, what is met in a line, each with its head; then what they rest on, each once.
    expect(rows.slice(0, notes)).toHaveLength(plan.answers.length + 2);
    const verdicts = rows.slice(0, notes).flatMap((row) => / \| (met|not met|not known) \| /.exec(row)?.[1] ?? []);
    const order = ["not met", "not known", "met"];
    expect(verdicts).toHaveLength(plan.answers.length);
    expect(verdicts).toEqual([...verdicts].sort((one, other) => order.indexOf(one) - order.indexOf(other)));
    const [, numbers = ""] =
      /^\| Is the ratio .* \| met \| 9\.957 \| at least 8 and at most 12 \| ([\d, ]+) \|$/m.exec(rows.join("\n")) ?? [];
    expect(rows[notes + Number(numbers.split(", ")[0])]).toContain("mass balance over what is weighed");
    expect(new Set(rows.slice(notes)).size).toBe(rows.slice(notes).length);
  });

  test("says what the stirrer takes in a step, and how far particles settle", () => {
    expect(sheet).toContain("the stirrer takes 21 W and 5.1 N·m at the end; duration as stated |");
    expect(sheet).toMatch(
      /Its largest particles settle 0\.024 mm in the vessel and 0\.0026 mm in a pack before the gel sets\./,
    );
  });

  test("says the size of a flake as it is sold, by width and thickness, and nothing of the kind of a grain", () => {
    const of = (particle: object): string =>
      toMarkdown({
        plan: runPlan(changed(exampleJob(), (draft) => (draft.formula.materials.pearl.particle = particle))),
      });
    const flakes = "Flakes 60 µm wide and 1 µm thick (volume of a sphere of 18 µm).";
    expect(of({ width: "60 µm", thickness: "1 µm", density: "2830 kg/m³" })).toContain(flakes);
    // The sphere of the same volume says the same.
    expect(of({ diameter: "17.5 µm", thickness: "1 µm", density: "2830 kg/m³" })).toContain(flakes);
    expect(of({ diameter: "17.5 µm", density: "2830 kg/m³" })).not.toContain("Flakes");
  });

  test("has the sections of what the process holds, and no others", () => {
    const titles = (text: string): readonly string[] =>
      [...text.matchAll(/^## (.*)$/gm)].map(([, title = ""]) => title);
    const cold = titles(toMarkdown({ plan: runPlan(coldJob()) }));
    expect(cold).toContain("Additions of phase B (step 3)");
    expect(cold).toContain("The gel as packed droplets");
    // Nothing in them sets, and they may be closed as they are filled.
    expect(cold).toContain("After filling");
    expect(cold).not.toContain("Heat-sensitive materials: temperature and time");
    const hot = titles(sheet);
    expect(hot).toContain("After filling");
    expect(hot.some((title) => title.startsWith("Additions"))).toBe(false);
    expect(hot).not.toContain("The gel as packed droplets");
  });

  test("carries the library's version", () => {
    const { version } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
      version: string;
    };
    expect(sheet).toContain(`gelwright ${version}`);
    expect(JSON.parse(toJson({ plan }))).toMatchObject({ library: `gelwright ${version}` });
  });
});

describe("CSV", () => {
  test("has as many cells in every row as in the first, and numbers that read back to the last bit", () => {
    const rows = rowsOf(toCsv({ plan, table: "weighing" }));
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows.slice(1).map((row) => Number(row[4]))).toEqual(plan.weighing.lines.map((line) => line.mass));
    for (const table of ["timeline", "answers", "additions"] as const)
      expect(new Set(rowsOf(toCsv({ plan: runPlan(coldJob()), table })).map((row) => row.length)).size, table).toBe(1);
  });

  test("has the unit of every number in the head, or in the row if it changes from row to row", () => {
    expect(toCsv({ plan, table: "timeline" }).split("\r\n")[0]).toBe(
      "Step,Do,From [s],To [s],Mass [kg],Temperature before [°C],Temperature after [°C],Viscosity after [Pa·s],Volume fraction of oil [m³/m³],Rests on",
    );
    const fragrance = rowsOf(toCsv({ plan, table: "answers" })).find(
      ([id, about]) => id === "maximum-temperature" && about === "fragrance",
    );
    const answer = plan.answers.find(({ id, of }) => id === "maximum-temperature" && of.material === "fragrance");
    expect(fragrance?.slice(5, 11)).toEqual([
      "°C",
      ...[answer?.figure.min, answer?.figure.value, answer?.figure.max].map(String),
      "",
      "62",
    ]);
  });

  test("has a unit for every fraction, too: all but numbers of rows and counts have one", () => {
    for (const table of ["weighing", "timeline", "additions"] as const) {
      const [head = [], ...rows] = rowsOf(toCsv({ plan: runPlan(coldJob()), table }));
      const bare = head.filter(
        (name, i) => !/\[.+\]$/.test(name) && rows.every((row) => row[i] !== "" && Number.isFinite(Number(row[i]))),
      );
      expect(
        bare.filter((name) => !["Step", "No.", "Number of portions"].includes(name)),
        table,
      ).toEqual([]);
    }
  });

  test("leaves an unknown figure empty", () => {
    const unknown = runPlan(changed(exampleJob(), (draft) => delete draft.vessel.coolingCurve));
    const row = rowsOf(toCsv({ plan: unknown, table: "timeline" }))[2] ?? [];
    expect(row[3]).toBe("");
    expect(row.at(-1)).toContain("heat loss of the vessel");
  });

  test("quotes commas and quotes, and disarms what a spreadsheet would run", () => {
    const odd = runPlan(
      changed(exampleJob(), (draft) => Object.assign(draft.formula.materials.almond, { name: '=HYPERLINK("x"), oil' })),
    );
    expect(toCsv({ plan: odd, table: "weighing" })).toContain(`"'=HYPERLINK(""x""), oil"`);
  });

  test("names the tables that there are", () => {
    expect(() => toCsv({ plan, table: "costs" as "answers" })).toThrow("weighing, timeline, answers");
  });
});

describe("JSON", () => {
  test("is the library, the version and the plan itself, and can be written again", () => {
    const { library, ...back } = JSON.parse(toJson({ plan })) as { library: string } & Plan;
    expect(library).toMatch(/^gelwright \d/);
    expect(back).toEqual(JSON.parse(JSON.stringify(plan)));
    expect(toMarkdown({ plan: back })).toBe(toMarkdown({ plan }));
  });

  test.each(plansByName())("gives the same sheet of %s before and after", (_name, { plan: before }) => {
    const after = JSON.parse(JSON.stringify(before)) as Plan;
    expect(toMarkdown({ plan: after })).toBe(toMarkdown({ plan: before }));
    for (const table of ["weighing", "timeline", "answers", "additions"] as const)
      expect(toCsv({ plan: after, table })).toBe(toCsv({ plan: before, table }));
  });
});

test("a plan with a part missing or a figure that is none is refused whole", () => {
  const optional = [
    "version",
    "yieldStress",
    "strength",
    "flow",
    "air",
    "lotOrder",
    "emulsion",
    "packs",
    "stability",
    "pastes",
  ];
  optional.push("fillingLimits");
  for (const some of [plan, runPlan(coldJob())])
    for (const key of Object.keys(some)) {
      const { [key as keyof Plan]: _, ...rest } = some;
      if (optional.includes(key)) continue;
      expect(() => toMarkdown({ plan: rest as Plan }), key).toThrow(CalculationError);
    }
  expect(() => toMarkdown({ plan: { ...plan, lots: { ...plan.lots, charge: Number.NaN } } })).toThrow(
    "plan.lots.charge",
  );
});

/** The cells of a CSV text after RFC 4180, row by row. */
function rowsOf(text: string): readonly (readonly string[])[] {
  return text.trimEnd().split("\r\n").map(cells);
}

function cells(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "",
  );
}
