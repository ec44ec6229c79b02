import { powerNumber } from "gelwright/mixing";
import { type JobDocument, runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";
import { march } from "../support/ode.js";

const job = exampleJob();
const stepOf = (document: JobDocument, number: number) => {
  const step = runPlan(document).timeline[number - 1];
  if (step?.timeStart === undefined || step.timeEnd === undefined) throw new Error(`no duration: ${step?.basis}`);
  return { ...step, duration: step.timeEnd - step.timeStart };
};
const check = (document: JobDocument, id: string) => runPlan(document).checks.find((one) => one.id === id);

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
  expect(stirred.basis).toContain("heat of stirring included");
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
  expect(basis).toContain("heat of stirring included");
  expect(temperatureEnd).toBeGreaterThan(22);
  expect(stirring?.regime).toBe("laminar");
  expect((stirring?.power ?? 0) / (2 * Math.PI * 2)).toBeCloseTo(stirring?.torque ?? Number.NaN, 10);
});

test("where no reading knows the viscosity, the heat of stirring is left out and the sheet says so", () => {
  expect(stepOf(job, 5).basis).toContain(
    "heat of stirring left out, no viscosity readings on cooling of phases A together",
  );
  expect(stepOf(job, 2).basis).toContain(
    "heat of stirring left out, the viscosity readings end above this temperature",
  );
  const unknown = changed(job, (draft) =>
    Object.assign(draft.vessel.stirrer, { kind: "disperser disc", diameter: "120 mm" }),
  );
  expect(stepOf(unknown, 7).basis).toContain("10000 or more, as the power curve is known");
  const head = changed(job, (draft) =>
    Object.assign(draft.vessel.stirrer, { kind: "rotor-stator", diameter: "120 mm" }),
  );
  expect(stepOf(head, 7).basis).toContain("(rotor-stator): state laminarPowerConstant and powerNumber");
  const still = changed(job, (draft) => delete draft.vessel.stirrer);
  expect(stepOf(still, 7).basis).not.toContain("stirring");
  expect(runPlan(still).checks.some(({ id }) => /^(even|motor|stirrer|no-air|gel-moves-at-wall)/.test(id))).toBe(false);
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
  expect(thin?.viscosity).toEqual({ ...thick?.viscosity, shearRate: "1 1/s" });
  const foil = changed(thinning, (draft) => {
    Object.assign(draft.vessel.stirrer, { kind: "hydrofoil", laminarPowerConstant: 300, powerNumber: 0.5 });
  });
  expect(stepOf(foil, 7).basis).toContain("(hydrofoil): state metznerOttoConstant");
});

test("a stir that is too short is found, and one of unknown revolutions is not judged", () => {
  expect(check(job, "blended:9")).toMatchObject({ verdict: "met", limit: "5 min of stirring" });
  const short = changed(job, (draft) => Object.assign(draft.process.steps[8], { for: "2 min" }));
  expect(check(short, "blended:9")).toMatchObject({ verdict: "not met" });
  const uncounted = changed(job, (draft) => delete draft.vessel.stirrer.revolutionsToBlend);
  expect(check(uncounted, "blended:9")?.verdict).toBe("not known");
  expect(check(uncounted, "blended:9")?.statement).toContain("nobody counted the revolutions");
  const thin = changed(steady, (draft) => {
    Object.assign(draft.vessel.stirrer, { kind: "pitched-blade turbine", diameter: "160 mm", speed: "300 rpm" });
    draft.bench.viscosities[1].law.factor = "1e-11 Pa·s";
    draft.process.steps.splice(6, 0, { do: "stir", for: "5 min" });
  });
  expect(check(thin, "blended:7")?.source).toContain("Grenville");
});

test("a motor that is too weak is found where the charge is thickest, and one of unknown power is not judged", () => {
  const weak = changed(job, (draft) => Object.assign(draft.vessel.stirrer.motor, { power: "20 W" }));
  expect(check(weak, "motor")).toMatchObject({ verdict: "not met" });
  expect(check(weak, "motor")?.statement).toContain("step 9");
  const unstated = changed(job, (draft) => delete draft.vessel.stirrer.motor);
  expect(check(unstated, "motor")).toMatchObject({ verdict: "not known", limit: "not stated" });
  expect(check(unstated, "motor")?.value).toContain("W in step 9");
});

test("a stirrer that stands out of the charge, or that a vortex may reach, is found", () => {
  const high = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { topEdge: "260 mm" }));
  expect(check(high, "stirrer-covered")).toMatchObject({ verdict: "not met", value: "242 mm in step 1" });
  const fast = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { speed: "90 rpm" }));
  expect(check(fast, "no-air-down-the-vortex")).toMatchObject({ verdict: "not known" });
  expect(check(fast, "no-air-down-the-vortex")?.statement).toContain("Watch the surface");
  const anchor = changed(job, (draft) => delete draft.vessel.stirrer.topEdge);
  expect(check(anchor, "stirrer-covered")).toBeUndefined();
  expect(check(anchor, "no-air-down-the-vortex")?.verdict).toBe("not known");
  const unstated = changed(anchor, (draft) => Object.assign(draft.vessel.stirrer, { kind: "propeller" }));
  for (const id of ["stirrer-covered", "no-air-down-the-vortex"]) {
    expect(check(unstated, id)?.verdict).toBe("not known");
    expect(check(unstated, id)?.statement).toContain("upper edge is not stated");
  }
});

test("a gel that has set moves at the wall under an anchor that follows it, and not under a propeller", () => {
  const late = changed(job, (draft) => {
    draft.process.steps.splice(9, 0, { do: "cool", to: "54.5 °C" }, { do: "stir", for: "5 min" });
  });
  expect(check(late, "gel-moves-at-wall:11")).toMatchObject({ verdict: "met" });
  const propeller = changed(late, (draft) =>
    Object.assign(draft.vessel.stirrer, { kind: "propeller", diameter: "100 mm" }),
  );
  const found = check(propeller, "gel-moves-at-wall:11");
  expect(found).toMatchObject({ verdict: "not met", limit: "380 mm, the vessel's diameter" });
  expect(found?.statement).toContain("never even");
  const cold = changed(propeller, (draft) => Object.assign(draft.process.steps[9], { to: "40 °C" }));
  expect(check(cold, "gel-moves-at-wall:11")?.verdict).toBe("not known");
  const soft = changed(late, (draft) => delete draft.bench.yieldStress);
  expect(check(soft, "gel-moves-at-wall:11")?.statement).toContain("no yield stress");
});

test("numbers that no stirrer has are refused at their place", () => {
  const wrong = changed(job, (draft) =>
    Object.assign(draft.vessel.stirrer, { laminarPowerConstant: 0, topEdge: "0 mm" }),
  );
  expect(() => runPlan(wrong)).toThrow("vessel.stirrer.laminarPowerConstant: found");
  expect(() => runPlan(wrong)).toThrow("vessel.stirrer.topEdge");
});
