import type { Check } from "gelwright/formula";
import { liquidGlycerin, liquidWater, specificHeatAt } from "gelwright/laws";
import { stirring } from "gelwright/mixing";
import { type ColdAdditions, type JobDocument, runPlan } from "gelwright/plan";
import { scalesToMarkdown, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, coldJob } from "../support/example.js";
import { march } from "../support/ode.js";
import { faultPaths } from "../support/runs.js";

type Draft = ReturnType<typeof JSON.parse>;

const job = coldJob();
const room = 21;
const add = (draft: Draft): Draft => draft.process.steps.find((one: Draft) => one.do === "add");
const check = (document: JobDocument, id: string): Check | undefined =>
  runPlan(document).checks.find((one) => one.id === id);

function additions(document: JobDocument): ColdAdditions {
  const [first] = runPlan(document).cold?.additions ?? [];
  if (!first) throw new Error("no additions");
  return first;
}

/** A figure that has to be there. */
function known(value: number | undefined): number {
  if (value === undefined) throw new Error("not known");
  return value;
}

/** Heat capacity by hand from what is weighed [J/K]: phase A, and one kilogram of phase B. */
function capacities(document: JobDocument): { readonly gelFormer: number; readonly perKilogramOil: number } {
  const specific: Readonly<Record<string, number>> = {
    "glycerin, 99.5 %": specificHeatAt({ law: liquidGlycerin.specificHeat, temperature: room, beyond: "extend" }),
    "water, purified": specificHeatAt({ law: liquidWater.specificHeat, temperature: room }),
    "sucrose laurate": 2000,
    preservative: 2100,
  };
  const { lines } = runPlan(document).weighing;
  const gelFormer = lines
    .filter(({ phase }) => phase === "A")
    .reduce((sum, { material, mass }) => sum + mass * known(specific[material]), 0);
  return { gelFormer, perKilogramOil: 2000 };
}

