import { cavernHeightToDiameter } from "gelwright/mixing";
import { answerQuestions, type JobDocument, type PreparedJob, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

/** Constants of a stirrer that were measured on it, so that no band of the library's is put around them. */
const measured = { laminarPowerConstant: 41, powerNumber: 0.32, metznerOttoConstant: 10 };

/** A gel that holds its whole oil and no particles, stirred for ten minutes by a propeller in step 4. */
const propelled = (diameter: string): JobDocument =>
  changed(coldJob(), (draft) => {
    // How high it stands is then known to the last digit.
    for (const { density } of Object.values(draft.formula.materials) as Draft[])
      if (density) density.fallPerKelvin ??= "0.6 kg/m³";
    draft.vessel.stirrer = {
      kind: "propeller",
      ...measured,
      diameter,
      speed: "60 rpm",
      topEdge: "60 mm",
      revolutionsToBlend: 90,
      motor: { power: "20 kW" },
    };
    draft.process.steps.splice(3, 0, { do: "stir", for: "10 min", speed: "60 rpm" });
  });

type Id = "gel-moves-at-wall" | "gel-moves-at-surface" | "blended";

function at(prepared: PreparedJob, id: Id, speed: number): Answer {
  const changes = [{ change: "step", step: 4, field: "speed", value: speed }] as const;
  return known(answerQuestions({ prepared, changes, questions: [id] }).find(({ of }) => of.step === 4));
}

/** The speed from which the gel moves there, or from which it may. */
function limitOf(prepared: PreparedJob, id: Id, from: "met" | "not-known" = "met"): number {
  let [still, moves] = [0.1, 200];
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(still * moves);
    const { verdict } = at(prepared, id, middle);
    if (verdict === "met" || verdict === from) moves = middle;
    else still = middle;
  }
  return moves;
}

describe("a gel with a yield stress", () => {
  const prepared = prepareJob(propelled("200 mm"));
  const [wall, surface] = [limitOf(prepared, "gel-moves-at-wall"), limitOf(prepared, "gel-moves-at-surface")];

  test("moves at the wall before it moves at the surface, and each is asked", () => {
    expect(surface).toBeGreaterThan(1.1 * wall);
    // Just below the limit the flattest cavern that was seen reaches the wall, and the highest does not.
    const between = at(prepared, "gel-moves-at-wall", 0.999 * wall);
    expect(between.verdict).toBe("not-known");
    const { min, max } = cavernHeightToDiameter;
    expect((known(between.figure.max) / known(between.figure.min)) ** 3).toBeCloseTo((max + 1 / 3) / (min + 1 / 3), 6);
    const flattest = limitOf(prepared, "gel-moves-at-wall", "not-known");
    expect(at(prepared, "gel-moves-at-wall", 1.001 * flattest).verdict).toBe("not-known");
    expect(at(prepared, "gel-moves-at-wall", 0.999 * flattest)).toMatchObject({ verdict: "not-met", side: "below" });
    expect(at(prepared, "gel-moves-at-wall", 1.001 * wall).verdict).toBe("met");
    expect(at(prepared, "gel-moves-at-surface", 1.001 * surface).verdict).toBe("met");
    // Whether the end of what moves lies in the gel or at the surface, where no stress is, makes a sixth of the width.
    const below = at(prepared, "gel-moves-at-surface", 0.999 * surface);
    expect(below.verdict).toBe("not-known");
    expect(known(below.figure.max) - known(below.figure.min)).toBeCloseTo(0.52 / 6, 9);
    expect(at(prepared, "gel-moves-at-surface", wall)).toMatchObject({ verdict: "not-met", side: "below" });
  });

  test("moves as high as wall and ends carry the torque of the stirrer", () => {
    const changes = [{ change: "step", step: 4, field: "speed", value: surface }] as const;
    const { torque, viscosity } = known(runPrepared({ prepared, changes }).timeline[3]?.stirring) as unknown as {
      readonly torque: number;
      readonly viscosity?: number;
    };
    expect(viscosity ?? 1).toBeGreaterThan(0);
    const { figure, limit } = at(prepared, "gel-moves-at-surface", surface);
    // The yield stress between the readings of 84 and of 78 % of oil, on a logarithmic axis.
    const oil = known(runPrepared({ prepared, changes }).timeline[3]?.volumeFractionOil);
    const yieldStress = 3 * (13 / 3) ** ((oil - 0.78) / (0.84 - 0.78));
    const height = (2 * torque) / (Math.PI * 0.52 ** 2 * yieldStress) - 0.52 / 3;
    expect(known(figure.min) / height).toBeCloseTo(1, 6);
    expect(known(figure.min) / known(limit.min?.value)).toBeCloseTo(1, 6);
  });

  test("is never blended where it stands still, at the wall or at the surface, and is where all of it moves", () => {
    for (const speed of [0.999 * wall, 0.999 * surface])
      expect(at(prepared, "blended", speed)).toMatchObject({
        verdict: "not-known",
        figure: { min: null, max: null },
        notKnown: [{ code: "no-method", law: "cavern" }],
      });
    const blended = at(prepared, "blended", 1.001 * surface);
    expect(blended.verdict).toBe("met");
    expect(figureOf(blended)).toBeCloseTo(90 / (1.001 * surface), 6);
  });

  test("moves along the arms of what follows the wall: up to their upper edge, and that is asked for", () => {
    // Slow enough for the torque to leave the height open.
    const anchored = (topEdge?: number) =>
      changed(propelled("490 mm"), (draft) => {
        const { speed, motor } = draft.vessel.stirrer;
        draft.vessel.stirrer = {
          kind: "anchor",
          ...measured,
          metznerOttoConstant: 25,
          diameter: "490 mm",
          speed,
          motor,
          ...(topEdge && { topEdge: `${topEdge} m` }),
        };
        draft.process.steps[3].speed = "0.01 rpm";
      });
    const surfaceOf = (topEdge?: number) => answerOf(anchored(topEdge), "gel-moves-at-surface", { step: 4 });
    const level = known(surfaceOf(0.1).limit.min?.value);
    const reached = known(surfaceOf(0.1).figure.max);
    expect(reached).toBeLessThan(level);
    expect(surfaceOf(level - 1e-6)).toMatchObject({ verdict: "not-met", side: "below" });
    expect(surfaceOf(level + 1e-6).verdict).toBe("met");
    expect(surfaceOf()).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "not-stated", field: "stirrer-top-edge", of: "anchor" }],
    });
  });
});

