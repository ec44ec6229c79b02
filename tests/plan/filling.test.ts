import fc from "fast-check";
import { vesselSegment } from "gelwright/heat";
import {
  answerQuestions,
  type JobDocument,
  type PreparedJob,
  prepareJob,
  remedies,
  runPlan,
  runPrepared,
} from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { between } from "../support/between.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { allJobsByName } from "./jobs/jobs.js";

/** The kettle of the example, its filling stated in another way. */
function filling(fields: Draft, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(exampleJob(), (draft) => {
    const { steps } = draft.process;
    const place = steps.findIndex(({ do: kind }: Draft) => kind === "fill");
    steps[place] = { do: "fill", ...fields };
    draft.vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
    change(draft);
  });
}

const number = 10;

function plainLoss({ vessel }: Draft): void {
  vessel.heatLoss = "3 W/K";
  delete vessel.coolingCurve;
}

function plainHeat({ vessel, formula }: Draft): void {
  plainLoss({ vessel });
  for (const material of Object.values(formula.materials) as Draft[]) {
    material.specificHeat = "2 kJ/(kg·K)";
    delete material.melting;
  }
}

function fillOf(job: JobDocument): { readonly duration: number; readonly first: number; readonly last: number } {
  const { timeStart, timeEnd, temperatureStart, temperatureEnd } = known(runPlan(job).timeline[number - 1]);
  return {
    duration: known(timeEnd) - known(timeStart),
    first: known(temperatureStart),
    last: known(temperatureEnd),
  };
}

describe("a vessel that empties", () => {
  const assumed = (job: JobDocument) => known(runPlan(job).timeline.find(({ step }) => step.do === "fill")).assumptions;

  it("is said to count as full, wherever its temperature changes meanwhile", () => {
    for (const fields of [{ for: "20 min" }, { packsPerMinute: 30 }, { for: "20 min", jacketAt: "70 °C" }])
      expect(assumed(filling(fields))).toContain("vessel-full-while-filling");
    const [answer] = answersOf(runPlan(exampleJob()), "filled-before-it-sets");
    expect(known(answer).figure.assumptions).toContain("vessel-full-while-filling");
  });

  it("has a last pack as cool at worst as a full vessel is after −ln x/(1 − x) times as long", () => {
    const last = (job: JobDocument) => answerOf(job, "filled-before-it-sets", { step: number });
    const plan = runPlan(filling({ for: "4 min" }));
    const { charge, delivered, packs } = plan.lots;
    const left = 1 - (delivered - delivered / known(packs)) / charge;
    const longer = (-Math.log(left) / (1 - left)) * 240;
    const { figure, at } = last(filling({ for: "4 min" }));
    expect(at.place).toBe("last-pack");
    expect(known(figure.value) - known(figure.min)).toBeGreaterThan(1);
    expect(figure.min).toBeCloseTo(known(last(filling({ for: `${longer} s` })).figure.value), 6);
  });

  it.each([
    [0.999, "met"],
    [1.001, "not-known"],
  ])("is filled in time for certain within the duration that the plan names, tried at %d of it", (part, verdict) => {
    const { durationMax } = known(runPlan(exampleJob()).fillingLimits);
    expect(answerOf(filling({ for: `${part * known(durationMax)} s` }), "filled-before-it-sets").verdict).toBe(verdict);
  });

  it("counts no predicted film among what is left, so that less knowledge of the film makes no pack pour", () => {
    const job = known(allJobsByName()["jacket-by-conductance"]);
    const without = structuredClone(job) as Draft;
    delete without.bench.doses;
    const pours = [job, without].map((one) => answerOf(runPlan(one), "pours-into-the-pack"));
    expect(pours.map(({ verdict, figure }) => [verdict, figure.max])).toEqual([
      ["not-known", null],
      ["not-known", null],
    ]);
  });

  it("is as warm as it was to the last where it is held on the heat", () => {
    const held = filling({ packsPerMinute: 10, held: "on the heat" }, ({ process }) => {
      process.steps.splice(9, 0, { do: "heat", to: "62 °C" });
    });
    for (const { figure } of answersOf(runPlan(held), "filled-before-it-sets")) expect(figure.min).toBe(figure.value);
  });

  it("is not, where it changes nothing: in no time, or held on the heat", () => {
    const held = changed(exampleJob(), ({ process }) => {
      process.steps = process.steps.filter(({ do: kind }: Draft) => kind !== "take off the heat" && kind !== "cool");
      process.steps.find(({ do: kind }: Draft) => kind === "fill").held = "on the heat";
    });
    for (const job of [filling({}), held]) expect(assumed(job)).not.toContain("vessel-full-while-filling");
  });
});