describe("the heat of stirring is in the heat balance", () => {
  test("step by step as a solver finds it, each addition cooling what the last has warmed", () => {
    const plan = runPlan(job);
    const { gelFormer, perKilogramOil } = capacities(job);
    const warm = (power: number, capacity: number, from: number, duration: number): number =>
      known(march((_, [at = 0]) => [(power - 6 * (at - room)) / capacity], [from], duration)[0]);
    let temperature = warm(known(plan.timeline[1]?.stirring?.power), gelFormer, room, 1200);
    expect(known(plan.timeline[1]?.temperatureEnd)).toBeCloseTo(temperature, 8);
    for (const row of additions(job).rows) {
      const before = gelFormer + perKilogramOil * (row.massOil - row.mass);
      const capacity = gelFormer + perKilogramOil * row.massOil;
      temperature = room + ((temperature - room) * before) / capacity;
      temperature = warm(known(row.power), capacity, temperature, known(row.timeEnd) - known(row.timeStart));
      expect(known(row.temperature)).toBeCloseTo(temperature, 8);
    }
    expect(plan.timeline[2]?.temperatureEnd).toBe(additions(job).rows.at(-1)?.temperature);
  });

  test.each(["largest", "equal", "stream"])("where no loss is stated all of the work stays in the gel (%s)", (form) => {
    const closed = changed(job, (draft) => {
      delete draft.vessel.heatLoss;
      add(draft).additions = form;
    });
    const plan = runPlan(closed);
    const { gelFormer, perKilogramOil } = capacities(closed);
    const { rows } = additions(closed);
    const work = rows.reduce(
      (sum, { power, timeStart, timeEnd }, i) =>
        sum +
        known(power) *
          (timeEnd === undefined ? known(timeStart) - (rows[i - 1]?.timeStart ?? 0) : timeEnd - known(timeStart)),
      known(plan.timeline[1]?.stirring?.power) * 1200,
    );
    const capacity = gelFormer + perKilogramOil * known(rows.at(-1)?.massOil);
    expect((capacity * (known(rows.at(-1)?.temperature) - room)) / work).toBeCloseTo(1, 9);
    expect(toMarkdown({ plan })).toContain("cooling by nothing (loss to the room not stated)");
    expect(known(plan.cold?.warming.temperatureMax)).toBeGreaterThan(room + 0.5);
  });

  test.each<[string, (draft: Draft) => unknown, string]>([
    [
      "a specific heat",
      (draft) => delete draft.formula.materials.surfactant.specificHeat,
      "no specific heat of sucrose laurate",
    ],
    ["how it thins", (draft) => draft.bench.emulsion.thickness.readings.forEach(withoutIndex), "flowIndex"],
    ["the shear rate", (draft) => delete draft.bench.emulsion.thickness.shearRate, "at what shear rate"],
    ["all readings", (draft) => delete draft.bench.emulsion.thickness, "how thick the gel is on its way"],
    [
      "thin gels",
      (draft) => draft.bench.emulsion.thickness.readings.splice(0, 2),
      "go only from 70 to 84 % of oil by volume",
    ],
    [
      "the shear of the stirrer",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "other", laminarPowerConstant: 90, powerNumber: 1 }),
      "state metznerOttoConstant",
    ],
  ])("without %s it is left out, and said to be", (_what, remove, missing) => {
    const plan = runPlan(changed(job, remove));
    expect(plan.cold?.warming.leftOut.map(({ reason }) => reason).join()).toContain(missing);
    expect(plan.timeline[2]?.basis).toContain("heat of stirring left out");
    expect(toMarkdown({ plan })).toContain("The heat of stirring in step");
  });

  test("without a stirrer nothing turns, and all stays at the room's temperature", () => {
    const still = changed(job, (draft) => {
      delete draft.vessel.stirrer;
      for (const step of draft.process.steps) delete step.speed;
      add(draft).keeps = "time";
    });
    expect(runPlan(still).cold?.warming).toMatchObject({ temperatureMax: room, leftOut: [] });
    expect(check(still, "motor")).toBeUndefined();
    const untimed = runPlan(changed(still, (draft) => delete draft.bench.emulsion.incorporationTime));
    expect(untimed.timeline.map(({ temperatureEnd }) => temperatureEnd)).toEqual(untimed.timeline.map(() => room));
  });

  test.each(["largest", "stream"])("how warm it gets in a while that nobody timed is not known (%s)", (form) => {
    const untimed = changed(job, (draft) => {
      delete draft.bench.emulsion.incorporationTime;
      add(draft).additions = form;
      draft.process.steps.splice(3, 0, { do: "stir", for: "5 min", speed: "60 rpm" });
    });
    const plan = runPlan(untimed);
    expect(known(plan.timeline[1]?.temperatureEnd)).toBeGreaterThan(room);
    expect(plan.timeline[2]?.temperatureEnd).toBeUndefined();
    expect(plan.timeline[2]?.basis).toContain("temperature not known: its times are not known");
    expect(plan.timeline[2]?.basis).not.toContain("included");
    expect(plan.cold?.warming.temperatureMax).toBeUndefined();
    expect(toMarkdown({ plan })).toContain("How warm stirring makes it is not known.");
    // What the stirrer does then hangs on the oil, and not on the time.
    expect(check(untimed, "blended:4")?.verdict).toBe("met");
  });

  test("in packs it no longer cools as the vessel does", () => {
    const kept = changed(job, (draft) => {
      draft.process.steps.push({ do: "rest", for: "2 h" });
      draft.pack.heatLoss = "0.05 W/K";
    });
    const { timeline, cold } = runPlan(kept);
    const [filled, rested] = timeline.slice(-2).map(({ temperatureEnd }) => known(temperatureEnd) - room);
    // 150 g at 2.05 kJ/(kg·K) or so behind 0.05 W/K: an hour and three quarters for a fall to 1/e.
    const lump = Math.log(known(filled) / known(rested)) / 7200;
    expect(0.05 / 0.15 / lump).toBeGreaterThan(1900);
    expect(0.05 / 0.15 / lump).toBeLessThan(2200);
    const untold = runPlan(changed(kept, (draft) => delete draft.pack.heatLoss));
    expect(untold.timeline.at(-1)).toMatchObject({ temperatureEnd: undefined });
    expect(untold.timeline.at(-1)?.basis).toContain("nothing says how the filled pack cools");
    expect(untold.cold?.warming.temperatureMax).toBe(cold?.warming.temperatureMax);
  });

  test("a gel that stirring has warmed is not looked through before it has cooled", () => {
    const hot = changed(job, (draft) => {
      draft.vessel.stirrer.laminarPowerConstant = 4000;
      draft.vessel.stirrer.powerNumber = 5;
      draft.bench.emulsion.mismatchAllowed = 0.0005;
    });
    expect(check(hot, "clarity-match")?.verdict).toBe("met");
    expect(check(hot, "clarity-while-warm")).toMatchObject({ verdict: "not met" });
    expect(check(hot, "clarity-while-warm")?.statement).toContain("milkier in the vessel than it will in the room");
    expect(check(job, "clarity-while-warm")?.verdict).toBe("met");
  });
});

