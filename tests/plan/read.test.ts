import { CalculationError, type Fault } from "gelwright/error";
import { prepareJob, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

/** The faults of a document; fails if there are none. */
function faultsOf(document: unknown): readonly Fault[] {
  try {
    runPlan(document);
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    expect(error.code).toBe("document");
    return error.faults;
  }
  return expect.unreachable("no fault");
}

function pathsOf(document: unknown): readonly string[] {
  return faultsOf(document).map(({ path }) => path);
}

describe("a job document", () => {
  test("has all its faults reported at once, each with its place", () => {
    const broken = changed(exampleJob(), (draft) => {
      draft.version = 2;
      draft.formula.phases[0].lines[0].material = "gold";
      draft.bench.viscosities[0].direction = "sideways";
      draft.bench.viscosities[1].phases = ["Z"];
      draft.batch.balances[0].increment = "5 °C";
      draft.vessel.diameter = "-340 mm";
      draft.vessel.workingVolume = { min: "50 L", max: "20 L" };
      draft.vessel.heatLoss = "2 W/K";
      draft.process.steps[1].to = "85";
      draft.process.steps[5].phase = "Z";
      draft.pack.name = 5;
    });
    const paths = pathsOf(broken);
    for (const path of [
      "version",
      "formula.phases[0].lines[0].material",
      "bench.viscosities[0].direction",
      "bench.viscosities[1].phases[0]",
      "batch.balances[0].increment",
      "vessel.diameter",
      "vessel.workingVolume.min",
      "process.steps[1].to",
      "process.steps[5].phase",
      "pack.name",
    ])
      expect(paths).toContain(path);
    expect(new Set(paths).size).toBe(paths.length);
  });

  test("is told which field was meant by a slip", () => {
    const slips = changed(exampleJob(), (draft) => {
      draft.vessel.diametre = draft.vessel.diameter;
      draft.vessel.stirrer.sped = "40 rpm";
      draft.process.steps[1].too = "85 °C";
      draft.process.qqqqqqqq = 1;
    });
    const found = Object.fromEntries(faultsOf(slips).map(({ path, expected }) => [path, expected]));
    expect(found["vessel.diametre"]).toMatch(/^no such field here; did you mean diameter\?$/);
    expect(found["vessel.stirrer.sped"]).toMatch(/did you mean speed\?$/);
    expect(found["process.steps[1].too"]).toMatch(/did you mean to\?$/);
    expect(found["process.qqqqqqqq"]).toMatch(/^no such field here/);
    expect(found["process.qqqqqqqq"]).not.toMatch(/did you mean/);
  });

  test("with a fault in a step of two forms has the fault reported for the form that was meant", () => {
    const withCooling = (change: (step: Record<string, unknown>) => void) =>
      faultsOf(
        changed(exampleJob(), (draft) => {
          change(draft.process.steps.find((step: Record<string, unknown>) => step["do"] === "cool"));
        }),
      ).map(({ path, rule }) => [path.replace(/^.*\./, ""), rule]);
    const toViscosity = (viscosity: unknown, more: object = {}) =>
      withCooling((step) => {
        delete step["to"];
        Object.assign(step, { toViscosity: viscosity, ...more });
      });
    expect(toViscosity("5 °C")).toEqual([["toViscosity", "unknown-unit"]]);
    expect(toViscosity("0 Pa·s")).toEqual([["toViscosity", "out-of-range"]]);
    expect(toViscosity("5 Pa·s", { within: 5 })).toEqual([["within", "wrong-type"]]);
    expect(toViscosity("5 Pa·s", { wobble: 1 })).toEqual([["wobble", "unknown-field"]]);
    expect(withCooling((step) => Object.assign(step, { to: "5 kg" }))).toEqual([["to", "unknown-unit"]]);
    expect(withCooling((step) => delete step["to"])).toEqual([["to", "missing"]]);
    expect(withCooling((step) => Object.assign(step, { toViscosity: "5 Pa·s" }))).toEqual([
      ["toViscosity", "unknown-field"],
    ]);
  });

  test("that is no object is refused, and so is one of nothing", () => {
    for (const document of [undefined, null, 5, "job", [], {}]) expect(pathsOf(document).length).toBeGreaterThan(0);
    expect(() => prepareJob({})).toThrow(CalculationError);
  });
});

describe("the order of steps", () => {
  type Steps = Record<string, unknown>[];

  /** The faults of a process whose steps are changed. */
  function order(change: (steps: Steps) => void, job = exampleJob()): readonly Fault[] {
    return faultsOf(changed(job, (draft) => change(draft.process.steps)));
  }

  const cases: readonly (readonly [string, (steps: Steps) => void, string, RegExp])[] = [
    [
      "heating an empty vessel",
      (steps) => steps.unshift({ do: "heat", to: "40 °C" }),
      "process.steps[0]",
      /a charge before it/,
    ],
    ["holding without heat", (steps) => steps.splice(1, 1), "process.steps[1]", /a "heat" before it/],
    ["cooling on the heat", (steps) => steps.splice(3, 1), "process.steps[3]", /a "take off the heat" before it/],
    [
      "cooling by a jacket that is not there",
      (steps) => Object.assign(steps[4] ?? {}, { with: "jacket" }),
      "process.steps[4]",
      /a jacket/,
    ],
    [
      "charging a phase twice",
      (steps) => steps.splice(8, 0, { do: "charge", phase: "B" }),
      "process.steps[8].phase",
      /not charged before/,
    ],
    ["forgetting a phase", (steps) => steps.splice(7, 1), "process.steps", /every phase of the formula/],
    [
      "going on after filling",
      (steps) => steps.push({ do: "stir", for: "5 min" }),
      "process.steps[11]",
      /only "rest" after "fill"/,
    ],
    ["never filling", (steps) => steps.splice(9, 2), "process.steps", /a "fill" at the end/],
    ["a step of no kind", (steps) => steps.push({ do: "sing" }), "process.steps[11].do", /./],
    ["no steps at all", (steps) => steps.splice(0), "process.steps", /a list of at least 1/],
    [
      "one step more than 200",
      (steps) =>
        steps.splice(1, 0, ...Array.from({ length: 201 - steps.length }, () => ({ do: "hold", for: "1 min" }))),
      "process.steps",
      /200/,
    ],
  ];

  test.each(cases)("%s is a fault with its place", (_name, change, path, expected) => {
    const faults = order(change);
    const fault = faults.find((one) => one.path === path);
    expect(faults.map((one) => one.path)).toContain(path);
    expect(fault?.expected).toMatch(expected);
  });

  test("may have 200 steps", () => {
    const held = changed(exampleJob(), ({ process: { steps } }) =>
      steps.splice(2, 0, ...Array.from({ length: 200 - steps.length }, () => ({ do: "hold", for: "1 min" }))),
    );
    expect(() => prepareJob(held)).not.toThrow();
  });

  test("has its faults reported together", () => {
    const paths = order((steps) => {
      steps.unshift({ do: "stir", for: "5 min" });
      steps.push({ do: "fill" });
    }, coldJob()).map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(["process.steps[0]", "process.steps[9]"]));
  });
});