describe("filling at a rate", () => {
  it("takes the packs of a lot over the packs a minute", () => {
    expect(fillOf(filling({ packsPerMinute: 30 })).duration).toBeCloseTo((1200 / 30) * 60, 9);
    const inLots = (lots: number) => filling({ packsPerMinute: 30 }, ({ batch }) => (batch.lots = lots));
    const plan = runPlan(inLots(2));
    expect([plan.lots.count, plan.lots.packs]).toEqual([2, 600]);
    const [, , , , , , , , , fill] = plan.timeline;
    expect(known(fill?.timeEnd) - known(fill?.timeStart)).toBeCloseTo((600 / 30) * 60, 9);
  });

  it("counts the packs that a mean content makes of a mass", () => {
    const byMass = (fill: string) =>
      filling({ packsPerMinute: 30 }, ({ batch, pack }) => {
        batch.target = { mass: "33 kg" };
        pack.fillTarget = fill;
      });
    const plan = runPlan(byMass("27.5 g"));
    const count = Math.floor(plan.lots.delivered / 0.0275);
    expect(fillOf(byMass("27.5 g")).duration).toBeCloseTo((count / 30) * 60, 9);
    // Without a stated fill the nominal volume counts at the density of 20 °C.
    const nominal = filling({ packsPerMinute: 30 }, ({ batch }) => (batch.target = { mass: "33 kg" }));
    const { packs } = runPlan(nominal);
    const whole = Math.floor(runPlan(nominal).lots.delivered / known(packs?.massNominal));
    expect(fillOf(nominal).duration).toBeCloseTo((whole / 30) * 60, 9);
  });

  it("takes a time that is not known without packs, and nothing of that is met", () => {
    const job = filling({ packsPerMinute: 30 }, (draft) => {
      draft.batch.target = { mass: "33 kg" };
      delete draft.pack.nominal;
      delete draft.pack.averageQuantity;
    });
    const { notKnown } = known(runPlan(job).timeline[number - 1]);
    expect([notKnown?.code, notKnown?.field]).toEqual(["not-stated", "pack-packs"]);
    expect(answerOf(job, "filled-before-it-sets").verdict).not.toBe("met");
    const noPack = changed(job, (draft) => delete draft.pack);
    expect(answerOf(noPack, "filled-before-it-sets").notKnown[0]?.field).toBe("pack");
  });

  it("is the same as filling for that time", () => {
    const atRate = prepareJob(filling({ packsPerMinute: 30 }));
    const forTime = prepareJob(filling({ for: "20 min" }));
    const last = (prepared: PreparedJob, field: "packsPerMinute" | "for", value: number) =>
      answerQuestions({
        prepared,
        changes: [{ change: "step", step: number, field, value }],
        questions: ["filled-before-it-sets"],
      })[0]?.figure.value;
    fc.assert(
      fc.property(between(5, 200), (packsPerMinute) => {
        const time = (1200 / packsPerMinute) * 60;
        expect(last(atRate, "packsPerMinute", packsPerMinute)).toBeCloseTo(known(last(forTime, "for", time)), 9);
      }),
      { numRuns: 20 },
    );
  });

  it("leaves the first pack the same time to set in, and the wall the same film", () => {
    const [atRate, forTime] = [filling({ packsPerMinute: 30 }), filling({ for: "40 min" })].map((job) =>
      changed(job, ({ batch }) => {
        const { thickness: _, ...film } = batch.allowances.find(({ kind }: Draft) => kind === "film");
        batch.allowances = [...batch.allowances.filter(({ kind }: Draft) => kind !== "film"), film];
      }),
    );
    const figures = (job: JobDocument) => {
      const plan = runPlan(job);
      return [known(answerOf(plan, "set-at-centre").figure.value), known(plan.films.allowed?.thickness)];
    };
    const [set = 0, film = 0] = figures(known(atRate));
    expect(figures(known(forTime))).toEqual([expect.closeTo(set, 6), expect.closeTo(film, 9)]);
    expect(film).toBeGreaterThan(0);
  });

  it("has a rate for its remedy that makes the answer met", () => {
    const prepared = prepareJob(filling({ packsPerMinute: 30 }));
    const [remedy] = remedies({ prepared, answer: { id: "filled-before-it-sets", of: { step: number } } });
    expect(remedy?.lever).toBe("faster-filling");
    const after = runPrepared({ prepared, changes: [known(remedy).change] });
    expect(answersOf(after, "filled-before-it-sets")[0]?.verdict).toBe("met");
    const slower = { ...known(remedy).change, value: known(remedy).change.value * 0.99 };
    const before = runPrepared({ prepared, changes: [slower] });
    expect(answersOf(before, "filled-before-it-sets")[0]?.verdict).toBe("not-known");
  });
});

