import { CalculationError } from "gelwright/error";
import { type Answer, runPlan } from "gelwright/plan";
import { beforeAll, describe, expect, test } from "vitest";
import { type Deletion, deletions } from "./jobs/deletions.js";
import { keyOf, plansByName } from "./jobs/plans.js";
import { kindOf, type Outcome, pairsOf, type Removable, removableOf, walk } from "./jobs/walk.js";

/** Two jobs that fail in many answers, in which every field is deleted; of the others every kind of field once. */
const whole: readonly string[] = ["heater-held-by-its-bath", "gel-warmed-by-stirring"];

const seen = new Set<string>();
const plans = plansByName();
const walks = plans.map(([name, { job, plan }]) => {
  const chosen = [...deletions(job)].filter(({ path }) => {
    const isNew = !seen.has(kindOf(path));
    seen.add(kindOf(path));
    return isNew || whole.includes(name);
  });
  return [name, { chosen, answers: new Map(plan.answers.map((answer) => [keyOf(answer), answer])) }] as const;
});

/** Why an answer may be met once a reading or a property is deleted. */
const takenOver: readonly { readonly field: RegExp; readonly answers?: RegExp; readonly why: string }[] = [
  { field: /^vessel\.heatedWall\.coefficient$/, why: "the correlation takes over" },
  { field: /^bench\.yieldStress$/, why: "another source of the yield stress takes over" },
  { field: /^batch\.allowances\[\]\.thickness$/, why: "the film that the yield stress holds takes over" },
];

/** Why an answer may be met once a field of another class is deleted: it is another job then. */
const greener: readonly { readonly fields: RegExp; readonly why: string }[] = [
  { fields: /^vessel\.stirrer$/, why: "nothing stirs: what a stirrer does is done to nothing" },
  { fields: /^vessel\.heater(\.temperatureMax)?$/, why: "a bound of the heater is deleted" },
  { fields: /^stability\.(sample|cycles|transitions|conditions\[\]\.(at|reserve))$/, why: "another test" },
  { fields: /^pack\.(headSpaceMin|fillTarget|averageQuantity\..*)$/, why: "a wish or a rule is deleted" },
  { fields: /^vessel\.stirrer\.cover$/, why: "a wish is deleted" },
  { fields: /^process\.steps\[\]\.(for|packsPerMinute|at|speed|keeps|additions)$/, why: "the process is another" },
  { fields: /^formula\.(materials\.\*\.strength|phases\[\]\.lines\[\]\.as)$/, why: "the formula is another" },
  { fields: /^batch\.allowances$/, why: "the batch is another" },
];

/** What raises a question: a fact of the process or of its materials, a wish or a claim. */
const raising: readonly RegExp[] = [
  /^vessel\.stirrer(\.cover)?$/,
  /^bench\.emulsion$/,
  /^bench\.strengthTrials(\.target)?$/,
  /^formula\.claims/,
  /^formula\.materials\.\*\.(limits(\.(temperatureMax|shareMax))?|heatSensitive|particle|volatile|function)$/,
  /^batch\.stock$/,
  /^process\.(workingDay|air(\.vacuum)?)$/,
  /^process\.steps\[\]\.(within|speed|for|packsPerMinute|with|pressure)$/,
  /^stability(\.conditions\[\]\.at|\.transitions)?$/,
  /^pack(\.nozzle(\.spray)?|\.nominal|\.fillTarget|\.temperatureMax)?$/,
];

/** Faults that stand where a deleted thing is named, or where something else is needed in its place. */
const elsewhere: readonly (readonly [RegExp, RegExp])[] = [
  [/^formula\.(materials|premixes)(\.\*)?$/, /\.material$/],
  [/^vessel\.jacket$/, /^process\.steps\[\]$/],
  [/^process\.steps\[\]\.toViscosity$/, /^process\.steps\[\]\.to$/],
];

/** What happens without a field: the answers, or the error. */
function without({ document }: Deletion): readonly Answer[] | CalculationError {
  try {
    return runPlan(document).answers;
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
}

function names(path: string, { code, faults }: CalculationError): boolean {
  const parent = path.replace(/(\.[^.[\]]+|\[[^\]]*\])$/, "");
  return (
    code === "document" &&
    faults.some(
      (fault) =>
        fault.path.startsWith(path) ||
        fault.path === parent ||
        fault.expected.includes(path) ||
        elsewhere.some(([field, place]) => field.test(kindOf(path)) && place.test(kindOf(fault.path))),
    )
  );
}

