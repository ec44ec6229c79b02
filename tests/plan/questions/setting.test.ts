import type { Answer, JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("how thick the melt is as it is filled", () => {
  /** The kettle cooled to a temperature after its last charge and filled in no time. */
  const filledAt = (to: string): Answer =>
    answered(
      kettle(({ process, vessel }) => {
        const { steps } = process;
        const place = steps.findIndex(({ do: kind }: Draft) => kind === "fill");
        steps.splice(place - 1, 2, { do: "cool", to }, { do: "fill" });
        steps.splice(6, 1);
        for (const one of steps) if (one.do === "charge") one.at = "80 °C";
        delete vessel.stirrer;
      }),
      "pours-into-the-pack",
    );

  test("is what was read at the ends of the readings, and between them", () => {
    // Read at 70 °C and at 54 °C.
    for (const [to, viscosity] of [
      ["70 °C", 0.038],
      ["54 °C", 36],
    ] as const) {
      const { value, min, max } = filledAt(to).figure;
      expect(value).toBeCloseTo(viscosity, 9);
      expect(min).toBeCloseTo(viscosity, 9);
      expect(max).toBeCloseTo(viscosity, 9);
    }
    expect(filledAt("60 °C").figure.value).toBeGreaterThan(0.74);
  });

  test("says what is taken for granted of how warm it is, and nothing where nothing is", () => {
    expect(filledAt("60 °C").figure).not.toHaveProperty("assumptions");
    expect(answered(exampleJob(), "pours-into-the-pack").figure.assumptions).toContain("vessel-full-while-filling");
  });

  test("is at most what was read warmest where it is warmer, down to nothing", () => {
    const { min, max, value } = filledAt("70.5 °C").figure;
    expect([min, value]).toEqual([0, undefined]);
    expect(max).toBeCloseTo(0.038, 9);
  });

  test("is at least what was read coolest where it is cooler, and has no end above", () => {
    const { min, max, value } = filledAt("53.5 °C").figure;
    expect([max, value]).toEqual([null, undefined]);
    expect(min).toBeCloseTo(36, 9);
  });
});

describe("a melt that is filled over a while", () => {
  const places = (job: JobDocument) =>
    (["filled-before-it-sets", "pours-into-the-pack"] as const).map((id) => answered(job, id).at);

  test("is coolest in the last pack where it cools, and in the first where a jacket warms it", () => {
    const [at] = places(exampleJob());
    expect(places(exampleJob())).toEqual([at, at]);
    expect(at).toEqual({ step: 10, place: "last-pack" });
    const warmed = kettle(({ process, vessel }) => {
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
      process.steps[9].jacketAt = "80 °C";
    });
    expect(places(warmed)[0]).toEqual({ step: 10, place: "first-pack" });
  });

  test("keeps the margin that the process states", () => {
    const margin = (job: JobDocument) => answered(job, "filled-before-it-sets").margin;
    expect(margin(exampleJob())).toEqual({ min: 2 });
    expect(margin(kettle(({ process }) => (process.settingMargin = "4 K")))).toEqual({ min: 4 });
  });
});

describe("what can be turned", () => {
  test("where an addition chills the melt is how warm it is, and how hot the melt was made before", () => {
    // Step 5 cools to 80 °C; step 7 cools to a viscosity and has no temperature to turn.
    const melt = { step: 5, field: "to" };
    expect(leversOf(exampleJob(), "above-setting", { step: 6, phase: "B" })).toEqual([
      ["warmer-addition", 21, 101, { step: 6, field: "at" }],
      ["hotter-melt", 80, 140, melt],
    ]);
    const warm = kettle(({ process }) => (process.steps[7].at = "40 °C"));
    expect(leversOf(warm, "above-setting", { step: 8, phase: "C" })).toEqual([
      ["warmer-addition", 40, 120, { step: 8, field: "at" }],
      ["hotter-melt", 80, 140, melt],
    ]);
  });

  test("where nothing heats or cools to a temperature before is the addition alone", () => {
    const unheated = kettle(({ process }) => {
      const kept = ["charge", "stir", "fill", "rest"];
      process.steps = process.steps.filter(({ do: kind }: Draft) => kept.includes(kind));
    });
    expect(leversOf(unheated, "above-setting").map(([lever]) => lever)).toEqual(["warmer-addition"]);
  });

  test("where filling takes too long is its time or its rate, and how warm the melt is", () => {
    const fill = { step: 10, field: "for" };
    const melt = ["hotter-melt", 80, 140, { step: 5, field: "to" }];
    for (const id of ["filled-before-it-sets", "pours-into-the-pack"] as const) {
      expect(leversOf(exampleJob(), id)).toEqual([["shorter-filling", 1200, 12, fill], melt]);
      const byRate = kettle(({ process }) => (process.steps[9] = { do: "fill", packsPerMinute: 30 }));
      expect(leversOf(byRate, id)).toEqual([["faster-filling", 30, 3000, { step: 10, field: "packsPerMinute" }], melt]);
      const atOnce = kettle(({ process }) => (process.steps[9] = { do: "fill" }));
      expect(leversOf(atOnce, id)[0]).toEqual(["shorter-filling", 0, 0, fill]);
    }
  });

  test("where a step cannot be done is its own end, or of a hold how warm the melt comes to it", () => {
    expect(leversOf(exampleJob(), "step-can-be-done", { step: 2 })).toEqual([
      ["less-heat", 85, 21, { step: 2, field: "to" }],
    ]);
    expect(leversOf(exampleJob(), "step-can-be-done", { step: 5 })).toEqual([
      ["less-cooling", 80, 140, { step: 5, field: "to" }],
    ]);
    const held = kettle(({ process }) => process.steps.splice(5, 0, { do: "hold", for: "5 min", at: "78 °C" }));
    expect(leversOf(held, "step-can-be-done", { step: 6 })).toEqual([
      ["hotter-melt", 80, 140, { step: 5, field: "to" }],
    ]);
  });
});

describe("whether a melt stays above its setting temperature", () => {
  const phases = (job: JobDocument) => asked(job, "above-setting").map(({ of }) => [of.step, of.phase]);

  test("is asked of what is charged into a melt that holds gel former, not of the first charge", () => {
    expect(phases(exampleJob())).toEqual([
      [6, "B"],
      [8, "C"],
    ]);
  });

  test("is not asked where the gel former goes in last", () => {
    const last = kettle(({ process, formula }) => {
      const [{ lines }] = formula.phases;
      formula.phases.push({ name: "G", lines: lines.splice(1, 1) });
      process.steps.splice(8, 0, { do: "charge", phase: "G" });
    });
    expect(phases(last)).toEqual([]);
    expect(asked(last, "filled-before-it-sets")).toHaveLength(1);
  });

  test("is not asked of a product without a gel former, nor whether it is filled in time", () => {
    const none = kettle(({ formula }) => (formula.materials.gelFormer.function = "oil"));
    for (const id of ["above-setting", "filled-before-it-sets", "pours-into-the-pack", "gel-former-dissolves"] as const)
      expect(asked(none, id)).toEqual([]);
  });

  test("is not asked of an emulsion, whose gel former does not melt into the oil", () => {
    for (const id of ["above-setting", "gel-former-dissolves"] as const) expect(asked(coldJob(), id)).toEqual([]);
  });
});

describe("whether a skin of gel sets on a cooled wall", () => {
  const jacketed = (step: Draft) =>
    kettle(({ process, vessel }) => {
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
      process.steps[4] = step;
    });

  test("says where its wall is colder than was read", () => {
    const skin = allJobsByName()["jacket-with-skin"] as JobDocument;
    expect(answered(skin, "skin-on-the-wall").figure.assumptions).toEqual(["wall-as-thick-as-read"]);
    const stated = allJobsByName()["jacket-by-conductance"] as JobDocument;
    expect(answered(stated, "skin-on-the-wall").figure).not.toHaveProperty("assumptions");
  });

  test("is asked of a step that cools by the jacket, and of no other", () => {
    const by = asked(jacketed({ do: "cool", to: "75 °C", with: "jacket" }), "skin-on-the-wall");
    expect(by.map(({ of, at }) => [of, at])).toEqual([[{ step: 5 }, { step: 5, place: "cooled-wall" }]]);
    expect(asked(jacketed({ do: "cool", to: "75 °C" }), "skin-on-the-wall")).toEqual([]);
    expect(asked(exampleJob(), "skin-on-the-wall")).toEqual([]);
  });
});

describe("whether the gel former dissolves", () => {
  const id = "gel-former-dissolves";

  test("is looked for on the heat alone if it ever is on the heat", () => {
    // Steps 2 and 3 end on the heat.
    const { states, at } = answered(exampleJob(), id);
    expect(states.met + states.notMet + states.notKnown).toBe(2);
    expect(at).toEqual({ step: 2, place: "charge" });
  });

  test("is looked for wherever it is in the vessel if that is never on the heat", () => {
    const cold = kettle(({ process }) => {
      const hot = ["heat", "hold", "take off the heat", "cool"];
      process.steps = process.steps.filter(({ do: kind }: Draft) => !hot.includes(kind));
    });
    // Three charges and a step that stirs.
    const { states } = answered(cold, id);
    expect(states.met + states.notMet + states.notKnown).toBe(4);
  });
});
