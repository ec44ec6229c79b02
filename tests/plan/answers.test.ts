import { type Answer, type Figure, prepareJob, questionIds, runPrepared } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/plan/judge.js";
import { keyOf, plansByName } from "./jobs/plans.js";

const plans = plansByName();

/** Whether an end that the judge needed is open, or the figure and its limit overlap. */
function isExplained({ figure, limit, margin, notKnown }: Answer): boolean {
  const needed = [
    limit.min && [figure.min, figure.max, limit.min.min, limit.min.max],
    limit.max && [figure.min, figure.max, limit.max.min, limit.max.max],
  ];
  return (
    notKnown.length > 0 ||
    needed.flat().includes(null) ||
    isWide(figure, limit.min, margin?.min) ||
    isWide(figure, limit.max, margin?.max)
  );
}

function isWide(figure: Figure, end: Figure | undefined, margin = 0): boolean {
  if (!end || figure.min === null || figure.max === null || end.min === null || end.max === null) return false;
  return (
    figure.min - end.max <= margin && figure.max - end.min >= -margin && (figure.min < figure.max || end.min < end.max)
  );
}

describe.each(plans)("the answers of %s", (_name, { job, plan }) => {
  const { answers } = plan;

  test("are those that the judge gives on their own numbers", () => {
    const again = answers.map(({ figure, limit, margin }) => judge(figure, limit, margin));
    expect(again.map(({ verdict, side }) => ({ verdict, side }))).toEqual(
      answers.map(({ verdict, side }) => ({ verdict, side })),
    );
  });

  test("say why, where they are not known", () => {
    const dumb = answers.filter((answer) => answer.verdict === "not-known" && !isExplained(answer));
    expect(dumb.map(keyOf)).toEqual([]);
  });

  test("are met or not met only on figures with numbers", () => {
    const empty = answers.filter(
      ({ verdict, figure }) => verdict === "met" && figure.min === null && figure.max === null,
    );
    expect(empty.map(keyOf)).toEqual([]);
  });

  test("have a value between their ends", () => {
    const outside = answers.filter(({ figure: { min, value, max } }) => {
      if (value === undefined) return false;
      return value < (min ?? value) || value > (max ?? value);
    });
    expect(outside.map(keyOf)).toEqual([]);
  });

  test("count their states, the deciding one among them", () => {
    for (const { verdict, states } of answers) {
      expect(states.met + states.notMet + states.notKnown).toBeGreaterThan(0);
      const key = { met: "met", "not-met": "notMet", "not-known": "notKnown" } as const;
      expect(states[key[verdict]]).toBeGreaterThan(0);
    }
  });

  test("stand in the order of the questions, each of its subjects once", () => {
    const places = answers.map(({ id }) => questionIds.indexOf(id));
    expect(places).not.toContain(-1);
    const groups = answers.map(({ id }) => id).filter((id, i, all) => id !== all[i - 1]);
    expect(new Set(groups).size).toBe(groups.length);
    expect(new Set(answers.map(keyOf)).size).toBe(answers.length);
  });

  test("are the same again, and by the prepared job", () => {
    expect(runPrepared({ prepared: prepareJob(job) }).answers).toEqual(answers);
  });
});

test("the questions of all jobs come in one order", () => {
  const after = new Map<string, Set<string>>();
  for (const [, { plan }] of plans) {
    const ids = [...new Set(plan.answers.map(({ id }) => id))];
    for (const [i, id] of ids.entries()) after.set(id, new Set([...(after.get(id) ?? []), ...ids.slice(i + 1)]));
  }
  const swapped = [...after].flatMap(([id, later]) => [...later].filter((other) => after.get(other)?.has(id)));
  expect(swapped).toEqual([]);
});

test("every question is raised by some job", () => {
  const raised = new Set<string>(plans.flatMap(([, { plan }]) => plan.answers.map(({ id }) => id)));
  expect(questionIds.filter((id) => !raised.has(id))).toEqual([]);
});
