import { CalculationError } from "gelwright/error";
import { answerQuestions, type Change, type Plan, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

const job = exampleJob();
const prepared = prepareJob(job);

/** A plan apart from its fingerprint, which tells a change from a changed document. */
const unmarked = ({ fingerprint: _, ...plan }: Plan): unknown => plan;

/** The plan of the changed document: what a change has to come to. */
function byDocument(change: Parameters<typeof changed>[1]): ReturnType<typeof runPlan> {
  return runPlan(changed(job, change));
}

describe("a change", () => {
  const cases: readonly (readonly [string, Change, Parameters<typeof changed>[1]])[] = [
    [
      "of the room",
      { change: "room", value: 25 },
      (draft) => {
        draft.process.room = "25 °C";
      },
    ],
    [
      "of the heater",
      { change: "heater", value: 2500 },
      (draft) => {
        draft.vessel.heater.power = "2.5 kW";
      },
    ],
    [
      "of a step's temperature",
      { change: "step", step: 2, field: "to", value: 88 },
      (draft) => {
        draft.process.steps[1].to = "88 °C";
      },
    ],
    [
      "of a step's time",
      { change: "step", step: 10, field: "for", value: 600 },
      (draft) => {
        draft.process.steps[9].for = "600 s";
      },
    ],
    [
      "that a step takes a figure which it may have",
      { change: "step", step: 6, field: "at", value: 40 },
      (draft) => {
        draft.process.steps[5].at = "40 °C";
      },
    ],
  ];

  test.each(cases)("%s comes to what the changed document comes to", (_name, change, draft) => {
    const plan = runPrepared({ prepared, changes: [change] });
    expect(unmarked(plan)).toEqual(unmarked(byDocument(draft)));
    // No sheet of a changed run passes for one of the job as it was.
    expect(plan.fingerprint).not.toBe(runPlan(job).fingerprint);
  });

  test("leaves the prepared job as it was", () => {
    const before = runPrepared({ prepared });
    runPrepared({ prepared, changes: [{ change: "room", value: 30 }] });
    expect(runPrepared({ prepared })).toEqual(before);
    expect(before).toEqual(runPlan(job));
  });

  test("is made after the one before it", () => {
    const twice = runPrepared({
      prepared,
      changes: [
        { change: "room", value: 30 },
        { change: "room", value: 25 },
      ],
    });
    const once = runPrepared({ prepared, changes: [{ change: "room", value: 25 }] });
    expect(unmarked(twice)).toEqual(unmarked(once));
  });

  test("of a dose lets the carrier give way", () => {
    const { weighing } = runPrepared({ prepared, changes: [{ change: "dose", material: "gelFormer", value: 0.1 }] });
    const former = weighing.lines.filter(({ material }) => material === "gelFormer");
    expect(former.reduce((sum, { massFraction }) => sum + massFraction, 0)).toBeCloseTo(0.1, 12);
    expect(weighing.lines.reduce((sum, { massFraction }) => sum + massFraction, 0)).toBeCloseTo(1, 12);
  });

  test("answers only what it is asked, and as the plan does", () => {
    const changes: readonly Change[] = [{ change: "step", step: 2, field: "to", value: 88 }];
    const asked = answerQuestions({ prepared, changes, questions: ["done-in-time", "flash-point"] });
    const { answers } = runPrepared({ prepared, changes });
    const of = (id: string): typeof answers => answers.filter((answer) => answer.id === id);
    expect(asked).toEqual([...of("done-in-time"), ...of("flash-point")]);
    expect(asked.length).toBeGreaterThan(0);
  });

  const refused: readonly (readonly [unknown, RegExp])[] = [
    [{ change: "weather", value: 1 }, /^changes\[0\]\.change: found "weather"/],
    [{ change: "room", value: Number.NaN }, /^changes\[0\]\.value: found NaN/],
    [{ change: "room", value: -300 }, /^changes\[0\]\.value: found -300, expected a temperature/],
    [{ change: "room", value: "25 °C" }, /^changes\[0\]\.value: found "25 °C"/],
    [{ change: "heater", value: -5 }, /^changes\[0\]\.value: found -5/],
    [{ change: "coolant", value: 10 }, /^changes\[0\]: found no jacket/],
    [{ change: "delivered", value: 0 }, /^changes\[0\]\.value: found 0/],
    [{ change: "step", step: 99, field: "to", value: 80 }, /^changes\[0\]: found "to" of step 99/],
    [{ change: "step", step: 1, field: "pressure", value: 80 }, /^changes\[0\]: found "pressure" of step 1/],
    [{ change: "step", step: 10, field: "for", value: -1 }, /^changes\[0\]\.value: found -1/],
    [
      { change: "material", material: "gold", field: "massFractionMax", value: 1 },
      /^changes\[0\]\.material: found "gold"/,
    ],
    [{ change: "material", material: "almond", field: "massFractionMax", value: 2 }, /^changes\[0\]\.value: found 2/],
    [
      { change: "material", material: "almond", field: "strength" as "massFractionMax", value: 0.5 },
      /^changes\[0\]\.field: found "strength", expected one of temperatureFlash/,
    ],
    [{ change: "dose", material: "gold", value: 0.1 }, /^changes\[0\]\.material: found "gold"/],
    [{ change: "dose", material: "gelFormer", value: 1.5 }, /^changes\[0\]\.value: found 1\.5, expected a share/],
    [null, /^changes\[0\]/],
  ];

  test.each(refused)("%j is refused by name", (change, message) => {
    const run = (): unknown => runPrepared({ prepared, changes: [change as Change] });
    expect(run).toThrow(CalculationError);
    expect(run).toThrow(message);
  });

  test("of a figure that the job has not is refused in every function that takes changes", () => {
    const cold = prepareJob(jobsByName()["gel-warmed-by-stirring"]);
    expect(() => answerQuestions({ prepared: cold, changes: [{ change: "heater", value: 100 }] })).toThrow(/no heater/);
    expect(() => answerQuestions({ prepared: cold, questions: ["no-such"] })).toThrow(
      /^questions\[0\]: found "no-such"/,
    );
  });
});
