import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("whether the centre of the packs has set", () => {
  const id = "set-at-centre";

  test("is asked where packs rest after they are filled, and of a melt alone", () => {
    expect(asked(exampleJob(), id).map(({ of, at }) => [of, at.step])).toEqual([[{}, 11]]);
    expect(
      asked(
        kettle(({ process }) => process.steps.pop()),
        id,
      ),
    ).toEqual([]);
    // A rest of the vessel is none of the packs.
    const before = kettle(({ process }) => process.steps.splice(9, 0, process.steps.pop()));
    expect(asked(before, id)).toEqual([]);
    expect(
      asked(
        changed(coldJob(), ({ process }) => process.steps.push({ do: "rest", for: "12 h" })),
        id,
      ),
    ).toEqual([]);
  });

  test("is asked of the first pack and the last, or of one where they are filled in no time", () => {
    const count = (job: JobDocument) => {
      const { met, notMet, notKnown } = answered(job, id).states;
      return met + notMet + notKnown;
    };
    expect(count(exampleJob())).toBe(2);
    const atOnce = kettle(({ process }) => delete process.steps[9].for);
    expect(count(atOnce)).toBe(1);
    expect(answered(atOnce, id).at.place).toBe("last-pack");
  });

  test("has the whole of its rests, of which the last can be longer", () => {
    const twice = kettle(({ process }) => process.steps.push({ do: "rest", for: "1 h" }));
    expect(answered(twice, id).limit.max?.value).toBe(13 * 3600);
    expect(leversOf(twice, id)).toEqual([["longer-rest", 3600, 360_000, { step: 12, field: "for" }]]);
  });

  test("counts the rest from the last pack: the first one has cooled while the others were filled", () => {
    // Filled over so long a time that the first pack has set when the last is full.
    const slow = kettle(({ process, vessel }) => {
      process.steps[9] = { do: "fill", for: "6 h", jacketAt: "60 °C" };
      vessel.jacket = { coolant: "15 °C", conductance: "300 W/K" };
    });
    const { at, figure } = answered(slow, id);
    expect(at.place).toBe("last-pack");
    expect(figure.value).toBeGreaterThan(0);
    expect(runPlan(slow).afterFilling?.durationToSet).toBeCloseTo(figure.value ?? Number.NaN, 6);
  });
});

describe("the time until the centre of a pack has set", () => {
  const id = "set-at-centre";
  const figure = (job: JobDocument) => answered(job, id).figure;

  test("is shorter for what may be filled cooler, of what is left in the vessel, and never nothing for that", () => {
    const { min, value } = figure(kettle(({ process }) => (process.steps[9].for = "5 min")));
    expect(min).toBeGreaterThan(0);
    expect(min).toBeLessThan(value ?? Number.NaN);
    // In no time nothing is left to cool.
    const atOnce = figure(kettle(({ process }) => delete process.steps[9].for));
    expect(atOnce.min).toBe(atOnce.value);
  });

  test("may be nothing where nobody knows how cool the last pack was filled", () => {
    const job = changed(allJobsByName()["jacket-by-conductance"] as JobDocument, ({ process }) =>
      process.steps.push({ do: "rest", for: "12 h" }),
    );
    expect(figure(job).min).toBe(0);
  });
});

describe("what goes into a pack", () => {
  const pack = (change: (pack: Draft, draft: Draft) => void) => kettle((draft) => change(draft.pack, draft));
  const ids = ["fits-the-brim", "head-space-when-hot"] as const;

  test("is asked about where its label states how much is in it", () => {
    for (const id of ids) {
      expect(asked(exampleJob(), id)).toHaveLength(1);
      const bare = pack((own) => {
        delete own.nominal;
        delete own.averageQuantity;
      });
      expect(asked(bare, id)).toEqual([]);
    }
  });

  test("is held against the rules where a target is stated, and where none is the target is theirs", () => {
    expect(asked(exampleJob(), "fill-by-the-rules")).toEqual([]);
    const stated = answered(coldJob(), "fill-by-the-rules");
    expect(stated.figure.value).toBeCloseTo(0.1508, 12);
    expect(stated.limit.min?.value).toBeGreaterThan(0.15);
  });

  test("needs a head space as wished, or none where no wish is stated", () => {
    const limit = (job: JobDocument) => answered(job, "head-space-when-hot").limit.min;
    expect(limit(exampleJob())).toMatchObject({ value: 0.05, basis: [{ kind: "stated", key: "pack-head-space-min" }] });
    expect(limit(pack((own) => delete own.headSpaceMin))).toMatchObject({ value: 0, basis: [] });
  });

  test("is one figure where all expansions are stated, else one with ends that says so", () => {
    const figure = (job: JobDocument) => answered(job, "head-space-when-hot").figure;
    const { min, max, assumptions } = figure(exampleJob());
    expect(Number(max) - Number(min)).toBeGreaterThan(0);
    expect(assumptions).toEqual(["expansion-up-to-the-usual"]);
    const stated = pack((_own, { formula }) => {
      for (const { density } of Object.values<Draft>(formula.materials)) density.fallPerKelvin ??= "0.6 kg/m³";
    });
    expect(figure(stated).value).toBe(figure(stated).min);
    expect(figure(stated).assumptions).toBeUndefined();
  });

  test("is counted in whole packs where packs are asked for", () => {
    const { figure, limit, beside } = answered(exampleJob(), "whole-packs");
    expect([figure.value, limit.min?.value]).toEqual([1200, 1200]);
    // 30 mL of a product a little lighter than water.
    expect(Number(beside?.["mass"])).toBeCloseTo(0.028, 3);
    const byMass = pack((_own, { batch }) => (batch.target = { mass: "33 kg" }));
    expect(asked(byMass, "whole-packs")).toEqual([]);
  });

  test("fills the first pack hottest and the last coolest, or all alike in no time", () => {
    const count = (job: JobDocument) => answered(job, "fits-the-brim").states.met;
    expect(count(exampleJob())).toBe(2);
    expect(answered(exampleJob(), "fits-the-brim").at.place).toBe("first-pack");
    const atOnce = kettle(({ process }) => delete process.steps[9].for);
    expect(count(atOnce)).toBe(1);
    expect(answered(atOnce, "fits-the-brim").at.place).toBe("last-pack");
  });
});
