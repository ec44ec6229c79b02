import { leverCodes, questionIds } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { planQuestions, questionDocs } from "../../docs/proof/plan-questions.js";
import { questions } from "../../src/plan/questions/index.js";

const docs = questionDocs();
const page = planQuestions();
const sections = new Map(
  page
    .split("\n## ")
    .slice(1)
    .map((section) => [section.split("\n")[0], section]),
);

describe("the page of questions", () => {
  test("has a section for every question, and none for another", () => {
    expect([...sections.keys()].sort()).toEqual([...questionIds].sort());
  });

  test("says of each what raises it, its states, figure and limit", () => {
    expect(questionIds.filter((id) => !docs.has(id))).toEqual([]);
    for (const [, section] of sections)
      expect(section.split("\n").filter((line) => line.startsWith("| "))).toHaveLength(9);
  });

  test("states a margin of just those that have one", () => {
    const documented = [...docs].flatMap(([id, { margin }]) => (margin === undefined ? [] : [id]));
    const withMargin = questions.flatMap(({ id, margin }) => (margin ? [id] : []));
    expect(documented.sort()).toEqual(withMargin.sort());
  });

  test("gives the quantity and the quantifier of the record", () => {
    for (const { id, quantity, quantifier } of questions) {
      expect(sections.get(id)).toContain(`(\`${quantity}\`)`);
      expect(sections.get(id)).toContain(quantifier === "every" ? "every one has to meet" : "is enough");
    }
  });

  test("names every lever under some question, and remedies of just those questions that have levers", () => {
    expect(leverCodes.filter((code) => !page.includes(`\`${code}\``))).toEqual([]);
    for (const { id, levers } of questions) if (!levers) expect(sections.get(id)).toContain("| remedies | none |");
  });
});
