import { readFileSync } from "node:fs";
import { CalculationError } from "gelwright/error";
import { type Plan, runPlan } from "gelwright/plan";
import { toCsv, toJson, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";

const plan = runPlan(exampleJob());

describe("Markdown", () => {
  const sheet = toMarkdown({ plan });

  test("says the cautions before anything is weighed", () => {
    expect(sheet.indexOf("## Cautions")).toBeGreaterThan(0);
    expect(sheet.indexOf("## Cautions")).toBeLessThan(sheet.indexOf("## Weigh"));
    expect(sheet).toContain("never leave heat unattended");
  });

  test("shows each mass as its balance shows it, and the total on the finest", () => {
    expect(sheet).toMatch(/\| 22\.78 kg \| floor scale \| 22\.67 kg to 22\.89 kg \|/);
    expect(sheet).toMatch(/\| 107\.33 g \| fine balance \|/);
    expect(sheet).toMatch(/\*\*Total to weigh: 34\.716\d\d kg\*\*/);
  });

  test("puts what is open before the weighing, in capitals", () => {
    const open = runPlan(
      changed(exampleJob(), (draft) => {
        for (const key of ["yieldStress", "flowCurve", "strengthTrials"]) delete draft.bench[key];
      }),
    );
    const text = toMarkdown({ plan: open });
    expect(text).toContain("- NOT KNOWN: Whether the set gel holds");
    expect(text.indexOf("## Before you start")).toBeLessThan(text.indexOf("## Weigh"));
    expect(sheet).not.toContain("## Before you start");
  });

  test("names a lot as one of several, and portions where a balance cannot carry the mass", () => {
    const many = runPlan(
      changed(exampleJob(), (draft) => {
        draft.batch.target.packs = 2400;
        draft.batch.balances[2].capacity = "15.5 kg";
      }),
    );
    const text = toMarkdown({ plan: many });
    expect(text).toContain("2 equal lots; this sheet is for one");
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
    const rows = toCsv({ plan, table: "weighing" }).trimEnd().split("\r\n").map(cells);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows.slice(1).map((row) => Number(row[4]))).toEqual(plan.weighing.lines.map((line) => line.mass));
  });

  test("leaves an unknown figure empty", () => {
    const unknown = runPlan(changed(exampleJob(), (draft) => delete draft.vessel.coolingCurve));
    const row = toCsv({ plan: unknown, table: "timeline" }).split("\r\n")[2] ?? "";
    expect(cells(row)[3]).toBe("");
    expect(row).toContain("no heat loss of the vessel");
  });

  test("quotes commas and quotes, and disarms what a spreadsheet would run", () => {
    const odd = runPlan(
      changed(exampleJob(), (draft) => Object.assign(draft.formula.materials.almond, { name: '=HYPERLINK("x"), oil' })),
    );
    expect(toCsv({ plan: odd, table: "weighing" })).toContain(`"'=HYPERLINK(""x""), oil"`);
  });

  test("names the tables that there are", () => {
    expect(() => toCsv({ plan, table: "costs" as "checks" })).toThrow("weighing, timeline, checks");
  });
});

describe("JSON", () => {
  test("comes back as the plan it was, and can be written again", () => {
    const { library: _, ...back } = JSON.parse(toJson({ plan })) as { library: string } & Plan;
    expect(back).toEqual(JSON.parse(JSON.stringify(plan)));
    expect(toMarkdown({ plan: back })).toBe(toMarkdown({ plan }));
  });
});

test("a plan with a part missing or a figure that is none is refused whole", () => {
  for (const key of Object.keys(plan)) {
    const { [key as keyof Plan]: _, ...rest } = plan;
    if (["version", "pack", "yieldStress", "strength", "flow", "air", "lotOrder"].includes(key)) continue;
    expect(() => toMarkdown({ plan: rest as Plan }), key).toThrow(CalculationError);
  }
  expect(() => toMarkdown({ plan: { ...plan, lots: { ...plan.lots, charge: Number.NaN } } })).toThrow(
    "plan.lots.charge",
  );
});

/** The cells of a CSV line after RFC 4180. */
function cells(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "",
  );
}
