import { type JobDocument, prepareJob, type Remedy, remedies, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob, readOnTheWayDown } from "../support/example.js";

const job = exampleJob();

/** The same with a melt that was read up to a wall of 160 °C. */
const hotter = changed(job, (draft) => {
  draft.bench.viscosities[0].readings.push({ at: "160 °C", viscosity: "5 mPa·s" });
});

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
    const { min, value, max } = wallOf(hotter).figure;
    const flux = 1200 / 0.4;
    // The oil conducts 0.156, the gel former 0.17 W/(m·K); the wall's own thinning is worth a few per cent. The
    // correlation holds to a quarter of its value.
    const [few, many] = [heat(0.019, 0.019, 0.155), heat(0.019, 0.01, 0.159)];
    for (const [wall, share] of [
      [min, 1.25],
      [value, 1],
      [max, 0.75],
    ] as const) {
      expect(known(wall)).toBeLessThan(85.1 + flux / few / share);
      expect(known(wall)).toBeGreaterThan(84.9 + flux / many / share);
    }
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
    const slow = changed(hotter, (draft) => Object.assign(draft.vessel.stirrer, { speed: "20 rpm" }));
    const [slowly, usual] = [slow, hotter].map((one) => figureOf(wallOf(one)) - 85);
    // The coefficient goes as the power 2/3 of the speed, and the thinning at the wall takes a little of that back.
    expect((slowly ?? 0) / (usual ?? 0)).toBeGreaterThan(1.5);
    expect((slowly ?? 0) / (usual ?? 0)).toBeLessThan(2 ** (2 / 3));
  });

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

describe("a wall beyond the viscosity readings", () => {
  /** The charge of phase A, read up to a temperature on heating. */
  const readTo = (max: number, flash = 150, change: (draft: Draft) => void = () => {}) =>
    changed(job, (draft) => {
      draft.bench.viscosities[0].readings = [
        { at: "75 °C", viscosity: "31 mPa·s" },
        { at: "85 °C", viscosity: "19 mPa·s" },
        { at: `${max} °C`, viscosity: "14 mPa·s" },
      ];
      draft.formula.materials.triglyceride.limits = { flashPoint: `${flash} °C` };
      change(draft);
    });

  test("is one figure as long as the readings reach it, and between their end and a bound once they do not", () => {
    let [reaches, short] = [300, 90];
    while (reaches - short > 1e-3) {
      const middle = (reaches + short) / 2;
      if (wallOf(readTo(middle)).figure.value === undefined) short = middle;
      else reaches = middle;
    }
    const above = wallOf(readTo(reaches)).figure;
    expect(known(above.value)).toBeCloseTo(reaches, 2);
    expect(above.assumptions ?? []).not.toContain("wall-as-thick-as-read");
    const below = wallOf(readTo(short)).figure;
    expect(below.assumptions).toContain("wall-as-thick-as-read");
    // The upper end goes on from there; the lower one is as hot as was read, or as the upper end of the band has it.
    expect(known(below.max)).toBeCloseTo(known(above.max), 2);
    expect(known(below.min)).toBeCloseTo(known(above.min), 2);
    expect(wallOf(readTo(90)).figure).toMatchObject({ min: 90 });
  });

  test("is met just above its upper end, not met just below its lower one, and between them not known", () => {
    const { min, max } = wallOf(readTo(90)).figure;
    const verdictAt = (allowed: number) => wallOf(readTo(90, allowed + 30)).verdict;
    const [low, high] = [known(min), known(max)];
    expect([high + 1e-6, high - 1e-6, low + 1e-6, low - 1e-6].map(verdictAt)).toEqual([
      "met",
      "not-known",
      "not-known",
      "not-met",
    ]);
    // How far it may be beyond what is allowed is part of the answer.
    expect(wallOf(readTo(90, low + 30)).beside?.["beyond"]).toBeCloseTo(high - low, 9);
  });

  test("is no hotter than the heater, whatever was read", () => {
    const held = (temperatureMax: number) =>
      wallOf(
        readTo(90, 150, (draft) => Object.assign(draft.vessel.heater, { temperatureMax: `${temperatureMax} °C` })),
      );
    expect(held(100).figure).toMatchObject({ min: 90, max: 100 });
    expect(held(89).figure.max).toBe(89);
  });

  test("of a charge that is colder than any reading may be as hot as the heater, or anything", () => {
    const thick = (temperatureMax?: string) =>
      wallOf(
        readTo(120, 150, (draft) => {
          draft.bench.viscosities[0].readings.splice(0, 2, { at: "86 °C", viscosity: "19 mPa·s" });
          if (temperatureMax) draft.vessel.heater.temperatureMax = temperatureMax;
        }),
      ).figure;
    expect(thick("140 °C")).toMatchObject({ max: 140 });
    expect(thick().max).toBeNull();
    expect(thick()).not.toHaveProperty("value");
  });
});

