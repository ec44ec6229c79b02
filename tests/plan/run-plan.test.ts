import { CalculationError } from "gelwright/error";
import type { Check } from "gelwright/formula";
import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";
import { expectFiniteWithoutAnyField } from "../support/runs.js";

const job = exampleJob();

function check(document: JobDocument, id: string): Check {
  const { checks } = runPlan(document);
  const found = checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id} among ${checks.map((one) => one.id).join(", ")}`);
  return found;
}

/** The steps of the example with one moved: the first that matches goes to a new place. */
function moved(find: (step: { do: string; phase?: string }) => boolean, to: number): JobDocument {
  return changed(job, (draft) => {
    const { steps } = draft.process;
    const [step] = steps.splice(steps.findIndex(find), 1);
    steps.splice(to, 0, step);
  });
}

describe("the example of the docs", () => {
  test("runs, and every question it can answer is answered", () => {
    const plan = runPlan(job);
    expect(plan.checks.filter((one) => one.verdict !== "met")).toEqual([]);
    expect(plan.checks.length).toBeGreaterThan(12);
  });

  test("its masses add up to the batch on the finest balance, to the last digit", () => {
    const { weighing } = runPlan(job);
    const finest = Math.min(...weighing.lines.map((line) => line.increment));
    const inIncrements = (mass: number): number => Math.round(mass / finest);
    expect(weighing.lines.reduce((sum, line) => sum + inIncrements(line.mass), 0)).toBe(inIncrements(weighing.total));
    for (const line of weighing.lines)
      expect(Math.abs(line.mass / line.increment - Math.round(line.mass / line.increment))).toBeLessThan(1e-6);
  });

  test("reaches the packs asked for after all allowances", () => {
    for (const packs of [900, 1000, 1111, 1234]) {
      const { lots } = runPlan(changed(job, (draft) => Object.assign(draft.batch.target, { packs })));
      expect(lots.delivered).toBeGreaterThanOrEqual(lots.deliveredTarget);
      expect(lots.delivered / lots.deliveredTarget - 1).toBeLessThan(1e-3);
    }
  });

  test("the same film takes a larger share of the beaker than of the kettle", () => {
    const share = (scale: "beaker" | "kettle"): number => {
      const { allowances, lots } = runPlan(exampleJob(scale));
      return (
        allowances.filter(({ name }) => name.includes("film")).reduce((sum, { mass }) => sum + mass, 0) / lots.charge
      );
    };
    expect(share("beaker")).toBeGreaterThan(3 * share("kettle"));
  });

  test("too many packs for the vessel become equal lots that each fit it", () => {
    const plan = runPlan(changed(job, (draft) => Object.assign(draft.batch.target, { packs: 3000 })));
    expect(plan.lots.count).toBe(3);
    expect(plan.lots.packs).toBe(1000);
    expect(plan.lots.volume).toBeLessThanOrEqual(0.04);
  });
});

test("lots that do not hold whole packs say so in words", () => {
  const plan = runPlan(changed(job, (draft) => Object.assign(draft.batch.target, { packs: 2500 })));
  expect(plan.checks.find((one) => one.id === "delivered")?.limit).toContain(", 1250 packs");
  const odd = runPlan(changed(job, (draft) => Object.assign(draft.batch.target, { packs: 3001 })));
  expect(odd.checks.find((one) => one.id === "delivered")?.limit).toContain("about 1000.3 packs");
});

describe("the order of the steps", () => {
  test("an oil to be spared that is charged on the heat is found, with its step", () => {
    const found = check(
      moved((step) => step.phase === "B", 2),
      "heat-sensitive-off-the-heat",
    );
    expect(found.verdict).toBe("not met");
    expect(found.value).toContain("sweet almond oil (step 3)");
  });

  test("an antioxidant that is charged early is right, even one that is to be spared, and is not flagged", () => {
    const early = changed(job, (draft) => Object.assign(draft.formula.materials.tocopherols, { heatSensitive: true }));
    expect(check(early, "heat-sensitive-off-the-heat")).toMatchObject({ verdict: "met" });
    expect(JSON.stringify(runPlan(early).checks.filter((one) => one.verdict !== "met"))).not.toContain("tocopherols");
  });

  test("a cold addition that brings the mix to where it sets is found, with what would do", () => {
    const late = changed(job, (draft) => Object.assign(draft.process.steps[4], { to: "66 °C" }));
    const found = check(late, "above-setting:B");
    expect(found.verdict).toBe("not met");
    expect(found.statement).toMatch(
      /only [\d.]+ kg may go in at once.*in 2 equal parts of [\d.]+ kg.*all of it warmed to [\d.]+ °C; or .* into a melt of [\d.]+ °C/,
    );
  });

  test("a melt as warm as was named takes the whole of the addition", () => {
    const late = changed(job, (draft) => Object.assign(draft.process.steps[4], { to: "66 °C" }));
    const melt = Number(/into a melt of ([\d.]+) °C/.exec(check(late, "above-setting:B").statement)?.[1]);
    const at = (to: number): string => {
      const draft = changed(late, (one) => Object.assign(one.process.steps[4], { to: `${to} °C` }));
      return check(
        changed(draft, (one) => delete one.process.steps[5].for),
        "above-setting:B",
      ).verdict;
    };
    expect([at(melt + 0.1), at(melt - 0.1)]).toEqual(["met", "not met"]);
  });

  test("warming the addition to the temperature that was named makes it right", () => {
    const late = changed(job, (draft) => Object.assign(draft.process.steps[4], { to: "66 °C" }));
    const warmth = /all of it warmed to ([\d.]+) °C/.exec(check(late, "above-setting:B").statement)?.[1];
    const warmed = changed(
      late,
      (draft) =>
        Object.assign(draft.process.steps[5], { at: `${Number(warmth) + 0.1} °C`, for: undefined }) &&
        delete draft.process.steps[5].for,
    );
    expect(check(warmed, "above-setting:B").verdict).toBe("met");
  });

  test("particles that go in while they would sink are found", () => {
    const early = changed(job, (draft) => {
      draft.process.steps[6] = { do: "cool", to: "65 °C" };
      draft.formula.materials.pearl.particle.diameter = "60 µm";
    });
    expect(check(early, "particles-go-in:pearl")).toMatchObject({ verdict: "not met" });
    expect(check(early, "particles-go-in:pearl").statement).toContain("too early, in step 8");
    expect(check(early, "particles-settle:pearl").verdict).toBe("not met");
  });

  test("particles that go in when the gel can no longer be stirred are found", () => {
    const late = changed(job, (draft) => {
      draft.process.steps[6] = { do: "cool", toViscosity: "20 Pa·s" };
    });
    expect(check(late, "particles-go-in:pearl").statement).toContain("too late");
  });

  test("a gel that sets before the last pack is full is found", () => {
    const slow = changed(job, (draft) => Object.assign(draft.process.steps[9], { for: "2 h" }));
    expect(check(slow, "filled-before-it-sets").verdict).toBe("not met");
  });

  test("a charge that stays below the dissolving temperature is found", () => {
    const cool = changed(job, (draft) => {
      draft.process.steps[1].to = "70 °C";
      draft.process.steps[4].to = "69 °C";
    });
    expect(check(cool, "gel-former-dissolves").verdict).toBe("not met");
  });
});

describe("heat that can hurt", () => {
  test("a wall too near a flash point is found although the charge is far from it", () => {
    const strong = changed(job, (draft) => Object.assign(draft.vessel.heater, { power: "2.4 kW" }));
    expect(check(strong, "flash-point-in-the-charge").verdict).toBe("met");
    expect(check(strong, "flash-point-at-the-wall")).toMatchObject({ verdict: "not met" });
    expect(check(strong, "flash-point-at-the-wall").statement).toContain("caprylic/capric triglyceride");
  });

  test("a wall of which nothing is known is not known, and never taken to be as cool as the charge", () => {
    const unknown = changed(job, (draft) => delete draft.vessel.heatedWall);
    expect(check(unknown, "flash-point-at-the-wall").verdict).toBe("not known");
  });

  test("an oil without a flash point leaves the question open", () => {
    const unknown = changed(job, (draft) => delete draft.formula.materials.almond.limits);
    expect(check(unknown, "flash-point-in-the-charge")).toMatchObject({ verdict: "not known" });
    expect(check(unknown, "flash-point-in-the-charge").statement).toContain("sweet almond oil");
  });

  test("a highest temperature is held against the wall, where that is known", () => {
    const tender = changed(job, (draft) =>
      Object.assign(draft.formula.materials.gelFormer.limits, { temperatureMax: "100 °C" }),
    );
    expect(check(tender, "maximum-temperature:gelFormer").verdict).toBe("not met");
  });

  test("a heater that does not reach is found, and its time is not known", () => {
    const weak = changed(job, (draft) => Object.assign(draft.vessel.heater, { power: "200 W" }));
    expect(check(weak, "step-can-be-done:2").value).toContain("where the loss takes all the power");
    expect(runPlan(weak).timeline[1]?.timeEnd).toBeUndefined();
  });

  test("a heater that does not reach leaves open how warm it got: what was wanted is not taken for what came", () => {
    const weak = changed(job, (draft) => Object.assign(draft.vessel.heater, { power: "200 W" }));
    const { checks, timeline } = runPlan(weak);
    expect(timeline[1]?.temperatureEnd).toBeUndefined();
    for (const id of ["maximum-temperature:gelFormer", "flash-point-in-the-charge", "gel-former-dissolves"])
      expect(checks.find((one) => one.id === id)?.verdict, id).toBe("not known");
  });

  test("a highest temperature is not known where the heated wall is not", () => {
    const unknown = changed(job, (draft) => delete draft.vessel.heatedWall);
    expect(check(unknown, "maximum-temperature:gelFormer").verdict).toBe("not known");
    const tender = changed(unknown, (draft) =>
      Object.assign(draft.formula.materials.gelFormer.limits, { temperatureMax: "80 °C" }),
    );
    expect(check(tender, "maximum-temperature:gelFormer").verdict).toBe("not met");
  });

  test("what is poured in meets the melt before it has cooled it, for its highest temperature too", () => {
    const tender = changed(job, (draft) =>
      Object.assign(draft.formula.materials.almond.limits, { temperatureMax: "75 °C" }),
    );
    expect(check(tender, "maximum-temperature:almond")).toMatchObject({ verdict: "not met", value: "80.0 °C" });
  });

  test("no verdict, statement or caution says that anything is safe", () => {
    const plan = runPlan(job);
    const text = JSON.stringify([plan.checks, plan.cautions]);
    expect(text).not.toMatch(/\b(is|are|be) safe\b/i);
  });
});

test("what is poured into a melt that is hotter than its flash point is found, although it cools the melt", () => {
  const volatile = changed(job, (draft) =>
    Object.assign(draft.formula.materials.almond.limits, { flashPoint: "105 °C" }),
  );
  const found = check(volatile, "flash-point-in-the-charge");
  expect(found.verdict).toBe("not met");
  expect(found.value).toContain("80.0 °C, 25.0 K below 105.0 °C");
});

describe("viscosity as a law", () => {
  const withLaw = (viscosity: unknown): JobDocument =>
    changed(job, (draft) => {
      draft.bench.viscosities[0] = {
        phases: ["A", "B"],
        direction: "cooling",
        shearRate: "10 1/s",
        ...(viscosity as object),
      };
      draft.process.steps[6] = { do: "cool", to: "60 °C" };
    });

  test("Andrade's law and the two readings that it goes through give the same figure", () => {
    const R = 8.314462618;
    const at = (celsius: number): number => 1e-9 * Math.exp(60_000 / (R * (celsius + 273.15)));
    const readings = [50, 80].map((celsius) => ({ at: `${celsius} °C`, viscosity: `${at(celsius)} Pa·s` }));
    const byLaw = runPlan(withLaw({ law: { law: "andrade", factor: "1e-9 Pa·s", activationEnergy: "60 kJ/mol" } }));
    const byReadings = runPlan(withLaw({ readings }));
    expect(byLaw.timeline[6]?.viscosity?.viscosity).toBeCloseTo(at(60), 8);
    expect(byReadings.timeline[6]?.viscosity?.viscosity).toBeCloseTo(at(60), 8);
  });

  test("a Vogel law is taken in the units of its document", () => {
    const law = {
      law: "vogel-fulcher-tammann",
      factor: "0.1 mPa·s",
      coefficient: "800 K",
      temperatureVogel: "-110 °C",
    };
    expect(runPlan(withLaw({ law })).timeline[6]?.viscosity?.viscosity).toBeCloseTo(1e-4 * Math.exp(800 / 170), 12);
  });

  test("readings and a law together, or neither, leave it open which holds", () => {
    expect(() => runPlan(withLaw({}))).toThrow("bench.viscosities[0]: found neither readings nor a law");
  });
});

describe("what is missing", () => {
  test.each<[string, (draft: ReturnType<typeof JSON.parse>) => unknown, string]>([
    ["readings of the composition", (draft) => draft.bench.viscosities.pop(), "particles-go-in:pearl"],
    ["a measured dose", (draft) => draft.bench.doses.splice(1), "gel-former-dissolves"],
    ["the working range", (draft) => delete draft.bench.oilPerGelFormer, "gel-former-ratio"],
    ["everything that tells the yield stress", withoutStrength, "particles-stay-suspended:pearl"],
    ["the cooling curve of the pack", (draft) => delete draft.pack.content, "particles-settle:pearl"],
    ["the settling allowed", (draft) => delete draft.bench.settlingAllowed, "particles-go-in:pearl"],
    ["the heat loss of the vessel", (draft) => delete draft.vessel.coolingCurve, "filled-before-it-sets"],
    ["a specific heat", (draft) => delete draft.formula.materials.almond.propertiesOf, "above-setting:B"],
  ])("%s leaves the question open", (_what, remove, id) => {
    expect(check(changed(job, remove), id).verdict).toBe("not known");
  });

  test("taking any optional field away leaves a plan of finite figures, or says what is needed", () => {
    expectFiniteWithoutAnyField(job);
  });
});

test("faults of all parts of a job are told at once, with their places", () => {
  const wrong = changed(job, (draft) => {
    draft.formula.materials.almond.density.value = "917 kg/L per m";
    draft.formula.phases[2].lines[0].amount = "0,8 %";
    draft.formula.materials.gelFormer.melting.latentHeat = "110 kJ";
    draft.bench.doses[0].setsAt = "55";
    draft.bench.viscosities[0].phases[1] = "Z";
    draft.bench.viscosities[1].readings[0].viscosity = "80 Pa·s";
    draft.batch.balances[0].increment = "-0.01 g";
    draft.batch.target.fillVolume = "30 g";
    draft.vessel.diameter = "380 °C";
    draft.vessel.colour = "grey";
    draft.formula.version = 2;
    draft.batch.version = "1";
    draft.process.steps[4] = { do: "cool", to: "-300 °C" };
    draft.process.steps[7].phase = "B";
  });
  try {
    runPlan(wrong);
    expect.unreachable();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    expect(error.code).toBe("document");
    expect(error.faults.map((fault) => fault.path).sort()).toEqual([
      "batch.balances[0].increment",
      "batch.target.fillVolume",
      "batch.version",
      "bench.doses[0].setsAt",
      "bench.viscosities[0].phases[1]",
      "bench.viscosities[1].readings",
      "formula.materials.almond.density.value",
      "formula.materials.gelFormer.melting.latentHeat",
      "formula.phases[2].lines[0].amount",
      "formula.version",
      "process.steps",
      "process.steps[4].to",
      "process.steps[7].phase",
      "vessel.colour",
      "vessel.diameter",
    ]);
  }
});

test("a process that no kettle can follow is refused step by step", () => {
  const wrong = changed(job, (draft) => {
    draft.process.steps = [
      { do: "hold", for: "5 min" },
      { do: "charge", phase: "A" },
      { do: "rest", for: "1 h" },
      { do: "heat", to: "85 °C" },
      { do: "cool", to: "60 °C" },
    ];
  });
  expect(() => runPlan(wrong)).toThrow(
    /steps\[0\].*a charge before it[\s\S]*steps\[2\].*a "fill" before it[\s\S]*steps\[4\].*"take off the heat"[\s\S]*no charge of B, C/,
  );
});

/** Takes away what the yield stress could be known from. */
function withoutStrength(draft: ReturnType<typeof JSON.parse>): void {
  for (const key of ["yieldStress", "flowCurve", "strengthTrials"]) delete draft.bench[key];
}
