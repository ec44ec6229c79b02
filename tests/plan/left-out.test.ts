import { type Answer, type JobDocument, type QuestionId, runPlan } from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

const verdictOf = (job: JobDocument, id: QuestionId): string => answerOf(job, id).verdict;

/** The hot route's example with a heat loss that is stated: one that is fitted to a cooling curve includes the wall. */
const withWall = changed(exampleJob(), ({ vessel }: Draft) => {
  delete vessel.coolingCurve;
  vessel.heatLoss = "3.6 W/K";
});

/** The same without the mass of its vessel, which keeps a melt warm. */
const noWall = (change: (draft: Draft) => void = () => {}): JobDocument =>
  changed(withWall, (draft) => {
    delete draft.vessel.wall;
    change(draft);
  });

describe("the wall of the vessel, if its mass is not stated, keeps the melt warm to an unknown degree", () => {
  const resting = (seconds: number): JobDocument =>
    noWall(({ process }) => Object.assign(process.steps.at(-1), { for: `${seconds} s` }));

  it("the packs set no sooner than without it, and no later than from the last temperature that was sure", () => {
    const { figure } = answerOf(noWall(), "set-at-centre");
    const [min, max] = [known(figure.min), known(figure.max)];
    expect(max).toBeGreaterThan(min);
    expect(figure.assumptions).toContain("vessel-wall-left-out");
    // What is left for the last pack may have set by the time that it is filled.
    expect(min).toBe(0);
    expect([min + 1, max - 1, max + 1].map((rest) => verdictOf(resting(rest), "set-at-centre"))).toEqual([
      "not-known",
      "not-known",
      "met",
    ]);
    // With the wall there is a narrower figure.
    const whole = answerOf(withWall, "set-at-centre").figure;
    expect(known(whole.max)).toBeLessThan(max);
  });

  it("particles settle at least as far as without it", () => {
    const allowing = (metres: number): string =>
      verdictOf(
        noWall(({ bench }) => (bench.settlingAllowed = `${metres} m`)),
        "particles-settle",
      );
    const { figure } = answerOf(noWall(), "particles-settle");
    expect(figure.max).toBeNull();
    const min = known(figure.min);
    expect([0.999 * min, 1.001 * min, 100 * min].map(allowing)).toEqual(["not-met", "not-known", "not-known"]);
    expect(known(answerOf(withWall, "particles-settle").figure.min)).toBeGreaterThan(min);
  });

  it("the window for adding may open later, and the melt may be warmer", () => {
    const [without, whole] = [noWall(), withWall].map((job) => answerOf(job, "particles-go-in"));
    expect(known(without).verdict).toBe("not-known");
    expect(known(without).limit.max?.min).toBeNull();
    expect(known(known(without).figure.max)).toBeGreaterThanOrEqual(known(known(whole).figure.max));
    expect(known(whole).verdict).toBe("met");
  });

  it("a pack may be filled as warm as the melt last was for certain", () => {
    const standing = (temperature: number): JobDocument =>
      noWall(({ pack }) => Object.assign(pack, { temperatureMax: `${temperature} °C` }));
    const { min, max } = answerOf(standing(60), "pack-stands-the-heat").figure;
    const found = [known(min) - 0.01, known(min) + 0.01, known(max) - 0.01, known(max) + 0.01];
    expect(found.map((at) => verdictOf(standing(at), "pack-stands-the-heat"))).toEqual([
      "not-met",
      "not-known",
      "not-known",
      "met",
    ]);
  });
});

describe("the heat of a stirrer that is not known", () => {
  const stream = jobsByName()["oil-by-stream"] as JobDocument;

  it("may bring water to the boil", () => {
    expect(verdictOf(stream, "vacuum-boils")).toBe("met");
    const without = (motor: boolean): JobDocument =>
      changed(stream, ({ bench, vessel }) => {
        delete bench.emulsion.thickness;
        if (!motor) delete vessel.stirrer.motor;
      });
    const bounded = answerOf(without(true), "vacuum-boils");
    expect(bounded.verdict).toBe("not-known");
    expect(known(bounded.limit.min?.max)).toBeGreaterThan(known(bounded.figure.max));
    expect(bounded.limit.min?.assumptions).toContain("heat-of-stirring-up-to-the-motor");
    expect(answerOf(without(false), "vacuum-boils")).toMatchObject({
      verdict: "not-known",
      limit: { min: { max: null, assumptions: expect.arrayContaining(["heat-of-stirring-left-out"]) } },
    });
  });
});

