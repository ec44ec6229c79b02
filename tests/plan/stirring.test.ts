import { powerNumber } from "gelwright/mixing";
import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";
import { march } from "../support/ode.js";

const job = exampleJob();
const stepOf = (document: JobDocument, number: number) => {
  const step = runPlan(document).timeline[number - 1];
  if (step?.timeStart === undefined || step.timeEnd === undefined)
    throw new Error(`no duration: ${JSON.stringify(step?.notKnown)}`);
  return { ...step, duration: step.timeEnd - step.timeStart };
};
/** Why what the stirrer does in a step is not known, by what the motor is asked there. */
const whyNotStirred = (document: JobDocument, step: number): readonly object[] => {
  const { at, notKnown } = answerOf(document, "motor-power");
  expect(at.step).toBe(step);
  return notKnown;
};
const heatOfStirring = { kind: "law", key: "heat-of-stirring" };

/** The example with a loss of 4 W/K, specific heats as they are, and phases A and B of one viscosity. */
const steady = changed(job, (draft) => {
  delete draft.vessel.coolingCurve;
  draft.vessel.heatLoss = "4 W/K";
  const [, readings] = draft.bench.viscosities;
  delete readings.readings;
  readings.law = { law: "andrade", factor: "1e-9 Pa·s", activationEnergy: "60 kJ/mol" };
  draft.process.steps[6] = { do: "cool", to: "58 °C" };
});

test("the heat of stirring is in the heat balance: a charge that is stirred cools as a solver finds, and more slowly", () => {
  const thick = changed(steady, (draft) =>
    Object.assign(draft.vessel.stirrer, { laminarPowerConstant: 250, powerNumber: 0.5 }),
  );
  const stirred = stepOf(thick, 7);
  const still = stepOf(
    changed(thick, (draft) => delete draft.vessel.stirrer.speed),
    7,
  );
  expect(stirred.basis).toContainEqual(heatOfStirring);
  expect(stirred.assumptions).not.toContain("heat-of-stirring-left-out");
  expect(stirred.duration).toBeGreaterThan(still.duration);
  // What it cools through without stirring gives the heat capacity; with it, the power is put in by hand.
  const start = stirred.temperatureStart ?? Number.NaN;
  const capacity = (still.duration * 4) / Math.log(((still.temperatureStart ?? 0) - 21) / (58 - 21));
  const viscosity = (at: number) => 1e-9 * Math.exp(60_000 / (8.31446261815324 * (at + 273.15)));
  const [speed, diameter, density] = [40 / 60, 0.34, 880];
  const power = (at: number) => {
    const reynolds = (density * speed * diameter ** 2) / viscosity(at);
    const number = powerNumber({ power: { law: "sum", laminarPowerConstant: 250, powerNumber: 0.5 }, reynolds });
    return number * density * speed ** 3 * diameter ** 5;
  };
  const slope = (_: number, [at = 0]: readonly number[]) => [(power(at) - 4 * (at - 21)) / capacity];
  const [end = Number.NaN] = march(slope, [start], stirred.duration);
  // The density of the charge moves with its composition, the specific heat with temperature.
  expect(end).toBeCloseTo(58, 1);
});

test("stirring warms a charge that stands at the temperature of the room", () => {
  const oil = changed(job, (draft) => {
    draft.bench.viscosities.push({
      phases: ["A"],
      direction: "cooling",
      shearRate: "10 1/s",
      readings: [
        { at: "15 °C", viscosity: "60 Pa·s" },
        { at: "60 °C", viscosity: "30 Pa·s" },
      ],
    });
    draft.process.steps.splice(1, 0, { do: "stir", for: "30 min", speed: "120 rpm" });
  });
  const { temperatureEnd = Number.NaN, basis, stirring } = stepOf(oil, 2);
  expect(basis).toContainEqual(heatOfStirring);
  expect(temperatureEnd).toBeGreaterThan(22);
  expect(stirring?.regime).toBe("laminar");
  expect((stirring?.power ?? 0) / (2 * Math.PI * 2)).toBeCloseTo(stirring?.torque ?? Number.NaN, 10);
});

