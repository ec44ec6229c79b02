import { type JobDocument, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, it, test } from "vitest";
import { known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";

/** The kettle of the example with a check as its step 10, before it is filled. */
function checking(fields: Draft): JobDocument {
  return changed(exampleJob(), ({ process }) =>
    process.steps.splice(9, 0, { do: "check", what: "thickness with spindle 4", ...fields }),
  );
}

describe("a check on the way", () => {
  it("takes its time, in which the charge cools as in a rest", () => {
    const { timeline } = runPlan(checking({ for: "10 min" }));
    const rest = changed(exampleJob(), ({ process }) => process.steps.splice(9, 0, { do: "rest", for: "10 min" }));
    expect(timeline[9]?.temperatureEnd).toBe(known(runPlan(rest).timeline[9]).temperatureEnd);
    expect(known(timeline[9]?.timeEnd) - known(timeline[9]?.timeStart)).toBeCloseTo(600, 6);
  });

  it("takes none and changes nothing by itself", () => {
    const verdicts = (job: JobDocument) => runPlan(job).answers.map(({ id, verdict }) => [id, verdict]);
    expect(verdicts(checking({}))).toEqual(verdicts(exampleJob()));
  });

  it("stands on the sheet with what it has to be", () => {
    const sheet = toMarkdown({ plan: runPlan(checking({ expect: "between 30 and 36 % of the scale" })) });
    expect(sheet).toContain("Check thickness with spindle 4. It must be between 30 and 36 % of the scale.");
    expect(toMarkdown({ plan: runPlan(checking({})) })).not.toContain("It must be ,");
  });

  test.each([
    ["without a word of what", { what: undefined }, /what/],
    ["for no time", { for: "0 min" }, /above zero/],
  ])("is refused %s", (_name, fields, expected) => {
    expect(() => runPlan(checking(fields))).toThrow(expected);
  });

  test("checks nothing in an empty vessel, nor after filling", () => {
    const at = (place: number) =>
      changed(exampleJob(), ({ process }) => process.steps.splice(place, 0, { do: "check", what: "it" }));
    expect(() => runPlan(at(0))).toThrow(/a charge before it/);
    expect(() => runPlan(at(10))).toThrow(/only "rest" after "fill"/);
  });
});