describe("what each addition asks of the stirrer", () => {
  test("is what the kernel finds for the bench's reading at that oil fraction", () => {
    const exact = changed(job, (draft) => {
      const oil = known(additions(job).rows.at(-1)?.volumeFractionOil);
      Object.assign(draft.bench.emulsion.thickness.readings[4], { oil: `${100 * oil} % v/v` });
    });
    const last = additions(exact).rows.at(-1);
    const consistency = (4 * 20 - 13) / 20 ** 0.45;
    const curve = { law: "herschel-bulkley", yieldStress: 13, consistency, flowIndex: 0.45 } as const;
    const impeller = { kind: "anchor", diameter: 0.49 } as const;
    const turned = stirring({ impeller, density: 980, curve, speed: 1 });
    // In creeping flow the density is no matter; Re is 20 or so here.
    expect(known(last?.torque) / turned.torque).toBeCloseTo(1, 2);
    expect(known(last?.viscosity)).toBeCloseTo(4, 6);
    expect(known(last?.power)).toBeCloseTo(2 * Math.PI * known(last?.torque), 9);
  });

  test("grains in the gel ask for more", () => {
    const grainy = runPlan(job).timeline[5]?.stirring?.torque;
    const bare = changed(job, (draft) => delete draft.formula.materials.grains.particle);
    expect(known(grainy) / known(runPlan(bare).timeline[5]?.stirring?.torque)).toBeGreaterThan(1.03);
  });

  test("a motor that is too weak is found at the addition that is too much for it", () => {
    const weak = changed(job, (draft) => Object.assign(draft.vessel.stirrer.motor, { power: "100 W" }));
    expect(check(weak, "motor")).toMatchObject({ verdict: "not met" });
    expect(check(weak, "motor")?.statement).toContain("in step 3, addition 20");
  });

  test("a small propeller leaves the gel at the wall where it is, which holds its air; moved by hand it does not", () => {
    const small = changed(job, (draft) => {
      draft.vessel.stirrer = { kind: "propeller", diameter: "150 mm", speed: "150 rpm", topEdge: "60 mm" };
    });
    expect(check(small, "gel-moves-at-wall:3")).toMatchObject({
      verdict: "not met",
      limit: "520 mm, the vessel's diameter",
    });
    expect(check(small, "gel-moves-at-wall:3")?.statement).toContain("takes up no oil");
    expect(check(small, "air-leaves")).toMatchObject({ verdict: "not met" });
    expect(check(small, "air-leaves")?.statement).toContain("at the wall stands still");
    const byHand = changed(small, (draft) => Object.assign(draft.vessel.stirrer, { byHand: true }));
    expect(check(byHand, "gel-moves-at-wall:3")).toBeUndefined();
  });

  test("a motor turned down to half its speed has its torque, and not its power", () => {
    const torque = known(runPlan(job).timeline[5]?.stirring?.torque);
    const power = (2 * Math.PI * (50 / 60) * torque) / 0.7;
    // Step 6 alone, at half the usual speed: it needs a quarter more torque than it asks for.
    const driven = (times: number) =>
      changed(job, (draft) => {
        draft.vessel.stirrer.motor.power = `${times * power} W`;
        draft.process.steps[2].speed = "1 rpm";
        draft.process.steps[6].speed = "1 rpm";
      });
    expect(check(driven(1.24), "motor")).toMatchObject({ verdict: "not known" });
    expect(check(driven(1.24), "motor")?.statement).toContain("in step 6 is not known: through a gear it does");
    expect(check(driven(1.26), "motor")).toMatchObject({ verdict: "met" });
    expect(check(driven(0.6), "motor")).toMatchObject({ verdict: "not met" });
  });

  test.each<[string, (reading: Draft) => unknown]>([
    ["how thick it is", (reading) => delete reading.viscosity],
    ["its yield stress", (reading) => delete reading.yieldStress],
  ])("where nobody read %s at the end, whether the gel moves at the wall is not known", (_what, remove) => {
    const short = changed(job, (draft) => remove(draft.bench.emulsion.thickness.readings[4]));
    expect(check(short, "gel-moves-at-wall:3")).toMatchObject({ verdict: "not known" });
    expect(check(short, "gel-moves-at-wall:3")?.statement).toContain(
      "readings go only from 0 to 78 % of oil by volume",
    );
    expect(check(short, "gel-moves-at-wall:7")).toMatchObject({ verdict: "not known" });
    expect(check(short, "motor")?.value).toContain("not known in step 3, addition 18");
  });

  test("a first charge that hardly covers the bottom is told in words, and no depth on the sheet is below nothing", () => {
    const low = changed(job, (draft) => {
      draft.vessel.workingVolume.min = "2 L";
      draft.vessel.bottom = { shape: "dished" };
      draft.vessel.stirrer = {
        kind: "pitched-blade turbine",
        diameter: "200 mm",
        speed: "60 rpm",
        topEdge: "80 mm",
        motor: { power: "1 kW" },
      };
      draft.batch.target = { packs: 30, fillMass: "150 g" };
    });
    const plan = runPlan(low);
    expect(plan.timeline[1]?.basis).toContain("the level of the charge is outside the power curve of the stirrer");
    expect(check(low, "no-air-down-the-vortex")?.statement).toContain("the charge does not cover it");
    expect(toMarkdown({ plan })).not.toMatch(/levelToVessel|-\d+(\.\d+)? mm/);
  });

  test("a gel too full of particles to flow is said to be, and no reading is blamed", () => {
    const full = changed(job, (draft) => {
      draft.formula.phases[2].lines[0].amount = "72 %";
      draft.formula.phases[1].lines[1].amount = "2 %";
    });
    expect(runPlan(full).timeline[5]?.basis).toContain("its particles are packed too closely to flow");
  });

  test("a stream has rows and no additions", () => {
    const stream = runPlan(changed(job, (draft) => Object.assign(add(draft), { additions: "stream" })));
    expect(stream.scale.additions).toBe(0);
    expect(stream.scale.massFirstAddition).toBeUndefined();
    expect(scalesToMarkdown({ plans: [runPlan(job), stream] })).toContain("| additions of oil | 20 | none, a stream |");
    expect(known(stream.scale.durationAdding)).toBeGreaterThan(3600);
    expect(runPlan(job).scale.additions).toBe(20);
    expect(stream.checks.find(({ id }) => id === "motor")?.value).toContain("in step 3, row 11");
  });

  test("where nobody knows how far slow stirring moves the gel, nobody knows whether its air leaves", () => {
    const unread = changed(job, (draft) => delete draft.bench.emulsion.thickness);
    expect(check(unread, "air-leaves")?.statement).toContain("how far slow stirring moves the gel is not known");
    // A gel too weak to hold its bubbles lets them go however little of it moves.
    const weak = changed(unread, (draft) => Object.assign(draft.bench, { yieldStress: "0.3 Pa" }));
    expect(check(weak, "air-leaves")?.verdict).toBe("met");
  });

  test("stands on the sheet beside the addition, with the shear rate of what was read", () => {
    const sheet = toMarkdown({ plan: runPlan(job) });
    expect(sheet).toContain("| Thickness then | Torque then |");
    expect(sheet).toMatch(/\| 20 \| what is left, .* N·m \|/);
  });
});