describe("indices of a material", () => {
  const withNatural = (natural: number) =>
    changed(exampleJob(), (draft) => {
      draft.formula.materials.gelFormer.indices = { of: "material as supplied", natural, naturalOrigin: 0.7 };
    });

  // ISO 16128-1: what is natural is of natural origin too.
  test("that contradict one another are a fault of the document", () => {
    expect(pathsOf(withNatural(0.7001))).toEqual(["formula.materials.gelFormer.indices"]);
    expect(runPlan(withNatural(0.7)).naturalOrigin.withFormulationWater.max).toBeLessThan(1);
  });
});

/** The same of a job with something changed; none if it is read. */
function pathsOfChange(change: (draft: Draft) => void, job = exampleJob()): readonly string[] {
  try {
    prepareJob(changed(job, change));
    return [];
  } catch (error) {
    if (error instanceof CalculationError) return error.faults.map(({ path }) => path);
    throw error;
  }
}

describe("what of the bench needs several fields", () => {
  test("is told at its place", () => {
    expect(
      pathsOfChange(({ bench }) => Object.assign(bench.viscosities[0], { flowIndex: 0.8, shearRate: "0 1/s" })),
    ).toEqual(["bench.viscosities[0].shearRate"]);
    expect(
      pathsOfChange(({ bench }) => Object.assign(bench.emulsion, { volumeFractionOilMax: "100 % v/v" }), coldJob()),
    ).toEqual(["bench.emulsion.volumeFractionOilMax"]);
  });

  test("another formula than the job's has materials of the job, of which a line may be given by its active part", () => {
    const bench = (material: string, more: object) => (draft: Draft) => {
      const phases = structuredClone(draft.formula.phases);
      const line = phases[0].lines.findIndex(({ amount }: Draft) => amount !== "q.s.");
      Object.assign(phases[0].lines[line], more, { material });
      draft.bench.formula = { name: "on the bench", phases };
    };
    expect(pathsOfChange(bench("gelFormer", { as: "active" }))).toEqual([]);
    expect(pathsOfChange(bench("nobody", {}))).toEqual([
      expect.stringMatching(/^bench\.formula\.phases\[0\]\.lines\[\d\]\.material$/),
    ]);
  });
});
