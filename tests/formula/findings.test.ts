import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import { Findings } from "../../src/formula/document.js";
import { type Entry, fields, listOf, maybe, text } from "../../src/formula/entry.js";
import { unsoundness } from "../../src/formula/sound.js";

interface Phase {
  readonly name: string;
  readonly lines: readonly string[];
}
const entry: Entry<{ readonly phases: readonly Phase[]; readonly notes?: string }> = fields({
  phases: listOf(fields<Phase>({ name: text, lines: listOf(text) })),
  notes: maybe("identity", text),
}) as never;
/** What was found of a document that stands at a place of another. */
function of(document: unknown, at?: string): Findings {
  const findings = new Findings();
  findings.read(entry, document, at);
  return findings;
}
const sound = { name: "A", lines: ["oil"] };

test("a place holds a fault that was noted there or anywhere inside, and no other place does", () => {
  const findings = new Findings();
  findings.note("phases[1].lines[2].amount", "much", "an amount");
  for (const place of ["phases", "phases[1]", "phases[1].lines", "phases[1].lines[2]", "phases[1].lines[2].amount"])
    expect(findings.holds(place)).toBe(true);
  for (const place of ["phases[0]", "phases[1].lines[1]", "phases[1].name", "phase", "lines"])
    expect(findings.holds(place)).toBe(false);
});

test("a fault says what was found, text as it stands and all else as it is shown", () => {
  const findings = new Findings();
  findings.note("a", "much", "an amount");
  findings.note("b", -0, "a number above 0", "out-of-range", { value: 0, min: 0 });
  expect(findings.faults).toStrictEqual([
    { path: "a", found: "much", expected: "an amount", rule: "contradiction" },
    { path: "b", found: "-0", expected: "a number above 0", rule: "out-of-range", parameters: { value: 0, min: 0 } },
  ]);
});

test("of what was taken out nothing further is told, and it is known where something was", () => {
  const findings = of({ phases: [sound, { name: "B", lines: [5] }] });
  expect(findings.faults.map(({ path }) => path)).toEqual(["phases[1].lines[0]"]);
  findings.note("phases[1].lines[0]", undefined, "a line");
  findings.note("phases[1].lines[0].amount", undefined, "an amount");
  expect(findings.faults).toHaveLength(1);
  findings.note("phases[1].lines", "one line", "two lines");
  expect(findings.faults).toHaveLength(2);
  expect(["phases[1].lines[0]", "phases[1].lines[0].amount"].map((place) => findings.took(place))).toEqual([
    true,
    true,
  ]);
  expect(["phases[1].lines", "phases", "phases[0]"].map((place) => findings.took(place))).toEqual([
    false,
    false,
    false,
  ]);
});

test("a list lacks names or lines once a member was taken out, or the one or the other of it, or the list itself", () => {
  const lacking = (document: unknown, list = "phases", at?: string) =>
    (["name", "lines"] as const).filter((one) => of(document, at).lacks(one, list));
  expect(lacking({ phases: [sound] })).toEqual([]);
  expect(lacking({ phases: [sound, 5] })).toEqual(["name", "lines"]);
  expect(lacking({ phases: [{ ...sound, name: 5 }] })).toEqual(["name"]);
  expect(lacking({ phases: [{ ...sound, lines: 5 }] })).toEqual(["lines"]);
  expect(lacking({ phases: 5 })).toEqual(["name", "lines"]);
  expect(lacking({ phases: [{ ...sound, lines: [5] }] })).toEqual([]);
  expect(lacking({ phases: [{ ...sound, lines: [5] }] }, "phases[0].lines")).toEqual(["name", "lines"]);
  expect(lacking({ phases: [sound], notes: 5 })).toEqual([]);
  // Of a document within another that was taken out as a whole.
  expect(lacking(5, "formula.phases", "formula")).toEqual(["name", "lines"]);
  expect(lacking({ phases: [sound, 5] }, "formula.phases", "formula")).toEqual(["name", "lines"]);
});

test("a name that stands for nothing is not told where what it stands for is at fault itself", () => {
  const findings = new Findings();
  findings.note("materials.wax.strength", "strong", "a share");
  const known = ["oil", "former"];
  findings.unknownName("phases[0].lines[0].material", "wax", known, "a material", ["materials", "premixes"]);
  expect(findings.faults).toHaveLength(1);
  findings.unknownName("phases[0].lines[1].material", "oel", known, "a material", ["materials", "premixes"]);
  findings.unknownName("phases[0].lines[2].material", "water", known, "a material", ["materials", "premixes"]);
  expect(findings.faults.slice(1)).toStrictEqual([
    {
      path: "phases[0].lines[1].material",
      found: "oel",
      expected: "a material; did you mean oil?",
      rule: "unknown-name",
      parameters: { name: "oel", nearest: "oil" },
    },
    {
      path: "phases[0].lines[2].material",
      found: "water",
      expected: "a material",
      rule: "unknown-name",
      parameters: { name: "water" },
    },
  ]);
});

test("what a kernel refuses is kept, at its own place or at the one that is given; any other error goes on", () => {
  const findings = new Findings();
  const refuse = () => {
    throw new CalculationError("input", [{ path: "mass", found: "0", expected: "above 0", rule: "out-of-range" }]);
  };
  expect(findings.attempt(() => 5)).toBe(5);
  expect(findings.attempt(refuse)).toBeUndefined();
  expect(findings.attempt(refuse, "batch.target")).toBeUndefined();
  expect(findings.faults.map(({ path }) => path)).toEqual(["mass", "batch.target"]);
  expect(() =>
    findings.attempt(() => {
      throw new RangeError("a slip of ours");
    }),
  ).toThrow(RangeError);
});

test("a reading ends well where nothing was noted, and else with all that was", () => {
  const findings = new Findings();
  expect(() => findings.settle()).not.toThrow();
  findings.note("a", "b", "c");
  findings.note("d", "e", "f");
  expect(() => findings.settle()).toThrow(
    expect.objectContaining({ code: "document", faults: [expect.anything(), expect.anything()] }),
  );
});

test("a document of a hundred thousand values is looked at, and one of more is refused as a whole", () => {
  const pathOf = (keys: readonly (string | number)[]) => keys.join("/");
  expect(unsoundness(new Array(99_999).fill(0), pathOf)).toEqual([]);
  expect(unsoundness(new Array(100_000).fill(0), pathOf)).toMatchObject([{ path: "", rule: "out-of-range" }]);
});

test("of names that the language keeps a hundred are told, each with the way to it", () => {
  const kept = JSON.parse('{"prototype":1}');
  const pathOf = (keys: readonly (string | number)[]) => JSON.stringify(keys);
  expect(unsoundness({ list: [0, kept] }, pathOf)).toMatchObject([{ path: '["list",1,"prototype"]' }]);
  expect(unsoundness(new Array(100).fill(kept), pathOf)).toHaveLength(100);
  expect(unsoundness(new Array(101).fill(kept), pathOf)).toHaveLength(100);
});
