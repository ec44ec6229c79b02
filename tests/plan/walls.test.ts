import type { Check } from "gelwright/formula";
import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";

const job = exampleJob();

function check(document: JobDocument, id: string): Check {
  const found = runPlan(document).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
}

const degrees = (text: string): number => Number.parseFloat(text);

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
    const wall = degrees(check(job, "flash-point-at-the-wall").value);
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
    expect(check(stated, "flash-point-at-the-wall").value).toContain("118.3 °C");
    expect(check(stated, "flash-point-at-the-wall").source).toContain("the wall by a cooling test");
  });

  test("is hotter where the stirrer is slower", () => {
    const slow = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { speed: "20 rpm" }));
    const [slowly, usual] = [slow, job].map((one) => degrees(check(one, "flash-point-at-the-wall").value) - 85);
    // The coefficient goes as the power 2/3 of the speed, and the thinning at the wall takes a little of that back.
    expect((slowly ?? 0) / (usual ?? 0)).toBeGreaterThan(1.5);
    expect((slowly ?? 0) / (usual ?? 0)).toBeLessThan(2 ** (2 / 3));
  });

  test.each<[string, (draft: ReturnType<typeof JSON.parse>) => unknown, string]>([
    ["a stirrer", (draft) => delete draft.vessel.stirrer, "neither the coefficient at the wall nor a stirrer"],
    ["its speed", (draft) => delete draft.vessel.stirrer.speed, "no usual speed of the stirrer"],
    [
      "a correlation",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "other" }),
      "no correlation for this kind",
    ],
    ["readings", (draft) => draft.bench.viscosities.shift(), "no viscosity readings on heating of phases A together"],
    ["conductivities", (draft) => delete draft.formula.materials.triglyceride.propertiesOf, "no specific heat"],
    [
      "speed enough for the correlation",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "disc turbine", diameter: "120 mm", speed: "20 rpm" }),
      "outside the correlation for the stirrer",
    ],
  ])("is not known without %s, and says so", (_what, change, words) => {
    const found = check(
      changed(job, (draft) => {
        change(draft);
        if (words === "no specific heat") draft.formula.materials.triglyceride.density.at = "20 °C";
      }),
      "flash-point-at-the-wall",
    );
    expect(found.verdict).toBe("not known");
    expect(found.statement).toContain(words === "no specific heat" ? "not known" : words);
  });

  test("a stated coefficient has a source, and a stirrer fits its vessel", () => {
    const unsourced = changed(job, (draft) => Object.assign(draft.vessel.heatedWall, { coefficient: "90 W/(m²·K)" }));
    expect(() => runPlan(unsourced)).toThrow("vessel.heatedWall.source: found nothing");
    const wide = changed(job, (draft) => Object.assign(draft.vessel.stirrer, { diameter: "400 mm" }));
    expect(() => runPlan(wide)).toThrow("vessel.stirrer.diameter: found 400 mm");
  });

  test("a heater limited by its temperature gives what the stirred charge takes from it", () => {
    const limited = changed(job, (draft) => Object.assign(draft.vessel.heater, { temperatureMax: "90 °C" }));
    const plan = runPlan(limited);
    expect(plan.timeline[1]?.basis).toContain(
      "heater limited by its temperature, correlation for the wall by a stirrer",
    );
    expect(plan.timeline[1]?.timeEnd).toBeGreaterThan(runPlan(job).timeline[1]?.timeEnd ?? Number.NaN);
    expect(degrees(check(limited, "flash-point-at-the-wall").value)).toBeLessThanOrEqual(90);
    const unknown = changed(limited, (draft) => delete draft.vessel.stirrer);
    expect(runPlan(unknown).timeline[1]?.basis).toContain("duration not known: how heat passes from the heater");
  });
});

describe("a cooling jacket", () => {
  const jacketed = (jacket: object): JobDocument =>
    changed(job, (draft) => {
      draft.vessel.jacket = { coolant: "45 °C", area: "0.4 m²", source: "this test", ...jacket };
      draft.process.steps[6] = { do: "cool", to: "61 °C", with: "jacket" };
    });
  const byCoefficients = jacketed({ outsideCoefficient: "300 W/(m²·K)" });
  const skin = "skin-on-the-wall:7";
  const coolFor = (document: JobDocument): number => {
    const step = runPlan(document).timeline[6];
    return (step?.timeEnd ?? Number.NaN) - (step?.timeStart ?? Number.NaN);
  };

  test("without a conductance conducts what its coefficients give, and says by which law", () => {
    const inside = jacketed({ insideCoefficient: "100 W/(m²·K)", outsideCoefficient: "300 W/(m²·K)" });
    const stated = jacketed({ conductance: "30 W/K", insideCoefficient: "100 W/(m²·K)" });
    expect(coolFor(inside) / coolFor(stated)).toBeCloseTo(1, 10);
    expect(runPlan(byCoefficients).timeline[6]?.basis).toContain("correlation for the wall by a stirrer (anchor");
    expect(coolFor(byCoefficients)).toBeGreaterThan(0);
    expect(() => runPlan(jacketed({}))).toThrow("a conductance, or area and outsideCoefficient");
  });

  test("that is too cold sets a skin; the coolant that is named sets none", () => {
    const found = check(byCoefficients, skin);
    expect(found.verdict).toBe("not met");
    const coolant = /take coolant of ([\d.]+) °C/.exec(found.statement)?.[1];
    const warmer = changed(byCoefficients, (draft) =>
      Object.assign(draft.vessel.jacket, { coolant: `${Number(coolant) + 0.1} °C` }),
    );
    expect(check(warmer, skin)).toMatchObject({ verdict: "met" });
    const colder = changed(byCoefficients, (draft) =>
      Object.assign(draft.vessel.jacket, { coolant: `${Number(coolant) - 0.1} °C` }),
    );
    expect(check(colder, skin).verdict).toBe("not met");
  });

  test("that is turned off at the temperature that is named sets none", () => {
    const cold = jacketed({ coolant: "53 °C", outsideCoefficient: "100 W/(m²·K)" });
    const off = /turn the jacket off at ([\d.]+) °C/.exec(check(cold, skin).statement)?.[1];
    const until = (to: number): string =>
      check(
        changed(cold, (draft) => Object.assign(draft.process.steps[6], { to: `${to} °C` })),
        skin,
      ).verdict;
    expect([until(Number(off) + 0.1), until(Number(off) - 0.1)]).toEqual(["met", "not met"]);
  });

  test("of which the wall is not known leaves the skin open", () => {
    const bare = changed(job, (draft) => {
      draft.vessel.jacket = { coolant: "20 °C", conductance: "45 W/K" };
      draft.process.steps[6] = { do: "cool", to: "61 °C", with: "jacket" };
    });
    expect(check(bare, skin)).toMatchObject({ verdict: "not known" });
    expect(check(bare, skin).statement).toContain("no area of the jacket");
    const much = jacketed({ conductance: "45 W/K", insideCoefficient: "100 W/(m²·K)" });
    expect(check(much, skin).statement).toContain("what the batch passes");
  });
});
