import { answerQuestions, type JobDocument, prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

const baffles = { count: 4, width: "50 mm" };

/** The charges of a job one after another, each at a temperature, then one step that stirs: stirred in one state alone. */
function stirredOnce(job: JobDocument, change: (draft: Draft) => void, at?: string): JobDocument {
  return changed(job, (draft) => {
    const charges = draft.formula.phases.map(({ name }: Draft) => ({ do: "charge", phase: name, ...(at && { at }) }));
    draft.process.steps = [...charges, { do: "stir", for: "1 min" }, { do: "fill" }];
    change(draft);
  });
}

describe("the time to blend by Grenville and Nienow", () => {
  /** A thin melt that is stirred hot in a vessel with baffles, by a turbine of a diameter in a vessel of another. */
  const thin = (diameter: string, wide: string) =>
    stirredOnce(
      exampleJob(),
      (draft) => {
        Object.assign(draft.vessel, { diameter: wide, baffles });
        draft.vessel.workingVolume.min = "1 L";
        draft.vessel.stirrer = {
          kind: "other",
          diameter,
          speed: "300 rpm",
          laminarPowerConstant: 70,
          powerNumber: 1.5,
          revolutionsToBlend: 100,
        };
      },
      "66 °C",
    );
  const blended = (diameter: string, wide: string) => answered(thin(diameter, wide), "blended");

  test.each([
    ["250 mm", "750 mm"],
    ["250 mm", "500 mm"],
  ])("holds for a stirrer of %s in a vessel of %s, at an end of what was measured", (diameter, wide) => {
    expect(blended(diameter, wide).figure.basis).toEqual([{ kind: "law", key: "blend-time" }]);
  });

  test.each([
    ["249 mm", "750 mm"],
    ["251 mm", "500 mm"],
  ])("does not hold for a stirrer of %s in a vessel of %s: the revolutions that were counted do", (diameter, wide) => {
    const { figure } = blended(diameter, wide);
    expect(figure.basis).toEqual([{ kind: "law", key: "revolutions-to-blend" }]);
    // A hundred at 300 rpm.
    expect(figure.value).toBeCloseTo(20, 9);
  });

  test("is not known beyond what was measured if no revolutions were counted", () => {
    const uncounted = changed(thin("251 mm", "500 mm"), (draft) => delete draft.vessel.stirrer.revolutionsToBlend);
    expect(answered(uncounted, "blended")).toMatchObject({ verdict: "not-known", notKnown: [{ code: "not-stated" }] });
  });

  test("is a bound from below without baffles, and has two ends with them", () => {
    const open = changed(thin("250 mm", "500 mm"), (draft) => {
      delete draft.vessel.baffles;
      delete draft.vessel.stirrer.revolutionsToBlend;
    });
    const { min, max, value } = answered(open, "blended").figure;
    expect([max, value]).toEqual([null, undefined]);
    const baffled = blended("250 mm", "500 mm").figure;
    expect(min).toBeCloseTo(baffled.min ?? Number.NaN, 9);
    expect(baffled.value).toBeGreaterThan(baffled.min ?? Number.NaN);
    expect(baffled.max).toBeGreaterThan(baffled.value ?? Number.NaN);
  });
});

describe("whether a charge is stirred until it is blended", () => {
  const id = "blended";

  test("is asked of a step that only stirs, while the charge has not set", () => {
    expect(asked(exampleJob(), id).map(({ of }) => of)).toEqual([{ step: 9 }]);
    expect(asked(coldJob(), id).map(({ of }) => of)).toEqual([{ step: 2 }]);
    // Cooled below its setting temperature, it is stirred as a gel that has set.
    const set = kettle(({ process }) => {
      process.steps[6] = { do: "cool", to: "45 °C" };
      process.steps[7].at = "45 °C";
    });
    expect(asked(set, id)).toEqual([]);
  });

  test("is not asked without a stirrer, nor whether the gel moves", () => {
    for (const still of [exampleJob(), coldJob()].map((job) => changed(job, (draft) => delete draft.vessel.stirrer)))
      for (const one of ["blended", "gel-moves-at-wall", "gel-moves-at-surface"] as const)
        expect(asked(still, one)).toEqual([]);
  });

  test("is found by the revolutions that were counted, and lacks them where it is a bound without baffles", () => {
    const { figure, limit, beside, at } = answered(coldJob(), id);
    // 150 revolutions at 25 rpm, within 20 minutes.
    expect(figure.value).toBeCloseTo(360, 9);
    expect(limit.max?.value).toBe(1200);
    expect(at).toEqual({ step: 2, place: "vessel" });
    expect(beside).toEqual({ reynolds: expect.any(Number) });
    const uncounted = vessel((draft) => delete draft.vessel.stirrer.revolutionsToBlend);
    expect(answered(uncounted, id).beside).toMatchObject({ lacks: "stirrer-revolutions-to-blend" });
    const baffled = changed(uncounted, (draft) => (draft.vessel.baffles = { count: 4, width: "5 mm" }));
    expect(Object.keys(answered(baffled, id).beside ?? {})).toEqual(["reynolds"]);
  });

  test("can be met by stirring for up to a hundred times as long", () => {
    expect(leversOf(coldJob(), id)).toEqual([["longer-stirring", 1200, 120_000, { step: 2, field: "for" }]]);
  });
});

describe("whether a gel moves at the wall and at the surface", () => {
  test("is asked of every step that stirs an emulsion, and of each by itself", () => {
    for (const id of ["gel-moves-at-wall", "gel-moves-at-surface"] as const) {
      const answers = asked(coldJob(), id);
      expect(answers.map(({ of }) => of.step)).toEqual([2, 3, 6, 7]);
      // Twenty additions of one step, each of which stirs.
      expect(answers.map(({ states }) => states.met + states.notMet + states.notKnown)).toEqual([1, 20, 1, 1]);
      for (const { of, at } of answers) expect(at.step).toBe(of.step);
    }
  });

  test("is not asked where the stirrer is moved through it by hand", () => {
    const byHand = vessel((draft) => (draft.vessel.stirrer.byHand = true));
    expect(asked(byHand, "gel-moves-at-wall")).toEqual([]);
  });

  test("is asked of a melt where it may have set, and not where it surely has not", () => {
    expect(asked(exampleJob(), "gel-moves-at-wall")).toEqual([]);
    const unread = kettle(({ bench }) => delete bench.doses);
    // The steps off the heat in which it may have set.
    expect(asked(unread, "gel-moves-at-wall").map(({ of }) => of.step)).toEqual([5, 6, 7, 9]);
  });

  test("at the surface has a limit between two levels where the shape of the bottom is not stated", () => {
    const limitOf = (job: JobDocument) => asked(job, "gel-moves-at-surface")[0]?.limit.min;
    const [flat, open] = [coldJob(), vessel((draft) => delete draft.vessel.bottom)].map(limitOf);
    expect(open?.max ?? 0).toBeGreaterThan(flat?.max ?? Number.NaN);
    expect(open?.min).toBe(flat?.min);
  });

  test("at the surface has one level for its limit where every expansion is stated and the bottom is flat", () => {
    const stated = vessel(({ formula }) => {
      for (const material of Object.values<Draft>(formula.materials))
        if (material.density?.at) material.density.fallPerKelvin = "0.6 kg/m³";
    });
    const limit = asked(stated, "gel-moves-at-surface")[0]?.limit.min;
    expect(limit?.value).toBe(limit?.min);
    expect(limit?.assumptions).toBeUndefined();
    const open = asked(
      changed(stated, (draft) => delete draft.vessel.bottom),
      "gel-moves-at-surface",
    )[0]?.limit.min;
    expect(open?.max).toBeGreaterThan(open?.min ?? Number.NaN);
    expect(open).not.toHaveProperty("assumptions");
  });
});

describe("whether a stirrer is covered", () => {
  const cover = "stirrer-covered";
  const kinds = (kind: string, change: (stirrer: Draft) => void = () => {}) =>
    vessel((draft) => {
      Object.assign(draft.vessel.stirrer, { kind, topEdge: "150 mm", laminarPowerConstant: 300, powerNumber: 1 });
      change(draft.vessel.stirrer);
    });

  test.each([
    ["anchor", 0],
    ["helical ribbon", 0],
    ["other", 1],
  ])("is asked of %s without a cover: %i times", (kind, times) => {
    for (const id of [cover, "minimum-volume"] as const) {
      expect(asked(kinds(kind), id)).toHaveLength(times);
      const wanted = kinds(kind, (stirrer) => (stirrer.cover = "10 mm"));
      expect(asked(wanted, id)).toHaveLength(1);
    }
  });

  test("asks for the cover above its top edge, and for none where none is stated", () => {
    const limit = (job: JobDocument) => answered(job, cover).limit.min?.value;
    expect(limit(kinds("other"))).toBeCloseTo(0.15, 12);
    expect(limit(kinds("anchor", (stirrer) => (stirrer.cover = "10 mm")))).toBeCloseTo(0.16, 12);
  });

  test("takes a bottom that is not stated as flat, and says so", () => {
    const open = changed(kinds("other"), (draft) => delete draft.vessel.bottom);
    expect(answered(open, cover).figure.assumptions).toEqual(["bottom-taken-as-flat"]);
    expect(answered(open, "minimum-volume").limit.min?.assumptions).toEqual(["bottom-taken-as-flat"]);
    expect(answered(kinds("other"), cover).figure.assumptions).toBeUndefined();
    expect(answered(kinds("other"), "minimum-volume").limit.min?.assumptions).toBeUndefined();
  });
});

describe("a vortex", () => {
  const id = "no-air-down-the-vortex";

  test("may come down as far as the charge stands above the stirrer; where it stands no higher there is no depth to go by", () => {
    const level = answered(
      stirredOnce(coldJob(), ({ vessel: { stirrer } }) => Object.assign(stirrer, { topEdge: "1 mm", cover: "0 mm" })),
      "stirrer-covered",
    ).figure.value;
    const limitAt = (topEdge: number) =>
      answered(
        stirredOnce(coldJob(), ({ vessel: { stirrer } }) => (stirrer.topEdge = `${topEdge} m`)),
        id,
      ).limit.max;
    expect(limitAt((level ?? Number.NaN) - 1e-6)?.value).toBeCloseTo(1e-6, 9);
    expect(limitAt(level ?? Number.NaN)).toEqual({ min: 0, max: null });
    expect(limitAt((level ?? Number.NaN) + 1e-6)).toEqual({ min: 0, max: null });
  });

  test("may form however slowly a melt is stirred of which the thickness is shifted from another's", () => {
    const slow = (change: (draft: Draft) => void) =>
      answered(
        stirredOnce(
          exampleJob(),
          (draft) => {
            draft.process.steps[3].speed = "1 rpm";
            change(draft);
          },
          "66 °C",
        ),
        id,
      ).figure;
    expect(slow(() => {})).toMatchObject({ min: 0, max: 0, value: 0 });
    const shifted = slow(({ bench, formula }) => {
      bench.formula = structuredClone({ name: formula.name, phases: formula.phases });
      bench.viscosityShift = "with the setting temperature";
      formula.phases[0].lines[1].amount = "10.5 %";
    });
    expect(shifted).not.toHaveProperty("value");
    expect(shifted.max).toBeGreaterThan(0);
  });

  test("does not form below a Reynolds number of 300, and may from there on", () => {
    const prepared = prepareJob(
      stirredOnce(
        exampleJob(),
        ({ vessel: { stirrer } }) => Object.assign(stirrer, { metznerOttoConstant: 20 }),
        "66 °C",
      ),
    );
    const at = (speed: number) => {
      const changes = [{ change: "step", step: 4, field: "speed", value: speed }] as const;
      const [vortex] = answerQuestions({ prepared, changes, questions: [id] });
      return { reynolds: Number(vortex?.beside?.["reynolds"]), figure: vortex?.figure };
    };
    let [slow, fast] = [0.01, 3];
    for (let i = 0; i < 60; i++) {
      const middle = (slow + fast) / 2;
      if (at(middle).reynolds < 300) slow = middle;
      else fast = middle;
    }
    const [below, above] = [at(slow), at(fast)];
    expect(below.reynolds).toBeLessThan(300);
    expect(above.reynolds).toBeGreaterThanOrEqual(300);
    expect(above.reynolds / below.reynolds).toBeCloseTo(1, 12);
    expect(below.figure).toMatchObject({ value: 0, max: 0 });
    expect(above.figure?.value).toBeUndefined();
    expect(above.figure?.max).toBeGreaterThan(0);
  });
});
