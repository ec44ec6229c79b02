import fc from "fast-check";
import {
  type AdditionRow,
  type JobDocument,
  type PlanSchedule,
  prepareJob,
  runPlan,
  runPrepared,
} from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, known } from "../support/answers.js";
import { between } from "../support/between.js";
import { changed, coldJob, type Draft } from "../support/example.js";

/** The vessel of the cold route, its oil added at other speeds. */
function adding(fields: Draft, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(coldJob(), (draft) => {
    const add = draft.process.steps.find(({ do: kind }: Draft) => kind === "add");
    delete add.speed;
    Object.assign(add, fields);
    change(draft);
  });
}

function scheduleOf(job: JobDocument): PlanSchedule {
  const [schedule] = known(runPlan(job).emulsion).schedules;
  if (!schedule || "notKnown" in schedule) throw new Error("no schedule");
  return schedule;
}

const took = ({ timeIn, timeEnd }: AdditionRow): number => known(timeEnd) - known(timeIn);

const slowThenFast = {
  speeds: [
    { fromOil: "0 % v/v", speed: "30 rpm" },
    { fromOil: "40 % v/v", speed: "60 rpm" },
  ],
};

describe("a speed that follows the oil fraction", () => {
  it("is for each addition that of the oil which it meets", () => {
    const { rows, speed } = scheduleOf(adding(slowThenFast));
    expect(speed).toBeUndefined();
    rows.forEach((row, i) => {
      const meets = rows[i - 1]?.volumeFractionOil ?? 0;
      expect(known(row.speed) * 60).toBeCloseTo(meets < 0.4 ? 30 : 60, 9);
    });
    const turned = rows.filter((row) => known(row.speed) > 0.75);
    expect(turned.length).toBeGreaterThan(3);
    expect(turned.length).toBeLessThan(rows.length - 3);
  });

  it("has times, torque and power of each addition as one speed alone would have them", () => {
    const [slow, fast] = [scheduleOf(adding({ speed: "30 rpm" })), scheduleOf(adding({ speed: "60 rpm" }))];
    scheduleOf(adding(slowThenFast)).rows.forEach((row, i) => {
      const same = known((known(row.speed) > 0.75 ? fast : slow).rows[i]);
      expect(row.mass).toBe(same.mass);
      expect(took(row)).toBeCloseTo(took(same), 6);
      expect(row.torque).toBeCloseTo(known(same.torque), 9);
      expect(row.power).toBeCloseTo(known(same.power), 9);
    });
  });

  it("is the same as one speed, if it is one", () => {
    fc.assert(
      fc.property(between(20, 80), (rpm) => {
        const one = runPlan(adding({ speeds: [{ fromOil: "0 % v/v", speed: `${rpm} rpm` }] }));
        const plain = runPlan(adding({ speed: `${rpm} rpm` }));
        expect(one.answers.map(({ id, verdict }) => [id, verdict])).toEqual(
          plain.answers.map(({ id, verdict }) => [id, verdict]),
        );
        expect(one.timeline.at(-1)?.timeEnd).toBeCloseTo(known(plain.timeline.at(-1)?.timeEnd), 6);
        expect(one.timeline.at(-1)?.temperatureEnd).toBeCloseTo(known(plain.timeline.at(-1)?.temperatureEnd), 9);
      }),
      { numRuns: 6 },
    );
  });

  it("is the usual one before the first that is stated", () => {
    const { rows } = scheduleOf(adding({ speeds: [{ fromOil: "40 % v/v", speed: "60 rpm" }] }));
    expect(known(rows[0]?.speed) * 60).toBeCloseTo(50, 9);
    expect(known(rows.at(-1)?.speed) * 60).toBeCloseTo(60, 9);
  });

  it("takes no less time the later it is turned up", () => {
    const duration = (from: number) => {
      const speeds = [
        { fromOil: "0 % v/v", speed: "30 rpm" },
        { fromOil: `${from} % v/v`, speed: "60 rpm" },
      ];
      return known(scheduleOf(adding({ speeds })).rows.at(-1)?.timeEnd);
    };
    fc.assert(
      fc.property(between(1, 80), between(0, 5), (from, later) => {
        expect(duration(from + later)).toBeGreaterThanOrEqual(duration(from) - 1e-6);
      }),
      { numRuns: 8 },
    );
  });

  it("holds for a stream too, between what each speed alone would take", () => {
    const duration = (fields: Draft) =>
      known(
        scheduleOf(
          adding({ additions: "stream", ...fields }, ({ process }) => {
            delete process.steps.find(({ do: kind }: Draft) => kind === "add").pump;
          }),
        ).rows.at(-1)?.timeStart,
      );
    const [slow, both, fast] = [duration({ speed: "30 rpm" }), duration(slowThenFast), duration({ speed: "60 rpm" })];
    expect(both).toBeLessThan(slow);
    expect(both).toBeGreaterThan(fast);
    // As additions take it: the time of the slow part and that of the fast.
    const until = (fields: Draft, oil: string) =>
      duration({
        ...fields,
        speeds: [
          { fromOil: "0 % v/v", speed: "30 rpm" },
          { fromOil: oil, speed: "60 rpm" },
        ],
      });
    expect(until({}, "40.001 % v/v")).toBeCloseTo(both, 0);
  });

  it("asks the motor at every speed, and decides at the worst of them", () => {
    const torque = (fields: Draft) => known(answerOf(adding(fields), "motor-torque").beside?.["speed"]);
    expect(Number(torque(slowThenFast)) * 60).toBeCloseTo(60, 9);
    const weak = adding({ ...slowThenFast }, ({ vessel }) => (vessel.stirrer.motor.power = "0.02 kW"));
    expect(answerOf(weak, "motor-power").verdict).toBe("not-met");
  });

  it("is at its end the speed of the plan's own row beside the bench", () => {
    const { emulsion, timeline } = runPlan(adding(slowThenFast));
    const speeds = known(emulsion).speeds;
    if (!speeds || "notKnown" in speeds) throw new Error("no speeds");
    expect(known(speeds.find((row) => row.of === "plan")).speed * 60).toBeCloseTo(60, 9);
    expect(known(timeline[2]?.speed) * 60).toBeCloseTo(60, 9);
  });
});

describe("speeds that cannot be", () => {
  test.each([
    ["beside a speed", { ...slowThenFast, speed: "30 rpm" }, /only one of speed and speeds/],
    ["none", { speeds: [] }, /at least 1/],
    ["in falling order of oil", { speeds: [...slowThenFast.speeds].reverse() }, /rising order of oil/],
    ["twice from the same oil", { speeds: [slowThenFast.speeds[0], slowThenFast.speeds[0]] }, /rising order of oil/],
    ["standing still", { speeds: [{ fromOil: "0 % v/v", speed: "0 rpm" }] }, /above zero/],
    ["by mass", { speeds: [{ fromOil: "10 kg", speed: "30 rpm" }] }, /v\/v/],
  ])("%s", (_name, fields, expected) => {
    expect(() => runPlan(adding(fields))).toThrow(expected);
  });

  test("a change cannot set one speed in their place", () => {
    const prepared = prepareJob(adding(slowThenFast));
    const change = { change: "step", step: 3, field: "speed", value: 1 } as const;
    expect(() => runPrepared({ prepared, changes: [change] })).toThrow(/a figure of this step/);
  });
});