describe("what is kept from the bench", () => {
  const keeping = (keeps: string, change: (draft: Draft) => void = () => {}) =>
    changed(job, (draft) => {
      add(draft).keeps = keeps;
      change(draft);
    });

  test("the way of the tip goes with speed and diameter", () => {
    const { first, last } = additions(keeping("tip travel")).incorporationTimeFactor ?? {};
    expect(first).toBeCloseTo((4 * 0.078) / 0.49, 12);
    expect(last).toBe(first);
  });

  test("the strain goes with the shear constants", () => {
    expect(additions(keeping("strain")).incorporationTimeFactor?.first).toBeCloseTo(4, 12);
    const other = keeping("strain", (draft) => Object.assign(draft.vessel.stirrer, { metznerOttoConstant: 12.5 }));
    expect(additions(other).incorporationTimeFactor?.first).toBeCloseTo(8, 12);
  });

  test("the energy per volume goes with the power that each stirrer puts into its own vessel", () => {
    const document = keeping("energy per volume");
    const { rows, incorporationTimeFactor } = additions(document);
    const last = rows.at(-1);
    const gelFormer = known(last?.massInVessel) - known(last?.massOil);
    const mass = known(last?.massInVessel);
    const plant = known(last?.power) / mass;
    // At the bench the same gel at another shear rate; 60 g of gel former.
    const beaker = changed(document, (draft) => {
      draft.vessel.stirrer = { kind: "anchor", diameter: "78 mm", speed: "240 rpm" };
      draft.vessel.diameter = "85 mm";
      add(draft).speed = "240 rpm";
      add(draft).keeps = "time";
    });
    const bench = known(additions(beaker).rows.at(-1)?.power) / ((mass * 0.06) / gelFormer);
    // Another vessel has another film on its wall, and so a charge that is not quite the same.
    expect(known(incorporationTimeFactor?.last) / (bench / plant)).toBeCloseTo(1, 3);
    expect(known(incorporationTimeFactor?.first)).not.toBeCloseTo(known(incorporationTimeFactor?.last), 2);
    expect(toMarkdown({ plan: runPlan(document) })).toMatch(
      /same energy per volume, times .* at first and .* in the end/,
    );
    const stream = changed(document, (draft) => Object.assign(add(draft), { additions: "stream" }));
    expect(additions(stream).incorporationTimeFactor?.last).toBeCloseTo(known(incorporationTimeFactor?.last), 9);
  });

  test.each<[string, (draft: Draft) => unknown, string]>([
    ["energy per volume", (draft) => delete draft.bench.emulsion.stirring.diameter, "how wide the bench's vessel was"],
    ["energy per volume", (draft) => delete draft.bench.emulsion.stirring.gelFormer, "how much gel former"],
    ["energy per volume", (draft) => delete draft.bench.emulsion.thickness, "how thick the gel is"],
    ["energy per volume", (draft) => delete draft.bench.emulsion.stirring, "how the bench was stirred"],
    [
      "strain",
      (draft) => Object.assign(draft.vessel.stirrer, { kind: "hydrofoil" }),
      "(hydrofoil): state metznerOttoConstant",
    ],
    ["strain", (draft) => delete draft.vessel.stirrer, "no diameter of the stirrer"],
  ])("%s names what is missing for it", (keeps, remove, missing) => {
    expect(additions(keeping(keeps, remove)).timesNotKnown).toContain(missing);
  });
});

