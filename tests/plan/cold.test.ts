import type { Check } from "gelwright/formula";
import { yieldStressOfDroplets } from "gelwright/gel";
import { type ColdAdditions, type JobDocument, runPlan } from "gelwright/plan";
import { toCsv, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";
import { expectFiniteWithoutAnyField, faultPaths } from "../support/runs.js";

const job = coldJob();

type Draft = ReturnType<typeof JSON.parse>;

function check(document: JobDocument, id: string): Check {
  const { checks } = runPlan(document);
  const found = checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id} among ${checks.map((one) => one.id).join(", ")}`);
  return found;
}

function additions(document: JobDocument): ColdAdditions {
  const [first] = runPlan(document).cold?.additions ?? [];
  if (!first) throw new Error("no additions");
  return first;
}

const steps = (draft: Draft, step: string): Draft => draft.process.steps.find((one: Draft) => one.do === step);

describe("the example of the cold route", () => {
  test.each(["beaker", "vessel"] as const)("runs at the scale of the %s, and every question is answered", (scale) => {
    const plan = runPlan(coldJob(scale));
    expect(plan.checks.filter((one) => one.verdict !== "met")).toEqual([]);
    expect(plan.checks.length).toBeGreaterThan(9);
  });

  test("asks nothing that only heat has to answer", () => {
    const ids = runPlan(job).checks.map((one) => one.id);
    for (const id of ["gel-former-dissolves", "filled-before-it-sets", "set-at-centre", "flash-point-in-the-charge"])
      expect(ids).not.toContain(id);
    expect(ids.filter((id) => /above-setting|particles-go-in|particles-settle|maximum-temperature/.test(id))).toEqual(
      [],
    );
    expect(JSON.stringify(runPlan(job))).not.toMatch(/setting|heat loss|hot oil/i);
  });

  test("the hot route's example has nothing of the cold one", () => {
    expect(runPlan(exampleJob()).cold).toBeUndefined();
    expect(toMarkdown({ plan: runPlan(exampleJob()) })).not.toContain("Additions of phase");
  });

  test("all of the weighed oil goes in, to the last digit of its balances", () => {
    const plan = runPlan(job);
    const weighed = plan.weighing.lines
      .filter(({ phase }) => phase === "B")
      .reduce((sum, { mass }) => sum + Math.round(mass * 1e5), 0);
    const { rows } = additions(job);
    expect(rows.reduce((sum, { mass }) => sum + Math.round(mass * 1e5), 0)).toBe(weighed);
  });

  test("no addition passes the bench's share, and the oil fraction rises to that of the gel", () => {
    const { rows } = additions(job);
    for (const [i, { share = 1, shareMax = 0, volumeFractionOil }] of rows.entries()) {
      expect(share).toBeLessThanOrEqual(shareMax * (1 + 1e-9));
      expect(volumeFractionOil).toBeGreaterThan(rows[i - 1]?.volumeFractionOil ?? 0);
    }
    expect(rows.at(-1)?.volumeFractionOil).toBeCloseTo(runPlan(job).cold?.gel.volumeFractionOil ?? 0, 10);
  });

  test("every addition but the last can be read on the scale", () => {
    for (const { mass } of additions(job).rows.slice(0, -1))
      expect(mass / 0.02 - Math.round(mass / 0.02)).toBeCloseTo(0, 6);
  });

  test("a quarter of the speed at the same revolutions takes four times as long to be taken up", () => {
    const { incorporationTimeFactor, rows } = additions(job);
    expect(incorporationTimeFactor).toEqual({ first: 4, last: 4 });
    const [first] = rows;
    expect((first?.timeEnd ?? 0) - (first?.timeIn ?? 0)).toBeCloseTo(240, 9);
    expect(first?.timeIn).toBeCloseTo(((first?.mass ?? 0) / 6) * 60, 9);
  });

  test("the strength by theory is that of the room gel for the plan's own figures", () => {
    const { volumeFractionOil = 0, yieldStressByTheory } = runPlan(job).cold?.gel ?? { notKnown: [] };
    expect(yieldStressByTheory).toBe(
      yieldStressOfDroplets({ volumeFractionOil, diameter: 8e-6, interfacialTension: 0.005 }),
    );
  });
});

describe("the schedule", () => {
  test("the additions of the bench are repeated at scale, along the same oil fractions", () => {
    const bench = additions(changed(coldJob("beaker"), (draft) => delete steps(draft, "add").increment));
    const asThere = changed(job, (draft) => {
      const plan = runPlan(coldJob("beaker"));
      const gelFormer = plan.weighing.lines
        .filter(({ phase }) => phase === "A")
        .reduce((sum, one) => sum + one.mass, 0);
      draft.bench.emulsion.additions = {
        gelFormer: `${gelFormer} kg`,
        oil: bench.rows.map(({ mass }) => `${mass} kg`),
      };
      delete draft.bench.emulsion.additionShareMax;
    });
    const { form, rows } = additions(asThere);
    expect(form).toBe("as at the bench");
    for (const [i, row] of rows.slice(0, 19).entries())
      expect(row.volumeFractionOil).toBeCloseTo(bench.rows[i]?.volumeFractionOil ?? 0, 2);
    expect(check(asThere, "additions-within-share:B").verdict).toBe("met");
  });

  test("a stream is a ramp for the pump, and says that the bench has to show it", () => {
    const stream = changed(job, (draft) => Object.assign(steps(draft, "add"), { additions: "stream" }));
    const { rows } = additions(stream);
    const rates = rows.map(({ rate = 0 }) => rate);
    for (const [i, rate] of rates.slice(1).entries()) expect(rate).toBeGreaterThanOrEqual(rates[i] ?? 1);
    expect(Math.max(...rates)).toBeLessThanOrEqual(0.1);
    expect(check(stream, "additions-within-share:B").verdict).toBe("not known");
    expect(toMarkdown({ plan: runPlan(stream) })).toContain("Set the pump to the first row");
  });

  test("oil beyond the maximum oil fraction of the trials is refused as a step and found as a check", () => {
    const rich = changed(job, (draft) => Object.assign(draft.bench.emulsion, { volumeFractionOilMax: "80 % v/v" }));
    expect(check(rich, "maximum-oil-fraction").verdict).toBe("not met");
    expect(check(rich, "step-can-be-done:3").value).toContain("so that it stays within 0.8");
    expect(runPlan(rich).cold?.additions).toEqual([]);
  });

  test("without a incorporation time there are additions, but no times", () => {
    const unknown = changed(job, (draft) => delete draft.bench.emulsion.incorporationTime);
    const { rows, timesNotKnown } = additions(unknown);
    expect(rows).toHaveLength(20);
    expect(timesNotKnown).toBe("the bench states no incorporation time");
    expect(runPlan(unknown).timeline[2]?.timeEnd).toBeUndefined();
  });

  test.each<[string, (draft: Draft) => unknown, string]>([
    ["how the bench was stirred", (draft) => delete draft.bench.emulsion.stirring, "how the bench was stirred"],
    [
      "the plant's speed",
      (draft) => {
        delete draft.vessel.stirrer.speed;
        delete steps(draft, "add").speed;
      },
      "no speed of the stirrer",
    ],
  ])("%s is named where the times need it", (_what, remove, missing) => {
    expect(additions(changed(job, remove)).timesNotKnown).toContain(missing);
  });
});

describe("what the gel has to answer for", () => {
  test("a gel former with more water is milky, and the ratio that would match is told", () => {
    const wet = changed(job, (draft) => {
      draft.formula.phases[0].lines[0].amount = "15 %";
      draft.formula.phases[0].lines[1].amount = "3.7 %";
    });
    const found = check(wet, "clarity-match");
    expect(found.verdict).toBe("not met");
    const wanted = /^([\d.]+) % of glycerin/.exec(found.statement.split("milky. ")[1] ?? "")?.[1];
    const matched = changed(job, (draft) => {
      const share = (Number(wanted) / 100) * 18.7;
      draft.formula.phases[0].lines[0].amount = `${share.toFixed(3)} %`;
      draft.formula.phases[0].lines[1].amount = `${(18.7 - share).toFixed(3)} %`;
    });
    expect(check(matched, "clarity-match").verdict).toBe("met");
  });

  test("an oil above glycerin's own index is out of reach, and said to be", () => {
    const high = changed(job, (draft) => {
      for (const oil of ["triglyceride", "sunflower"])
        draft.formula.materials[oil].refractiveIndex = { value: 1.49, at: "21 °C" };
    });
    expect(check(high, "clarity-match").statement).toContain("No ratio of glycerin and water reaches");
  });

  test("an index read at another temperature without its change is no index here", () => {
    const unknown = changed(job, (draft) => delete draft.formula.materials.sunflower.refractiveIndex.perKelvin);
    expect(check(unknown, "clarity-match")).toMatchObject({ verdict: "not known" });
    expect(check(unknown, "clarity-match").statement).toContain("sunflower oil was read at 40.0 °C");
  });

  test("a measured index of the gel former comes before the computed one", () => {
    const measured = changed(job, (draft) => {
      draft.bench.emulsion.gelFormerIndex = { value: 1.44, at: "21 °C" };
    });
    expect(check(measured, "clarity-match")).toMatchObject({ verdict: "not met" });
    expect(check(measured, "clarity-match").value).toContain("gel former 1.4400");
  });

  test("droplets too fine for the surfactant are found", () => {
    const fine = changed(job, (draft) => Object.assign(draft.bench.emulsion, { dropletDiameter: "0.5 µm" }));
    expect(check(fine, "surfactant-covers-droplets").verdict).toBe("not met");
  });

  test("droplets that were not measured come from shear, and say so", () => {
    const sheared = changed(job, (draft) => {
      delete draft.bench.emulsion.dropletDiameter;
      draft.bench.emulsion.shear = { rate: "200 1/s", viscosityOil: "40 mPa·s", viscosityEmulsion: "8 Pa·s" };
    });
    const { diameter = 0, diameterFrom } = runPlan(sheared).cold?.gel ?? { notKnown: [] };
    expect(diameter).toBeGreaterThan(1e-6);
    expect(diameter).toBeLessThan(5e-5);
    expect(diameterFrom).toContain("up to 70 % by volume only");
  });

  test("below 83 % by volume the strength by theory is not known, and is not negative", () => {
    const loose = changed(job, (draft) => {
      draft.formula.phases[0].lines[0].amount = "22 %";
      draft.formula.phases[0].lines[1].amount = "3 %";
      draft.vessel.workingVolume.min = "18 L";
    });
    const gel = runPlan(loose).cold?.gel ?? { notKnown: [] as string[], yieldStressByTheory: 0 };
    expect(gel.yieldStressByTheory).toBeUndefined();
    expect(gel.notKnown.join()).toContain("0.83 to 0.98 by volume");
  });

  test("a gel at rest holds its air, and is told to be stirred slowly", () => {
    const still = changed(job, (draft) => delete steps(draft, "de-aerate").speed);
    expect(check(still, "air-leaves")).toMatchObject({ verdict: "not met" });
    expect(check(still, "air-leaves").statement).toContain("stir slowly");
  });

  test("air takes longer without vacuum", () => {
    const slow = changed(job, (draft) => delete steps(draft, "de-aerate").pressure);
    expect(check(slow, "air-leaves").verdict).toBe("not met");
  });

  test("a gel former that does not cover the impeller is found, though the lot does", () => {
    const deep = changed(job, (draft) => Object.assign(draft.vessel.workingVolume, { min: "30 L" }));
    expect(check(deep, "gel-former-covers-impeller").verdict).toBe("not met");
    expect(check(deep, "working-volume").verdict).toBe("met");
  });

  test("a measured water activity comes before the laws, and waives no test", () => {
    const wet = changed(job, (draft) => Object.assign(draft.bench.emulsion, { waterActivity: 0.8 }));
    expect(check(wet, "water-activity").verdict).toBe("not met");
    expect(check(job, "water-activity").statement).toContain("waives no test");
    expect(runPlan(job).cautions.join(" ")).toContain("must be challenge-tested");
  });

  test("a formula with water and without a preservative is told, as a caution", () => {
    const bare = changed(job, (draft) => draft.formula.phases[0].lines.splice(3, 1));
    expect(runPlan(bare).cautions.join(" ")).toContain("No preservative is named");
  });

  test("grains too heavy for the gel are found", () => {
    const heavy = changed(job, (draft) => {
      draft.bench.yieldStress = "0.02 Pa";
      Object.assign(draft.formula.materials.grains.particle, { diameter: "1 mm" });
    });
    expect(check(heavy, "particles-stay-suspended:grains").verdict).toBe("not met");
  });
});

describe("what is missing", () => {
  test.each<[string, (draft: Draft) => unknown, string]>([
    ["the maximum oil fraction", (draft) => delete draft.bench.emulsion.volumeFractionOilMax, "maximum-oil-fraction"],
    ["shares and additions", (draft) => delete draft.bench.emulsion.additionShareMax, "additions-within-share:B"],
    ["the mismatch allowed", (draft) => delete draft.bench.emulsion.mismatchAllowed, "clarity-match"],
    ["the droplets", (draft) => delete draft.bench.emulsion.dropletDiameter, "surfactant-covers-droplets"],
    ["the air", (draft) => delete draft.bench.emulsion.air, "air-leaves"],
    ["all of the cold route", (draft) => delete draft.bench.emulsion, "maximum-oil-fraction"],
  ])("%s leaves the question open", (_what, remove, id) => {
    expect(check(changed(job, remove), id).verdict).toBe("not known");
  });

  test("taking any optional field away leaves a plan of finite figures, or says what is needed", () => {
    expectFiniteWithoutAnyField(job);
  });
});

test("faults of the cold route are told with their places", () => {
  const wrong = changed(job, (draft) => {
    draft.bench.emulsion.volumeFractionOilMax = "105 % v/v";
    draft.bench.emulsion.additionShareMax[1].oil = "0 % v/v";
    draft.bench.emulsion.incorporationTime[0].time = "60 kg";
    draft.bench.emulsion.surfactant.material = "soap";
    draft.bench.emulsion.gelFormerIndex = { value: 1.45 };
    draft.formula.materials.sunflower.refractiveIndex.value = 14.68;
    draft.process.steps[0].at = "60 °C";
    steps(draft, "add").phase = "Z";
    steps(draft, "add").increment = "-1 g";
    steps(draft, "de-aerate").pressure = "0 mbar";
    draft.process.steps.splice(1, 0, { do: "heat", to: "60 °C" });
  });
  expect(faultPaths(wrong)).toEqual([
    "bench.emulsion.additionShareMax[1].oil",
    "bench.emulsion.gelFormerIndex.at",
    "bench.emulsion.incorporationTime[0].time",
    "bench.emulsion.surfactant.material",
    "bench.emulsion.volumeFractionOilMax",
    "formula.materials.sunflower.refractiveIndex.value",
    "process.steps[0].at",
    "process.steps[1]",
    "process.steps[3].increment",
    "process.steps[3].phase",
    "process.steps[7].pressure",
  ]);
});

test("a step of the cold route on the hot one is told what to write", () => {
  const mixed = changed(exampleJob(), (draft) => draft.process.steps.splice(1, 0, { do: "add", phase: "B" }));
  expect(() => runPlan(mixed)).toThrow('"route": "cold"');
});

describe("the sheet of the cold route", () => {
  const sheet = toMarkdown({ plan: runPlan(job) });

  test("has each addition as a row with a box to tick, on the clock of the whole job", () => {
    expect(sheet).toContain("| 1 | 980 g | 980 g | 4.93 % | 0:20 | 0:24 |");
    expect(sheet.match(/☐/g)).toHaveLength(20);
    expect(sheet).toContain("Tick the box when the gel is uniform and glossy");
  });

  test("says before anything is weighed that no addition may be hurried", () => {
    expect(sheet.indexOf("Never hurry an addition")).toBeLessThan(sheet.indexOf("## Weigh"));
  });

  test("names what the times were scaled by", () => {
    expect(sheet).toContain("the bench's, times 4, so that the stirrer turns as often as it did there");
  });

  test("says at what speed to stir, how fast to pour, what the drive tells, and what to do where the gel breaks", () => {
    const additions = sheet.slice(sheet.indexOf("## Additions of phase B"), sheet.indexOf("| No. |"));
    expect(sheet).toContain("Stir at 60 rpm and add phase B");
    expect(additions).toContain("no faster than 6 kg/min");
    expect(additions).toContain("the shaft asks for at 60 rpm");
    expect(additions).toContain("thin, greasy or grainy: add nothing more");
    expect(sheet).toContain("Stop the stirrer and let it rest");
  });

  test("warns of the vacuum only where there is one, and of a stirrer only where one is driven", () => {
    expect(sheet).toContain("at 60 mbar absolute");
    expect(sheet).toContain("A vessel under vacuum must be made for it");
    const bare = changed(job, (draft) => {
      for (const step of draft.process.steps) delete step.pressure;
      draft.vessel.stirrer.byHand = true;
    });
    const cautions = runPlan(bare).cautions.join(" ");
    expect(cautions).not.toContain("vacuum");
    expect(cautions).not.toContain("catches hands");
    expect(runPlan(job).cautions.join(" ")).toContain("catches hands");
  });

  test("names the usual speed where a step has none of its own", () => {
    const usual = changed(job, (draft) => delete draft.process.steps[5].speed);
    expect(runPlan(usual).timeline[5]?.instruction).toContain("over 10 min at 50 rpm");
    expect(runPlan(exampleJob()).timeline[4]?.instruction).toBe("Let cool to 80.0 °C, stirring at 40 rpm");
  });

  test("has the additions as a table for a spreadsheet", () => {
    const lines = toCsv({ plan: runPlan(job), table: "additions" })
      .trimEnd()
      .split("\r\n");
    expect(lines).toHaveLength(21);
    expect(lines[1]?.split(",").slice(0, 4)).toEqual(["3", "B", "1", "0.98"]);
    expect(
      toCsv({ plan: runPlan(exampleJob()), table: "additions" })
        .trimEnd()
        .split("\r\n"),
    ).toHaveLength(1);
  });
});
