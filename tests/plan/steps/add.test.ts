import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { otherwise, type Reason } from "../../../src/plan/unknown.js";
import { stepOf, stepsOf } from "../../support/asked.js";
import { changed, coldJob, type Draft } from "../../support/example.js";

/** A figure, or why it is not known. */
const or = <T>(find: () => T): T | Reason => otherwise<T, Reason>(find, (reason) => reason);

const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("oil that is added by a schedule", () => {
  const added = (change: (step: Draft, draft: Draft) => void = () => {}) =>
    vessel((draft) => change(draft.process.steps[2], draft));
  const schedule = (job: JobDocument) => {
    const found = stepOf(job, 3).schedule?.();
    if (!found) throw new Error("a schedule");
    return found;
  };

  test("names the speed that it is stirred at, or each addition's where that follows the oil", () => {
    expect(schedule(added()).speed).toBe(1);
    expect(schedule(added()).rows.every(({ speed }) => speed === undefined)).toBe(true);
    const rising = added((step) => {
      delete step.speed;
      step.speeds = [
        { fromOil: "0 % v/v", speed: "30 rpm" },
        { fromOil: "50 % v/v", speed: "60 rpm" },
      ];
    });
    expect(schedule(rising).speed).toBeUndefined();
    const speeds = schedule(rising).rows.map(({ speed }) => speed);
    expect([speeds[0], speeds.at(-1)]).toEqual([0.5, 1]);
    expect(stepOf(rising, 3).speed?.()).toBe(1);
  });

  test("turns portions at the speed for the oil that they meet, and a stream at that for the oil which is in by then", () => {
    const planned = (additions: string) =>
      schedule(
        added((step) => {
          delete step.speed;
          Object.assign(step, {
            additions,
            speeds: [
              { fromOil: "0 % v/v", speed: "30 rpm" },
              { fromOil: "40 % v/v", speed: "60 rpm" },
            ],
          });
        }),
      );
    const at = (oil = 0): number => (oil < 0.4 ? 0.5 : 1);
    const { rows: portions, factor } = planned("largest");
    expect(portions.map(({ speed }) => speed)).toEqual(portions.map((_, i) => at(portions[i - 1]?.volumeFractionOil)));
    // The bench turns at 240 rpm: the first portion takes eight times as long as there, the last four times.
    expect([factor().first, factor().last]).toEqual([8, 4]);
    const stream = planned("stream").rows;
    expect(stream.map(({ speed }) => speed)).toEqual(stream.map(({ volumeFractionOil }) => at(volumeFractionOil)));
  });

  test("turns no stirrer that there is not, whatever speeds are stated", () => {
    const still = added((step, draft) => {
      delete draft.vessel.stirrer;
      delete step.speed;
      Object.assign(step, { keeps: "time", speeds: [{ fromOil: "0 % v/v", speed: "30 rpm" }] });
      for (const one of draft.process.steps) delete one.speed;
    });
    expect([stepOf(still, 3).speed, stepOf(still, 3).turns?.()]).toEqual([undefined, []]);
    expect(schedule(still).rows.every(({ speed }) => speed === undefined)).toBe(true);
  });

  test("refuses speeds that do not rise with the oil, each of them by its place", () => {
    const speeds =
      (...from: readonly number[]) =>
      () =>
        stepsOf(
          added((step) => {
            delete step.speed;
            step.speeds = from.map((oil) => ({ fromOil: `${oil} % v/v`, speed: "30 rpm" }));
          }),
        );
    expect(speeds(0, 10, 20)).not.toThrow();
    expect(speeds(0, 0)).toThrow(/speeds\[1\]\.fromOil/);
    expect(speeds(0, 20, 10)).toThrow(/speeds\[2\]\.fromOil/);
    expect(speeds(30, 20, 40, 40)).toThrow(/speeds\[1\]\.fromOil[\s\S]*speeds\[3\]\.fromOil/);
  });

  test("carries what is seen before the next addition, and the most that the pump gives, where they are stated", () => {
    const { rateMax, proceedWhen, keeps, form } = schedule(added());
    expect([rateMax, keeps, form]).toEqual([0.1, "revolutions", "largest"]);
    expect(proceedWhen).toMatch(/^uniform/);
    const plain = schedule(
      added((step) => {
        for (const key of ["pump", "proceedWhen", "keeps"]) delete step[key];
      }),
    );
    expect(Object.keys(plain)).not.toContain("rateMax");
    expect(Object.keys(plain)).not.toContain("proceedWhen");
    expect(plain.keeps).toBe("time");
  });

  test("goes in steps of the coarsest balance of its phase where no increment is stated", () => {
    const plain = added((step) => delete step.increment);
    expect(schedule(plain).increment).toBeCloseTo(0.02, 12);
    // The gel former on a finer scale than the oil: it is the oil's that counts.
    const finer = changed(plain, ({ batch }) => {
      batch.balances[1].capacity = "30 kg";
      batch.balances[2].increment = "50 g";
    });
    expect(schedule(finer).increment).toBeCloseTo(0.05, 12);
    expect(schedule(added((step) => (step.increment = "50 g"))).increment).toBe(0.05);
  });

  test("as at the bench needs a gel former without oil, since the bench's began so", () => {
    const bench = { gelFormer: "60 g", oil: ["2 g", "2 g", "4 g", "8 g", "16 g", "32 g", "64 g", "64 g", "64 g"] };
    const asThere = (change: (draft: Draft) => void = () => {}) =>
      added((step, draft) => {
        step.additions = "as at the bench";
        draft.bench.emulsion.additions = bench;
        change(draft);
      });
    expect(schedule(asThere()).rows.length).toBeGreaterThan(1);
    const begun = asThere(({ process }) => {
      process.steps.splice(2, 0, { do: "charge", phase: "B", share: "1 %" });
    });
    expect(or(() => stepOf(begun, 4).schedule?.())).toMatchObject({ code: "not-read", field: "emulsion-additions" });
  });

  test("ends warmer where stirring warms it, at the room's temperature where nothing stirs", () => {
    expect(stepOf(added(), 3).after.temperature()).toBeGreaterThan(21);
    const still = added((_step, draft) => {
      delete draft.vessel.stirrer;
      draft.process.steps[2].keeps = "time";
    });
    expect(stepOf(still, 3).after.temperature()).toBe(21);
  });

  test("of which no time is known has no known temperature in a stream that is stirred, and the room's in one that is not", () => {
    const stream = (change: (draft: Draft) => void = () => {}) =>
      added((step, draft) => {
        step.additions = "stream";
        delete draft.bench.emulsion.incorporationTime;
        change(draft);
      });
    expect(or(stepOf(stream(), 3).after.temperature)).toMatchObject({ field: "emulsion-incorporation-time" });
    expect(or(stepOf(stream(), 3).duration)).toHaveProperty("code");
    const still = stream(({ vessel: own, process }) => {
      delete own.stirrer;
      for (const one of process.steps) delete one.speed;
      process.steps[2].keeps = "time";
    });
    expect(or(stepOf(still, 3).after.temperature)).toBe(21);
    // What was charged warm cools meanwhile, and nobody knows for how long.
    const warm = changed(still, ({ process }) => (process.steps[0].at = "50 °C"));
    expect(or(stepOf(warm, 3).after.temperature)).toMatchObject({ field: "emulsion-incorporation-time" });
  });

  test("is in as fast as the pump delivers it, or at once where no pump is stated", () => {
    const timeIn = (job: JobDocument) => {
      const [{ mass = 0, timeStart = Number.NaN, timeIn: end = Number.NaN } = {}] = schedule(job).rows;
      return [end - timeStart, mass] as const;
    };
    const [pumped, mass] = timeIn(added());
    // 6 kg in a minute.
    expect(pumped).toBeCloseTo(mass / 0.1, 9);
    expect(timeIn(added((step) => delete step.pump))[0]).toBe(0);
  });

  test("without a stirrer stays as warm as the room, however long that takes, and cools from above it", () => {
    const still = (change: (draft: Draft) => void) =>
      stepOf(
        added((step, draft) => {
          delete draft.vessel.stirrer;
          for (const one of draft.process.steps) delete one.speed;
          step.keeps = "time";
          change(draft);
        }),
        3,
      );
    const untimed = still(({ bench }) => delete bench.emulsion.incorporationTime);
    expect(or(untimed.after.temperature)).toBe(21);
    expect(or(untimed.duration)).toHaveProperty("field", "emulsion-incorporation-time");
    const warm = (heatLoss: string) =>
      still(({ process, vessel: own }) => {
        process.steps[0].at = "50 °C";
        own.heatLoss = heatLoss;
      }).after.temperature();
    expect(warm("60 W/K")).toBeLessThan(warm("6 W/K") - 1);
  });

  test("in a stream goes in faster from the very oil fraction on at which the stirrer is turned up", () => {
    const duration = (from: number) =>
      stepOf(
        added((step) => {
          step.additions = "stream";
          delete step.speed;
          step.speeds = [
            { fromOil: "0 % v/v", speed: "30 rpm" },
            { fromOil: `${from} % v/v`, speed: "60 rpm" },
          ];
        }),
        3,
      ).duration();
    const durations = [52, 54, 56, 58].map(duration);
    for (const [i, one] of durations.slice(1).entries()) expect(one).toBeGreaterThan((durations[i] ?? 0) * 1.0001);
  });

  test("in a stream that is turned up on the way takes as long as two streams, of which the second is the faster", () => {
    const streams = (...steps: readonly Draft[]) =>
      added((step, { process }) => {
        const { pump: _, speed: __, ...rest } = step;
        process.steps.splice(2, 1, ...steps.map((own) => ({ ...rest, additions: "stream", ...own })));
      });
    for (const share of ["23 %", "71 %"]) {
      const two = streams({ share, speed: "30 rpm" }, { speed: "60 rpm" });
      const fromOil = `${100 * (schedule(two).rows.at(-1)?.volumeFractionOil ?? Number.NaN)} % v/v`;
      const one = streams({
        speeds: [
          { fromOil: "0 % v/v", speed: "30 rpm" },
          { fromOil, speed: "60 rpm" },
        ],
      });
      const duration = stepOf(two, 3).duration() + stepOf(two, 4).duration();
      expect(stepOf(one, 3).duration() / duration).toBeCloseTo(1, 4);
    }
  });

  test("in a stream is no other for a speed that would begin at more oil than ever is in", () => {
    const turned = (...later: readonly Draft[]) =>
      schedule(
        added((step) => {
          step.additions = "stream";
          delete step.speed;
          step.speeds = [{ fromOil: "0 % v/v", speed: "30 rpm" }, ...later];
        }),
      );
    const later = turned({ fromOil: "95 % v/v", speed: "60 rpm" });
    // A bench that turns at 240 rpm: eight times as long, from the first drop to the last.
    expect(later.factor().first).toBeCloseTo(8, 9);
    expect(later.factor().last).toBeCloseTo(8, 9);
    expect(later.rows).toEqual(turned().rows);
  });

  test("stays as warm as the room where nobody knows how much heat it takes up, and says that it leaves stirring out", () => {
    const unknown = added((_step, { formula }) => delete formula.materials.surfactant.specificHeat);
    const step = stepOf(unknown, 3);
    expect(step.after.temperature()).toBe(21);
    expect(step.assumptions?.()).toContain("heat-of-stirring-left-out");
    expect(stepOf(added(), 3).assumptions?.()).not.toContain("heat-of-stirring-left-out");
    expect(schedule(unknown).rows.every(({ power = 0, temperature }) => power > 0 && temperature === 21)).toBe(true);
  });

  test("beyond the largest oil fraction of the bench has no schedule", () => {
    const upTo = (share: string) => added((_step, { bench }) => (bench.emulsion.volumeFractionOilMax = share));
    expect(or(() => stepOf(upTo("70 % v/v"), 3).schedule?.())).toMatchObject({ law: "addition-schedule" });
    expect(schedule(upTo("90 % v/v")).rows.length).toBeGreaterThan(1);
  });

  test("loads the shaft between two ends in each addition, by how sure the power of the stirrer is", () => {
    for (const { torque = Number.NaN, torqueMin, torqueMax, power, speed = 1 } of schedule(added()).rows) {
      expect(torqueMin).toBeLessThan(torque);
      expect(torqueMax).toBeGreaterThan(torque);
      expect(power).toBeCloseTo(2 * Math.PI * speed * torque, 6);
    }
  });

  test("says nothing of how warm each part of it was on the way", () => {
    expect(or(stepOf(added(), 3).segments)).toMatchObject({ code: "no-method", step: 3 });
  });

  test("in a stream is raised evenly to its end, in eleven rows of which each has its rate", () => {
    const { rows } = schedule(added((step) => (step.additions = "stream")));
    expect(rows).toHaveLength(11);
    const mass = rows.reduce((sum, row) => sum + row.mass, 0);
    expect(mass).toBeCloseTo(rows.at(-1)?.massOil ?? Number.NaN, 9);
    const starts = rows.map(({ timeStart = Number.NaN }) => timeStart);
    for (const [i, start] of starts.entries()) expect(start).toBeCloseTo((i / 10) * Number(starts.at(-1)), 6);
    for (const { rate } of rows) expect(rate).toBeGreaterThan(0);
  });

  test.each([
    ["time", 1],
    ["revolutions", 4],
    ["tip travel", (4 * 78) / 490],
  ])("keeps %s of the bench: each takes %d times as long as there", (keeps, factor) => {
    const found = schedule(added((step) => (step.keeps = keeps))).factor();
    expect(found.first).toBeCloseTo(factor, 9);
    expect(found.last).toBeCloseTo(factor, 9);
  });

  test("keeps energy per volume by a factor that changes with the oil, and strain by one that does not", () => {
    const energy = schedule(added((step) => (step.keeps = "energy per volume"))).factor();
    expect(energy.last / energy.first).not.toBeCloseTo(1, 3);
    const strain = schedule(added((step) => (step.keeps = "strain"))).factor();
    expect(strain.last).toBe(strain.first);
    expect(strain.first).toBeCloseTo(4, 1);
  });

  test("says how thick the gel is on the way within the readings, by two of them at least", () => {
    const thick = (count: number) =>
      schedule(
        added((_step, { bench }) => {
          bench.emulsion.thickness.readings = bench.emulsion.thickness.readings.slice(-count);
        }),
      ).rows.filter(({ viscosity, yieldStress }) => viscosity !== undefined && yieldStress !== undefined);
    expect(thick(2).length).toBeGreaterThan(0);
    expect(thick(1)).toEqual([]);
  });
});
