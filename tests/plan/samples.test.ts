import fc from "fast-check";
import { readBatch, scaleFormula } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { packsFromBatch } from "gelwright/packing";
import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { usualSampleSize } from "../../src/plan/samples.js";
import { answerOf } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";

const job = exampleJob();

/** The job with an allowance for samples in place of the one by mass. */
function withSamples(samples: object, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(job, (draft) => {
    const at = draft.batch.allowances.findIndex(({ kind }: { kind: string }) => kind === "mass");
    draft.batch.allowances[at] = { kind: "samples", name: "samples", ...samples };
    delete draft.stability.allowance;
    change(draft);
  });
}

/** Product of one pack [kg]. */
const fillOf = ({ lots }: Plan): number => lots.deliveredTarget / (lots.packs ?? Number.NaN);

const massOf = (plan: Plan): number => plan.allowances.find(({ name }) => name === "samples")?.mass ?? Number.NaN;

describe("samples of a lot", () => {
  test("are those of the stability test, of the fill checks and further packs, each pack as full as one that is asked for", () => {
    const plan = runPlan(
      withSamples({ stabilityTest: true, fillChecks: 4, packs: 3 }, ({ stability }) => delete stability.sample),
    );
    expect(usualSampleSize).toBe(5);
    expect(plan.samples).toEqual([{ name: "samples", stabilityTest: 8, fillChecks: 20, packs: 3, mass: massOf(plan) }]);
    expect(massOf(plan) / fillOf(plan)).toBeCloseTo(31, 9);
    expect(plan.stability?.mass).toBeCloseTo(8 * fillOf(plan), 12);
  });

  test("of a stability test that states their mass have that mass, and the pack may state how many a check takes", () => {
    const plan = runPlan(
      withSamples({ stabilityTest: true, fillChecks: 2 }, ({ pack }) => Object.assign(pack, { sampleSize: 3 })),
    );
    expect(massOf(plan)).toBeCloseTo(8 * 0.015 + 6 * fillOf(plan), 12);
  });

  test("come on top of whole packs, over lots, whatever is sampled", () => {
    fc.assert(
      fc.property(
        // One lot, two, or three of the kettle.
        fc.oneof(...[800, 1700, 2700].map((min) => fc.integer({ min, max: min + 300 }))),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: 1, max: 4 }),
        (packs, fillChecks, reserve, samplesPerPull) => {
          const plan = runPlan(
            withSamples({ stabilityTest: true, fillChecks }, (draft) => {
              draft.batch.target.packs = packs;
              delete draft.stability.sample;
              Object.assign(draft.stability.conditions[0], { reserve, samplesPerPull });
            }),
          );
          const { lots } = plan;
          const { packs: ofLot = Number.NaN } = lots;
          expect(Number.isInteger(ofLot)).toBe(true);
          expect(lots.count * ofLot).toBeGreaterThanOrEqual(packs);
          // What arrives beside the samples fills the packs of the lot, and no further one but by rounding.
          const filled = packsFromBatch({ massBatch: lots.delivered * (1 + 1e-12), massFill: fillOf(plan) });
          expect(filled.packs).toBeGreaterThanOrEqual(ofLot);
          expect(massOf(plan) / fillOf(plan)).toBeCloseTo(3 * samplesPerPull + reserve + 4 + 5 * fillChecks, 6);
          // From what is weighed to what is in the packs nothing is lost that is not listed.
          const taken = plan.allowances.reduce((sum, { mass }) => sum + mass, 0);
          expect(plan.weighing.total - taken).toBeCloseTo(lots.delivered, 9);
          expect(answerOf(plan, "delivered").verdict).toBe("met");
        },
      ),
      { numRuns: 15 },
    );
  });

  test("grow with the test, and only where the document asks for it", () => {
    const more = ({ stability }: Draft): void => {
      stability.conditions[0].pullDays = [0, 28, 84, 168, 364];
    };
    const asked = runPlan(withSamples({ stabilityTest: true }));
    const longer = runPlan(withSamples({ stabilityTest: true }, more));
    expect(massOf(longer) - massOf(asked)).toBeCloseTo(2 * 0.015, 12);
    expect(longer.weighing.total).toBeGreaterThan(asked.weighing.total);
    expect(answerOf(longer, "samples-within-allowance").verdict).toBe("met");
    // An allowance by mass stays what it is: whether it suffices is asked.
    const stated = (change: (draft: Draft) => void): Plan => runPlan(changed(job, change));
    const fixed = stated((draft) => {
      more(draft);
      for (const allowance of draft.batch.allowances) if (allowance.mass === "150 g") allowance.mass = "140 g";
    });
    expect(fixed.samples).toBeUndefined();
    expect(answerOf(fixed, "samples-within-allowance").verdict).toBe("not-met");
  });

  test("that do not take those of the test leave it not known where these come from", () => {
    const plan = runPlan(withSamples({ packs: 5 }));
    expect(answerOf(plan, "samples-within-allowance")).toMatchObject({
      verdict: "not-known",
      notKnown: [{ field: "stability-allowance" }],
    });
  });

  test("may be those of a second allowance, which the test names", () => {
    const second = withSamples({ packs: 5 }, ({ batch, stability }) => {
      batch.allowances.push(
        { kind: "samples", name: "third", stabilityTest: true },
        { kind: "samples", name: "fourth", stabilityTest: true },
      );
      stability.allowance = "fourth";
    });
    const { limit, verdict } = answerOf(second, "samples-within-allowance");
    expect([verdict, limit.max?.basis?.[0]]).toEqual(["met", expect.objectContaining({ of: "fourth" })]);
  });

  test("are found by the name of their allowance, which no allowance before it may have", () => {
    const twice = (kind: string, fields: object): JobDocument =>
      withSamples({ packs: 5 }, ({ batch }) => batch.allowances.push({ kind, name: "samples", ...fields }));
    expect(() => runPlan(twice("samples", { packs: 7 }))).toThrow(/name: found samples, expected a name that no/);
    const [own] = runPlan(twice("mass", { mass: "1 kg" })).samples ?? [];
    expect(own?.mass).toBeLessThan(0.5);
  });

  test("stand on the sheet with what they are for", () => {
    expect(toMarkdown({ plan: runPlan(withSamples({ stabilityTest: true, fillChecks: 4, packs: 1 })) })).toMatch(
      /From each lot \(samples\): 8 samples for the stability test, 20 packs for checks of the fill, 1 pack kept back; .* in all\./,
    );
  });

  test("are refused where there is nothing that they could be of", () => {
    const faultsOf = (document: JobDocument): readonly string[] => {
      try {
        runPlan(document);
        return [];
      } catch (error) {
        if (error instanceof CalculationError) return error.faults.map(({ path }) => path);
        throw error;
      }
    };
    const inMass = (draft: Draft): void => {
      draft.batch.target = { mass: "30 kg" };
    };
    expect(faultsOf(withSamples({}))).toEqual(["batch.allowances[1]"]);
    expect(faultsOf(withSamples({ stabilityTest: true }, (draft) => delete draft.stability))).toEqual([
      "batch.allowances[1].stabilityTest",
    ]);
    expect(faultsOf(withSamples({ packs: 3, fillChecks: 1 }, inMass))).toEqual([
      "batch.allowances[1].packs",
      "batch.allowances[1].fillChecks",
    ]);
    expect(faultsOf(withSamples({ stabilityTest: true }, inMass))).toEqual([]);
    expect(
      faultsOf(
        withSamples({ stabilityTest: true }, (draft) => {
          inMass(draft);
          delete draft.stability.sample;
        }),
      ),
    ).toEqual(["batch.allowances[1].stabilityTest"]);
  });

  test("of a batch by itself are packs: what only a plan can work out is refused there", () => {
    const formula = readFormula({
      version: 1,
      name: "gel",
      materials: { oil: { name: "oil", function: "oil" } },
      phases: [{ name: "A", lines: [{ material: "oil", amount: "q.s." }] }],
    });
    const scaled = (samples: object, target: object = { packs: 100, fillMass: "50 g" }) =>
      scaleFormula({
        formula,
        batch: readBatch({
          version: 1,
          target,
          allowances: [{ kind: "samples", name: "samples", ...samples }],
          balances: [{ name: "scale", increment: "1 g", capacity: "60 kg", minimumWeight: "50 g" }],
        }),
      });
    expect(scaled({ packs: 4 }).lot.total).toBe(5.2);
    expect(() => scaled({ packs: 4 }, { mass: "5 kg" })).toThrow("a batch that is asked for in packs");
    expect(() => scaled({ fillChecks: 4 })).toThrow("only a plan can work these out");
    expect(() => scaled({ stabilityTest: true })).toThrow("only a plan can work these out");
  });
});