describe("a gel that only stirring warms, in a vessel whose wall or heat loss is not stated", () => {
  const wall = { mass: "20 kg", specificHeat: "500 J/(kg·K)" };
  const vessel = (allowed: number, ...without: readonly string[]): JobDocument =>
    changed(coldJob(), (draft) => {
      draft.vessel.wall = wall;
      draft.bench.emulsion.mismatchAllowed = allowed;
      for (const field of without) delete draft.vessel[field];
    });
  const figureOf = (...without: readonly string[]) => answerOf(vessel(0.001, ...without), "clarity-while-warm").figure;

  it.each([[["wall"]], [["heatLoss"]], [["wall", "heatLoss"]]])("may be as cool as the room: without %j", (without) => {
    const [whole, part] = [figureOf(), figureOf(...without)];
    const room = answerOf(vessel(0.001), "clarity-match").figure;
    expect(known(part.max)).toBeGreaterThanOrEqual(known(room.max));
    expect(known(part.max)).toBeGreaterThanOrEqual(known(whole.max));
    expect(known(part.min)).toBeLessThanOrEqual(known(whole.min));
    const max = known(part.max);
    expect(
      [0.9999 * max, 1.0001 * max].map((allowed) => verdictOf(vessel(allowed, ...without), "clarity-while-warm")),
    ).toEqual(["not-known", "met"]);
  });
});

describe("an expansion that is not stated", () => {
  const oils = ["sunflower", "tocopherols"];
  /** The cold route in a room 20 K from where its densities were read. */
  const warm = (without: readonly string[], change: (draft: Draft) => void = () => {}): JobDocument =>
    changed(coldJob(), (draft) => {
      draft.process.room = "40 °C";
      delete draft.process.steps.at(-1).temperature;
      for (const key of without) delete draft.formula.materials[key].density.fallPerKelvin;
      change(draft);
    });
  const all = Object.entries<Draft>(coldJob().formula.materials).flatMap(([key, { density }]) =>
    density?.fallPerKelvin === undefined ? [] : [key],
  );

  /** The end of a figure or a limit that the verdict waits for. */
  const worst: readonly (readonly [QuestionId, (answer: Answer) => number])[] = [
    ["clarity-match", ({ figure }) => known(figure.max)],
    ["maximum-oil-fraction", ({ figure }) => known(figure.max)],
    ["surfactant-covers-droplets", ({ limit }) => known(limit.min?.max)],
  ];

  it("is of some materials in the example", () => {
    expect(all).toEqual(expect.arrayContaining(oils.slice(0, 1)));
  });

  it.each(worst)("makes no answer to %s better, whichever material lacks it", (id, end) => {
    const whole = end(answerOf(warm([]), id));
    for (const without of [...all.map((key) => [key]), all])
      expect(end(answerOf(warm(without), id)), JSON.stringify(without)).toBeGreaterThanOrEqual(whole * (1 - 1e-12));
    expect(end(answerOf(warm(all), id))).toBeGreaterThan(whole);
  });

  it("leaves the mismatch open by what it moves, just below and just above what the bench allows", () => {
    const { figure } = answerOf(warm(all), "clarity-match");
    const max = known(figure.max);
    const allowing = (allowed: number): string =>
      verdictOf(
        warm(all, ({ bench }) => (bench.emulsion.mismatchAllowed = allowed)),
        "clarity-match",
      );
    expect([0.9999 * max, 1.0001 * max].map(allowing)).toEqual(["not-known", "met"]);
  });

  it("leaves a maximum oil fraction open likewise", () => {
    const { figure } = answerOf(warm(all), "maximum-oil-fraction");
    const above = (fraction: number): string =>
      verdictOf(
        warm(all, ({ bench, process }) => {
          bench.emulsion.volumeFractionOilMax = `${100 * fraction} % v/v`;
          process.oilFractionMargin = "0 % v/v";
        }),
        "maximum-oil-fraction",
      );
    const max = known(figure.max);
    expect([max - 1e-6, max + 1e-6].map(above)).toEqual(["not-met", "met"]);
  });
});

it("nothing is asked better of the hot route without the wall of its vessel", () => {
  const [whole, without] = [runPlan(withWall), runPlan(noWall())];
  for (const { id, of, verdict } of without.answers)
    if (verdict === "met") expect(answersOf(whole, id, of).map((one) => one.verdict)).toContain("met");
});
