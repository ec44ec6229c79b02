import { stagedAdditions } from "gelwright/heat";
import { choiOkosFat } from "gelwright/laws";
import { answerQuestions, type JobDocument, prepareJob, type Remedy, remedies, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, exampleJob } from "../support/example.js";
import { march } from "../support/ode.js";

const job = exampleJob();
const durationOf = (document: JobDocument, number: number): number => {
  const step = runPlan(document).timeline[number - 1];
  if (step?.timeStart === undefined || step.timeEnd === undefined)
    throw new Error(`no duration: ${JSON.stringify(step?.notKnown)}`);
  return step.timeEnd - step.timeStart;
};
/** What a step rests on, as kinds and keys. */
const basisOf = (document: JobDocument, number: number): readonly string[] =>
  known(runPlan(document).timeline[number - 1]).basis.map(({ kind, key }) => `${kind} ${key}`);
/** Where the loss of the vessel comes from, with the fit if it was fitted. */
const lossSource = (document: JobDocument) => runPlan(document).sources.find(({ key }) => key.startsWith("heat-loss"));

describe("the loss of the vessel", () => {
  test("fitted to a cooling curve is that of the curve", () => {
    const capacity = 30 * 2060 + 12 * 500;
    const readings = [0, 1800, 3600].map((time) => ({
      after: `${time} s`,
      temperature: `${20 + 65 * Math.exp((-4 * time) / capacity)} °C`,
    }));
    const fitted = changed(job, (draft) => Object.assign(draft.vessel.coolingCurve, { readings }));
    const stated = changed(job, (draft) => {
      delete draft.vessel.coolingCurve;
      draft.vessel.heatLoss = "4 W/K";
    });
    expect(durationOf(fitted, 5) / durationOf(stated, 5)).toBeCloseTo(1, 6);
    expect(basisOf(fitted, 5)).toContain("reading vessel-heat-loss");
    const { fit } = known(lossSource(fitted));
    expect(fit?.readings).toBe(3);
    expect(fit?.value).toBeCloseTo(4, 9);
  });

  test("from two readings has no interval, and says so", () => {
    const two = changed(job, (draft) => draft.vessel.coolingCurve.readings.splice(2));
    const { fit } = known(lossSource(two));
    expect(fit).toMatchObject({ readings: 2, value: expect.closeTo(3.5, 0) });
    expect(fit).not.toHaveProperty("min");
    expect(fit).not.toHaveProperty("max");
    const { fit: five } = known(lossSource(job));
    expect(five?.min).toBeLessThan(five?.value ?? 0);
    expect(five?.max).toBeGreaterThan(five?.value ?? 0);
  });

  test("from its surfaces is convection and radiation, and insulation slows it", () => {
    const bare = changed(job, (draft) => {
      delete draft.vessel.coolingCurve;
      draft.vessel.surfaces = { height: "320 mm", emissivity: 0.3 };
    });
    const lagged = changed(bare, (draft) => {
      draft.vessel.surfaces.insulation = { thickness: "40 mm", conductivity: "0.04 W/(m·K)" };
    });
    expect(basisOf(bare, 5)).toContain("law convection-and-radiation");
    expect(durationOf(lagged, 5)).toBeGreaterThan(1.2 * durationOf(bare, 5));
  });

  test("is stated in one way only", () => {
    expect(() => runPlan(changed(job, (draft) => Object.assign(draft.vessel, { heatLoss: "4 W/K" })))).toThrow(
      "vessel: found heatLoss and coolingCurve, expected one of heatLoss, coolingCurve and surfaces",
    );
  });
});