describe("how long a heater takes that its temperature limits", () => {
  const heated = (readTo: number, within = "10 h", limited = true) =>
    answerOf(
      changed(job, (draft) => {
        if (limited) draft.vessel.heater.temperatureMax = "98 °C";
        draft.bench.viscosities[0].readings = [
          { at: "15 °C", viscosity: "0.3 Pa·s" },
          { at: "75 °C", viscosity: "31 mPa·s" },
          { at: `${readTo} °C`, viscosity: "14 mPa·s" },
        ];
        draft.process.steps[1].within = within;
      }),
      "done-in-time",
      { step: 2 },
    );

  test("is between the quarters of the correlation where the wall was read", () => {
    const { min, max, value } = heated(98.001).figure;
    expect(known(min)).toBeLessThan(known(value));
    expect(known(max)).toBeGreaterThan(known(value));
    expect(heated(98.001, `${known(max) + 1e-3} s`).verdict).toBe("met");
    expect(heated(98.001, `${known(max) - 1e-3} s`).verdict).toBe("not-known");
    expect(heated(98.001, `${known(min) - 1e-3} s`).verdict).toBe("not-met");
  });

  test("is at least that of its power where the wall is hotter than the readings", () => {
    const { figure } = heated(97.999);
    expect(figure).not.toHaveProperty("value");
    expect(known(figure.min)).toBeCloseTo(known(heated(97.999, "10 h", false).figure.value), 6);
    expect(known(figure.max)).toBeCloseTo(known(heated(98.001).figure.max), 0);
  });

  test("has no upper end where the charge is colder than the readings", () => {
    const cold = changed(job, (draft) => {
      draft.vessel.heater.temperatureMax = "98 °C";
      draft.process.steps[1].within = "10 h";
    });
    expect(answerOf(cold, "done-in-time", { step: 2 })).toMatchObject({ verdict: "not-known", figure: { max: null } });
  });
});