describe("the bench's stirrer beside the plant's", () => {
  const rows = (document: JobDocument) => {
    const { speeds } = runPlan(document).cold ?? {};
    if (!speeds || "notKnown" in speeds) throw new Error(speeds?.notKnown ?? "no speeds");
    return Object.fromEntries(speeds.rows.map((row) => [row.of, row]));
  };

  test("each speed keeps what it says, and no more than that", () => {
    const { bench, plan, ...kept } = rows(job);
    const keys = {
      "tip-speed": "tipSpeed",
      "shear-rate": "shearRate",
      "power-per-volume": "powerPerVolume",
      reynolds: "reynolds",
    } as const;
    for (const [criterion, key] of Object.entries(keys)) {
      expect(known(kept[criterion]?.[key]) / known(bench?.[key])).toBeCloseTo(1, 9);
      for (const other of Object.values(keys))
        if (other !== key) expect(known(kept[criterion]?.[other]) / known(bench?.[other])).not.toBeCloseTo(1, 1);
    }
    expect(plan?.torque).toBeCloseTo(known(additions(job).rows.at(-1)?.torque), 9);
    expect(plan?.speed).toBe(1);
  });

  test("in the same vessel with the same stirrer every row is the bench's own", () => {
    const same = changed(coldJob("beaker"), (draft) => {
      const { mass } = { mass: runPlan(coldJob("beaker")).timeline[0]?.mass };
      draft.bench.emulsion.stirring.gelFormer = `${mass} kg`;
    });
    const { bench, ...all } = rows(same);
    for (const row of Object.values(all)) {
      expect(known(row.speed)).toBeCloseTo(4, 9);
      expect(row.torque / known(bench?.torque)).toBeCloseTo(1, 9);
    }
  });

  test("stands on the sheet, with why where it is not known", () => {
    expect(toMarkdown({ plan: runPlan(job) })).toContain("| the same power per volume |");
    const narrow = changed(job, (draft) => delete draft.bench.emulsion.stirring.diameter);
    expect(toMarkdown({ plan: runPlan(narrow) })).toContain("Not known: nothing says how wide the bench's vessel was.");
    const silent = changed(job, (draft) => delete draft.bench.emulsion.stirring);
    expect(runPlan(silent).cold?.speeds).toBeUndefined();
  });
});