test("where no reading knows the viscosity, the heat of stirring is left out and the plan says so", () => {
  const leftOut = (document: JobDocument, number: number) => {
    const { basis, assumptions } = stepOf(document, number);
    expect(basis).not.toContainEqual(heatOfStirring);
    expect(assumptions).toContain("heat-of-stirring-left-out");
  };
  leftOut(job, 5);
  expect(whyNotStirred(job, 5)).toEqual([
    expect.objectContaining({ code: "not-read", field: "bench-viscosities", direction: "cooling", phases: ["A"] }),
  ]);
  // On the way up the readings begin at a temperature above the room's.
  leftOut(job, 2);
  const withStirrer = (stirrer: object) => changed(job, (draft) => Object.assign(draft.vessel.stirrer, stirrer));
  const disperser = withStirrer({ kind: "disperser disc", diameter: "120 mm" });
  leftOut(disperser, 7);
  // Its power curve is known from a Reynolds number of 10000 on.
  const refused = answerOf(disperser, "motor-power").notKnown.filter(({ law }) => law === "power-number");
  expect(refused.length).toBeGreaterThan(0);
  for (const reason of refused) {
    expect(reason).toMatchObject({
      code: "outside-range",
      field: "stirrer-power",
      of: "disperser disc",
      quantity: "reynolds-number",
    });
    expect(known(reason.value)).toBeLessThan(10_000);
  }
  const head = withStirrer({ kind: "rotor-stator", diameter: "120 mm" });
  leftOut(head, 7);
  expect(answerOf(head, "motor-power").notKnown).toContainEqual(
    expect.objectContaining({ code: "not-stated", field: "stirrer-power", of: "rotor-stator" }),
  );
  const still = changed(job, (draft) => delete draft.vessel.stirrer);
  for (const { number, basis, assumptions, stirring } of runPlan(still).timeline) {
    // Step 9 states a speed of its own: something is stirred there, and nobody knows with what.
    expect(JSON.stringify([basis, assumptions]).includes("stirring")).toBe(number === 9);
    expect(stirring).toBeUndefined();
  }
  const asked = runPlan(still).answers.map(({ id }) => id);
  expect(asked.filter((id) => /^(blended|motor|stirrer|minimum-volume|no-air|gel-moves-at-wall)/.test(id))).toEqual([]);
});

test("readings of a melt that thins count at the shear rate of the stirrer, as if they had been taken there", () => {
  const thinning = changed(steady, (draft) => {
    draft.bench.viscosities[1].flowIndex = 0.5;
    draft.bench.viscosities[1].shearRate = "1 1/s";
  });
  // An anchor at 40 rpm shears with 25 times its speed.
  const factor = 1e-9 * (25 * (40 / 60)) ** -0.5;
  const taken = changed(steady, (draft) => Object.assign(draft.bench.viscosities[1].law, { factor: `${factor} Pa·s` }));
  const [thin, same, thick] = [thinning, taken, steady].map((one) => stepOf(one, 7));
  expect(thin?.duration).toBeCloseTo(same?.duration ?? Number.NaN, 6);
  expect(thin?.stirring?.torque).toBeCloseTo(same?.stirring?.torque ?? Number.NaN, 9);
  expect(thin?.stirring?.torque).toBeLessThan(0.7 * (thick?.stirring?.torque ?? 0));
  // What is told of the melt itself stays what was read.
  expect(thin?.viscosity).toEqual({ ...thick?.viscosity, shearRate: 1 });
  const foil = changed(thinning, (draft) => {
    Object.assign(draft.vessel.stirrer, { kind: "hydrofoil", laminarPowerConstant: 300, powerNumber: 0.5 });
  });
  expect(stepOf(foil, 7).assumptions).toContain("heat-of-stirring-left-out");
  expect(answerOf(foil, "motor-power").notKnown).toContainEqual(
    expect.objectContaining({ code: "not-stated", field: "stirrer-metzner-otto-constant", of: "hydrofoil" }),
  );
});

describe("where no reading knows the viscosity, the motor bounds how much stirring warms the charge", () => {
  // Step 9 stirs the pearl in for 5 min; without its readings of phases A, B and C its viscosity is not known.
  const unread = (change: (draft: Draft) => void = () => {}) =>
    changed(steady, (draft) => {
      draft.bench.viscosities.pop();
      draft.process.steps[8].for = "20 min";
      change(draft);
    });
  const warmest = (document: JobDocument) => answerOf(document, "maximum-temperature", { material: "fragrance" });
  const withLimit = (limit: number) =>
    warmest(
      unread(({ formula }) => Object.assign(formula.materials.fragrance.limits, { temperatureMax: `${limit} °C` })),
    );

  test("by its power, its gear, the time and the heat capacity of the charge", () => {
    const { figure } = warmest(unread());
    const warmer = known(figure.max) - known(figure.value);
    expect(figure.assumptions).toContain("heat-of-stirring-up-to-the-motor");
    expect(figure.assumptions).not.toContain("heat-of-stirring-left-out");
    // 180 W, of which the gear passes on 0.8, for 20 min into a charge of about 2.05 kJ/(kg·K).
    const { mass } = stepOf(unread(), 9);
    expect((180 * 0.8 * 1200) / (mass * 2050) / warmer).toBeCloseTo(1, 1);
    const longer = warmest(unread(({ process }) => Object.assign(process.steps[8], { for: "40 min" })));
    expect((known(longer.figure.max) - known(longer.figure.value)) / warmer).toBeCloseTo(2, 2);
  });

  test("just above the bound a limit is met, just below it is not known", () => {
    const { max } = warmest(unread()).figure;
    const limits = [known(max) + 0.001, known(max) - 0.001, 50];
    expect(limits.map((limit) => withLimit(limit).verdict)).toEqual(["met", "not-known", "not-met"]);
  });

  test("and nothing bounds it where no motor is stated", () => {
    const { figure } = warmest(unread(({ vessel }) => delete vessel.stirrer.motor));
    expect(figure.max).toBeNull();
    expect(figure.assumptions).toContain("heat-of-stirring-left-out");
  });

  test("what is filled is as large and as thin as it may be warm", () => {
    const [bound, open] = [unread(), unread(({ vessel }) => delete vessel.stirrer.motor)];
    expect(known(answerOf(bound, "working-volume").figure.max)).toBeGreaterThan(0);
    for (const [document, max] of [
      [bound, expect.any(Number)],
      [open, null],
    ] as const)
      expect(answerOf(document, "filled-before-it-sets").figure.max).toEqual(max);
  });
});