describe("heating and cooling on purpose", () => {
  const limited = changed(job, (draft) => {
    draft.vessel.heatedWall = { area: "0.4 m²", coefficient: "90 W/(m²·K)", source: "this test" };
    draft.vessel.heater.temperatureMax = "100 °C";
  });

  test("a heater of limited temperature takes longer, and its wall never passes it", () => {
    expect(durationOf(limited, 2)).toBeGreaterThan(1.05 * durationOf(job, 2));
    const walls = answersOf(runPlan(limited), "flash-point", { place: "heated-wall" });
    expect(walls).toHaveLength(3);
    for (const wall of walls) {
      expect(figureOf(wall)).toBeGreaterThan(85);
      expect(figureOf(wall)).toBeLessThanOrEqual(100);
    }
  });

  test("a heater that is cooler than what is wanted does not reach it", () => {
    const cold = changed(job, (draft) => Object.assign(draft.vessel.heater, { temperatureMax: "80 °C" }));
    expect(answerOf(cold, "step-can-be-done", { step: 2 })).toMatchObject({ verdict: "not-met", side: "below" });
    expect(figureOf(answerOf(cold, "step-can-be-done", { step: 2 }))).toBeLessThanOrEqual(80);
  });

  test("a jacket is faster than the room, and warmer coolant slower", () => {
    const jacketed = (coolant: string): JobDocument =>
      changed(job, (draft) => {
        draft.vessel.jacket = { coolant, conductance: "45 W/K", capacityFlow: "200 W/K" };
        draft.process.steps[4].with = "jacket";
      });
    expect(durationOf(jacketed("15 °C"), 5)).toBeLessThan(durationOf(job, 5) / 3);
    expect(durationOf(jacketed("50 °C"), 5)).toBeGreaterThan(durationOf(jacketed("15 °C"), 5));
    expect(() => runPlan(changed(job, (draft) => Object.assign(draft.process.steps[4], { with: "jacket" })))).toThrow(
      "a jacket described",
    );
  });
});

test("cooling by a fitted loss agrees with an independent integration", () => {
  const plan = runPlan(
    changed(job, (draft) => {
      delete draft.vessel.coolingCurve;
      draft.vessel.heatLoss = "3.5 W/K";
    }),
  );
  const masses = new Map(plan.weighing.lines.map((line) => [line.material, line.mass]));
  const fat = (t: number): number => 1984.2 + 1.4733 * t - 4.8008e-3 * t * t;
  const capacity = (t: number): number =>
    (masses.get("triglyceride") ?? 0) * fat(t) +
    (masses.get("gelFormer") ?? 0) * 2100 +
    (masses.get("tocopherols") ?? 0) * 2055 +
    12 * 500;
  const [reached = Number.NaN] = march((fallen) => [capacity(85 - fallen) / (3.5 * (85 - fallen - 21))], [0], 5);
  const step = plan.timeline[4];
  expect(((step?.timeEnd ?? 0) - (step?.timeStart ?? 0)) / reached).toBeCloseTo(1, 8);
});

describe("after filling", () => {
  test("a rest that ends before the centre has set is found", () => {
    const short = changed(job, (draft) => {
      draft.pack.content = { ...draft.pack.content, diameter: "120 mm", height: "150 mm" };
      draft.process.steps[10].for = "20 min";
    });
    const found = answerOf(short, "set-at-centre");
    expect(found).toMatchObject({ verdict: "not-met", side: "above", limit: { max: { value: 1200 } } });
  });

  test("a wider pack takes longer to set and sinks as deep for its height", () => {
    const wide = changed(job, (draft) => Object.assign(draft.pack.content, { diameter: "84 mm" }));
    const [narrow, wider] = [runPlan(job).afterFilling, runPlan(wide).afterFilling];
    expect(wider.durationToSet).toBeGreaterThan(narrow.durationToSet ?? Number.NaN);
    expect(wider.sinkDepth).toBeCloseTo(narrow.sinkDepth ?? Number.NaN, 12);
    expect(wider.topUpMass).toBeCloseTo(4 * (narrow.topUpMass ?? Number.NaN), 12);
  });
});