test("faults of the readings and of the bench's stirrer are told with their places", () => {
  const wrong = changed(job, (draft) => {
    const { thickness, stirring: bench } = draft.bench.emulsion;
    thickness.readings[1].oil = "0 % v/v";
    thickness.readings[2].flowIndex = 0;
    thickness.readings[3].viscosity = "0 Pa·s";
    thickness.shearRate = "20 rpm";
    delete bench.stirrer.speed;
    bench.stirrer.diameter = "90 mm";
  });
  expect(faultPaths(wrong)).toEqual([
    "bench.emulsion.stirring.stirrer.diameter",
    "bench.emulsion.stirring.stirrer.speed",
    "bench.emulsion.thickness.readings[1].oil",
    "bench.emulsion.thickness.readings[2].flowIndex",
    "bench.emulsion.thickness.readings[3].viscosity",
    "bench.emulsion.thickness.shearRate",
  ]);
});

test("a yield stress above the stress at which its gel was read flowing is a fault", () => {
  const wrong = changed(job, (draft) => {
    // 20 1/s and 2.6 Pa·s: 52 Pa.
    draft.bench.emulsion.thickness.readings[3].yieldStress = "52 Pa";
    draft.bench.emulsion.thickness.readings[4].yieldStress = "79 Pa";
  });
  expect(faultPaths(wrong)).toEqual(["bench.emulsion.thickness.readings[3].yieldStress"]);
});

function withoutIndex(reading: Draft): void {
  delete reading.flowIndex;
}
