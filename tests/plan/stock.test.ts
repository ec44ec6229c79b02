import { CalculationError } from "gelwright/error";
import { type JobDocument, measureNext, type Plan, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { answersOf } from "../support/answers.js";
import { changed, exampleJob } from "../support/example.js";

/** Three lots, so that each material is needed three times. */
const job = changed(exampleJob(), (draft) => Object.assign(draft.batch.target, { packs: 3000 }));
const plan = runPlan(job);

/** What all lots take of a material [kg]. */
const needed = (key: string): number =>
  plan.weighing.lines.reduce((sum, { material, mass }) => sum + (material === key ? plan.lots.count * mass : 0), 0);
const [key = ""] = plan.weighing.lines.map(({ material }) => material);
const others = [...new Set(plan.weighing.lines.map(({ material }) => material))].filter((one) => one !== key);

const withStock = (stock: readonly object[]): JobDocument =>
  changed(job, (draft) => Object.assign(draft.batch, { stock }));
const answer = (of: Plan, material: string) =>
  answersOf(of, "stock-suffices").find((one) => one.of.material === material);
const ofKey = (kilograms: number): Plan => runPlan(withStock([{ material: key, mass: `${kilograms} kg` }]));

describe("the stock of a job", () => {
  test("is asked about only where a list is stated, and then of every material", () => {
    expect(answersOf(plan, "stock-suffices")).toEqual([]);
    expect(plan.stock).toBeUndefined();
    expect(answersOf(ofKey(1000), "stock-suffices").map(({ of }) => of.material)).toEqual([key, ...others]);
  });

  test("suffices up to what all lots take of it, and no further", () => {
    expect(plan.lots.count).toBeGreaterThan(1);
    const enough = answer(ofKey(needed(key)), key);
    expect(enough).toMatchObject({ verdict: "met", figure: { value: expect.closeTo(needed(key), 9) } });
    const short = answer(ofKey(needed(key) * (1 - 1e-6)), key);
    expect(short).toMatchObject({ verdict: "not-met", side: "above" });
    expect(short?.beside?.["toBuy"]).toBeGreaterThan(0);
  });

  test("of what the list does not hold is not known, and is asked for", () => {
    const found = ofKey(1000);
    for (const other of others) {
      expect(answer(found, other)).toMatchObject({
        verdict: "not-known",
        notKnown: [{ code: "not-stated", field: "material-stock", of: other }],
      });
      expect(measureNext(found).figures).toContainEqual(
        expect.objectContaining({ field: "material-stock", of: other, how: "look-up" }),
      );
    }
    expect(answer(runPlan(withStock([{ material: others[0], mass: "0 kg" }])), others[0] ?? "")?.verdict).toBe(
      "not-met",
    );
  });

  test("makes a batch of whole packs that it suffices for, one more than which it does not", () => {
    const { largest } = ofKey(needed(key) * 0.7).stock ?? {};
    if (!largest || "notKnown" in largest) throw new Error("no largest batch");
    const { packs = 0, limitedBy } = largest;
    expect(limitedBy).toEqual([key]);
    expect(packs).toBeLessThan(3000);
    const inPacks = (count: number) =>
      runPlan(
        changed(withStock([{ material: key, mass: `${needed(key) * 0.7} kg` }]), (draft) =>
          Object.assign(draft.batch.target, { packs: count }),
        ),
      );
    expect(answer(inPacks(packs), key)?.verdict).toBe("met");
    expect(inPacks(packs).lots.count).toBe(largest.lots);
    expect(answer(inPacks(packs + 1), key)?.verdict).toBe("not-met");
  });

  test("that makes no batch says why", () => {
    expect(ofKey(0).stock?.largest).toMatchObject({ notKnown: { code: "outside-range", law: "mass-balance" } });
  });

  test("stands on the sheet: what is needed, there and to buy, and what it makes", () => {
    const sheet = toMarkdown({ plan: ofKey(needed(key) * 0.7) });
    expect(sheet).toContain("| Material | Needed by all lots | In stock | To buy |");
    expect(sheet).toMatch(/The stock makes at most [\d ,]+ packs .* What runs out first: /);
    expect(sheet).toMatch(/NOT MET: All lots take .*: more than there is in stock\. Buy /);
    expect(toMarkdown({ plan })).not.toContain("In stock");
  });

  test("names materials of the formula, not premixes or others", () => {
    const faults = (() => {
      try {
        runPlan(withStock([{ material: "nobody's oil", mass: "3 kg" }]));
        return [];
      } catch (error) {
        if (error instanceof CalculationError) return error.faults;
        throw error;
      }
    })();
    expect(faults.map(({ path, rule }) => [path, rule])).toEqual([["batch.stock[0].material", "unknown-name"]]);
  });
});