const blended = (document: JobDocument, step: number): Answer => answerOf(document, "blended", { step });

test("a stir that is too short is found, and one of unknown revolutions is not judged", () => {
  // 120 revolutions at 40 a minute.
  expect(blended(job, 9)).toMatchObject({ verdict: "met", figure: { value: 180 }, limit: { max: { value: 300 } } });
  const short = changed(job, (draft) => Object.assign(draft.process.steps[8], { for: "2 min" }));
  expect(blended(short, 9)).toMatchObject({ verdict: "not-met", side: "above", limit: { max: { value: 120 } } });
  const uncounted = changed(job, (draft) => delete draft.vessel.stirrer.revolutionsToBlend);
  expect(blended(uncounted, 9)).toMatchObject({
    verdict: "not-known",
    notKnown: [{ code: "not-stated", field: "stirrer-revolutions-to-blend", of: "anchor" }],
  });
});

describe("the correlation of the blend time counts as it was measured", () => {
  const thin = (diameter: number, baffled = true) =>
    changed(steady, (draft) => {
      Object.assign(draft.vessel.stirrer, {
        kind: "pitched-blade turbine",
        diameter: `${diameter} mm`,
        speed: "300 rpm",
      });
      delete draft.vessel.stirrer.revolutionsToBlend;
      if (baffled) draft.vessel.baffles = { count: 4, width: "30 mm" };
      draft.bench.viscosities[1].law.factor = "1e-11 Pa·s";
      draft.process.steps.splice(6, 0, { do: "stir", for: "5 min" });
    });
  const law = [{ kind: "law", key: "blend-time" }];

  test("with stirrers of a third to half of the vessel, just inside and just outside", () => {
    for (const diameter of [127, 189])
      expect(blended(thin(diameter), 7)).toMatchObject({ verdict: "met", figure: { basis: law } });
    for (const diameter of [126, 191])
      expect(blended(thin(diameter), 7)).toMatchObject({
        verdict: "not-known",
        notKnown: [{ code: "not-stated", field: "stirrer-revolutions-to-blend" }],
      });
  });

  test("with baffles: without them it is the least time, which fails a step that is shorter and proves none", () => {
    const found = blended(thin(160, false), 7);
    expect(found).toMatchObject({ verdict: "not-known", figure: { max: null, basis: law } });
    expect(found.beside).toMatchObject({ lacks: "stirrer-revolutions-to-blend" });
    const stirredFor = (seconds: number) =>
      blended(
        changed(thin(160, false), (draft) => Object.assign(draft.process.steps[6], { for: `${seconds} s` })),
        7,
      );
    // A step of another length ends at another temperature, and with another viscosity.
    let least = known(found.figure.min);
    for (let i = 0; i < 4; i++) least = known(stirredFor(least).figure.min);
    const short = (times: number) => stirredFor(times * least).verdict;
    expect([short(0.999), short(1.001)]).toEqual(["not-met", "not-known"]);
  });
});

test("a motor that is too weak is found where the charge is thickest, and one of unknown power is not judged", () => {
  const weak = changed(job, (draft) => Object.assign(draft.vessel.stirrer.motor, { power: "5 W" }));
  for (const id of ["motor-power", "motor-torque"] as const)
    expect(answerOf(weak, id)).toMatchObject({ verdict: "not-met", side: "above", at: { step: 9 } });
  const unstated = changed(job, (draft) => delete draft.vessel.stirrer.motor);
  for (const id of ["motor-power", "motor-torque"] as const) {
    const found = answerOf(unstated, id);
    expect(found).toMatchObject({ verdict: "not-known", states: { met: 0, notMet: 0 } });
    expect(found.limit.max ?? found.limit.min).toMatchObject({ min: null, max: null });
    expect(found.notKnown).toContainEqual({ code: "not-stated", field: "stirrer-motor", of: "anchor" });
  }
});

