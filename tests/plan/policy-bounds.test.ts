import { type JobDocument, type Plan, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { dragOf } from "../../src/plan/parts/entering.js";
import { runOf } from "../../src/plan/prepared-run.js";
import { questions } from "../../src/plan/questions/index.js";
import { readJob } from "../../src/plan/read.js";
import { answerOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { allJobsByName } from "./jobs/jobs.js";

const kettle = exampleJob();

describe("margins that a process does not state", () => {
  const plain = runPlan(
    changed(kettle, ({ process }: Draft) => {
      delete process.settingMargin;
      delete process.flashPointMargin;
    }),
  );

  test("are 2 K above the setting temperature, and 30 K below a flash point", () => {
    expect(answerOf(plain, "above-setting", { step: 6 }).margin).toEqual({ min: 2 });
    expect(answerOf(plain, "flash-point", { material: "almond", place: "charge" }).margin).toEqual({ max: 30 });
  });

  test("are a fifth of what the motor gives", () => {
    const { limit, margin } = answerOf(runPlan(coldJob()), "motor-power");
    expect(known(margin?.max) / known(limit.max?.max)).toBeCloseTo(0.2, 12);
  });
});

/** The brackets within which the levers of a question are looked for, for its first subject. */
function bracketsOf(job: JobDocument, id: string, step: number): readonly unknown[] {
  const run = runOf(readJob(job));
  const question = known(questions.find((one) => one.id === id));
  const [subject] = question.subjects(run);
  return (question.levers?.(subject, run, { step }) ?? []).map(({ id: lever, bracket }) => [lever, ...bracket]);
}

describe("a remedy is looked for", () => {
  test("up to 60 K warmer, up to 80 K in what is added, and in coolant of up to 90 K more", () => {
    expect(bracketsOf(kettle, "gel-former-dissolves", 2)).toEqual([["hotter-melt", 85, 145]]);
    const [added, melt] = bracketsOf(kettle, "above-setting", 6);
    expect([added, melt]).toEqual([
      ["warmer-addition", 21, 101],
      ["hotter-melt", expect.any(Number), expect.any(Number)],
    ]);
    const jacketed = changed(kettle, ({ process, vessel }: Draft) => {
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
      process.steps[4] = { do: "cool", to: "75 °C", with: "jacket", within: "5 min" };
    });
    expect(bracketsOf(jacketed, "skin-on-the-wall", 5)).toEqual([["warmer-coolant", 15, 105]]);
  });

  test("in filling up to a hundred times as fast, and not in no time at all", () => {
    const [[lever, duration, shortest] = []] = bracketsOf(kettle, "filled-before-it-sets", 10) as [
      string,
      number,
      number,
    ][];
    expect([lever, known(duration) / known(shortest)]).toEqual(["shorter-filling", 100]);
  });

  test("in up to twenty times the heater, and in coolant down to -20 °C", () => {
    const cooled = changed(kettle, ({ process, vessel }: Draft) => {
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
      delete process.steps[1].within;
      process.steps[4] = { do: "cool", to: "75 °C", with: "jacket", within: "5 min" };
    });
    expect(bracketsOf(cooled, "done-in-time", 5)).toEqual([["colder-coolant", 15, -20]]);
    const heated = changed(kettle, ({ process }: Draft) => (process.steps[1].within = "5 min"));
    const [[lever, power, powerMax] = []] = bracketsOf(heated, "done-in-time", 2) as [string, number, number][];
    expect([lever, known(powerMax) / known(power)]).toEqual(["stronger-heater", 20]);
  });

  test("in up to four times as many lots, and in steps of up to a hundred times as long", () => {
    const small = changed(kettle, ({ vessel }: Draft) => (vessel.workingVolume.min = "0.1 L"));
    expect(bracketsOf(small, "working-volume", 1)).toEqual([["more-lots", 1, 4]]);
    const [[, rest, longest] = []] = bracketsOf(kettle, "set-at-centre", 11) as [string, number, number][];
    expect(known(longest) / known(rest)).toBe(100);
  });
});

test("a list of lots ends at a thousand of them", () => {
  const prepared = prepareJob(
    changed(kettle, ({ batch, process }: Draft) => {
      Object.assign(batch.target, { packs: 300_000 });
      batch.lots = 1000;
      process.workingDay = { length: "8 h" };
      delete batch.stock;
    }),
  );
  const inLots = (value: number): Plan["lotOrder"] =>
    runPrepared({ prepared, changes: [{ change: "lots", value }] }).lotOrder;
  expect(inLots(1000)).toMatchObject({ days: expect.any(Number) });
  expect(inLots(1001)).toMatchObject({ notKnown: { code: "outside-range", quantity: "lots", max: 1000 } });
});

test("a vacuum is cautioned about below the pressure of the air, 100 kPa", () => {
  const cautioned = (pressure: string): boolean =>
    runPlan(
      changed(coldJob(), ({ process }: Draft) => {
        Object.assign(
          process.steps.find(({ do: kind }: Draft) => kind === "de-aerate"),
          { pressure },
        );
      }),
    ).cautions.some(({ code }) => code === "vacuum");
  expect(["99.9 kPa", "100.1 kPa"].map(cautioned)).toEqual([true, false]);
});

describe("the drag of a flake", () => {
  /** The law for a flake, by its thickness over its width. */
  const lawOf = (aspectRatio: number) =>
    dragOf({ diameter: Math.cbrt(1.5 / aspectRatio ** 2) * 1e-6, thickness: 1e-6, density: 2800 }).law;

  it.each([
    [0.0999, "disc"],
    [0.1001, "spheroid"],
    [0.6665, "spheroid"],
    [0.6668, "cheng"],
  ])("of %s of its width goes by the %s: thin up to a tenth, a ball from two thirds", (aspectRatio, law) => {
    const found = lawOf(aspectRatio);
    expect(found.law).toBe(law);
    if (found.law === "spheroid") expect(found.aspectRatio).toBeCloseTo(1.5 * aspectRatio, 9);
  });
});

describe("a correction of the gel former", () => {
  /** The cold route with a measured index of its gel former. */
  const measured = (value: number) => {
    const plan = runPlan(
      changed(coldJob(), ({ bench }: Draft) => (bench.emulsion.gelFormerIndex = { value, at: "21 °C" })),
    );
    const correction = known(plan.emulsion?.clarity).correction;
    const outer = known(plan.weighing.lines).filter(({ phase }) => phase === "A");
    return { correction, outer: outer.reduce((sum, { mass }) => sum + mass, 0) };
  };

  it("is offered up to twenty times what is there", () => {
    let [near, far] = [1.46, 1.6];
    for (let i = 0; i < 11; i++) {
      const middle = (near + far) / 2;
      if ("mass" in measured(middle).correction) near = middle;
      else far = middle;
    }
    const { correction, outer } = measured(near);
    if (!("mass" in correction)) throw new Error("it is offered");
    expect(correction.mass / outer).toBeLessThan(20.1);
    expect(correction.mass / outer).toBeGreaterThan(19.8);
    expect(measured(far).correction).toMatchObject({ notKnown: { code: "outside-range" } });
  });
});

describe("droplets of one size", () => {
  const reading = { oil: "84 % v/v", yieldStress: "13 Pa" };
  /** The cold route with one reading of its yield stress, and an amount of glycerin [%]. */
  const gel = (glycerin: number) => {
    const plan = runPlan(
      changed(coldJob(), ({ formula, bench }: Draft) => {
        formula.phases[0].lines[0].amount = `${glycerin} %`;
        for (const one of bench.emulsion.thickness.readings) delete one.yieldStress;
        Object.assign(bench.emulsion.thickness.readings.at(-1), reading);
      }),
    );
    const { figure, at } = plan.answers.filter(({ id }) => id === "gel-moves-at-wall").at(-1) ?? {};
    return { oil: Number(answerOf(plan, "maximum-oil-fraction").beside?.["planned"]), figure, at };
  };

  it("do not touch below 0.64 of the volume, and have no yield stress there", () => {
    const [dry, wet] = [gel(30).oil, gel(36).oil];
    const amountAt = (oil: number): number => 30 + (6 * (oil - dry)) / (wet - dry);
    const [below, above] = [0.638, 0.642].map((oil) => gel(amountAt(oil)));
    expect([below?.oil, above?.oil].map((oil) => known(oil) < 0.64)).toEqual([true, false]);
    expect(known(below?.figure?.min)).toBeGreaterThan(known(above?.figure?.min));
  });
});

describe("a vacuum", () => {
  it("widens bubbles that were measured under one standard atmosphere, as their volume goes with its inverse", () => {
    // 0.8 mm in the room, drawn to 60 mbar; an ideal gas at one temperature.
    const { figure } = answerOf(runPlan(coldJob()), "air-is-released", { step: 7 });
    expect(known(figure.value) / (0.8e-3 * (101_325 / 6000) ** (1 / 3))).toBeCloseTo(1, 12);
  });

  it("boils a material out at its share in moles, in an oil of 0.88 kg/mol", () => {
    const job = known(allJobsByName()["vacuum-foams-over"]);
    const plan = runPlan(job);
    const { limit, beside } = answerOf(plan, "vacuum-boils", { material: "alcohol" });
    const { mass = 0 } = plan.weighing.lines.find(({ material }) => material === "alcohol") ?? {};
    const share = mass / plan.weighing.total;
    // Raoult's law, with the Antoine constants of the job's document.
    const saturated = Math.exp(23.8 - 3800 / (Number(beside?.["temperature"]) + 273.15 - 41.7));
    const moles = share / 0.04607 / (share / 0.04607 + (1 - share) / 0.88);
    expect(known(limit.min?.value) / (moles * saturated)).toBeCloseTo(1, 4);
  });
});