describe("each pack at its own temperature", () => {
  it.each([
    // The melt has 58.10 °C as filling begins, and has to keep 2 K above its setting temperature.
    // What is left cools faster than a full vessel does, at 2 % of the charge up to four times as fast.
    ["440 packs a minute", 440, "met"],
    ["435 packs a minute", 435, "not-known"],
    ["112 packs a minute", 112, "not-known"],
    ["110 packs a minute", 110, "not-met"],
  ])("the last of 1,200 is filled before it sets at %s", (_name, packsPerMinute, verdict) => {
    const found = answerOf(filling({ packsPerMinute }), "filled-before-it-sets");
    expect([found.verdict, found.at.place]).toEqual([verdict, "last-pack"]);
  });

  it("the first pack fits the brim worst, and the last is the coolest", () => {
    const job = filling({ packsPerMinute: 30 });
    const { first, last } = fillOf(job);
    expect(last).toBeLessThan(first - 3);
    expect(answerOf(job, "fits-the-brim").at.place).toBe("first-pack");
    const { filler } = known(runPlan(job).packs);
    expect(filler?.temperature).toEqual({ min: last, max: first });
  });
});

describe("filling from a vessel that is kept warm", () => {
  it("stays as warm as it was on the heat, and on the heat it is", () => {
    const job = filling({ packsPerMinute: 10, held: "on the heat" }, ({ process }) => {
      process.steps.splice(9, 0, { do: "heat", to: "62 °C" });
    });
    const { timeline } = runPlan(job);
    expect([timeline[10]?.temperatureStart, timeline[10]?.temperatureEnd]).toEqual([62, 62]);
    expect(answerOf(job, "filled-before-it-sets").verdict).toBe("met");
    // Fragrance and almond oil are to stay off the heat.
    const sensitive = answersOf(runPlan(job), "heat-sensitive-off-the-heat");
    expect(sensitive.map(({ verdict }) => verdict)).toEqual(["not-met", "not-met"]);
  });

  it("comes to where the jacket gives what it loses", () => {
    const { first, last } = fillOf(filling({ for: "50 h", jacketAt: "62 °C" }, plainLoss));
    // 30 W/K from 62 °C against 3 W/K to the room.
    const level = (30 * 62 + 3 * 21) / 33;
    expect(first).toBeLessThan(level);
    expect(last).toBeCloseTo(level, 3);
  });

  it("cools as the segment of the heat kernels does", () => {
    const job = filling({ for: "40 min", jacketAt: "62 °C" }, plainHeat);
    const { mass } = known(runPlan(job).timeline[8]);
    const { first, last } = fillOf(job);
    const { temperatureEnd } = vesselSegment({
      temperatureStart: first,
      temperatureAmbient: 21,
      heatCapacity: 2000 * mass + 6000,
      heatLoss: { law: "newton", conductance: 3 },
      heatSource: { kind: "medium", temperature: 62, conductance: 30 },
      duration: 2400,
    });
    expect(last).toBeCloseTo(temperatureEnd, 9);
  });

  it("is warmer at the last pack the warmer the jacket is, and never warmer than both", () => {
    const prepared = prepareJob(filling({ for: "30 min", jacketAt: "62 °C" }));
    const { first } = fillOf(filling({ for: "30 min" }));
    const last = (value: number): number => {
      const changes = [{ change: "step", step: number, field: "jacketAt", value }] as const;
      return known(runPrepared({ prepared, changes }).timeline[number - 1]?.temperatureEnd);
    };
    fc.assert(
      fc.property(between(30, 90), between(0.5, 10), (medium, more) => {
        const cooler = last(medium);
        expect(last(medium + more)).toBeGreaterThan(cooler);
        expect(cooler).toBeLessThanOrEqual(Math.max(first, medium));
      }),
      { numRuns: 15 },
    );
  });

  it("asks what its warm wall does to what can burn, between the charge and the jacket", () => {
    const wall = (jacketAt: string) =>
      answersOf(runPlan(filling({ for: "20 min", jacketAt })), "flash-point", {
        material: "fragrance",
        place: "heated-wall",
      })[0];
    const { figure, at } = known(wall("62 °C"));
    expect([at.step, figure.max]).toEqual([number, 62]);
    // Its flash point is 92 °C, and 30 K below that it may get no warmer.
    expect([wall("62 °C")?.verdict, wall("63 °C")?.verdict]).toEqual(["met", "not-known"]);
    expect(wall("80 °C")?.verdict).toBe("not-met");
  });

  it("passes what nobody knows where nothing stirs and no figure is stated for that", () => {
    const job = (speed: Draft) =>
      filling({ for: "20 min", jacketAt: "62 °C", ...speed }, ({ vessel }) => {
        vessel.jacket = {
          coolant: "15 °C",
          area: "0.4 m²",
          outsideCoefficient: "500 W/(m²·K)",
          source: "invented for this test",
        };
      });
    expect(runPlan(job({})).timeline[number - 1]?.notKnown?.field).toBe("vessel-jacket-conductance");
    expect(answerOf(job({}), "filled-before-it-sets").verdict).toBe("not-known");
    expect(fillOf(job({ speed: "10 rpm" })).last).toBeGreaterThan(55);
  });

  it("lets particles settle in the vessel while the last pack waits, unless it is stirred", () => {
    const figure = (fields: Draft) =>
      known(answerOf(filling({ for: "40 min", jacketAt: "62 °C", ...fields }), "particles-settle").figure.value);
    expect(figure({})).toBeGreaterThan(2 * figure({ speed: "10 rpm" }));
  });

  it("asks of the motor what it asks of every stirred state", () => {
    const turning = runPlan(filling({ for: "20 min", speed: "10 rpm" }));
    expect(known(turning.timeline[number - 1]).stirring?.torque).toBeGreaterThan(0);
    expect(known(runPlan(filling({ for: "20 min" })).timeline[number - 1]).stirring).toBeUndefined();
  });
});

