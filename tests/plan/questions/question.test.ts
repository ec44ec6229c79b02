import { prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { runOf } from "../../../src/plan/prepared-run.js";
import { questions } from "../../../src/plan/questions/index.js";
import { answersTo, opened, sameSubject } from "../../../src/plan/questions/question.js";
import { allJobsByName } from "../jobs/jobs.js";

describe.each(Object.entries(allJobsByName()))("every question that %s raises", (_name, job) => {
  const run = runOf(prepareJob(job));

  test("has a state and an answer for each subject, and no two subjects alike", () => {
    for (const question of questions) {
      const subjects = question.subjects(run).map((subject) => ({ subject, of: question.of(subject) }));
      const states = subjects.map(({ subject }) => question.states(subject, run).length);
      expect([question.id, states.filter((count) => count === 0)]).toEqual([question.id, []]);
      expect(answersTo(question, run).map(({ of }) => of)).toEqual(subjects.map(({ of }) => of));
      for (const { of } of subjects)
        expect(subjects.filter((other) => sameSubject(of, other.of)).map((other) => other.of)).toEqual([of]);
    }
  });

  test("counts each of its states once, and names one of them as the one that decides", () => {
    for (const question of questions)
      for (const [i, { states, verdict }] of answersTo(question, run).entries()) {
        const all = question.states(question.subjects(run)[i], run).length;
        expect([question.id, states.met + states.notMet + states.notKnown]).toEqual([question.id, all]);
        const own = { met: states.met, "not-met": states.notMet, "not-known": states.notKnown }[verdict];
        expect([question.id, own > 0]).toEqual([question.id, true]);
      }
  });
});

describe("what is left out opens the end at which the truth may lie", () => {
  const open = (
    code: "heat-loss-left-out" | "heat-of-stirring-left-out",
    quantity: "temperature" | "volume" | "viscosity",
  ) => opened({ min: 1, max: 2, assumptions: [code] }, quantity);

  test("a loss: the charge may be cooler, take up less, and be thicker", () => {
    expect(open("heat-loss-left-out", "temperature")).toMatchObject({ min: null, max: 2 });
    expect(open("heat-loss-left-out", "volume")).toMatchObject({ min: null, max: 2 });
    expect(open("heat-loss-left-out", "viscosity")).toMatchObject({ min: 1, max: null });
  });

  test("the heat of stirring: it may be warmer, take up more, and be thinner", () => {
    expect(open("heat-of-stirring-left-out", "temperature")).toMatchObject({ min: 1, max: null });
    expect(open("heat-of-stirring-left-out", "volume")).toMatchObject({ min: 1, max: null });
    expect(open("heat-of-stirring-left-out", "viscosity")).toMatchObject({ min: null, max: 2 });
  });

  test("and nothing where it says nothing of the quantity", () => {
    expect(opened({ min: 1, max: 2, assumptions: ["heat-loss-left-out"] }, "mass")).toMatchObject({ min: 1, max: 2 });
    expect(opened({ min: 1, max: 2 }, "temperature")).toEqual({ min: 1, max: 2 });
  });
});