test("any turn of which the power is not known leaves the motor not known, as long as no other asks too much of it", () => {
  expect(answerOf(job, "motor-power")).toMatchObject({ verdict: "not-known", at: { step: 5 } });
  // With readings of phase A as it cools, and none that end above the room, every turn is known.
  const read = changed(job, (draft) => {
    const law = { law: "andrade", factor: "1e-9 Pa·s", activationEnergy: "45 kJ/mol" };
    draft.bench.viscosities[0] = { phases: ["A"], direction: "heating", shearRate: "10 1/s", law };
    draft.bench.viscosities.push({ phases: ["A"], direction: "cooling", shearRate: "10 1/s", law });
  });
  for (const id of ["motor-power", "motor-torque"] as const)
    expect(answerOf(read, id)).toMatchObject({ verdict: "met", states: { notMet: 0, notKnown: 0 } });
});

test("a stirrer that stands out of the charge, or that a vortex may reach, is found", () => {
  const high = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { topEdge: "260 mm", cover: "0 mm" }));
  const uncovered = answerOf(high, "stirrer-covered");
  // What goes in all at once is stirred by the next step: first on the heat, at 85 °C, and off it at 80 °C.
  expect(uncovered).toMatchObject({
    verdict: "not-met",
    side: "below",
    at: { step: 5 },
    limit: { min: { value: 0.26 } },
  });
  expect(figureOf(uncovered)).toBeCloseTo(0.25205733835609057, 12);
  const fast = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { speed: "90 rpm" }));
  const vortex = answerOf(fast, "no-air-down-the-vortex");
  // The deepest that there could be is known, and reaches the stirrer; the one that there is, is not.
  expect(vortex).toMatchObject({ verdict: "not-known", side: "none", figure: { min: 0 } });
  expect(known(vortex.figure.max)).toBeGreaterThan(known(vortex.limit.max?.value));
  const anchor = changed(job, (draft) => {
    delete draft.vessel.stirrer.topEdge;
    delete draft.vessel.stirrer.cover;
  });
  expect(answersOf(runPlan(anchor), "stirrer-covered")).toEqual([]);
  expect(answerOf(anchor, "no-air-down-the-vortex").verdict).toBe("not-known");
  const unstated = changed(anchor, (draft) => Object.assign(draft.vessel.stirrer, { kind: "propeller" }));
  for (const id of ["stirrer-covered", "no-air-down-the-vortex"] as const)
    expect(answerOf(unstated, id).verdict).toBe("not-known");
  expect(answerOf(unstated, "stirrer-covered").notKnown).toContainEqual({
    code: "not-stated",
    field: "stirrer-top-edge",
    of: "propeller",
  });
});

const moves = (document: JobDocument): Answer => answerOf(document, "gel-moves-at-wall", { step: 11 });

test("a gel that has set moves at the wall under an anchor that follows it, and not under a propeller", () => {
  const late = changed(job, (draft) => {
    draft.process.steps.splice(9, 0, { do: "cool", to: "54.5 °C" }, { do: "stir", for: "5 min" });
    for (const readings of draft.bench.viscosities) readings.flowIndex = 0.9;
  });
  expect(moves(late).verdict).toBe("met");
  // Every gel thins: where nobody read how, its yield stress alone says what is moved at least.
  const unread = changed(late, (draft) => {
    for (const readings of draft.bench.viscosities) delete readings.flowIndex;
  });
  expect(moves(unread)).toMatchObject({ verdict: "not-known", figure: { assumptions: ["yield-stress-alone"] } });
  const propeller = changed(late, (draft) =>
    Object.assign(draft.vessel.stirrer, { kind: "propeller", diameter: "100 mm" }),
  );
  expect(moves(propeller)).toMatchObject({ verdict: "not-met", side: "below", limit: { min: { value: 0.38 } } });
  const cold = changed(propeller, (draft) => Object.assign(draft.process.steps[9], { to: "40 °C" }));
  expect(moves(cold).verdict).toBe("not-known");
  const soft = changed(late, (draft) => {
    for (const key of ["yieldStress", "flowCurve", "strengthTrials"]) delete draft.bench[key];
  });
  expect(moves(soft)).toMatchObject({
    verdict: "not-known",
    notKnown: [{ code: "not-stated", field: "bench-yield-stress" }],
  });
});

test("numbers that no stirrer has are refused at their place", () => {
  const wrong = changed(job, (draft) =>
    Object.assign(draft.vessel.stirrer, { laminarPowerConstant: 0, topEdge: "0 mm" }),
  );
  expect(() => runPlan(wrong)).toThrow("vessel.stirrer.laminarPowerConstant: found");
  expect(() => runPlan(wrong)).toThrow("vessel.stirrer.topEdge");
});