describe("what the oils go through", () => {
  const equivalent = (document: JobDocument): number => {
    const found = runPlan(document).thermalExposures.find(({ material }) => material === "almond");
    if (!found || "notKnown" in found || !found.equivalent) throw new Error("no exposure of the almond oil");
    return found.equivalent.duration;
  };

  test("an oil that goes in cooler is spared more", () => {
    const cooler = changed(job, (draft) => Object.assign(draft.process.steps[4], { to: "75 °C" }));
    expect(equivalent(cooler)).toBeLessThan(equivalent(job));
  });

  test("an oil on the heat from the start goes through far more", () => {
    const early = changed(job, (draft) => {
      const [b] = draft.process.steps.splice(5, 1);
      draft.process.steps.splice(1, 0, b);
    });
    expect(equivalent(early)).toBeGreaterThan(3 * equivalent(job));
  });

  test("without a sensitivity there is a time above, and nothing else is made up", () => {
    const unknown = changed(job, (draft) => delete draft.formula.materials.almond.ageingKinetics);
    const [exposure] = runPlan(unknown).thermalExposures;
    expect(exposure).not.toHaveProperty("equivalent");
    if (!exposure || "notKnown" in exposure) throw new Error("no exposure");
    const [before] = runPlan(job).thermalExposures;
    expect(before).toEqual({ ...exposure, equivalent: expect.anything() });
    expect(exposure).toMatchObject({ material: "almond", temperatureAbove: 60 });
    expect(exposure.temperatureMax).toBeGreaterThan(60);
    expect(exposure.durationAbove).toBeGreaterThan(0);
    expect(exposure.durationAbove).toBeLessThan(exposure.duration);
  });
});

describe("evaporation", () => {
  test("what is predicted stands beside what is stated, below the most that is possible", () => {
    const [fragrance] = runPlan(job).evaporation;
    expect(fragrance?.stated).toBeCloseTo(0.03, 12);
    if (!fragrance || "notKnown" in fragrance) throw new Error("no prediction");
    expect(fragrance.predicted).toBeGreaterThan(0);
    expect(fragrance.predicted).toBeLessThan(fragrance.max);
  });

  test("without the speed of the air there is no prediction", () => {
    const still = changed(job, (draft) => delete draft.process.airVelocity);
    expect(runPlan(still).evaporation[0]).toMatchObject({
      material: "fragrance",
      notKnown: { code: "not-stated", field: "process-air-speed" },
    });
  });
});

test("three additions with cooling between them are those of the kernel for staged additions", () => {
  const three = changed(job, (draft) => {
    const [phase] = draft.formula.phases.splice(1, 1);
    draft.formula.phases.splice(
      1,
      0,
      ...["B1", "B2", "B3"].map((name) => ({ ...phase, name, lines: [{ material: "almond", amount: "8 %" }] })),
    );
    const charge = (name: string) => ({ do: "charge", phase: name });
    const wait = { do: "stir", for: "5 min" };
    draft.process.steps.splice(5, 1, charge("B1"), wait, charge("B2"), wait, charge("B3"));
    delete draft.vessel.coolingCurve;
    draft.vessel.heatLoss = "3.5 W/K";
    draft.bench.viscosities = [];
    draft.process.steps = draft.process.steps.map((step: { do: string; toViscosity?: string }) =>
      step.toViscosity ? { do: "cool", to: "57 °C" } : step,
    );
  });
  const { timeline, weighing } = runPlan(three);
  const part = (material: string, phase: string): number =>
    weighing.lines.find((line) => line.material === material && line.phase === phase)?.mass ?? Number.NaN;
  const of = (specificHeat: number) => ({ law: "constant", specificHeat }) as const;
  const { stages, duration } = stagedAdditions({
    melt: [
      { mass: part("triglyceride", "A"), specificHeat: choiOkosFat.specificHeat },
      { mass: part("gelFormer", "A"), specificHeat: of(2100) },
      { mass: part("tocopherols", "A"), specificHeat: of(2055) },
    ],
    temperatureStart: 80,
    heatCapacityVessel: 12 * 500,
    heatLoss: { law: "newton", conductance: 3.5 },
    temperatureAmbient: 21,
    stages: ["B1", "B2", "B3"].map((phase, i) => ({
      duration: i === 0 ? 0 : 300,
      addition: { mass: part("almond", phase), specificHeat: choiOkosFat.specificHeat, temperature: 21 },
    })),
  });
  expect(duration).toBe(600);
  for (const [i, stage] of stages.entries())
    expect(timeline[5 + 2 * i]?.temperatureEnd).toBeCloseTo(stage.temperatureMixed, 9);
});