describe("one reading of the yield stress is a reading", () => {
  /** The job with one yield stress alone, at an oil fraction. */
  const once = (oil: string, diameter = "490 mm", yieldStress = "13 Pa") =>
    changed(propelled(diameter), (draft) => {
      if (diameter === "490 mm") draft.vessel.stirrer = { ...coldJob().vessel.stirrer, topEdge: "800 mm" };
      const { readings } = draft.bench.emulsion.thickness;
      for (const reading of readings) delete reading.yieldStress;
      readings.push({ ...readings.at(-1), oil, yieldStress });
      readings.sort((one: Draft, other: Draft) => Number.parseFloat(one.oil) - Number.parseFloat(other.oil));
    });
  const oil = 100 * known(runPlan(propelled("200 mm")).timeline[3]?.volumeFractionOil);
  const movedBy = (document: JobDocument) => answerOf(document, "gel-moves-at-wall", { step: 4 });

  test("with as much oil it holds, within the bench's tolerance", () => {
    for (const apart of [-0.4, 0, 0.4]) {
      const found = movedBy(once(`${oil + apart} % v/v`, "200 mm"));
      expect(found).toMatchObject({ verdict: "not-met", side: "below" });
      // Of one yield stress caverns are as unlike as their shapes.
      expect(known(found.figure.max) / known(found.figure.min)).toBeCloseTo((1.08333 / 0.73333) ** (1 / 3), 4);
    }
  });

  test("with more oil the gel is stronger: what moves is at most as much, and no anchor is sure to move it", () => {
    const few = `${oil - 0.6} % v/v`;
    expect(movedBy(once(few, "200 mm"))).toMatchObject({ verdict: "not-met", figure: { min: null } });
    expect(movedBy(once(few))).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "not-read", field: "emulsion-thickness-yield-stress" }],
    });
  });

  test("with less oil it is weaker: what moves is at least as much", () => {
    const much = `${oil + 0.6} % v/v`;
    expect(movedBy(once(much))).toMatchObject({ verdict: "met", figure: { max: null } });
    expect(movedBy(once(much, "200 mm"))).toMatchObject({ verdict: "not-known", figure: { max: null } });
  });

  test("and none at all is no yield stress of nothing", () => {
    const none = changed(once(`${oil} % v/v`), (draft) => {
      for (const reading of draft.bench.emulsion.thickness.readings) delete reading.yieldStress;
    });
    expect(movedBy(none)).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "not-stated", field: "emulsion-thickness-yield-stress" }],
    });
  });
});

test("a material whose expansion is not stated leaves open how high the gel stands, and turns nothing green", () => {
  const job = known(jobsByName()["motor-too-weak"]);
  const surface = (fall: string | undefined, yieldStress: number) => {
    const changedJob = changed(job, ({ formula, bench }) => {
      bench.yieldStress = `${yieldStress} Pa`;
      if (fall === undefined) delete formula.materials.triglyceride.density.fallPerKelvin;
      else formula.materials.triglyceride.density.fallPerKelvin = fall;
    });
    return answerOf(changedJob, "gel-moves-at-surface", { step: 8 });
  };
  // So strong a gel that the highest that it may be moved is just below the surface; short of the wall it goes with the
  // cube root, and with 200 Pa the widest cavern is short of it.
  const { figure, limit } = surface("0.7 kg/m³", 200);
  const strong = 200 * (known(figure.max) / (0.9966 * known(limit.min?.min))) ** 3;
  const [stated, unstated] = [surface("0.7 kg/m³", strong), surface(undefined, strong)];
  expect([stated.verdict, unstated.verdict]).toEqual(["not-met", "not-known"]);
  const [low, high] = [known(unstated.limit.min?.min), known(unstated.limit.min?.max)];
  expect(unstated.limit.min?.assumptions).toEqual(["expansion-up-to-the-usual"]);
  // What is stated lies between the ends of what is not.
  expect(known(stated.limit.min?.min)).toBeGreaterThan(low);
  expect(known(stated.limit.min?.max)).toBeLessThan(high);
  expect(known(unstated.figure.max)).toBeGreaterThan(low);
  expect(known(unstated.figure.max)).toBeLessThan(high);
});