describe("what is left in a vessel that is warmed while packs are filled", () => {
  const charge = (job: JobDocument) =>
    known(answersOf(runPlan(job), "flash-point", { material: "fragrance", place: "charge" })[0]);

  it("may be as warm as its jacket, whose medium decides and not what the full vessel comes to", () => {
    // The flash point is 92 °C, and 30 K below that it may get no warmer.
    const held = charge(filling({ for: "20 min", jacketAt: "62 °C" }));
    expect([held.verdict, held.figure.max]).toEqual(["met", 62]);
    const beyond = charge(filling({ for: "20 min", jacketAt: "63 °C" }));
    expect([beyond.verdict, beyond.figure.max]).toEqual(["not-known", 63]);
    expect(fillOf(filling({ for: "20 min", jacketAt: "63 °C" })).last).toBeLessThan(62);
  });

  it("takes as long to set as from there, and lets particles settle as far at least as a vessel at that temperature", () => {
    const warm = filling({ for: "20 min", jacketAt: "70 °C" });
    const { at, figure } = answerOf(warm, "set-at-centre");
    expect(at.place).toBe("last-pack");
    expect(known(figure.max)).toBeGreaterThan(2 * known(figure.value));
    const settles = (jacketAt: string) => answerOf(filling({ for: "20 min", jacketAt }), "particles-settle");
    expect(settles("70 °C").verdict).toBe("not-known");
    expect(settles("59 °C").verdict).toBe("met");
  });

  it("is warmed by a stirrer no more than what loses nothing beyond a full vessel's loss, as its mass falls", () => {
    fc.assert(
      fc.property(between(2, 20), between(30, 150), (minutes, rpm) => {
        const plan = runPlan(filling({ for: `${minutes} min`, speed: `${rpm} rpm` }, plainHeat));
        const { temperatureStart, temperatureEnd, stirring } = known(plan.timeline[number - 1]);
        const warmest = answersOf(plan, "flash-point", { material: "fragrance", place: "charge" })[0]?.figure.max;
        // The full vessel's power, and what it loses as a rate of cooling, in steps of a second: what is left takes up all of the power.
        const { charge: mass, delivered, packs } = plan.lots;
        const last = delivered - delivered / known(packs);
        const power = known(stirring?.power);
        const heatCapacity = (left: number): number => 2000 * left + 6000;
        const duration = 60 * minutes;
        const cooled = known(temperatureStart) - known(temperatureEnd);
        const lost = cooled / duration + power / heatCapacity(mass);
        let temperature = known(temperatureStart);
        for (let time = 0; time < duration; time += 1) {
          const left = mass - (last * (time + 0.5)) / duration;
          temperature += power / heatCapacity(left) - lost;
        }
        expect(known(warmest)).toBeGreaterThan(temperature - 0.05);
      }),
      { numRuns: 15 },
    );
  });

  it("has no end where the last pack takes all that the vessel holds", () => {
    const job = (fields: Draft) =>
      filling({ for: "20 min", ...fields }, (draft) => {
        draft.batch.allowances = [];
        delete draft.stability;
      });
    const end = (fields: Draft) => charge(job(fields)).figure.max;
    expect(end({ jacketAt: "62 °C" })).toBe(62);
    expect(end({ speed: "60 rpm" })).toSatisfy((max: number | null) => max === null || max > 58);
  });
});