describe("a time that the process states", () => {
  const within = (number: number, time: string, more: object = {}): JobDocument =>
    changed(job, (draft) => Object.assign(draft.process.steps[number - 1], { within: time, ...more }));
  const inTime = (document: JobDocument, step: number) => {
    const [found, another] = answerQuestions({ prepared: prepareJob(document), questions: ["done-in-time"] });
    if (!found || another || found.of.step !== step) throw new Error("not one answer on the time");
    return found;
  };
  const remedyOf = (document: JobDocument, step: number, lever: Remedy["lever"]): Remedy | undefined =>
    remedies({ prepared: prepareJob(document), answer: inTime(document, step) }).find((one) => one.lever === lever);

  test("is kept by the heater, or the power is named that would keep it", () => {
    expect(inTime(within(2, "70 min"), 2).verdict).toBe("met");
    const slow = within(2, "40 min");
    expect(inTime(slow, 2)).toMatchObject({ verdict: "not-met", side: "above", limit: { max: { value: 2400 } } });
    const { change } = known(remedyOf(slow, 2, "stronger-heater"));
    const with_ = (watts: number) =>
      inTime(
        changed(slow, (draft) => Object.assign(draft.vessel.heater, { power: `${watts} W` })),
        2,
      ).verdict;
    expect([with_(change.value + 0.01), with_(change.value - 0.01)]).toEqual(["met", "not-met"]);
  });

  // Where nobody read how thick phase A is as it cools, the heat of stirring may make the cooling longer by any time.
  const still = (document: JobDocument) => changed(document, (draft) => delete draft.vessel.stirrer);

  test("is kept by the coolant that is named, and by no warmer one", () => {
    const jacketed = changed(still(within(5, "4 min", { with: "jacket" })), (draft) => {
      draft.vessel.jacket = { coolant: "60 °C", conductance: "45 W/K", capacityFlow: "1000000000 W/K" };
    });
    expect(inTime(jacketed, 5)).toMatchObject({ verdict: "not-met", side: "above" });
    const { change } = known(remedyOf(jacketed, 5, "colder-coolant"));
    const colder = (coolant: number) =>
      inTime(
        changed(jacketed, (draft) => Object.assign(draft.vessel.jacket, { coolant: `${coolant} °C` })),
        5,
      ).verdict;
    expect([colder(change.value - 0.01), colder(change.value + 0.01)]).toEqual(["met", "not-met"]);
    // In the room it cools no faster, whatever one turns.
    expect(inTime(still(within(5, "4 min")), 5).verdict).toBe("not-met");
    expect(remedyOf(still(within(5, "4 min")), 5, "colder-coolant")).toBeUndefined();
  });

  test("may be longer than is known where the heat of stirring is left out", () => {
    const found = inTime(within(5, "60 min"), 5);
    expect(found).toMatchObject({ verdict: "not-known", figure: { max: null } });
    expect(found.figure.assumptions).toContain("heat-of-stirring-left-out");
    expect(known(found.figure.min)).toBeLessThan(3600);
    expect(inTime(still(within(5, "60 min")), 5).verdict).toBe("met");
    // That nobody stated its speed does not keep a stirrer from turning.
    const unstated = changed(within(5, "60 min"), (draft) => delete draft.vessel.stirrer.speed);
    expect(inTime(unstated, 5)).toMatchObject({ verdict: "not-known", figure: { max: null } });
  });

  test.each([
    [2, "70 min"],
    [5, "60 min"],
  ])("may be longer in step %i where the wall that warms and cools along is left out", (step, time) => {
    const alone = still(within(step, time));
    expect(inTime(alone, step).verdict).toBe("met");
    const found = inTime(
      changed(alone, (draft) => delete draft.vessel.wall),
      step,
    );
    expect(found).toMatchObject({ verdict: "not-known", figure: { max: null, assumptions: ["vessel-wall-left-out"] } });
    expect(known(found.figure.min)).toBeLessThan(known(found.limit.max?.value));
  });

  test("may be longer where nobody stated how the gel former melts", () => {
    const alone = (time: string, latentHeat?: string) =>
      inTime(
        changed(still(within(2, time)), ({ formula: { materials } }) => {
          if (latentHeat === undefined) delete materials.gelFormer.melting;
          else materials.gelFormer.melting.latentHeat = latentHeat;
        }),
        2,
      );
    const without = alone("70 min").figure;
    expect(without).toMatchObject({ max: null, assumptions: ["heat-of-melting-left-out"] });
    expect(without.value).toBeUndefined();
    // Next to no heat of melting is what it leaves out.
    const least = known(alone("70 min", "1 J/kg").figure.value);
    expect(known(without.min) / least).toBeCloseTo(1, 3);
    expect(known(alone("70 min", "150 kJ/kg").figure.value)).toBeGreaterThan(least * 1.01);
    const verdicts = [1, -1].map((by) => alone(`${known(without.min) + by} s`).verdict);
    expect(verdicts).toEqual(["not-known", "not-met"]);
    expect(alone(`${least + 1} s`, "1 J/kg").verdict).toBe("met");
  });

  test("may be longer where nobody stated how much coolant flows, and is longer the less of it does", () => {
    const alone = (time: string, capacityFlow?: string) =>
      inTime(
        changed(still(within(5, time, { with: "jacket" })), (draft) => {
          draft.vessel.jacket = { coolant: "15 °C", conductance: "45 W/K", ...(capacityFlow && { capacityFlow }) };
        }),
        5,
      );
    const times = ["1000000000 W/K", "100 W/K", "30 W/K"].map((flow) => known(alone("60 min", flow).figure.value));
    expect(times).toEqual([...times].sort((one, other) => one - other));
    const without = alone("60 min").figure;
    expect(without).toMatchObject({ max: null, assumptions: ["coolant-as-at-its-inlet"] });
    expect(known(without.min)).toBeCloseTo(known(times[0]), 3);
    const verdicts = [1, -1].map((by) => alone(`${known(without.min) + by} s`).verdict);
    expect(verdicts).toEqual(["not-known", "not-met"]);
    expect(alone(`${known(times[2]) + 1} s`, "30 W/K").verdict).toBe("met");
  });

  test("is not known where the step's own time is not", () => {
    const unknown = changed(within(2, "40 min"), (draft) => delete draft.vessel.coolingCurve);
    expect(inTime(unknown, 2)).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "not-stated", field: "vessel-heat-loss" }],
    });
  });
});

