import { prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { scaleMetricsOf } from "../../../src/plan/parts/scale.js";
import { speedsOf } from "../../../src/plan/parts/speeds.js";
import { runOf } from "../../../src/plan/prepared-run.js";
import { changed, coldJob, exampleJob } from "../../support/example.js";

const cold = runOf(prepareJob(coldJob()));
const [, , adding] = cold.moments;
const rows = adding?.schedule?.().rows ?? [];

describe("what changes with the size of the vessel", () => {
  test("of an emulsion are its additions, the first of them, their time, its oil and how warm stirring makes it", () => {
    const { additions, massFirstAddition, durationAdding, volumeFractionOil, temperatureMax } = scaleMetricsOf(cold);
    expect([additions, massFirstAddition]).toEqual([rows.length, rows[0]?.mass]);
    expect(durationAdding).toBe(adding?.duration());
    expect(volumeFractionOil).toBeCloseTo(rows.at(-1)?.volumeFractionOil ?? Number.NaN, 12);
    expect(temperatureMax).toBeGreaterThan(21);
  });

  test("of a stream are no additions, and none of it of a melt", () => {
    const streamed = changed(coldJob(), ({ process }) => (process.steps[2].additions = "stream"));
    const metrics = scaleMetricsOf(runOf(prepareJob(streamed)));
    expect(metrics.additions).toBe(0);
    expect(metrics).not.toHaveProperty("massFirstAddition");
    const melt = scaleMetricsOf(runOf(prepareJob(exampleJob())));
    for (const key of ["additions", "durationAdding", "volumeFractionOil", "temperatureMax"])
      expect(melt).not.toHaveProperty(key);
  });

  test("of a stirrer are its rim where it turns fastest, and its power where it takes most", () => {
    const metrics = scaleMetricsOf(cold);
    // 490 mm at 60 rpm.
    expect(metrics.tipSpeed).toBeCloseTo(Math.PI * 0.49, 9);
    expect(metrics.power).toBeGreaterThanOrEqual(Math.max(...rows.map(({ power = 0 }) => power)));
    expect(metrics.power).toBeCloseTo(2 * Math.PI * (metrics.torque ?? Number.NaN), 6);
  });

  test("are the times of all steps that heat, and of all that cool", () => {
    const kettle = runOf(prepareJob(exampleJob()));
    const { durationHeating, durationCooling } = scaleMetricsOf(kettle);
    const timeOf = (...numbers: readonly number[]): number =>
      numbers.reduce((sum, number) => sum + (kettle.moments[number - 1]?.duration() ?? Number.NaN), 0);
    expect(durationHeating).toBeCloseTo(timeOf(2), 9);
    expect(durationCooling).toBeCloseTo(timeOf(5, 7), 9);
    expect(scaleMetricsOf(cold)).not.toHaveProperty("durationHeating");
  });
});

describe("the time until a melt sets after its last charge", () => {
  /** The kettle, filled in a time. */
  const filledIn = (duration: string) => {
    const run = runOf(
      prepareJob(
        changed(exampleJob(), ({ process }) => {
          for (const step of process.steps) if (step.do === "fill") step.for = duration;
        }),
      ),
    );
    const { durationToSet = Number.NaN, durationMargin = Number.NaN } = scaleMetricsOf(run);
    return { toSet: durationToSet, margin: durationMargin, moments: run.moments };
  };

  test("counts from that charge, and leaves as a margin what is over once the packs are full", () => {
    const { toSet, margin, moments } = filledIn("5 min");
    const [, , , , , , , charging, , filling] = moments;
    const used = Number(filling?.after.time()) - Number(charging?.after.time());
    expect(margin).toBeGreaterThan(0);
    expect(toSet - margin).toBeCloseTo(used, 6);
    // Five minutes of stirring and five of filling.
    expect(used).toBeCloseTo(600, 6);
    // It cools from 58 to 55 °C by a few kelvins an hour.
    expect(toSet).toBeLessThan(7200);
  });

  test("is the same however long it is filled, and leaves less the longer that takes, down to below nothing", () => {
    const [short, long] = [filledIn("5 min"), filledIn("2 h")];
    expect(long.toSet / short.toSet).toBeCloseTo(1, 3);
    expect(long.margin).toBeLessThan(0);
    expect(short.margin - long.margin).toBeCloseTo(115 * 60, 0);
  });
});

describe("the speeds of the bench and of this stirrer", () => {
  test("are told of the gel with all of its oil in, before anything else goes in", () => {
    const found = speedsOf(cold);
    expect(found.map(({ of }) => of)).toEqual([
      "bench",
      "plan",
      "tip-speed",
      "shear-rate",
      "power-per-volume",
      "reynolds",
    ]);
    const [bench, plan, tip] = found;
    expect(plan?.torque).toBeCloseTo(rows.at(-1)?.torque ?? Number.NaN, 9);
    // 78 mm at 240 rpm at the bench, 490 mm at 60 rpm here.
    expect(bench?.tipSpeed).toBeCloseTo(Math.PI * 0.078 * 4, 9);
    expect([plan?.speed, plan?.tipSpeed]).toEqual([1, expect.closeTo(Math.PI * 0.49, 9)]);
    expect([tip?.tipSpeed, tip?.speed]).toEqual([
      expect.closeTo(bench?.tipSpeed ?? Number.NaN, 9),
      expect.closeTo((0.078 * 4) / 0.49, 9),
    ]);
  });
});