describe("what no kettle can do", () => {
  test.each([
    ["a rate beside a time", { for: "20 min", packsPerMinute: 30 }, /only one of for and packsPerMinute/],
    ["held on the heat without heat", { held: "on the heat" }, /a "heat" before it/],
    ["held on the heat and on a jacket", { held: "on the heat", jacketAt: "60 °C" }, /only one of held and jacketAt/],
    ["no packs a minute", { packsPerMinute: 0 }, /above 0/],
    ["packs as text", { packsPerMinute: "30" }, /number/],
    ["cooler than nothing", { jacketAt: "-300 °C" }, /temperature|absolute/],
  ])("%s", (_name, fields, expected) => {
    expect(() => runPlan(filling(fields))).toThrow(expected);
  });

  test("a warm jacket that is not there", () => {
    expect(() => runPlan(filling({ jacketAt: "60 °C" }, ({ vessel }) => delete vessel.jacket))).toThrow(/a jacket/);
  });

  test("another time for what packs a minute set", () => {
    const prepared = prepareJob(filling({ packsPerMinute: 30 }));
    const change = { change: "step", step: number, field: "for", value: 60 } as const;
    expect(() => runPrepared({ prepared, changes: [change] })).toThrow(/a figure of this step/);
  });
});

test("the cold route fills at a rate too, in the room", () => {
  const job = changed(coldJob(), ({ process }) => {
    const fill = process.steps.find(({ do: kind }: Draft) => kind === "fill");
    delete fill.for;
    fill.packsPerMinute = 20;
  });
  const { timeline, packs } = runPlan(job);
  const fill = known(timeline.at(-1));
  expect(known(fill.timeEnd) - known(fill.timeStart)).toBeCloseTo((800 / 20) * 60, 6);
  expect(packs?.filler).toBeDefined();
});