test("the caution says where a heater that is left on would take the charge", () => {
  const hot = (document: JobDocument) => runPlan(document).cautions.find(({ code }) => code === "hot-oil");
  const stated = changed(job, (draft) => {
    delete draft.vessel.coolingCurve;
    draft.vessel.heatLoss = "4 W/K";
  });
  // 21 °C and 1200 W over 4 W/K.
  expect(hot(stated)?.temperatureLeftOn).toBeCloseTo(321, 6);
  expect(hot(stated)?.temperatureMax).toBe(85);
  const limited = changed(stated, (draft) => Object.assign(draft.vessel.heater, { temperatureMax: "110 °C" }));
  expect(hot(limited)?.temperatureLeftOn).toBe(110);
});

test("the specific heat of glycerin, whose law begins at 25 °C, is continued by 10 K to the room and no further", () => {
  const hot = (room: string) =>
    changed(job, ({ formula, process }) => {
      process.room = room;
      const { triglyceride } = formula.materials;
      delete triglyceride.specificHeat;
      triglyceride.propertiesOf = "glycerin";
    });
  const heating = (room: string) => known(runPlan(hot(room)).timeline[1]);
  expect(heating("15.05 °C").timeEnd).toBeGreaterThan(0);
  expect(heating("14.95 °C").notKnown).toMatchObject({ code: "outside-range", law: "heat-balance" });
  // The cold route holds glycerin, which stirring warms.
  const cold = (room: string) => changed(coldJob(), ({ process }) => Object.assign(process, { room }));
  const assumed = (room: string) => known(runPlan(cold(room)).timeline[1]).assumptions;
  expect(assumed("15.05 °C")).not.toContain("heat-of-stirring-left-out");
  expect(assumed("14.95 °C")).toContain("heat-of-stirring-left-out");
});
