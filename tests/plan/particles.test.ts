import { CalculationError } from "gelwright/error";
import { flakeShape } from "gelwright/particles";
import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

/** The hot route's example with so much settling allowed [mm]. */
function allowing(millimetres: number): JobDocument {
  return changed(exampleJob(), (draft) => {
    draft.bench.settlingAllowed = `${millimetres} mm`;
  });
}

const plan = runPlan(exampleJob());
const [particle] = plan.particles;
const material = known(particle).material;
const settled = 1000 * Math.max(...answersOf(plan, "particles-settle", { material }).map(figureOf));

describe("going in and settling", () => {
  test.each([
    ["just below what is allowed, both are met", 1 - 1e-4, "met"],
    ["just above, neither is", 1 + 1e-4, "not-met"],
  ] as const)("%s", (_what, part, verdict) => {
    const job = allowing(settled / part);
    expect(answerOf(job, "particles-settle", { material }).verdict).toBe(verdict);
    const goesIn = answerOf(job, "particles-go-in", { material });
    expect(goesIn.verdict).toBe(verdict);
    if (verdict === "not-met") expect(goesIn.side).toBe("above");
  });

  test("agree on the temperature: at the upper end of the window as much settles as is allowed", () => {
    const wide = answerOf(allowing(2 * settled), "particles-go-in", { material });
    const narrow = answerOf(allowing(settled / 2), "particles-go-in", { material });
    const at = figureOf(answerOf(exampleJob(), "particles-go-in", { material }));
    expect(known(wide.limit.max?.value)).toBeGreaterThan(at);
    expect(known(narrow.limit.max?.value)).toBeLessThan(at);
    const [more, less] = [1.001, 0.999].map((part) =>
      known(answerOf(allowing(settled * part), "particles-go-in", { material }).limit.max?.value),
    );
    expect(more).toBeGreaterThanOrEqual(at);
    expect(less).toBeLessThan(at);
  });

  test("are not known alike where nobody knows how the pack cools", () => {
    const unknown = changed(exampleJob(), (draft) => delete draft.pack);
    expect(answerOf(unknown, "particles-settle", { material }).verdict).toBe("not-known");
    const goesIn = answerOf(unknown, "particles-go-in", { material });
    expect(goesIn).toMatchObject({ verdict: "not-known", limit: { max: { min: null } }, beside: { lacks: "pack" } });
  });
});

describe("settling", () => {
  const early = jobsByName()["flakes-in-too-early"] as JobDocument;

  /** The kettle with grains of a diameter [mm] in place of its pearl: how far they settle in the vessel and in the last pack [m]. */
  const grains = (diameter: number) => {
    const settles = runPlan(
      changed(exampleJob(), (draft) => {
        draft.formula.materials[material].particle = { diameter: `${diameter} mm`, density: "3000 kg/m³" };
      }),
    ).particles[0]?.settles;
    return { inVessel: known(settles?.inVessel), inPack: known(settles?.inPack) };
  };

  test.each(["inVessel", "inPack"] as const)(
    "%s goes to the bottom and no further: as grains creep, twice as wide is four times as far, up to there",
    (where) => {
      const [fine, wide, wider] = [grains(0.5), grains(2), grains(4)].map((settles) => settles[where]);
      const bottom = known(wide);
      expect(wider).toBe(bottom);
      const reaching = 0.5 * Math.sqrt(bottom / known(fine));
      expect(grains(0.999 * reaching)[where] / bottom).toBeCloseTo(0.998, 4);
      expect(grains(1.001 * reaching)[where]).toBe(bottom);
    },
  );

  test("the bottom is as deep as the warm melt stands in the vessel, and as the pack is high", () => {
    const { inVessel, inPack } = grains(2);
    expect(inPack).toBeCloseTo(0.0217, 12);
    // What is 36.8 L at 20 °C fills 2.6 % more at 58 °C.
    const level = known(plan.lots.volume) / (Math.PI * 0.19 ** 2);
    expect(inVessel / level).toBeGreaterThan(1.02);
    expect(inVessel / level).toBeLessThan(1.03);
  });

  test("takes the time that the melt takes to cool in this run, and none for an addition that chills it at once", () => {
    // Scrub of the room's temperature goes in at 51.3 °C and chills the melt by half a kelvin in no time.
    const glitter = (job: JobDocument) => answerOf(job, "particles-go-in", { material: "glitter" }).limit.max?.value;
    // By an ODE solver in time, in tests/references/plan.
    expect(known(glitter(early))).toBeCloseTo(51.6648, 3);
    // The stirrer keeps the melt warm for longer while it cools, and what settles meanwhile settles farther.
    const allowed = changed(early, (draft) => Object.assign(draft.bench, { settlingAllowed: "1 m" }));
    const fine = (powerNumber: number) => {
      const job = changed(allowed, (draft) => {
        Object.assign(draft.formula.materials.glitter.particle, { diameter: "19 µm", thickness: "3 µm" });
        Object.assign(draft.vessel.stirrer, { powerNumber, laminarPowerConstant: 60 });
      });
      return figureOf(answerOf(job, "particles-settle", { material: "glitter" }));
    };
    expect(fine(40)).toBeGreaterThan(1.01 * fine(1));
  });

  test("is given of the first pack beside the last", () => {
    expect(known(particle).settlesFirst).toBeDefined();
    expect(known(particle).settlesFirst?.inVessel).toBeLessThan(known(known(particle).settles).inVessel);
    expect(known(particle).settlesFirst?.inPack).toBeGreaterThan(known(known(particle).settles?.inPack));
  });
});

