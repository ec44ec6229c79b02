import { CalculationError } from "gelwright/error";
import { type Answer, answerQuestions, type Change, prepareJob, type Remedy, remedies } from "gelwright/plan";
import { beforeAll, describe, expect, test } from "vitest";
import { changed, coldJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";
import { keyOf, plansByName } from "./jobs/plans.js";

interface Case {
  readonly name: string;
  readonly prepared: ReturnType<typeof prepareJob>;
  readonly answer: Answer;
  readonly remedy: Remedy;
}

const cases: Case[] = [];

beforeAll(() => {
  for (const [name, { job, plan }] of plansByName()) {
    const prepared = prepareJob(job);
    for (const answer of plan.answers.filter(({ verdict }) => verdict !== "met"))
      for (const remedy of remedies({ prepared, answer })) cases.push({ name, prepared, answer, remedy });
  }
});

/** The answer once a change is made. */
function after({ prepared, answer }: Case, change: Change): Answer | undefined {
  const answers = answerQuestions({ prepared, changes: [change], questions: [answer.id] });
  return answers.find((one) => keyOf(one) === keyOf(answer));
}

describe("a remedy", () => {
  test("is found for most of what levers can mend", () => {
    const levers = new Set(cases.map(({ remedy }) => remedy.lever));
    for (const lever of [
      ...(["shorter-filling", "warmer-addition", "hotter-melt", "less-heat", "stronger-heater"] as const),
      ...([
        "more-additions",
        "cooler-melt",
        "longer-rest",
        "more-surfactant",
        "more-gel-former",
        "less-gel-former",
      ] as const),
    ])
      expect(levers).toContain(lever);
    expect(cases.length).toBeGreaterThan(30);
  });

  test("makes its answer met, with the answer that it gives", () => {
    for (const one of cases) {
      const found = after(one, one.remedy.change);
      expect([one.name, keyOf(one.answer), found?.verdict]).toEqual([one.name, keyOf(one.answer), "met"]);
      expect(found).toEqual(one.remedy.answer);
    }
  });

  test("lies within 1e-6 of the value at which the answer is met no more", () => {
    for (const one of cases) {
      const { change, lever } = one.remedy;
      // Away from the end of the bracket, towards the value that the job has.
      const more = [
        "shorter-filling",
        "less-heat",
        "less-gel-former",
        "slower-stirring",
        "colder-coolant",
        "cooler-melt",
        "lower-share",
      ];
      const step = ["more-lots", "more-additions"].includes(lever) ? 1 : 1e-6 * Math.max(1, Math.abs(change.value));
      const beyond = change.value + (more.includes(lever) ? 1 : -1) * step;
      const found = after(one, { ...change, value: beyond } as Change);
      expect([one.name, keyOf(one.answer), lever, found?.verdict]).not.toEqual([
        one.name,
        keyOf(one.answer),
        lever,
        "met",
      ]);
    }
  });

  test("is found where the limit has two ends, and neither end of the bracket meets it", () => {
    const found = cases.filter(({ answer }) => answer.id === "gel-former-ratio");
    expect(found.map(({ remedy }) => remedy.lever)).toEqual(
      expect.arrayContaining(["more-gel-former", "less-gel-former"]),
    );
    for (const { remedy, answer } of found) {
      const { min, max } = answer.limit;
      const ratio = remedy.answer.figure.value ?? Number.NaN;
      expect(ratio).toBeGreaterThanOrEqual(min?.value ?? Number.NaN);
      expect(ratio).toBeLessThanOrEqual(max?.value ?? Number.NaN);
      // No dose at all, and all of the carrier as gel former, lie outside.
      const { change } = remedy;
      if (change.change !== "dose") throw new Error("a dose is changed");
      expect(change.value).toBeGreaterThan(0.01);
      expect(change.value).toBeLessThan(0.5);
    }
  });

  test("for a step that cannot be done is the nearest end that it reaches", () => {
    const [held] = cases.filter(({ answer }) => answer.id === "step-can-be-done");
    expect(held?.remedy).toMatchObject({ lever: "less-heat", change: { change: "step", field: "to" } });
    const bath = held?.prepared.job.vessel.heater?.temperatureMax ?? Number.NaN;
    expect(held?.remedy.change.value).toBeLessThan(bath);
    expect(held?.remedy.change.value).toBeGreaterThan(bath - 2);
  });

  test.each(["motor-power", "motor-torque"])(
    "for %s is slower stirring in the step that loads the motor most",
    (id) => {
      const weak = changed(coldJob(), ({ vessel }) => {
        vessel.stirrer.motor.power = "370 W";
      });
      const prepared = prepareJob(weak);
      const [answer] = answerQuestions({ prepared, questions: [id] });
      if (!answer) throw new Error(`${id} is asked`);
      const [remedy, ...others] = remedies({ prepared, answer });
      expect(others).toEqual([]);
      expect(remedy).toMatchObject({ lever: "slower-stirring", change: { change: "step", step: 3, field: "speed" } });
      // The step is stirred at 60 rpm; a twentieth of that is the slowest tried.
      const speed = remedy?.change.value ?? Number.NaN;
      expect(speed).toBeLessThan(1);
      expect(speed).toBeGreaterThan(0.05);
      const verdictAt = (value: number) =>
        answerQuestions({ prepared, questions: [id], changes: [{ change: "step", step: 3, field: "speed", value }] })[0]
          ?.verdict;
      expect(verdictAt(speed)).toBe("met");
      expect(verdictAt(speed * (1 + 1e-5))).not.toBe("met");
    },
  );

  test("for a motor is none where the worst step has no speed of its own", () => {
    const prepared = prepareJob(jobsByName()["motor-too-weak"]);
    const [answer] = answerQuestions({ prepared, questions: ["motor-power"] });
    expect(answer?.verdict).toBe("not-met");
    expect(answer && remedies({ prepared, answer })).toEqual([]);
  });

  test("is none for an answer that is met, and none is made up for one without a lever", () => {
    const prepared = prepareJob(jobsByName()["motor-too-weak"]);
    expect(remedies({ prepared, answer: { id: "delivered", of: {} } })).toEqual([]);
    expect(remedies({ prepared, answer: { id: "gel-moves-at-wall", of: { step: 5 } } })).toEqual([]);
  });

  test("of an answer or a subject that the job does not have is refused by name", () => {
    const prepared = prepareJob(jobsByName()["motor-too-weak"]);
    const refused = (answer: { readonly id: string; readonly of: object }) => () => remedies({ prepared, answer });
    expect(refused({ id: "motor", of: {} })).toThrow(CalculationError);
    expect(refused({ id: "motor", of: {} })).toThrow(/^answer\.id: found "motor"/);
    expect(refused({ id: "maximum-share", of: { material: "gold" } })).toThrow(/^answer\.of: found material "gold"/);
  });
});
