import { type JobDocument, prepareJob, type Remedy, remedies, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, exampleJob } from "../support/example.js";

const job = exampleJob();

/** The heated wall as it is looked at for the flash point of the oil in phase A. */
const wallOf = (document: JobDocument): Answer =>
  answerOf(document, "flash-point", { material: "triglyceride", place: "heated-wall" });

describe("the heated wall", () => {
  test("is found from the stirrer by an equation worked out here on its own", () => {
    // An anchor above Re 100: Nu = 0.32 Re^(2/3) Pr^(1/3) (μ/μ_wall)^0.14, after Penney 2004, as it stands in the library's table.
    const masses = runPlan(job)
      .weighing.lines.filter((line) => line.phase === "A")
      .map((line) => line.mass);
    const [oil = 0, former = 0, antioxidant = 0] = masses;
    const whole = oil + former + antioxidant;
    const density = whole / (oil / (945 - 0.7 * 65) + former / 960 + antioxidant / 935);
    const fat = 1984.2 + 1.4733 * 85 - 4.8008e-3 * 85 ** 2;
    const specificHeat = (oil * fat + former * 2100 + antioxidant * 2055) / whole;
    const heat = (viscosity: number, viscosityWall: number, conductivity: number): number => {
      const reynolds = (density * (40 / 60) * 0.34 ** 2) / viscosity;
      const prandtl = (specificHeat * viscosity) / conductivity;
      const nusselt = 0.32 * reynolds ** (2 / 3) * prandtl ** (1 / 3) * (viscosity / viscosityWall) ** 0.14;
      return (nusselt * conductivity) / 0.38;
    };
    const wall = figureOf(wallOf(job));
    const flux = 1200 / 0.4;
    // The oil conducts 0.156, the gel former 0.17 W/(m·K); the wall's own thinning is worth a few per cent.
    const [few, many] = [0.75 * heat(0.019, 0.019, 0.155), 0.75 * heat(0.019, 0.012, 0.159)];
    expect(wall).toBeLessThan(85.1 + flux / few);
    expect(wall).toBeGreaterThan(84.9 + flux / many);
  });

  test("is as stated where it is stated, whatever stirs", () => {
    const stated = changed(job, (draft) => {
      draft.vessel.heatedWall = { area: "0.4 m²", coefficient: "90 W/(m²·K)", source: "a cooling test" };
    });
    // 85 °C and 1200 W over 0.4 m² and 90 W/(m²·K).
    expect(figureOf(wallOf(stated))).toBeCloseTo(85 + 1200 / 0.4 / 90, 9);
    expect(wallOf(stated).figure.basis).toContainEqual({
      kind: "stated",
      key: "vessel-heated-wall",
      source: "a cooling test",
    });
  });

  test("is hotter where the stirrer is slower", () => {
    const slow = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { speed: "20 rpm" }));
    const [slowly, usual] = [slow, job].map((one) => figureOf(wallOf(one)) - 85);
    // The coefficient goes as the power 2/3 of the speed, and the thinning at the wall takes a little of that back.
    expect((slowly ?? 0) / (usual ?? 0)).toBeGreaterThan(1.5);
    expect((slowly ?? 0) / (usual ?? 0)).toBeLessThan(2 ** (2 / 3));
  });

  type Draft = ReturnType<typeof JSON.parse>;
  test.each<[string, (draft: Draft) => unknown, NonNullable<Answer["beside"]>]>([
    ["a stirrer", (draft) => delete draft.vessel.stirrer, { code: "not-stated", field: "vessel-stirrer" }],
    ["its speed", (draft) => delete draft.vessel.stirrer.speed, { code: "not-stated", field: "stirrer-speed" }],
    [
      "a correlation",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "other" }),
      { code: "no-correlation", law: "stirred-wall" },
    ],
    ["readings", (draft) => draft.bench.viscosities.shift(), { code: "not-read", field: "bench-viscosities" }],
    [
      "conductivities",
      (draft) => {
        delete draft.formula.materials.triglyceride.propertiesOf;
        draft.formula.materials.triglyceride.specificHeat = "2000 J/(kg·K)";
      },
      { code: "not-stated", field: "material-conductivity" },
    ],
    ["specific heats", (draft) => delete draft.formula.materials.triglyceride.propertiesOf, { code: "not-stated" }],
    [
      "speed enough for the correlation",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "disc turbine", diameter: "120 mm", speed: "20 rpm" }),
      { code: "outside-range", law: "stirred-wall" },
    ],
  ])("is not known without %s, and says so", (_what, change, why) => {
    const found = wallOf(changed(job, change));
    expect(found).toMatchObject({ verdict: "not-known", figure: { max: null }, beside: why });
    // It is never taken to be as cool as the charge.
    for (const { verdict } of answersOf(runPlan(changed(job, change)), "flash-point", { place: "heated-wall" }))
      expect(verdict).toBe("not-known");
  });

  test("a stated coefficient has a source, and a stirrer fits its vessel", () => {
    const unsourced = changed(job, (draft) => Object.assign(draft.vessel.heatedWall, { coefficient: "90 W/(m²·K)" }));
    expect(() => runPlan(unsourced)).toThrow("vessel.heatedWall.source: found nothing");
    const wide = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { diameter: "400 mm" }));
    expect(() => runPlan(wide)).toThrow("vessel.stirrer.diameter: found 0.4 m, expected no more than the diameter");
  });

  test("a heater limited by its temperature gives what the stirred charge takes from it", () => {
    const limited = changed(job, (draft) => Object.assign(draft.vessel.heater, { temperatureMax: "90 °C" }));
    const plan = runPlan(limited);
    const keys = plan.timeline[1]?.basis.map(({ key }) => key);
    expect(keys).toContain("heater-limited-by-its-temperature");
    expect(keys).toContain("stirred-wall");
    expect(plan.timeline[1]?.timeEnd).toBeGreaterThan(runPlan(job).timeline[1]?.timeEnd ?? Number.NaN);
    expect(figureOf(wallOf(limited))).toBeLessThanOrEqual(90);
    const unknown = runPlan(changed(limited, (draft) => delete draft.vessel.stirrer));
    expect(unknown.timeline[1]).not.toHaveProperty("timeEnd");
    expect(unknown.timeline[1]?.notKnown).toMatchObject({ code: "not-stated", field: "vessel-stirrer" });
  });
});