describe("a flake", () => {
  /** The example with its particle by these fields. */
  const sized = (of: object) =>
    changed(exampleJob(), (draft) => {
      draft.formula.materials[material].particle = { density: "1400 kg/m³", ...of };
    });

  test("by its width as sold is the one of the sphere of its volume", () => {
    const sold = sized({ width: "200 µm", thickness: "20 µm" });
    const { diameter } = flakeShape({ diameter: 200e-6, thickness: 20e-6 });
    const [one] = runPlan(sold).particles;
    expect(one?.size).toEqual({
      diameter: expect.closeTo(diameter, 15),
      width: expect.closeTo(200e-6, 12),
      thickness: 20e-6,
    });
    const [other] = runPlan(sized({ diameter: `${1e6 * diameter} µm`, thickness: "20 µm" })).particles;
    expect(known(one?.settles).inVessel / known(other?.settles).inVessel).toBeCloseTo(1, 9);
  });

  test.each([
    ["both sizes", { width: "200 µm", diameter: "80 µm", thickness: "20 µm" }],
    ["neither", { thickness: "20 µm" }],
    ["no thickness beside the width", { width: "200 µm" }],
    ["more thickness than width", { width: "20 µm", thickness: "21 µm" }],
  ])("with %s is a fault of the document", (_what, of) => {
    expect(() => runPlan(sized(of))).toThrow(CalculationError);
  });
});

describe("readings that end above the setting temperature", () => {
  /** The kettle, whose melt sets at 55 °C, read down to 57 °C and stirred up to a viscosity [Pa·s]. */
  const stirred = (viscosity: number, ending = true) =>
    runPlan(
      changed(exampleJob(), ({ bench }: Draft) => {
        bench.stirrableViscosityMax = `${viscosity} Pa·s`;
        if (ending) for (const reading of bench.viscosities.slice(1)) reading.readings.splice(-1);
      }),
    );

  test("say when particles may go in as long as it can be stirred within them: at 57 °C they read 9 Pa·s", () => {
    const [within, beyond] = [stirred(8.99), stirred(9.01)];
    expect(answerOf(within, "particles-go-in").verdict).toBe("met");
    expect(within.particles[0]?.window?.temperatureMin).toBeCloseTo(
      known(stirred(8.99, false).particles[0]?.window?.temperatureMin),
      3,
    );
    expect(answerOf(beyond, "particles-go-in")).toMatchObject({
      verdict: "not-known",
      notKnown: [{ code: "outside-range", law: "window-for-adding" }],
    });
  });
});
