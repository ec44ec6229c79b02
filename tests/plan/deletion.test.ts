import { CalculationError } from "gelwright/error";
import { type Answer, runPlan } from "gelwright/plan";
import { beforeAll, describe, expect, test } from "vitest";
import { type Deletion, deletions } from "./jobs/deletions.js";
import { keyOf, plansByName } from "./jobs/plans.js";

/** Two jobs that fail in many answers, in which every field is deleted; of the others every kind of field once. */
const whole: readonly string[] = ["heater-held-by-its-bath", "gel-warmed-by-stirring"];

/** The path without the places in lists and without the keys of materials. */
function kindOf(path: string): string {
  return path.replace(/\[\d+\]/g, "[]").replace(/(materials|premixes)\.[^.]+/, "$1.*");
}

const seen = new Set<string>();
const walks = plansByName().map(([name, { job, plan }]) => {
  const chosen = [...deletions(job)].filter(({ path }) => {
    const isNew = !seen.has(kindOf(path));
    seen.add(kindOf(path));
    return isNew || whole.includes(name);
  });
  return [name, { chosen, answers: new Map(plan.answers.map((answer) => [keyOf(answer), answer])) }] as const;
});

/** Why an answer may be met once a field is deleted: the kinds of fields, for some questions or for all. */
const greener: readonly { readonly fields: RegExp; readonly answers?: RegExp; readonly why: string }[] = [
  { fields: /^vessel\.stirrer$/, why: "nothing stirs: what a stirrer does is done to nothing" },
  { fields: /^vessel\.heater(\.temperatureMax)?$/, why: "a bound of the heater is deleted" },
  { fields: /^vessel\.heatedWall\.coefficient$/, why: "the correlation takes over" },
  { fields: /^bench\.yieldStress$/, why: "another source of the yield stress takes over" },
  { fields: /^pack\.(headSpaceMin|fillTarget|averageQuantity\..*)$/, why: "a wish or a rule is deleted" },
  { fields: /^vessel\.stirrer\.cover$/, why: "a wish is deleted" },
  { fields: /^vessel\.stirrer\.motor\.efficiency$/, why: "the default: power at the shaft" },
  { fields: /^process\.steps\[\]\.(for|at|speed|keeps|additions)$/, why: "the process is another" },
  { fields: /^formula\.(materials\.\*\.strength|phases\[\]\.lines\[\]\.as)$/, why: "the formula is another" },
  { fields: /^batch\.allowances/, why: "the batch is another" },
  // Doubtful: what is not stated counts as nothing, and a verdict is green that would not be.
  { fields: /density\.fallPerKelvin$/, answers: /^working-volume/, why: "what is not stated does not expand" },
];

/** What raises a question: a fact of the process or of its materials, a wish or a claim. */
const raising: readonly RegExp[] = [
  /^vessel\.stirrer(\.cover)?$/,
  /^bench\.emulsion(\.surfactant)?$/,
  /^bench\.strengthTrials(\.target)?$/,
  /^formula\.claims/,
  /^formula\.materials\.\*\.(limits.*|heatSensitive|particle|volatile|function)$/,
  /^process\.(workingDay|air(\.vacuum)?)$/,
  /^process\.steps\[\]\.(within|speed|for|with)$/,
  /^pack(\.nozzle(\.spray)?|\.nominal|\.fillTarget)?$/,
];

/** Faults that stand where a deleted thing is named, or where something else is needed in its place. */
const elsewhere: readonly (readonly [RegExp, RegExp])[] = [
  [/^formula\.(materials|premixes)(\.\*)?$/, /\.material$/],
  [/^vessel\.jacket$/, /^process\.steps\[\]$/],
  [/^vessel\.heatedWall$/, /^vessel\.heater\.temperatureMax$/],
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
  if (code !== "document") return false;
  const parent = path.replace(/(\.[^.[\]]+|\[[^\]]*\])$/, "");
  return faults.some(
    (fault) =>
      fault.path.startsWith(path) ||
      fault.path === parent ||
      // What an allowance or a volume needs is named in its own words, as a field of the same thing.
      fault.expected.includes(`${parent}.`) ||
      elsewhere.some(([field, place]) => field.test(kindOf(path)) && place.test(kindOf(fault.path))),
  );
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
        .filter(([key]) => !greener.some((one) => one.fields.test(kindOf(path)) && (one.answers ?? /^/).test(key)))
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