describe("a cooling jacket", () => {
  const jacketed = (jacket: object): JobDocument =>
    changed(job, (draft) => {
      draft.vessel.jacket = { coolant: "45 °C", area: "0.4 m²", source: "this test", ...jacket };
      draft.process.steps[6] = { do: "cool", to: "61 °C", with: "jacket" };
    });
  const byCoefficients = jacketed({ outsideCoefficient: "300 W/(m²·K)" });
  const skinOf = (document: JobDocument): Answer => answerOf(document, "skin-on-the-wall", { step: 7 });
  const remedyOf = (document: JobDocument, lever: Remedy["lever"]): Remedy =>
    known(
      remedies({ prepared: prepareJob(document), answer: skinOf(document) }).find((one) => one.lever === lever),
      `no ${lever}`,
    );
  const coolFor = (document: JobDocument): number => {
    const step = runPlan(document).timeline[6];
    return (step?.timeEnd ?? Number.NaN) - (step?.timeStart ?? Number.NaN);
  };

  test("without a conductance conducts what its coefficients give, and says by which law", () => {
    const inside = jacketed({ insideCoefficient: "100 W/(m²·K)", outsideCoefficient: "300 W/(m²·K)" });
    const stated = jacketed({ conductance: "30 W/K", insideCoefficient: "100 W/(m²·K)" });
    expect(coolFor(inside) / coolFor(stated)).toBeCloseTo(1, 10);
    expect(runPlan(byCoefficients).timeline[6]?.basis).toContainEqual({
      kind: "law",
      key: "stirred-wall",
      of: "anchor",
    });
    expect(coolFor(byCoefficients)).toBeGreaterThan(0);
    expect(() => runPlan(jacketed({}))).toThrow("a conductance, or area and outsideCoefficient");
  });

  test("that is too cold sets a skin; the coolant that is named sets none, and no colder one", () => {
    expect(skinOf(byCoefficients)).toMatchObject({
      verdict: "not-met",
      side: "below",
      at: { step: 7, place: "cooled-wall" },
    });
    const { change } = remedyOf(byCoefficients, "warmer-coolant");
    const cooledBy = (coolant: number) =>
      skinOf(changed(byCoefficients, (draft) => Object.assign(draft.vessel.jacket, { coolant: `${coolant} °C` })))
        .verdict;
    expect([cooledBy(change.value + 1e-3), cooledBy(change.value - 1e-3)]).toEqual(["met", "not-met"]);
  });

  test("that is turned off sooner sets none, the margin above setting counted: the wall is coldest where the charge is", () => {
    const cold = jacketed({ coolant: "53 °C", outsideCoefficient: "100 W/(m²·K)" });
    const until = (to: number) =>
      skinOf(changed(cold, (draft) => Object.assign(draft.process.steps[6], { to: `${to} °C` })));
    expect(skinOf(cold).verdict).toBe("not-met");
    let [off, on] = [66, 61];
    expect(until(off).verdict).toBe("met");
    while (off - on > 0.05) {
      const middle = (off + on) / 2;
      if (until(middle).verdict === "met") off = middle;
      else on = middle;
    }
    expect([until(off + 0.1), until(on - 0.1)].map(({ verdict }) => verdict)).toEqual(["met", "not-met"]);
    expect(figureOf(until(off))).toBeCloseTo(known(skinOf(cold).limit.min?.value) + known(skinOf(cold).margin?.min), 1);
  });

  test("of which the wall is not known leaves the skin open", () => {
    const bare = changed(job, (draft) => {
      draft.vessel.jacket = { coolant: "20 °C", conductance: "45 W/K" };
      draft.process.steps[6] = { do: "cool", to: "61 °C", with: "jacket" };
    });
    expect(skinOf(bare)).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "not-stated", field: "vessel-jacket-area" }],
    });
    // More than the batch passes: its coefficient alone conducts 40 W/K.
    const much = jacketed({ conductance: "45 W/K", insideCoefficient: "100 W/(m²·K)" });
    expect(skinOf(much)).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "outside-range", law: "stirred-wall" }],
    });
  });
});