function isTakenOver(kind: string, key: string): boolean {
  return takenOver.some(({ field, answers = /^/ }) => field.test(kind) && answers.test(key));
}

describe.each(walks)("without a field of %s", (_name, { chosen, answers }) => {
  type Run = ReadonlyMap<string, Answer>;
  const faults: [string, CalculationError][] = [];
  const runs: [string, Run][] = [];

  beforeAll(() => {
    for (const deletion of chosen) {
      const after = without(deletion);
      if (after instanceof CalculationError) faults.push([deletion.path, after]);
      else runs.push([deletion.path, new Map(after.map((answer) => [keyOf(answer), answer]))]);
    }
  });

  test("the error names the field, or what holds it", () => {
    const lost = faults.filter(([path, error]) => !names(path, error));
    expect(lost.map(([path, { message }]) => [path, message])).toEqual([]);
  });

  test("nothing becomes met", () => {
    const met = runs.flatMap(([path, after]) =>
      [...answers]
        .filter(([key, before]) => before.verdict !== "met" && after.get(key)?.verdict === "met")
        .filter(([key]) => !isTakenOver(kindOf(path), key) && !greener.some(({ fields }) => fields.test(kindOf(path))))
        .map(([key, { verdict }]) => `${path}: ${key} was ${verdict}`),
    );
    expect(met).toEqual([]);
  });

  test("no answer vanishes but with what raises its question", () => {
    const gone = runs.flatMap(([path, after]) =>
      raising.some((field) => field.test(kindOf(path)))
        ? []
        : [...answers.keys()].filter((key) => !after.has(key)).map((key) => `${path}: ${key}`),
    );
    expect(gone).toEqual([]);
  });
});

test("the walk deletes what matters", () => {
  expect(walks.reduce((sum, [, { chosen }]) => sum + chosen.length, 0)).toBeGreaterThan(500);
});

/** So many pairs a job; `npx tsx tests/plan/jobs/walk-all.ts` takes 2,000, and every single one of the fields. */
const pairsOfJob = 12;

describe("without readings and properties, one at a time and in seeded pairs", () => {
  const outcomes: Outcome[] = [];
  const counts: Record<string, number> = { reading: 0, property: 0, pairs: 0 };
  const known = new Set<string>();

  beforeAll(() => {
    for (const [, { job, plan }] of plans) {
      const fields = removableOf(job);
      const before = new Map(plan.answers.map((answer) => [keyOf(answer), answer]));
      const take = (what: string, some: readonly Removable[]): void => {
        counts[what] = (counts[what] ?? 0) + 1;
        outcomes.push(walk(job, before, some));
      };
      // Every kind of field once, of all jobs together.
      for (const field of fields.filter(({ path }) => !known.has(kindOf(path)))) {
        known.add(kindOf(field.path));
        take(field.holds, [field]);
      }
      for (const pair of pairsOf(fields, pairsOfJob, 13)) take("pairs", pair);
    }
  });

  test("nothing becomes met but what another source decides", () => {
    const met = outcomes.flatMap(({ paths, greener: keys }) =>
      keys.filter((key) => !paths.some((path) => isTakenOver(kindOf(path), key))).map((key) => [...paths, key]),
    );
    expect(met).toEqual([]);
  });

  test("no answer vanishes", () => {
    const gone = outcomes.flatMap(({ paths, gone: keys }) => {
      // A flash point that is stated of what is neither oil nor fragrance raises its question.
      const isFlashPoint = paths.some((path) => path.endsWith(".limits.flashPoint"));
      return keys.filter((key) => !(isFlashPoint && key.startsWith("flash-point"))).map((key) => [...paths, key]);
    });
    expect(gone).toEqual([]);
  });

  test("nothing throws but a fault of the document that names the field", () => {
    expect(outcomes.flatMap(({ paths, error }) => (error === undefined ? [] : [[...paths, error]]))).toEqual([]);
  });

  test("what was not met becomes not known in many", () => {
    expect(outcomes.reduce((sum, { lost }) => sum + lost.length, 0)).toBeGreaterThan(50);
    expect(outcomes.filter(({ refused }) => refused).length).toBeGreaterThan(10);
    expect(counts).toEqual({
      reading: expect.any(Number),
      property: expect.any(Number),
      pairs: pairsOfJob * plans.length,
    });
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(25);
  });
});