describe("cooling through a wall that is colder than the viscosity readings", () => {
  // Phases A and B were read down to 54 °C.
  const cooledBy = (coolant: number, within = "10 h", to = 61, change: (draft: Draft) => void = () => {}) =>
    changed(job, (draft) => {
      draft.vessel.jacket = {
        coolant: `${coolant} °C`,
        area: "0.4 m²",
        outsideCoefficient: "300 W/(m²·K)",
        // So much of it that it does not warm.
        capacityFlow: "1000000000 W/K",
        source: "this test",
      };
      draft.process.steps[6] = { do: "cool", to: `${to} °C`, with: "jacket", within };
      change(draft);
    });
  const timeOf = (coolant: number, to?: number) =>
    answerOf(cooledBy(coolant, "10 h", to), "done-in-time", { step: 7 }).figure;

  test("never takes longer with a colder coolant", () => {
    const times = [5, 15, 25, 35, 45, 50, 53, 54, 55].map((coolant) => timeOf(coolant));
    for (const end of ["min", "max"] as const) {
      const ends = times.map((figure) => known(figure[end]));
      ends.slice(1).forEach((one, i) => {
        expect(one).toBeGreaterThan(known(ends[i]) * (1 - 1e-9));
      });
    }
    const steps = [5, 55].map((coolant) => known(runPlan(cooledBy(coolant)).timeline[6]));
    expect(steps.map(({ assumptions }) => assumptions.includes("wall-as-thick-as-read"))).toEqual([true, false]);
  });

  test("is at least as long as where the readings end lets it be, and no longer than by the last wall that was read", () => {
    const { min, max, value } = timeOf(5);
    expect(value).toBeUndefined();
    const verdictWithin = (time: number) => answerOf(cooledBy(5, `${time} s`), "done-in-time", { step: 7 }).verdict;
    expect([known(max) + 1e-6, known(max) - 1e-6, known(min) + 1e-6, known(min) - 1e-6].map(verdictWithin)).toEqual([
      "met",
      "not-known",
      "not-known",
      "not-met",
    ]);
  });

  test("takes by an equation worked out here on its own, of a melt that is equally thick at every reading", () => {
    const even = (coolant: number) =>
      cooledBy(coolant, "10 h", 61, (draft) => {
        for (const { readings } of draft.bench.viscosities)
          for (const reading of readings) reading.viscosity = `${20 - 1e-6 * Number.parseFloat(reading.at)} mPa·s`;
        delete draft.vessel.coolingCurve;
        draft.vessel.heatLoss = "0.001 W/K";
      });
    const plan = runPlan(even(5));
    const { mass, temperatureStart } = known(plan.timeline[6]);
    const start = known(temperatureStart);
    // An anchor above Re 100, as above; 3 % for what the properties of the other materials are.
    const fat = 1984.2 + 1.4733 * 68 - 4.8008e-3 * 68 ** 2;
    const inside =
      (0.32 * ((908 * (40 / 60) * 0.34 ** 2) / 0.02) ** (2 / 3) * ((fat * 0.02) / 0.158) ** (1 / 3) * 0.158) / 0.38;
    const heatCapacity = mass * fat + 12 * 500;
    const fast = 1 / (1 / (1.25 * inside) + 1 / 300);
    const min = (heatCapacity / (0.4 * fast)) * Math.log((start - 5) / (61 - 5));
    const max = (heatCapacity / (0.4 * 0.75 * inside)) * Math.log((start - 54) / (61 - 54));
    const { figure } = answerOf(plan, "done-in-time", { step: 7 });
    expect(Math.abs(known(figure.min) / min - 1)).toBeLessThan(0.03);
    expect(Math.abs(known(figure.max) / max - 1)).toBeLessThan(0.03);
  });

  test("has the loss to the room alone for its upper end as the charge itself comes to where they end, and then none", () => {
    const until = (to: number) =>
      answerOf(
        cooledBy(5, "30 h", to, (draft) => {
          // Thin enough for the correlation down there, and next to nothing is stirred into it.
          draft.bench.viscosities[1].readings = [
            { at: "80 °C", viscosity: "20 mPa·s" },
            { at: "54 °C", viscosity: "30 mPa·s" },
          ];
        }),
        "done-in-time",
        { step: 7 },
      ).figure.max;
    // 69 kJ/K, 3.5 W/K and 33 K above the room make the last hundredth of a kelvin one of 6 s, and the jacket a little less.
    const last = known(until(54)) - known(until(54.01));
    expect(last).toBeGreaterThan(5);
    expect(last).toBeLessThan(7);
    // What stirs a melt that nobody read heats it by nobody knows how much.
    expect(until(53.99)).toBeNull();
  });

  test("leaves the wall between the coolant and where the readings end", () => {
    const skin = (coolant: number) => answerOf(cooledBy(coolant), "skin-on-the-wall", { step: 7 }).figure;
    let [read, beyond] = [55, 45];
    while (read - beyond > 1e-3) {
      const middle = (read + beyond) / 2;
      if (skin(middle).value === undefined) beyond = middle;
      else read = middle;
    }
    expect(known(skin(read).value)).toBeCloseTo(54, 2);
    expect(skin(beyond)).toMatchObject({ min: beyond, assumptions: ["wall-as-thick-as-read"] });
    expect(known(skin(beyond).max)).toBeCloseTo(known(skin(read).max), 2);
  });

  test("counts in the day with both of its ends", () => {
    const day = (hours: number) =>
      answerOf(
        readOnTheWayDown(
          cooledBy(5, "10 h", 61, (draft) => {
            draft.process.workingDay = { length: `${hours} h` };
          }),
        ),
        "lot-fits-the-day",
      );
    const { min, max } = day(10).figure;
    const { min: shortest, max: longest } = timeOf(5);
    expect(known(max) - known(min)).toBeCloseTo(known(longest) - known(shortest), 6);
    const hours = [known(max) + 1e-3, known(max) - 1e-3, known(min) - 1e-3].map((time) => day(time / 3600).verdict);
    expect(hours).toEqual(["met", "not-known", "not-met"]);
  });

  test("left out, of the vessel itself, leaves open how long the day is", () => {
    const inDay = (wall: boolean, hours: number) =>
      changed(readOnTheWayDown(job), (draft) => {
        draft.process.workingDay = { length: `${hours} h` };
        if (!wall) delete draft.vessel.wall;
      });
    const day = (wall: boolean, hours: number) => answerOf(inDay(wall, hours), "lot-fits-the-day");
    const { max } = day(true, 20).figure;
    const filled = runPlan(inDay(false, 20)).timeline.find(({ inPacks }) => inPacks);
    const shortest = known(filled?.timeEnd) / 3600;
    expect(day(true, known(max) / 3600 + 1e-6).verdict).toBe("met");
    // What warms and cools along makes it longer, by how much nobody knows.
    expect(3600 * shortest).toBeLessThan(known(max));
    const { figure } = day(false, 20);
    expect(figure).toMatchObject({ max: null, assumptions: expect.arrayContaining(["vessel-wall-left-out"]) });
    expect(figure.value).toBeUndefined();
    const without = [20, shortest + 1e-6, shortest - 1e-6].map((hours) => day(false, hours));
    expect(without.map(({ verdict }) => verdict)).toEqual(["not-known", "not-known", "not-met"]);
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
    // Within a quarter of the correlation the wall may be colder, or not.
    expect([change.value + 1e-3, change.value - 1e-3, change.value - 5].map(cooledBy)).toEqual([
      "met",
      "not-known",
      "not-met",
    ]);
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
    expect([until(off + 0.1), until(on - 0.1)].map(({ verdict }) => verdict)).toEqual(["met", "not-known"]);
    const { figure, limit, margin } = until(off);
    expect(known(figure.min)).toBeCloseTo(known(limit.min?.value) + known(margin?.min), 1);
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
